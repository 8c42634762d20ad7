import type { Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { TURNED } from '@/lib/quantity/rejections'
import type { voteSystem } from '@/lib/quantity/system-vote'
import { aboutTarget } from './about'
import type { Found } from './bare-unit'
import { afterOf, beforeOf } from './beside-limit'
import { boundAtDistance } from './bounds'
import { isCondemned, isEventTold, isHarmTold, isRemedied } from './condemned'
import { toDimension } from './dimension'
import { figureAs } from './figure-as'
import { asMeant, type Scale } from './meant-unit'
import { leadOf, tellsTolerance } from './tolerated'

/** Which system of units the whole talk counts in. */
export type System = ReturnType<typeof voteSystem>

/** A unit told for figures without one, and in which sentence. */
export type Declared = { readonly unit: string; readonly sentence: number }

/** A quantity said before, in which words and in which sentence. */
export type Said = {
  readonly quantity: Quantity
  readonly said: string
  readonly sentence: number
  /** Things its sentence speaks of. */
  readonly things: ReadonlySet<string>
}

const REFUSED =
  /\b(?:failures?|fails?|failed|is out\b|the whole (?:set|lot)|(?:in|into) the (?:bin|skip|scrap)|then it's|(?:it's|its|is|needs) a new|you're done|(?:is|are) (?:replaced|renewed|scrapped|changed)|i (?:change|replace|renew|scrap|bin)|doesn't get|not (?:acceptable|permitted|allowed|tolerated|permissible)|cannot be tolerated|can't have|unacceptable|is too (?:much|big|wide|far|loose|slack|high)|bursts?|(?:is|'s) scrap|scrap it|bin it|scrap (?:under|below|over|above)|(?:change|replace|renew|bin)(?: it| them)? (?:under|below|over|above)|too (?:thin|short|small|low|thick|long|wide|worn|loose|slack) is|throw it|replace (?:it|them)|new one|change (?:it|them)|worn out|is worn|is done|no good|wants? (?:replacing|changing)|(?<!\bi )means?|condemns?|condemned)\b/i
const OVER =
  /\b(?:more than|over|above|beyond|past|north of|upwards? of|greater than|exceed\w*|(?:higher|deeper|wider|longer|bigger|larger|looser|hotter|thicker|rougher|heavier|faster|louder) than)\b/i
const UNDER =
  /\b(?:less than|under|below|(?:thinner|shorter|lower|smaller|narrower|weaker|colder|cooler|shallower|slower|lighter) than|short of|shy of|south of)\b/i

/** "Anything under three rubs": what any such thing does tells where it fails, but where it is praised. */
const ANYTHING =
  /\bany(?:thing|one|body)?\b[^.,;]{0,24}(?:more than|over|above|beyond|past|less than|under|below|\w{2,}er than)(?: [^.,;]{0,20})?$/i
const PRAISE =
  /\b(?:good|fine|okay|ok|happy|all right|enough|perfect|normal|acceptable|will do|works|leave (?:it|them|you|alone)|keep (?:it|them)|stays?|goes back|go back|pass(?:es)?|lives?|reuse|you'd leave|i'd leave|i leave|safe|carry on)\b/i

/** `it oughtn't to run out over three thousandths`. */
const DENIED =
  /\b(?:shouldn't|mustn't|oughtn't|can't|cannot|don't|doesn't|never|(?:should|must|ought|may|do|does|is|are|has|have) not)\b[^.,;]{0,24}$/i

const OR_LESS = /\bor (?:anything )?(?:less|under|below|lower|thinner|shorter|smaller)$/i
const OR_MORE = /\bor (?:anything )?(?:more|over|above|higher|longer|bigger|wider|deeper)$/i

/** What is measured to find a fault and is no stage of a process. Common practice, no source. */
const REMEDIED = new Set(['length', 'current', 'resistance', 'angle'])

/** What opens the telling of a fault, up to its figure. */
const OPENED = /\b(?:if|when|whenever|once|as soon as|the moment|anything|any)\b[^,.;]*$/i
/** What is asked for is no fault, whatever else is said. */
const ASKED =
  /\b(?:keep|stay|get|hold|bring|set|leave|make|wants?|needs?|must|should|shall|has to|have to|ought to|likes?|aim for|looking for|i'm after|we're after|you're after|you see)\b(?: (?:\w+|it's|they're|there's)){0,3} $/i
/** `it must come out in less than a minute`: how soon is asked for. */
const ASKED_SOON =
  /\b(?:must|should|has to|have to|ought to|needs? to|wants? to)\b[^,.;]{0,40}\b(?:in|within)(?: just)? $/i
/** `I should have worried above thirty-three`. */
const FRETS = /\b(?:worr(?:y|ied|ies)|panic\w*|complain\w*|frown\w*|object\w*)(?: (?:about it|about that))? $/i
/** `don't spray when it's colder than ten`: when a thing is forbidden. */
const FORBIDDEN_WHEN =
  /\b(?:don't|do not|never|nobody|no one|nor|can't|cannot|mustn't)\b[^.;]{0,48}?\b(?:when|if|while|once|whenever)\b[^,.;]{0,28}$/i
const UNLESS = /\b(?:unless|except|as long as|so long as|provided)\b[^,.;]*$/i
const UNLESS_SAID = /^(?:unless|except|as long as|so long as|provided)\b/i
const OR_ELSE = /^[^.;?!]{0,30}?,? \b(?:or(?! (?:so|more|less|under|over)\b)|otherwise|else|if not)\b/i

/**
 * `when it has less than 12 it goes on the scrap heap`: what is condemned is the other side of the limit.
 *
 * @returns the limit turned, or as it was where the words say that it stands; undefined where they tell neither
 */
const condemnedSide = (quantity: Quantity, limit: Limit, text: string): Quantity | undefined => {
  const { low, high, unit } = quantity
  if ((low === undefined) === (high === undefined)) return undefined
  const said = limit.text
  const isPlain = low === undefined ? UNDER.test(said) || OR_LESS.test(said) : OVER.test(said) || OR_MORE.test(said)
  const isDenied = low === undefined ? OVER.test(said) : UNDER.test(said)
  if (!(isPlain || isDenied)) return undefined
  const [ahead, after] = [beforeOf(text, limit.at), afterOf(text, limit.to)]
  const isOpened = OPENED.test(ahead)
  const isUnless = UNLESS.test(ahead) || UNLESS_SAID.test(said)
  const turned = figureAs(low === undefined ? 'low' : 'high', quantity)
  if (limit.notes.some(note => note.text === TURNED)) return isUnless || OR_ELSE.test(after) ? turned : quantity
  const isEvent = isPlain && isEventTold(ahead, said, /^[^.;?!]*/.exec(text.slice(limit.to))?.[0] ?? '')
  if (isEvent) return turned
  if (isPlain && FORBIDDEN_WHEN.test(ahead)) return turned
  if (
    isUnless ||
    OR_ELSE.test(after) ||
    (!isOpened && (ASKED.test(ahead) || ASKED_SOON.test(ahead)) && !FRETS.test(ahead))
  )
    return quantity
  if (/\b(?:until|till?|before|wait)\b[^,.;]*$/i.test(ahead) || (isDenied && !isOpened)) return undefined
  const isFault = REMEDIED.has(toDimension(unit) ?? '') && isRemedied(ahead, after, low !== undefined)
  const isHarm = isPlain && isHarmTold(ahead)
  return isFault || isHarm || isCondemned(`${ahead}${said}${after}`) ? turned : undefined
}

/** "More than 0.2 is not permitted" is a greatest value, however it is put; "less than 14 and I change it" a least one. */
const limitNotFault = (quantity: Quantity, limit: Limit, text: string): Quantity => {
  const { low, high, nominal } = quantity
  if (nominal !== undefined) return quantity
  const ahead = text.slice(Math.max(0, limit.at - 28), limit.at)
  const condemned = condemnedSide(quantity, limit, text)
  if (condemned !== undefined) return condemned
  if (/\b(?:until|till?|before|once|wait)\b[^,.;]*$/i.test(ahead)) return quantity
  const isForbidden =
    /^[^,.;]{0,16},? (?:and |then |you |we )?(?:do not|don't|stop|(?<!\b(?:can|may|could) )leave it)\b/i.test(
      text.slice(limit.to),
    )
  const isDenied = DENIED.test(ahead) && OVER.test(limit.text)
  const isRefused =
    isForbidden ||
    isDenied ||
    REFUSED.test(text) ||
    (ANYTHING.test(`${text.slice(0, limit.at)}${limit.text}`) && !PRAISE.test(text))
  if (!isRefused) return quantity
  if (low !== undefined && high === undefined && OVER.test(limit.text)) return figureAs('high', quantity)
  if (high !== undefined && low === undefined && UNDER.test(limit.text)) return figureAs('low', quantity)
  return quantity
}

/** `Open it slowly, over a minute` tells how long it takes; `if it takes over a minute` bounds it. */
const BOUNDED_TIME =
  /\b(?:take|takes|took|last|lasts|run|runs|hold|holds|anything|anyone|if|when|not|never|no|any|well|just|is|are|was|be)\b[^.;]{0,16}$|n't[^.;]{0,16}$/i

const lastsSoLong = (quantity: Quantity, limit: Limit, text: string): Quantity =>
  quantity.low !== undefined &&
  quantity.high === undefined &&
  quantity.nominal === undefined &&
  toDimension(quantity.unit) === 'time' &&
  /^over (?:about |around |a |an |one |\w+ )/i.test(limit.text) &&
  !BOUNDED_TIME.test(text.slice(0, limit.at))
    ? figureAs('nominal', quantity)
    : quantity

/** `99, within 2`. */
const JUST_SAID = /\d, (?:and )?(?:to )?$/
/** `they agree within 2`. */
const AGREES =
  /\b(?:agree|agrees|match(?:es)?|come|comes|settle|settles|stay|stays|hold|holds|land|lands|read|reads|keep|keeps|is|are|be)(?: (?:back|out|there|it|with (?:it|that|each other)))? (?:to )?$/i
/** `the tolerance is a tenth`. */
const TOLERANCE =
  /\btolerance(?: on (?:it|that|this))?(?: is|'s| of|,)?(?: plus or minus| about| only| just)? (?:an? )?$/i
const OF_IT = /^ (?:[a-z]+ )?of (?:it|that|this|the (?:mark|figure|setting|number|dial|target))\b/i
const EITHER =
  /^,? ?(?:either (?:way|side|direction)|on either side|each way|up or down|one way or the other|of (?:it|that|this)\b)\b/i

/** `within two either side of it`, `give or take two`: a tolerance about the target said last. */
const aboutSaid = (quantity: Quantity, limit: Limit, { text, sentence, recent }: Around): Quantity => {
  const { low, high, nominal } = quantity
  const isLone = low !== undefined && high !== undefined && nominal === undefined && low === -high
  const by = high ?? nominal
  const [ahead, after] = [text.slice(0, limit.at), text.slice(limit.to)]
  const isClose =
    /^(?:to )?within\b/i.test(limit.text) && (JUST_SAID.test(ahead) || (AGREES.test(ahead) && OF_IT.test(after)))
  const isEither = low === undefined && (isClose || EITHER.test(after))
  const isTolerance = low === undefined && TOLERANCE.test(ahead)
  const isTold =
    !isLone && (low === undefined || high === undefined) && tellsTolerance(`${ahead}${leadOf(limit)}`, after)
  if (by === undefined || by <= 0 || !(isLone || isEither || isTolerance || isTold)) return quantity
  const isShare = quantity.unit === '%'
  const target = recent.findLast(
    said =>
      said.sentence >= sentence - 3 &&
      said.quantity.nominal !== undefined &&
      (isShare ? said.quantity.unit !== '%' : Math.abs(said.quantity.nominal) > 3 * by),
  )?.quantity
  if (isShare && target?.nominal !== undefined)
    return aboutTarget(target.nominal, Math.abs(target.nominal * by) / 100, target.unit)
  const isSame = quantity.unit === undefined || target?.unit === quantity.unit || limit.quantity.unit === undefined
  if (target?.nominal === undefined || !isSame) return quantity
  return aboutTarget(target.nominal, by, target.unit)
}

/** What is known around a limit: its sentence and where that stands, what was said before, the talk's system. */
export type Around = {
  readonly text: string
  readonly sentence: number
  readonly recent: readonly Said[]
  readonly system: System
  /** The sentence with blanks for the figures that have a unit of their own: their units tell nothing of another figure. */
  readonly unitless: string
  /** What was said in the sentence before. */
  readonly previous: string
  /** What was said in the two sentences before. */
  readonly before: string
  /** The same with blanks for figures with units, which tell nothing of another's, but for pressures and heat. */
  readonly earlier: string
  /** Things the sentence speaks of, each by its last word in the singular. */
  readonly things: ReadonlySet<string>
  /** Units told last without a figure, for those that follow. */
  readonly declared: readonly Declared[]
  /** Units said with a figure anywhere in the talk. */
  readonly twins: ReadonlyMap<number, string>
  /** The scale the talk counts temperature in, where it tells. */
  readonly scale: Scale
}

/**
 * Settles what the reader leaves open and the talk around tells: a missing unit, heat or angle, limit or fault.
 *
 * @param bare the unit found for a number without one
 */
export const settleQuantity = (limit: Limit, around: Around, bare: Found | undefined): Quantity => {
  const { text, sentence, recent, before, previous, scale } = around
  const own = bare === undefined ? limit.quantity : { ...limit.quantity, unit: bare.unit }
  const read = aboutSaid(asMeant(own, limit, text, scale, previous), limit, around)
  const settled = limitNotFault(lastsSoLong(read, limit, text), limit, text)
  const from = recent.findLastIndex(said => said.sentence < sentence - 3) + 1
  const near = recent.slice(from).map(said => said.quantity)
  return boundAtDistance(settled, limit, text, before, near)
}
