import type { Mark } from '@/lib/procedure/mark'
import type { Sentence } from '@/lib/procedure/recording'
import { hasNumber } from '@/lib/quantity/quantity'
import type { QuantityKind } from '@/lib/quantity/unit-row'
import { dimensionOf } from '@/lib/quantity/units'
import { onceFor } from '../memo'
import { atMark, type FindingLevel, type Found, type Remedy, type Rule } from '../rule'
import { wordsAround } from '../said'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { contentStems } from '../words'

/** Where speakers say a value stands, and how they own up to guessing. Common speech, no source. */
const MANUAL =
  /\b(?:manual|(?:service|data|spec|maker['’]?s|instruction) ?sheet|handbook|the book|workshop book|spec(?:ification)? (?:table|page)|page \d+|torque chart|maker['’]?s (?:figure|limit|value|number)|drawing)\b/i
const PLATE =
  /\b(?:(?:name|data|rating|type) ?plate|sticker|label|stamped|printed|marked on|written on|embossed|cast into|moulded|molded|decal|on the (?:can|lid|side|cover|cap))\b/i
const HEDGE =
  /\b(?:i think|i guess|i believe|i reckon|don['’]t quote me|if memory serves|from memory|pretty sure|as far as i (?:know|remember)|if i remember|i seem to|somewhere around|ballpark|roughly|or so|rule of thumb|not in any book|a forum|the internet|my (?:own )?(?:figure|number|rule)|by feel|off the top of my head|i usually|i always|probably)\b/i
const ALL =
  /\b(?:all|every|each) (?:of )?(?:the |these |those |my )?(?:figures?|numbers?|values?|limits?|specs?|torques?)\b/i
const BUT = /\b(?:except|save|but|apart|other than|bar)\b(.*)$/i

/** Kinds where a guess breaks something. */
const TIGHT = new Set<QuantityKind>([
  'torque',
  'pressure',
  'length',
  'voltage',
  'current',
  'resistance',
  'capacitance',
  'force',
  'temperature',
  'angle',
  'frequency',
  'rotation',
])

/** A sentence that vouches for every value at once, such as a closing remark. */
const vouched = onceFor(
  (sentences: readonly Sentence[]): { readonly text: string; readonly except: readonly string[] } | undefined => {
    const said = sentences.find(({ text }) => ALL.test(text) && (MANUAL.test(text) || PLATE.test(text)))
    return said && { text: said.text, except: contentStems(BUT.exec(said.text)?.[1] ?? '') }
  },
)

const setBasis = (mark: Mark, basis: 'manual' | 'plate'): Remedy => ({
  label: basis === 'manual' ? 'Note that it is from the manual' : 'Note that it is from the plate',
  edits: [{ do: 'change-mark', id: mark.id, to: { basis } }],
})

/** Where no value of the sheet was checked, one finding on the list says so, and single ones weigh less. */
const MANY = 3

const weigh = (mark: Mark, words: string, isOneOfMany: boolean): FindingLevel => {
  if (isOneOfMany) return 'consider'
  if (HEDGE.test(words)) return 'fix'
  const kind =
    mark.quantity !== undefined && hasNumber(mark.quantity) ? dimensionOf(mark.quantity.unit ?? '') : undefined
  return kind !== undefined && TIGHT.has(kind) ? 'fix' : 'consider'
}

type Row = { readonly mark: Mark; readonly near: string; readonly stands: 'plate' | 'manual' | undefined }

const readRow = (mark: Mark, sentences: readonly Sentence[]): Row => {
  const all = vouched(sentences)
  const near = `${mark.said} ${sentences.length === 0 ? '' : wordsAround(sentences, mark, 0, 1)} ${mark.reference ?? ''}`
  const isExcepted = all?.except.some(stem => contentStems(mark.text).includes(stem)) === true
  const words = all === undefined || isExcepted ? near : `${near} ${all.text}`
  const stands = HEDGE.test(near) ? undefined : PLATE.test(words) ? 'plate' : MANUAL.test(words) ? 'manual' : undefined
  return { mark, near, stands }
}

/** Names that a message gives; more are only counted. */
const NAMED = 8

const rowsOf = onceFor((sentences: readonly Sentence[]) => onceFor((mark: Mark) => readRow(mark, sentences)))

const toFound = ({ mark, near, stands }: Row, isOneOfMany: boolean): Found => {
  if (stands !== undefined) {
    const message = `"${mark.text}": the talk says it stands on the ${stands === 'plate' ? 'plate or label' : 'maker’s sheet or in the manual'}. Look it up, and note where.`
    return { place: atMark(mark), level: 'consider', message, remedy: setBasis(mark, stands) }
  }
  const doubt = HEDGE.exec(near)?.[0]
  const message = `"${mark.text}" was only spoken${doubt === undefined ? '' : ` ("${doubt}")`}. Check it against the plate or the manual and note where it stands.`
  return { place: atMark(mark), level: weigh(mark, near, isOneOfMany), message }
}

const check = ({ project, sentences }: Subject): readonly Found[] => {
  const rowOf = rowsOf(sentences)
  const rows = project.marks.filter(isSpoken).map(rowOf)
  const open = rows.filter(({ stands }) => stands === undefined)
  const isMany = open.length >= MANY
  const all = [...new Set(open.map(({ mark }) => `"${mark.text}"`))]
  const names = all.length > NAMED ? `${all.slice(0, NAMED).join(', ')} and ${all.length - NAMED} more` : all.join(', ')
  const summary: Found = {
    place: { at: 'list', kind: 'spec' },
    message: `${open.length} specs were only spoken: ${names}. Check them against the plate or the manual and note where each stands.`,
  }
  return [...rows.map(row => toFound(row, isMany)), ...(isMany ? [summary] : [])]
}

const isSpoken = ({ kind, basis }: Mark): boolean => kind === 'spec' && (basis ?? 'spoken') === 'spoken'

/** A limit from memory is a guess until someone reads it off the plate or the page. */
export const specNoBasis: Rule = {
  id: 'spec-no-basis',
  level: 'fix',
  about: 'A spec was only spoken: nobody noted that it was read off the plate or the manual.',
  why: 'Memory swaps models and units; a limit that nobody checked is passed on as if it were the maker’s.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Torque the head bolts'],
    ['spec', 'head bolt torque', { quantity: { low: 42, high: 48, unit: 'N.m' }, basis: 'spoken' }],
  ]),
  passes: sample([
    ['step', 'Torque the head bolts'],
    [
      'spec',
      'head bolt torque',
      { quantity: { low: 42, high: 48, unit: 'N.m' }, basis: 'manual', citation: 'service manual, torque table' },
    ],
  ]),
  check,
}
