import { CAUSES } from '@/lib/trade/english'
import { classesOf, verbOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { countWords, joinOrders, MOST_WORDS, sayTokens, withoutLooseEnd } from './clause-text'
import type { Reading } from './feature'
import { isCondition, OPENERS, skipOpeners, toStretches } from './wording-breath'
import { conditionOf, KEEPS } from './wording-condition'
import { fastenersThere, heldBy } from './wording-fastener'
import { isVerbless } from './wording-kinds'
import { lateOrder } from './wording-late'
import { fromTorqueTold, fromWornTold, givenOrder, namedOrder } from './wording-named'
import { withArticle, yours } from './wording-place'
import { hasPauses, type Stretch, TAKEN_BACK } from './wording-stretch'

/** What a second look at a sentence finds where no clause gave an order. */
export type Second = { readonly text: string; readonly isGuess: boolean }

/** More words than this tell a story; keeps patterns over a stretch cheap. */
const LONGEST = 40

const BARE: ReadonlySet<string> = new Set(['remove', 'fit', 'clean', 'make', 'apply', 'control'])
/** Things and states first, verbs second: alone behind a pause they order nothing. */
const NO_ORDER =
  /^(?:part|strip|tie|screw|guide|flush|dry|empty|steady|snug|stop|go|wet|press|file|drill|do|get|give|tap|pop|work|run|cool|cover|plug|pin|clip|hook|bolt|seal|level|square|free|warm|key|jack|block|home|back|lap|buff|pump|light|hit|let|leave|keep|mark|set|put|start|charge|rest|bed|pack)$/

/** "The joints | I crimp", "wires | unplug": what is done to the thing named just before. */
const onAhead = (reading: Reading, { from, to }: Stretch, ahead: string): string | undefined => {
  const { tokens, text } = reading
  if (ahead === '' || ahead.split(' ').length > 6 || tokens[from]?.isAfterPause === false) return undefined
  const isTold = /^(?:i|we|you|one)$/.test(tokens[from]?.word ?? '')
  const at = isTold ? from + 1 : from
  const verb = verbOf(tokens[at]?.word ?? '')
  if (verb === undefined || at >= to || NO_ORDER.test(verb.base)) return undefined
  if (![...classesOf(verb.base)].some(name => BARE.has(name))) return undefined
  const isAlone = at + 1 >= to
  if (
    isTold
      ? !isAlone && !/^(?:adverb|preposition|particle)$/.test(tokens[at + 1]?.tag ?? '')
      : !isAlone || verb.form !== 'base'
  )
    return undefined
  return `${verb.base} ${withArticle(yours(ahead))} ${sayTokens(text, tokens, at + 1, to)}`.trim()
}

const isSpoken = (tokens: readonly Token[], { from, to }: Stretch): boolean =>
  tokens.slice(from, to).some(({ tag }) => /^(?:noun|part|tool|material|word)$/.test(tag))

/** The thing named in the breaths right before, the first of them: "its hose, a rubber pipe |". */
const aheadOf = (reading: Reading, stretches: readonly Stretch[], i: number): string => {
  const { tokens, text } = reading
  let first: Stretch | undefined
  for (let k = i - 1; k >= Math.max(0, i - 3); k--) {
    const stretch = stretches[k]
    if (stretch === undefined) break
    const own = skipOpeners(tokens, stretch)
    if (!isVerbless(tokens, stretch)) break
    if (isSpoken(tokens, own)) first = own
  }
  const { tag } = tokens[first?.from ?? -1] ?? {}
  if (
    first === undefined ||
    tag === undefined ||
    /^(?:preposition|particle|to|negation|condition|number|adverb)$/.test(tag)
  )
    return ''
  return sayTokens(text, tokens, first.from, first.to).replace(/,? (?:next|last|first|now|then)$/i, '')
}

type Sound = (phrase: string) => boolean

/** A stretch without an order of its own, as it stands behind the last one: "…, quarter turns". */
const withDetail = (last: string, { tokens, text }: Reading, stretch: Stretch): string | undefined => {
  const said = sayTokens(text, tokens, stretch.from, stretch.to)
  const opener = tokens[stretch.from]?.word
  const more = `${last}${opener === 'and' ? ' and' : opener === 'then' ? ', then' : ','} ${said}`
  const isDetail = isVerbless(tokens, stretch) && countWords(said) < 8
  return isDetail && countWords(more) <= MOST_WORDS ? more : undefined
}

/** Orders of stretches one by one, conditions and details behind them. */
const toldOrders = (reading: Reading, stretches: readonly Stretch[], isSound: Sound): readonly string[] => {
  const { tokens } = reading
  const kept: string[] = []
  const fits = (said: string) => kept.length === 0 || countWords([...kept, said].join(' and ')) <= MOST_WORDS
  let pending = ''
  let reach = -1
  stretches.forEach((stretch, i) => {
    const { tag = 'cause', word = '' } = tokens[stretch.from] ?? {}
    if (CAUSES.has(word) || tag === 'cause' || stretch.to - stretch.from > LONGEST) return
    const last = reach === i - 1 ? kept.at(-1) : undefined
    const own = skipOpeners(tokens, stretch)
    // "…, so the stuff goes out": what follows, not what is done.
    const isGiven = /^(?:gets?|takes?)$/.test(tokens[own.from + 1]?.word ?? '')
    if (word === 'so' && i > 0 && kept.length === 0 && !tokens[own.from]?.isAfterPause && !isGiven) return
    const ahead = own.from === stretch.from ? aheadOf(reading, stretches, i) : ''
    const order = lateOrder(reading, own, ahead) ?? onAhead(reading, stretch, ahead)
    if (order === undefined && KEEPS.has(word) && word !== 'as' && isCondition(tokens, stretch.from)) {
      const condition = conditionOf(reading, { ...stretch, marker: word })
      if (condition === '') return
      if (last !== undefined) kept.splice(-1, 1, `${last} ${condition}`)
      else if (kept.length === 0 && word !== 'where') pending = condition
      reach = i
    } else if (order === undefined) {
      const more = last === undefined ? undefined : withDetail(last, reading, stretch)
      if (more === undefined || !isSound(more)) return
      kept.splice(-1, 1, more)
      reach = i
    } else if (isSound(order) && fits(order)) {
      kept.push(pending === '' ? order : `${order} ${pending}`)
      pending = ''
      reach = i
    }
  })
  return kept
}

/** The verbless stretches a sentence opens with, and the condition before or behind them. */
const openingOf = (
  reading: Reading,
  stretches: readonly Stretch[],
): { readonly runs: readonly Stretch[]; readonly condition: string } => {
  const { tokens } = reading
  const runs: Stretch[] = []
  let condition = ''
  for (const stretch of stretches) {
    const own = skipOpeners(tokens, stretch)
    const word = tokens[stretch.from]?.word ?? ''
    const isLead = own.to - own.from === 1 && OPENERS.test(tokens[own.from]?.word ?? '')
    if (KEEPS.has(word) && isCondition(tokens, stretch.from)) {
      condition = conditionOf(reading, { ...stretch, marker: word })
      if (runs.length > 0) break
    } else if (runs.length === 0) {
      if (CAUSES.has(word) || !isVerbless(tokens, own)) break
      if (!isLead) runs.push(own)
    } else if (CAUSES.has(word) || !isVerbless(tokens, stretch) || stretch.to - (runs[0]?.from ?? 0) > LONGEST) break
    else runs.push(stretch)
  }
  return { runs, condition }
}

/**
 * A second look at a sentence no clause of which gives an order: passives behind a phrase in front, parts that move by
 * themselves in the talk, anyone as the agent; then what names alone tell.
 *
 * @param isSound whether a phrase can stand as an order
 */
export const secondLook = (
  reading: Reading,
  before: Reading | undefined,
  after: Reading | undefined,
  isSound: Sound,
): Second | undefined => {
  if (reading.isQuestion || TAKEN_BACK.test(reading.text)) return undefined
  const isPaused = hasPauses(reading.tokens)
  const coarse = toStretches(reading, false)
  const told = toldOrders(reading, coarse, isSound)
  if (told.length > 0) return { text: joinOrders(told), isGuess: false }
  const fine = isPaused ? coarse : toStretches(reading, true)
  const { runs, condition } = openingOf(reading, fine)
  const around = [before?.text, after?.text]
  const named =
    namedOrder(reading, runs, around) ??
    fromTorqueTold(reading) ??
    fastenersThere(reading, around) ??
    heldBy(reading, around) ??
    fromWornTold(reading) ??
    // "Cap, a bit of grease round the rim": the thing first, then what is put there.
    givenOrder(reading, runs.slice(1), around)
  const said = named === undefined ? '' : withoutLooseEnd(named.text)
  if (named !== undefined && isSound(said))
    return { text: condition === '' ? said : `${said} ${condition}`, isGuess: named.isGuess }
  const parted = isPaused ? [] : toldOrders(reading, fine, isSound)
  return parted.length > 0 ? { text: joinOrders(parted), isGuess: false } : undefined
}
