import { verbOf } from '@/lib/trade/morphology'
import type { Clause } from './clause'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { WORN } from './wording-kinds'
import { yours } from './wording-place'

/** Nobody and nothing may be where it is dangerous. */
const NOBODY =
  /^(?:and |so |but |then )*((?:nobody|no ?one|none of you)(?: else)? (?!(?:will|would|could|can|knows?|tells?|told|said|likes?|wants?|ever (?:will|would))\b)[a-z]+s?\b.*|nothing (?:goes|gets|touches|comes|stays|may|must)\b.*|(?:everybody|everyone|everything) (?:off|out|away|back|clear|stays?|stands?|keeps?|steps?)\b.*)$/i
/** Part of a body, kept out of it: "fingers off the chain". */
const LIMB =
  /^(?:and |so |but )*(?:your |my |the |both )?((?:bare |loose )?(?:fingers?|hands?|feet|foot|toes?|hair|sleeves?|faces?|head|knuckles?|eyes|thumbs?|knees?|arms?|hoodie strings|strings|laces)\b(?: and \w+)? (?:off|out|away|clear|up|tucked|back|behind)\b.*)$/i
/** What somebody careful does. */
const CAREFUL =
  /^(?:and |so |but |then )*(?:i|we|you)(?:['’](?:d|ll|ve)| would| will| must| have to| need to| should| want to|['’]d better| had better)?(?: always| then| only| rather)* ((?:keep|stay|stand|wear|hold|wait|step|tie|clear|cover|shield|(?:back|turn|look) (?=up|away|off|aside)|leave (?=(?:it|them|that) (?:alone|be|off|shut)))(?! (?:that|it) so\b|(?<=keep) (?:on )?(?:burn|los|gett|cutt|break|hurt|tripp|slipp|forgett|dropp|hitt|bump|scald|nick|pinch|see|find|say|tell|hear)ing\b|.*\bwrong\b) ?.+)$/i
const NOT_TO =
  /^(?:and |so |but )*(?:i|we|you|one)(?:(?:['’]re| are|['’]m| am|['’]s) not to| never| don['’]t(?: ever)?| do not| must not| mustn['’]t| may not| shouldn['’]t| should not) (?!(?:want|need|have|know|think|mind|like|care|believe|see|mean|get|say|use to|hear|feel|tell|smell|notice|stop|find|remember|even|really|just)\b)([a-z]+ .+)$/i
const MEANS =
  /^(?:please )?(?:and |so |but )*(?:never|not|no) (?:with |ever )?(?!(?:only|just|merely)\b)((?:the |a |an |any |your |that |those )?[a-z][\w'’ -]+)$/i

const isMeans = (reading: Reading, { from, to }: Clause): boolean => {
  const { tokens, phrases } = reading
  const span = tokens.slice(from, to)
  return (
    phrases.some(phrase => phrase.from >= from && phrase.to <= to && (phrase.isTool || phrase.isMaterial)) &&
    !span.some(({ tag }) => /^(?:number|verb|third|past|auxiliary|modal|pronoun|ing|preposition)$/.test(tag))
  )
}

/**
 * How the harm is avoided where no clause gives an order: nobody stays, fingers off, I keep my hand away, never with pliers.
 *
 * @source common practice, no source
 */
export const avoidedIn = (reading: Reading, clause: Clause): string | undefined => {
  if (clause.marker !== undefined && !/^(?:so|therefore|hence|thus)$/.test(clause.marker)) return undefined
  if (clause.to - clause.from > MOST_TOKENS || !MAY_AVOID.test(reading.text)) return undefined
  const said = sayTokens(reading.text, reading.tokens, clause.from, clause.to)
  if (said.split(' ').length > LONGEST) return undefined
  const nobody = NOBODY.exec(said)?.[1]
  const told = verbOf(
    /^(?:nobody|no ?one|none of you)(?: else)? ([a-z]+)/i.exec(nobody ?? '')?.[1]?.toLowerCase() ?? '',
  )
  if (nobody !== undefined) return told?.form === 'past' ? undefined : nobody
  const limb = LIMB.exec(said)?.[1]
  // "Your hand behind the blade gets cut": what happens, never where to keep it.
  const isTold = reading.tokens.slice(clause.from, clause.to).some(({ tag }) => /^(?:third|auxiliary|modal)$/.test(tag))
  if (limb !== undefined) return isTold ? undefined : `keep your ${limb}`
  const careful = CAREFUL.exec(said)?.[1]
  if (careful !== undefined) return yours(careful)
  const not = NOT_TO.exec(said)?.[1]
  return not === undefined ||
    verbOf(not.split(' ')[0]?.toLowerCase() ?? '')?.form !== 'base' ||
    /^do (?:this|that|it)\b/i.test(not)
    ? undefined
    : `do not ${yours(not)}`
}

/** "Never kitchen oil", "not the steam lance": with what it must not be done. */
export const refusedMeans = (reading: Reading, clause: Clause): string | undefined => {
  if (clause.marker !== undefined || !REFUSES.test(reading.tokens[clause.from]?.word ?? '')) return undefined
  const said = sayTokens(reading.text, reading.tokens, clause.from, clause.to)
  const means = MEANS.exec(said)?.[1]
  const [and, subject] = reading.tokens.slice(clause.to, clause.to + 2)
  // "No gloves", "no oil and it seizes": what is lacking, never what is forbidden.
  const isLacking =
    and?.word === 'and' &&
    /^(?:determiner|pronoun|part|tool|material|noun|word)$/.test(subject?.tag ?? '') &&
    !/^(?:i|we)$/.test(subject?.word ?? '')
  if (/^(?:please |and |so |but )*no\b/i.test(said) && (WORN.test(said) || isLacking)) return undefined
  return means !== undefined && isMeans(reading, clause) ? `do not use ${means}` : undefined
}

/** Words of a clause that still make an order. */
const LONGEST = 14
const MOST_TOKENS = 24
const REFUSES = /^(?:please|and|so|but|never|not|no)$/
/** A sentence without any of these avoids nothing; spares most the look. */
const MAY_AVOID =
  /\b(?:nobody|no ?one|none|nothing|every(?:body|one|thing)|fingers?|hands?|feet|foot|toes?|hair|sleeves?|faces?|head|knuckles?|eyes|thumbs?|knees?|arms?|strings|laces|keep|stay|stand|wear|hold|wait|step|tie|clear|cover|shield|back|turn|look|leave|not|never|don['’]t|mustn['’]t|shouldn['’]t)\b/i
