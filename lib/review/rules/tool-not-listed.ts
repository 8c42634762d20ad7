import type { Mark } from '@/lib/procedure/mark'
import { IMPLIED_TOOLS } from '@/lib/trade/implied-tools'
import { wordSet } from '@/lib/trade/list'
import { PART_HEADS } from '@/lib/trade/parts'
import { TOOL_HEADS, WEAK_TOOLS } from '@/lib/trade/tools'
import { atSteps } from '../chunks'
import { isDisposing } from '../disposing'
import { quote } from '../late'
import { listedThing, namedThing, thingsListed } from '../listed'
import { onceForText } from '../memo'
import { atMark, type Found, type Remedy, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isSameThing } from '../thing'
import { singular, tokensOf } from '../words'

const HEADS = new Set(TOOL_HEADS.map(head => head.split(' ').map(singular).join(' ')))
const WEAK = new Set([...WEAK_TOOLS].map(singular))
const PARTS = new Set([...PART_HEADS].map(singular))
/** Tools that only such a use shows to be some. */
const IN_USE = new Set([
  'whip',
  'chain whip',
  'podger',
  'tommy bar',
  'crank handle',
  'come-along',
  'windlass',
  'fish tape',
  'feeler blade',
])
const WITH = new Set(['with', 'using', 'against'])
/** What something is turned or pressed against is mostly a part. */
const isAgainst = (tokens: readonly string[], start: number): boolean => tokens[start - 1] === 'against'
const ENDS =
  /^(?:[.,;:()!?]|and|or|to|on|in|at|until|from|of|into|for|set|by|while|if|so|then|through|under|over|as|its|their|that|which|against|across|between|before|after|when|once)$/

/** A gauge with a word before it measures; alone it may be one of the machine's own. */
const isGauge = (name: readonly string[]): boolean => name.length > 1 && /^gauges?$/.test(name.at(-1) ?? '')

/** Tools a step names: after "with" or "using" any, elsewhere only what is nothing but a tool. */
const toolsIn = onceForText((text: string): readonly string[] => {
  const tokens = tokensOf(text)
  const found: string[] = []
  let start = -1
  for (let i = 0; i <= tokens.length; i++) {
    const token = tokens[i]
    if (token !== undefined && WITH.has(token)) {
      start = i + 1
      continue
    }
    if (token !== undefined && !ENDS.test(token)) continue
    if (start >= 0) {
      const name = tokens.slice(start, i).filter(word => !/^(?:a|an|the|your|two|some|this)$/.test(word))
      const [last = '', before = ''] = [singular(name.at(-1) ?? ''), singular(name.at(-2) ?? '')]
      if (
        IN_USE.has(last) ||
        IN_USE.has(`${before} ${last}`) ||
        (!isAgainst(tokens, start) && HEADS.has(`${before} ${last}`)) ||
        (!isAgainst(tokens, start) &&
          HEADS.has(last) &&
          (name.length > 1 || !WEAK.has(last)) &&
          !(PARTS.has(last) && WEAK.has(last) && !isGauge(name)))
      )
        found.push(name.join(' '))
    }
    start = -1
  }
  return found
})

const impliedBy = onceForText((text: string) =>
  IMPLIED_TOOLS.filter(({ action, not }) => action.test(text) && not?.test(text) !== true),
)

/** "3 mm", "1/2 in", "T25": the size a tool is called by; undefined where it has none. */
const SIZE = /\b(\d+(?:[./-]\d+)*)[ -]?(mm|mil|millimet\w+|in|inch)\b|\b(t|ph|pz)-?(\d+)\b/i
const sizeIn = (text: string): string | undefined => {
  const match = SIZE.exec(text)
  if (match === null) return undefined
  const [, figure, unit = '', drive, number] = match
  return figure === undefined ? `${drive}${number}`.toLowerCase() : `${figure} ${unit[0]?.toLowerCase()}`
}
const SETS = /\b(?:sets?|kit|adjustable|assort\w*|to|and|multi\w*)\b|,/i

/** Whether a listed tool of the same name has another size. */
const isOtherSize = (name: string, text: string): boolean => {
  const [wanted, own] = [sizeIn(name), sizeIn(text)]
  return wanted !== undefined && own !== undefined && wanted !== own && !SETS.test(text)
}

/** The soft jaws of a "vice with soft jaws". */
const WITH_IT = / with (.+)$/i

const isListed = (name: string, items: readonly Mark[]): boolean => {
  const thing = namedThing(name)
  return (
    thing.head === '' ||
    items.some(({ text }) => {
      const other = listedThing(text)
      // Listed as one entry: "padlock and tag".
      if (thingsListed(text).some(part => part !== text && isSameThing(thing, listedThing(part)))) return true
      if (isSameThing(thing, namedThing(WITH_IT.exec(text)?.[1] ?? ''))) return true
      return (
        !isOtherSize(name, text) &&
        (isSameThing(thing, other) || (thing.words.length === 1 && other.words.includes(thing.head)))
      )
    })
  )
}

const listTool = (step: Mark, name: string): Remedy => ({
  label: `List "${name}" as a tool`,
  edits: [
    {
      do: 'add-marks',
      marks: [
        {
          id: `tool-${name.replaceAll(/\W+/g, '-')}-${step.id}`,
          kind: 'tool',
          start: step.start,
          end: step.end,
          text: name,
          said: '',
          step: step.id,
        },
      ],
    },
  ],
})

const WITH_WHAT = /\b(?:with (?:a|an|the|your|two|some)?\s?(?!care)[\w-]+|using|by hand)\b/i

/** Tools that steps name or imply, in order. */
const needsIn = atSteps(({ mark, checks }) => {
  if (isDisposing(mark.text)) return []
  const named = [mark, ...checks].flatMap(own => toolsIn(own.text))
  // Told with what, nobody looks for another tool.
  const implied = impliedBy(mark.text).filter(({ id }) => id === 'air' || !WITH_WHAT.test(mark.text))
  return named.length + implied.length === 0 ? [] : [{ mark, named, implied }]
})

/** What the machine has of its own, by its name: a winch on the mast needs no fetching. */
const isOwn = (name: string, equipment: string): boolean => {
  const { head } = namedThing(name)
  return BUILT_IN.has(head) && tokensOf(equipment).map(singular).includes(head)
}
const BUILT_IN = wordSet('winch hoist crane breaker jack pump press crank lift clamp vice vise')

const check = ({ sheet, project }: Subject): readonly Found[] => {
  const items = project.marks.filter(({ kind }) => kind === 'tool' || kind === 'material')
  const names = items.map(({ text }) => text).join('\n')
  const seen = new Set<string>()
  return needsIn(sheet).flatMap(({ mark, number, named, implied }) => {
    const unlisted = named.filter(name => !isListed(name, items) && !isOwn(name, sheet.heading.equipment))
    const missing = implied.filter(({ tool }) => !tool.test(names)).map(({ name }) => name)
    return [...unlisted, ...missing].flatMap((name): Found[] => {
      if (seen.has(name)) return []
      seen.add(name)
      return [
        {
          place: atMark(mark),
          message: `Step ${number}, ${quote(mark)}, takes a tool that is not listed: ${name}. List it, so that it is at hand.`,
          remedy: listTool(mark, name),
        },
      ]
    })
  })
}

/** At hand before the job, not fetched with oily hands. */
export const toolNotListed: Rule = {
  id: 'tool-not-listed',
  level: 'fix',
  about: 'A step uses a tool that is not in the list of tools.',
  why: 'Halfway through, with the oil running, is when it is missing.',
  source: 'IEC/IEEE 82079-1:2019: tools and materials up front (from memory)',
  trips: sample([['step', 'Loosen the lock ring with a pin spanner']]),
  passes: sample([
    ['step', 'Loosen the lock ring with a pin spanner'],
    ['tool', 'pin spanner'],
  ]),
  check,
}
