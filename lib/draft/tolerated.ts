import type { Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { aboutTarget } from './about'
import { NUMBERS } from './bound-words'

const ABOUT = /^,? ?(?:either (?:way|side)|each (?:way|side)|up or down|one way or the other)(?: of| from| on)?,? $/i

const ALLOWED =
  /^,? ?(?:and |but |with |so )?(?:(?:you|it|they|that) (?:can|may|could) be |you(?:'ve| have)(?: got)? |there's |(?:i |we |they )?allow(?:s|ing)? (?:it |you )?|(?:i|we)(?:'ll|'d| will| would)? (?:accept|take|tolerate|give you|have|let it (?:drift|vary|wander|be off) by) |it (?:can|may) (?:drift|vary|wander|be off|differ)(?: by)? |let it be |with )?(?:about |up to |an? |some )*$/i
/** `twenty, I'd let it wander a degree`. */
const LET_OFF =
  /^,? (?:and |but )?(?:i|we|you can|they)(?:'d|'ll| would| will)? let (?:it|them|her|him) (?:wander|drift|be off|vary|move about|move|swing|differ)(?: by)?(?: about| up to| an?)* $/i
const OFF =
  /^ (?:off|out|over or under|under or over|above or below|up or down|in either direction|leeway|wiggle room|of (?:leeway|grace|wiggle room|tolerance|room)|more or less|less or more|both ways|to play with|one way or (?:the other|another))\b/i

/** A target and how far off it may be, as one limit from the first to the last of their words. */
const withGrace = (text: string, before: Limit, target: number, by: number, { to }: Limit): Limit => ({
  ...before,
  quantity: aboutTarget(target, by, before.quantity.unit),
  text: text.slice(before.at, to),
  to,
})

/** `11 bar, and you can be half a bar off`: a tolerance put in other words after its target. */
export const offAfter = (text: string, limits: readonly Limit[]): readonly Limit[] => {
  const kept: Limit[] = []
  for (const limit of limits) {
    const before = kept.at(-1)
    const [target, by] = [before?.quantity.nominal, limit.quantity.nominal ?? limit.quantity.high]
    const isOff =
      before !== undefined &&
      target !== undefined &&
      before.quantity.low === undefined &&
      before.quantity.high === undefined &&
      by !== undefined &&
      by > 0 &&
      target > 3 * by &&
      (limit.quantity.unit === undefined || limit.quantity.unit === before.quantity.unit) &&
      (LET_OFF.test(text.slice(before.to, limit.at)) ||
        (ALLOWED.test(text.slice(before.to, limit.at)) &&
          OFF.test(`${/ or less$| or more$/.test(limit.text) ? ' more or less' : ''}${text.slice(limit.to)}`)))
    if (!isOff) {
      kept.push(limit)
      continue
    }
    kept[kept.length - 1] = withGrace(text, before, target, by, limit)
  }
  return kept
}

/** `ten degrees either way of two hundred`: a tolerance said before its target. */
export const aboutLater = (text: string, limits: readonly Limit[]): readonly Limit[] => {
  const kept: Limit[] = []
  for (const limit of limits) {
    const before = kept.at(-1)
    const [by, target] = [before?.quantity.nominal, limit.quantity.nominal]
    const isAbout =
      before !== undefined &&
      by !== undefined &&
      target !== undefined &&
      by > 0 &&
      target > 3 * by &&
      ABOUT.test(text.slice(before.to, limit.at))
    if (!isAbout) {
      kept.push(limit)
      continue
    }
    const { doubt: _, ...rest } = limit
    kept[kept.length - 1] = {
      ...rest,
      quantity: aboutTarget(target, by, limit.quantity.unit ?? before.quantity.unit),
      text: text.slice(before.at, limit.to),
      at: before.at,
    }
  }
  return kept
}

/** What leads up to how far off a target may be: `to the nearest five`, `and not off by more than 0.2`. @source common practice, no source */
const LEADS =
  /(?:\bto the nearest|\b(?:not|never|no|n't|nor)(?: be| to be| allowed)?(?: off| out| wrong| away| astray)(?: (?:by|of))?(?: more than| over| past)?|\b(?:off|out|differ|stray|drift|wander|vary)s? by (?:more than|over)|\b(?:agree|match|tall(?:y|ies)|(?:come|be|is|read|land|sit|stay|hold)s?)(?:es|s)?(?: (?:with|to) (?:it|that|them|each other|the \w+))?(?: to)? within(?: about)?|,? (?:it's |and )?more or less|\b(?:don't|won't|wouldn't|not|never|nobody|no one)(?: (?:get|gets|be|going to|will|would|'ll))?(?: (?:upset|cry|cries|quibbles?|argues?|quarrels?|fuss(?:es)?|worr(?:y|ies)|fret(?:s)?|complains?|moan(?:s)?|split hairs|fight|grumbles?))(?: about it)?(?: over| about| at| for)|\baccurate to(?: within)?|\bwith(?: a| an)? (?:tolerance|margin|swing|error|leeway|slack|spread)(?: of)?) (?:an? |about |only |just )*$/i
/** What leads up to it where a word after tells that it is one. */
const MAY_LEAD =
  /(?:^|[,;] )(?:\b(?:and|but|so|with|plus|though|or|maybe|anything|i'm happy with|happy with|say|even|i'd|i'll|i|we|we'll|you|you've|they|it|can|could|may|might|will|would|has|have|got|there's|call|allow|allows|allowed|it's|wander|drift|let|lets|give|gives|take|takes|accept|forgive|stand|live|leave|tolerate|grant|grants|be|no|not|more|than|over|for|them|that|is|only|just|about|a|an|the|within|by|up|to)\b[, ]*)*$/i
const GRACE = '(?:grace|slack|leeway|room|play|error|tolerance|margin|swing|wiggle(?: room)?|give|latitude|forgiveness)'
const WAYS =
  '(?:this way (?:or|and) that|that way (?:or|and) this|either (?:way|side|direction|hand)|each (?:way|side)|both (?:ways|sides)|in (?:either|each|both|any) directions?|on (?:either|each|both) (?:side|sides|hand)|one way or (?:the other|another)|up (?:or|and) down|over (?:or|and) under|under (?:or|and) over|above or below|below or above|high or low|plus (?:or|and) minus)'
/** What follows how far off a target may be. @source common practice, no source */
const TAILS = new RegExp(
  `^(?:(?:'s|s'|'| of)? ${GRACE}(?: ${WAYS}| is (?:allowed|fine|all)|$|[,.;])|,?(?: (?:off|out|adrift|wrong|of it|away))?,? ${WAYS}\\b|(?: of true)?,? (?:out|off|adrift),? (?:at (?:the )?(?:very )?(?:most|outside|worst)|and no more|tops|no further)\\b|,? (?:more|up|over|higher|longer) (?:or|and) (?:\\d\\S*|${NUMBERS}|half|an?|the same) (?:less|down|under|lower|shorter)\\b|(?:,? is|'s) (?:all (?:you|i|we|they|he|she|it)(?:'ll| will|'re|'ve)? (?:get|gets|stand|stands|give|gives|allow|allows|got|have|has|allowed)|neither here nor there|no crime|nothing to cry about))`,
  'i',
)
/** Where the figure of a limit begins: its words before are part of what leads up to it. */
const FIGURE_AT = new RegExp(
  `(?:\\d|\\b(?:half|quarter|point|nought|${NUMBERS})\\b|\\ban? (?=(?:half|quarter|third|tenth|hundred|hundredth|couple|degree|mil|millimet|volt|thou|bar|litre|inch|gram|minute|second|turn|hair)))`,
  'i',
)
/** @returns the words of a limit before its figure */
export const leadOf = ({ text }: Limit): string => text.slice(0, FIGURE_AT.exec(text)?.index ?? 0)

/** A tolerance is this many times smaller than its target, or smaller still. Common practice, no source. */
const LEAST_SMALLER = 3
/** Characters between a target and how far off it may be. */
const REACH = 72

const isAlone = ({ nominal, low, high }: Quantity): boolean =>
  nominal !== undefined && low === undefined && high === undefined

/** How much several may differ is told of no target. */
const DIFFERENCE =
  /\b(?:each other|one another|difference|differs?|vary|varies|spread|side to side|end to end|(?:along|across|between) (?:the|any|them|it)|both(?! (?:ways|sides|directions))|samples|readings|edges|legs|the (?:two|three|four|others?|pair)|any two|all of them)\b/i

/** @returns whether words before and after a figure tell that it is how far off a target may be */
export const tellsTolerance = (ahead: string, after: string): boolean =>
  !DIFFERENCE.test(`${ahead}|${after}`) && (LEADS.test(ahead) || (TAILS.test(after) && MAY_LEAD.test(ahead)))

/** `ninety degrees, half a degree out at the very most`, `2, and not off by more than 0.2`: a target and how far off it may be. */
export const toleranceAfter = (text: string, limits: readonly Limit[]): readonly Limit[] => {
  const kept: Limit[] = []
  for (const limit of limits) {
    const before = kept.at(-1)
    const target = before?.quantity.nominal
    const { quantity } = limit
    const by = quantity.nominal ?? quantity.high ?? quantity.low
    const isRange = quantity.low !== undefined && quantity.high !== undefined
    const start = limit.at + leadOf(limit).length
    const isOne =
      before !== undefined &&
      target !== undefined &&
      isAlone(before.quantity) &&
      by !== undefined &&
      by > 0 &&
      !isRange &&
      target >= LEAST_SMALLER * by &&
      (quantity.unit === undefined || quantity.unit === before.quantity.unit) &&
      start - before.to <= REACH &&
      tellsTolerance(text.slice(before.to, start), text.slice(limit.to))
    if (!isOne) {
      kept.push(limit)
      continue
    }
    kept[kept.length - 1] = withGrace(text, before, target, by, limit)
  }
  return kept
}
