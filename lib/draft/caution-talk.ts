import { verbOf } from '@/lib/trade/morphology'
import type { Reading } from './feature'

const NAMES_TO =
  "folks|people|kids|everybody|everyone|guys|lads?|sir|ma'am|madam|my dear|my friend|dear|love|mate|boys?|girls?|son|honey|buddy"

/** What leads up to a warning and says nothing of it. */
const LEAD = new RegExp(
  `^(?:(?:oh|lord|heavens|goodness|god|gosh|well|right|also|hi|look|listen|now|see|mind|please|remember|you know|you notice|you see|you will say|you'll say|of course|by the way|where was i|okay|ok|and|but|so|because|since|seriously|honestly|ever|mercy|${NAMES_TO})(?:,| (?=(?:but|listen|please|also|well|now|so|lord|heavens|no\\b|never,|don['’]t,|where)\\b))\\s*)+`,
  'i',
)
/** An answer that refuses, and what it says next. */
const REFUSES =
  /^(?:(?:oh|lord|heavens|god|good lord|goodness|please|my|well|oh my)[, ]+)*(?:no|nope|never|don['’]t|do not|not on your life|it is not|it isn['’]t|you can['’]t|you mustn['’]t|certainly not|absolutely not)(?:,? (?:sir|ma['’]am|my dear|my friend|mate|love|please|thank you))*(?:,|;|\.|!| because| since) ?(?=\S)/i
const CAN_I =
  /\b(?:can|could|should|may|shall|can['’]t|couldn['’]t) (?:i|he|she|we|you|they|one) (?:just |then |not |also |simply )*([a-z][^?]*?)(?:,? (?:then|though|or|instead|too))?\?$/i
const WHY_NOT = /^(?:(?:and|but|so|well),? )*why not (?:just )?([^?]+?)\?$/i
/** "Can you see the crack?" "Should I not wear gloves?": a no to these refuses no deed. */
const PERCEIVES = /^(?:see|hear|feel|smell|tell|remember|imagine|guess|notice)\b/i
const ASKS_NOT = /\b(?:should|shall|may) (?:i|we|you|they|one) not\b|\b(?:should|must)n['’]t\b/i
/** "How far can I turn it?": not whether. */
const WHICH_WAY = /\b(?:how|where|what|which|who)(?: [\w'’]+){0,3} $/i
/** "No, no, that's fine." */
const GRANTS =
  /^(?:no,? )*(?:you can\b|go ahead|sure|(?:that|it)(?:['’]s| is) (?:all right|alright|fine|ok|okay|safe))\b/i
const OPENS_NAME = /^(?:a|an|the|some|any|my|your|his|that|this)\b/i
const NAME_ASIDE = /,\s+(?!(?:I|Phillips|Allen|Torx)\b)[A-Z][a-z]+(?=,|[.?!]?$)/g

const CALLED = new RegExp(
  `,\\s+(?:${NAMES_TO}|remember|okay|ok|right|mind you|you know|is that understood|understood|by the way)(?=,|[.?!]?$)`,
  'gi',
)

/**
 * A warning without what is said around it: interjections, names of those spoken to, "never, ever".
 *
 * @param text a sentence as spoken
 */
export const withoutCalls = (text: string): string => {
  const said = text.replace(NAME_ASIDE, '').replace(CALLED, '').replace(LEAD, '')
  const short = said.split(' ').length > 2 ? said : text
  return short === text ? text : `${short.charAt(0).toUpperCase()}${short.slice(1)}`
}

/** "Can I grip the rod with pliers?" "Never, you scratch the chrome": what is refused, and what was said of it. */
export type Refused = { readonly order: string; readonly rest: string }

const once = (text: string): string => text.replace(/\bnever(?:,? (?:ever|never))+,? /gi, 'never ')

/** "Never, lift it by the eye": the refusal belongs to the order behind it, and must not get lost. */
const isOfOrder = (refusal: string, rest: string): boolean =>
  /\b(?:never|don['’]t|do not|can['’]t|mustn['’]t)\b/i.test(refusal) &&
  (/^ever\b/i.test(rest) || verbOf(/^[\p{L}-]+/u.exec(rest)?.[0].toLowerCase() ?? '')?.form === 'base')

/** The refusal a text opens with. */
const refusalOf = (text: string): string | undefined => {
  const refusal = REFUSES.exec(text)?.[0]
  return refusal === undefined || isOfOrder(refusal, text.slice(refusal.length)) ? undefined : refusal
}

/** What an answer refuses of the question before it; undefined where it refuses nothing, or nothing was asked. */
export const refusedIn = (spoken: string, before: Reading | undefined): Refused | undefined => {
  const text = once(spoken)
  const refusal = refusalOf(text)
  if (refusal === undefined || before === undefined || !before.text.trim().endsWith('?')) return undefined
  if (GRANTS.test(text.slice(refusal.length)) || ASKS_NOT.test(before.text)) return undefined
  const can = CAN_I.exec(before.text.trim())
  if (WHICH_WAY.test(before.text.trim().slice(0, can?.index ?? 0))) return undefined
  const asked = can?.[1] ?? WHY_NOT.exec(before.text.trim())?.[1]
  if (asked === undefined || PERCEIVES.test(asked) || asked.split(' ').length > LONGEST || asked.split(' ').length < 2)
    return undefined
  const deed = asked
    .trim()
    .replace(/\b(?:my|our)\b/gi, 'your')
    .replace(/\b(?:me|i)\b/gi, 'you')
  return { order: `do not ${OPENS_NAME.test(deed) ? 'use ' : ''}${deed}`, rest: text.slice(refusal.length) }
}

/** Words of a question that still make an order. */
const LONGEST = 10

/** An answer's refusal alone says nothing without its question. */
export const withoutRefusal = (spoken: string): string => {
  const text = once(spoken)
  return text.slice(refusalOf(text)?.length ?? 0)
}
