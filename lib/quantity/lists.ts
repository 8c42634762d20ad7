import type { Draft, Drafted } from './draft'
import type { Lexeme } from './lexemes'
import { clean } from './rounding'
import { sized } from './said-units'
import { isComparable } from './units'

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '))

/** Words between the members of a list that share a unit. */
const LINKS = set(
  "get gets take takes go goes gets then and or to on the for first second third fourth final last pass stage step round go front rear back behind ahead forward aft intake exhaust inlet inner outer top bottom left right finally next followed by up at it 's it's is inside outside after that followed-by in out upper lower one two three four side , ( ) with a go-round sequence nut large small big little hot cold lo hi high low & / be should want wants them they're they're we us you you're but now again all way going around about another same cut back of set change these those ones if",
)
/** Words of a list whose members are passes or places, which shows that a bare number there is a value. */
const LABELS = set(
  'behind ahead aft idle idling throttle load with without filter out oiled dry wet lubed lubricated loaded unloaded new used low high left right top bottom inner outer big small large day night summer winter empty full number one two three back cold then pass stage step round front rear intake exhaust inlet inner outer finally followed final back second first third upper lower cold hot after',
)

/** Words that may follow a bare number that is a value; a noun there makes it a count. */
const AFTER_VALUE = set(
  "/ oiled lubed lubricated loaded unloaded new used empty then and or to on for front rear intake exhaust inlet in at if is with when while but so the first second final , . ; : ? ! ( ) — max maximum minimum tops each all after before cold hot by as inner outer back it that which dry wet it's that's that’s here there please cause because of-course okay ok right left across side until till every once again from plus minus you we i they this per not no just now for under over inlet outlet either between - a an where depending straight behind ahead aft up down everywhere although though allowed permitted together altogether low high lowest highest my your our would will 's 'd 'll 're i i'm i'd i'll i've he he's she she's we're we've we'd we'll you're you've you'd you'll they're they'll out off",
)

/** Whether the number is followed by something that leaves it a value: an end, a stop or a small word. */
export const isValuePlace = (lexemes: readonly Lexeme[], to: number): boolean => {
  const next = lexemes[to]
  return next === undefined || next.is === 'stop' || next.is === 'role' || AFTER_VALUE.has(next.text)
}

const gap = (
  lexemes: readonly Lexeme[],
  from: number,
  to: number,
): { isLinked: boolean; hasLabel: boolean; length: number } => {
  let hasLabel = false
  for (let i = from; i < to; i++) {
    const lexeme = lexemes[i]
    if (lexeme === undefined) continue
    if (lexeme.is === 'stop' ? lexeme.text !== ',' && lexeme.text !== '(' && lexeme.text !== ')' : false)
      return { isLinked: false, hasLabel, length: to - from }
    if (LABELS.has(lexeme.text)) hasLabel = true
    if (
      lexeme.is !== 'stop' &&
      !LINKS.has(lexeme.text) &&
      !LABELS.has(lexeme.text) &&
      !(lexeme.is === 'role' && ['every', 'about', 'filler', 'range'].includes(lexeme.role))
    )
      return { isLinked: false, hasLabel, length: to - from }
  }
  return { isLinked: true, hasLabel, length: to - from }
}

const COUNTING = set(
  'all these those both other number step position your my numbers bolt bolts nut nuts cylinder the cylinders other positions',
)

const isCounted = (lexemes: readonly Lexeme[], draft: Draft): boolean => {
  const before = lexemes[draft.from - 1]
  return before !== undefined && before.is !== 'stop' && COUNTING.has(before.text)
}

const isBare = (draft: Draft): boolean => draft.unit === undefined && draft.dropped === undefined

const NAMED = set(
  'number size page chapter figure part cylinder gear zone section paragraph slide channel position type model step pass stage phase round option',
)
const ORDINALS = set('first second third fourth final last next each every one')

const PASSES = set("to not never must should may can cannot can't mustn't shouldn't will won't would it they")

/** `stage two`, `page forty`: the number is a name. `final pass 38` is a value. */
const dropLabels = ({ lexemes, drafts }: Drafted): void => {
  for (const draft of drafts) {
    if (draft.unit !== undefined || draft.dropped !== undefined || draft.bound !== undefined) continue
    const [before, label] = [lexemes[draft.from - 2], lexemes[draft.from - 1]]
    if (label === undefined || !NAMED.has(label.text) || ORDINALS.has(before?.text ?? '')) continue
    // "It's not to pass 170."
    if (label.text === 'pass' && PASSES.has(before?.text ?? '')) continue
    draft.dropped = 'a name'
  }
}

/** Bare numbers take the unit of the list they stand in, forwards and backwards. */
export const shareUnits = (drafted: Drafted): void => {
  dropLabels(drafted)
  const lexemes = drafted.lexemes
  const drafts = drafted.drafts.filter(draft => draft.dropped === undefined)
  for (let n = drafts.length - 2; n >= 0; n--) {
    const [draft, next] = [drafts[n], drafts[n + 1]]
    if (
      draft === undefined ||
      next === undefined ||
      !isBare(draft) ||
      next.unit === undefined ||
      next.dropped !== undefined
    )
      continue
    if (!isValuePlace(lexemes, draft.to) || isCounted(lexemes, draft)) continue
    // "Every twenty-five, or once a year": how often in another unit.
    if (/^(?:once|twice)\b/.test(lexemes[next.from]?.text ?? '')) continue
    // "No stronger than 0.3, for ten minutes": how long is of something else.
    if (sized(next.unit)?.kind === 'time' && LASTS.has(lexemes[next.from - 1]?.text ?? '')) continue
    const between = gap(lexemes, draft.to, next.from)
    const isListed = between.isLinked && between.length <= 7 && between.length > 0
    const isSmallCount =
      draft.phrase.term.number?.text !== undefined &&
      /^(?:one|two|three|four)$/.test(draft.phrase.term.number.text) &&
      !between.hasLabel
    const isFar = draft.nominal !== undefined && next.nominal !== undefined && draft.nominal * 30 < next.nominal
    if (isListed && !isSmallCount && !isFar && !isOtherOrder(draft, next)) inherit(draft, next)
  }
  for (let n = 1; n < drafts.length; n++) {
    const [draft, before] = [drafts[n], lastWithUnit(drafts, n)]
    if (draft === undefined || before === undefined || !isBare(draft)) continue
    if (!isValuePlace(lexemes, draft.to) || isCounted(lexemes, draft)) continue
    const between = gap(lexemes, before.to, draft.from)
    const previous = lexemes[draft.from - 1]
    const isMarked =
      draft.bound !== undefined ||
      draft.isApproximate ||
      draft.phrase.hasTolerance ||
      draft.phrase.isRange ||
      (previous?.is === 'role' && previous.role === 'every') ||
      ['says', 'say', 'wants', 'asks', 'calls'].includes(previous?.text ?? '')
    const hasLabelAfter = lexemes.slice(draft.to, draft.to + 2).some(lexeme => LABELS.has(lexeme.text))
    const isParallel = areParallel(lexemes, before, draft)
    if (between.length > 12 || !(between.isLinked || isMarked || isParallel) || isOtherOrder(draft, before)) continue
    if (hasStop(lexemes, before.to, draft.from)) continue
    // "Ten minutes up to a hundred and fifty."
    if (draft.bound === 'high' && isTimeTo(before, draft)) continue
    // "Half an hour, and then it shouldn't see more than seventy": what follows a time is of something else.
    if (!between.isLinked && !isParallel && sized(before.unit)?.kind === 'time' && between.length > 3) continue
    if (between.hasLabel || hasLabelAfter || isMarked || isParallel) inherit(draft, before)
  }
}

/** Words before how long something lasts. */
const LASTS = set('for in over within after during per')

/** Figures of one list differ less than this. Common practice, no source. */
const APART = 60

/** Figures that cannot share a unit: a socket of fifteen sixteenths and one turn, two minutes and three thousand revs. */
const isOtherOrder = (draft: Draft, other: Draft): boolean => {
  const [a, b] = [sizeOf(draft), sizeOf(other)]
  const isRuler = [16, 32, 64].includes(draft.phrase.term.number?.numeral.denominator ?? 0)
  return (isRuler && other.unit?.code === 'circ') || (a !== 0 && b !== 0 && (a > b * APART || b > a * APART))
}

const sizeOf = ({ nominal, high, low }: Draft): number => Math.abs(nominal ?? high ?? low ?? 0)

const PREPOSITIONS = set('at to gets get takes take')

/** `steam at one bar, brew at nine`: the same small word before both, and an end after the second. */
const areParallel = (lexemes: readonly Lexeme[], before: Draft, draft: Draft): boolean => {
  const word = lexemes[draft.from - 1]?.text ?? ''
  if (!PREPOSITIONS.has(word) || lexemes[before.from - 1]?.text !== word || draft.from - before.to > 8) return false
  const next = lexemes[draft.to]
  const [a, b] = [before.nominal ?? before.high ?? 0, draft.nominal ?? draft.high ?? 0]
  return (next === undefined || next.is === 'stop') && b <= a * 10 && b >= a / 10
}

const hasStop = (lexemes: readonly Lexeme[], from: number, to: number): boolean => {
  for (let i = from; i < to; i++) if (['.', '?', '!', ';'].includes(lexemes[i]?.text ?? '')) return true
  return false
}

const lastWithUnit = (drafts: readonly Draft[], n: number): Draft | undefined => {
  for (let i = n - 1; i >= 0 && i >= n - 3; i--) {
    const draft = drafts[i]
    if (draft?.unit !== undefined && draft.dropped === undefined) return draft
  }
  return undefined
}

const inherit = (draft: Draft, from: Draft): void => {
  if (from.unit === undefined) return
  draft.unit = from.unit
  draft.isInherited = true
}

const JOINS = set("and but nor or , yet with not never the a it should be is no a its it's")

/** One-sided limits beside each other become one quantity: `no less than 5 and no more than 7 bar`. */
export const joinLimits = ({ lexemes, drafts }: Drafted): void => {
  for (let n = 0; n < drafts.length - 1; n++) {
    const [a, b] = [drafts[n], drafts[n + 1]]
    if (a === undefined || b === undefined || a.dropped !== undefined || b.dropped !== undefined) continue
    if (b.bound === undefined || a.phrase.hasTolerance || a.phrase.isRange) continue
    if (!isJoin(lexemes, a.to, b.from) || !shareKind(a, b)) continue
    inUnitOf(a, b)
    const value = b.low ?? b.high
    if (value === undefined) continue
    const scaled = a.low ?? a.high ?? a.nominal
    if (a.bound !== undefined && a.bound !== b.bound) {
      const [low, high] = b.bound === 'high' ? [scaled, b.high] : [b.low, scaled]
      if (low === undefined || high === undefined || low > high) continue
      b.low = low
      b.high = high
    } else if (
      a.bound === undefined &&
      a.nominal !== undefined &&
      scaled !== undefined &&
      (b.bound === 'high' ? scaled <= value : scaled >= value)
    )
      b.nominal = scaled
    else continue
    if (b.unit === undefined && a.unit !== undefined) b.unit = a.unit
    b.from = a.from
    b.isApproximate = false
    b.notes.push(...a.notes)
    a.dropped = 'joined with the limit after it'
  }
}

const isJoin = (lexemes: readonly Lexeme[], from: number, to: number): boolean => {
  const first = lexemes[to]
  if (to - from > 6 || (to === from && first?.is === 'role' && ['more', 'less'].includes(first.role))) return false
  for (let i = from; i < to; i++) {
    const lexeme = lexemes[i]
    if (
      lexeme === undefined ||
      !(
        JOINS.has(lexeme.text) ||
        (lexeme.is === 'role' && lexeme.role === 'negation') ||
        ["you're", 'after', 'you', "we're", 'want', 'ever'].includes(lexeme.text)
      )
    )
      return false
  }
  return true
}

/** `at least twenty minutes but no longer than an hour`: the second limit in the unit of the first. */
const inUnitOf = (a: Draft, b: Draft): void => {
  const [own, other] = [sized(b.unit), sized(a.unit)]
  if (a.unit === undefined || own === undefined || other === undefined || own.factor === other.factor) return
  const scale = (value: number): number => clean((value * own.factor) / other.factor)
  if (b.low !== undefined) b.low = scale(b.low)
  if (b.high !== undefined) b.high = scale(b.high)
  b.unit = a.unit
}

/** `ten minutes up to a hundred and fifty` are two things. */
const isTimeTo = (a: Draft, b: Draft): boolean =>
  b.unit === undefined && sized(a.unit)?.kind === 'time' && sizeOf(b) > TIME_APART * sizeOf(a)
/** A time and the most it may be differ less than this. Common practice, no source. */
const TIME_APART = 6

const shareKind = (a: Draft, b: Draft): boolean => {
  if (a.unit === undefined || b.unit === undefined) return !isTimeTo(a, b)
  if (a.unit.ambiguous !== undefined || b.unit.ambiguous !== undefined) return a.unit.ambiguous === b.unit.ambiguous
  if (a.unit.code === b.unit.code) return isComparable(a.unit.code ?? '', b.unit.code ?? '')
  const [one, two] = [sized(a.unit), sized(b.unit)]
  return a.bound !== undefined && one?.kind === 'time' && two?.kind === 'time'
}
