import { findTakenBack, type TakenBack } from '@/lib/quantity/taken-back'
import { toTokens } from '@/lib/trade/tagger'
import { decapitalize } from './clause-text'
import type { Reading } from './feature'
import { type LimitFound, mayHoldLimit } from './spec-feature'

/** Without one of these nothing is taken back; spares most sentences the look. */
const MAY_TAKE_BACK =
  /\b(?:no|nope|not|wait|sorry|pardon|mean|meant|rather|actually|correct\w*|mis\w+|make (?:that|it)|hang on|hold (?:on|up)|tell a lie|lie|lying|wrong|oops|whoops|apologies|say|said|scratch|strike|check that|back up|let me|forget|ignore|math)\b/i

/** "25, no wait, the nuts are 30": the value that stands is another thing's; in "that's the old iron one, 32" it is not. */
const isOfAnother = (between: string): boolean => {
  const tokens = toTokens(between)
  const [subject, verb] = tokens.slice(-2)
  return (
    (verb?.tag === 'auxiliary' || verb?.tag === 'third' || /^(?:get|take|want|need)$/.test(verb?.word ?? '')) &&
    (subject?.tag === 'part' || subject?.tag === 'tool' || subject?.tag === 'material' || subject?.word === 'ones')
  )
}

const INTO_VALUE = /\s*\b(?:to|at|with|by|of|for|in|about|around|until|till)?\s*$/i

const BOUND = /^(?:no (?:more|less) than|not (?:over|under)|at (?:least|most)|up to|under|over|below|above)\s+/i

/** "No more than 40, wait, 50": the bound is the speaker's for the second figure too, unless it has its own. */
const boundOf = (gone: string, stands: string): string => (BOUND.test(stands) ? '' : (BOUND.exec(gone)?.[0] ?? ''))

/** The text with the words of one slip left out: the value that stands is said, or none where it is of another thing. */
const mend = (text: string, { at, to, until, unit, between }: TakenBack): string =>
  isOfAnother(between)
    ? `${text.slice(0, at).replace(INTO_VALUE, '')}${text.slice(until)}`
    : `${text.slice(0, at)}${boundOf(text.slice(at, to), text.slice(to, until))}${text.slice(to, until)}${unit === '' ? '' : ` ${unit}`}${text.slice(until)}`

/** "The fuse, not the 10 amp one, the 15 amp one" is the 15 amp fuse. */
const CONTRAST =
  /\b(the|a|an|your|its) ([a-z-]+(?: [a-z-]+)?),? (?:and )?not (?:the|an?|that|those) ([^,.;]{1,30}?) ones?,? (?:but )?(?:the|an?) ([^,.;]{1,30}?) ones?\b/i

/**
 * What was said without what the speaker took back: "to 45, no, sorry, 35 newton metres" is "to 35 newton metres". Numbers
 * alone: which half of other slips counts is for the user to say.
 */
export const withoutTakenBack = (text: string): string => {
  if (!MAY_TAKE_BACK.test(text)) return text
  const mended = mayHoldLimit(text) ? findTakenBack(text).reduceRight(mend, text) : text
  return mended.replace(
    CONTRAST,
    (_, article: string, thing: string, __, kind: string) => `${article} ${kind} ${thing}`,
  )
}

const OPENS_SLIP =
  /^(?:(?:oh|ah|um|uh|er|and|so|well|right|okay|actually)[,.]? )*(?:sorry|correction|no[, ]+(?:wait|sorry|that|it|make|hang|hold|not|don't|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]+teen|[a-z]+ty\b|half|\d)|ah,? no|ah,? wait|get away|hear me out|hold your horses|nope|wait|hang on|hold on|hold up|scratch that|strike that|forget that|i tell a lie|tell a lie|i mean\b|i meant|i misspoke|i should (?:have said|say)|make (?:that|it)|(?:that|it) (?:should be|should have been|was meant to be|is supposed to be)|let me correct|my (?:mistake|bad)|oops|whoops|i said (?:that|it) wrong|(?:no,? )?you (?:do not|don't|did not|didn't|will not|won't)\b(?=,| it| the)|(?:no,? )?(?:it|that) (?:is not|isn't|does not|doesn't)\b(?=,| it)|that's (?:wrong|not right)|wrong\b)\b/i

const isOther = (a: LimitFound, b: LimitFound): boolean =>
  a.quantity.low !== b.quantity.low || a.quantity.high !== b.quantity.high || a.quantity.nominal !== b.quantity.nominal

const isNumeric = ({ shape }: LimitFound): boolean => shape !== 'qualitative'

const OF_OTHER = /^(?:'s| is| was|,? that's|,? that is)(?: for)?\b/i

const POINTS_BACK =
  /^(?:it|that|those|these|this|them|they|one|ones|value|number|figure|torque|pressure|limit|setting|(?:name|data|rating)?plate|book|manual|sheet|label|sticker|card|decal|tag|chart|leaflet)$/

/** Whether a sentence speaks of nothing the one before did not: "that should be thirty newton metres". */
const namesNothingElse = ({ tokens, phrases, text }: Reading, before: Reading, { limit }: LimitFound): boolean =>
  phrases.every(({ from, to, name }) => {
    const [at, end] = [tokens[from]?.at ?? 0, tokens[to - 1]?.to ?? text.length]
    const head = tokens[to - 1]
    return (
      (at < limit.to && end > limit.at) ||
      (head?.tag !== 'part' && head?.tag !== 'tool' && head?.tag !== 'material') ||
      POINTS_BACK.test(name) ||
      before.things.has(name.split(' ').at(-1) ?? '')
    )
  })

/** A limit, and what the sentence after puts in its place. */
export type Replaced = { readonly from: LimitFound; readonly by: LimitFound }

/**
 * Limits that the next sentence takes back: "Torque the plug to 40 newton metres." "Sorry, that should be 30 newton metres."
 *
 * @returns by the sentence that holds the old value
 */
export const findReplaced = (
  readings: readonly Reading[],
  limits: readonly LimitFound[],
): ReadonlyMap<number, Replaced> => {
  const bySentence = new Map<number, LimitFound[]>()
  for (const one of limits)
    if (isNumeric(one)) bySentence.set(one.sentence, [...(bySentence.get(one.sentence) ?? []), one])
  const replaced = new Map<number, Replaced>()
  for (const [i, own] of bySentence) {
    const [reading, before] = [readings[i], readings[i - 1]]
    // "No, six is the truck, four": the figure said again belongs to the truck.
    const last = bySentence.get(i - 1)?.findLast(({ dimension }) => dimension === own.at(-1)?.dimension)
    const [by, more] = own.filter(
      one => last === undefined || isOther(one, last) || !OF_OTHER.test(reading?.text.slice(one.limit.to) ?? ''),
    )
    if (reading === undefined || before === undefined || by === undefined || more !== undefined) continue
    if (!OPENS_SLIP.test(reading.text)) continue
    const from = bySentence.get(i - 1)?.findLast(({ dimension }) => dimension === by.dimension)
    if (from === undefined || !isOther(from, by) || !namesNothingElse(reading, before, by)) continue
    replaced.set(i - 1, { from, by })
  }
  for (const [i, old] of bySentence) {
    const later = replaced.has(i) ? undefined : setRight(readings, bySentence, i, old.at(-1))
    if (later !== undefined) replaced.set(i, later)
  }
  return replaced
}

/** Sentences after the slip in which the right value may come. */
const LATER = 2

/** "Nine newton metres." "Sorry, nine is the old pump." "This one's twelve." "Twelve newton metres.": the right value comes later. */
const setRight = (
  readings: readonly Reading[],
  bySentence: ReadonlyMap<number, readonly LimitFound[]>,
  i: number,
  from: LimitFound | undefined,
): Replaced | undefined => {
  const [before, slip] = [readings[i], readings[i + 1]]
  if (from === undefined || before === undefined || slip === undefined || !OPENS_SLIP.test(slip.text)) return undefined
  const figure = /^[\p{L}\d.,-]+/u.exec(from.limit.text)?.[0] ?? ''
  const again = new RegExp(
    `(?:\\b${figure.replaceAll('.', '\\.')}|\\bthat)(?: \\w+){0,2}?(?:['’]s| is| was) (?:for |on |from )?(?:the|my|an?|that|those)\\b`,
    'i',
  )
  if (figure === '' || !again.test(slip.text)) return undefined
  const right = Array.from({ length: LATER }, (_, k) => i + 2 + k).flatMap(at =>
    (bySentence.get(at) ?? []).filter(one => one.dimension === from.dimension && isOther(one, from)),
  )
  const [first] = right
  // Said again with its unit: that is how it is written.
  const by = right.findLast(one => first !== undefined && !isOther(one, first))
  const reading = readings[by?.sentence ?? -1]
  return by !== undefined && reading !== undefined && namesNothingElse(reading, before, by) ? { from, by } : undefined
}

/** The words of a sentence with the value that the next one puts in its place. */
export const withReplaced = (text: string, { from, by }: Replaced): string =>
  `${text.slice(0, from.limit.at)}${decapitalize(by.limit.text.replace(/[.,;\s]+$/, ''))}${text.slice(from.limit.to)}`
