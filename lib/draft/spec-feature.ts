import type { Sentence } from '@/lib/procedure/recording'
import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { voteSystem } from '@/lib/quantity/system-vote'
import { findBareUnit } from './bare-unit'
import { declaredUnits, unitsOf } from './declared-unit'
import { toDimension } from './dimension'
import type { Reading } from './feature'
import { dimensionOf, featuresOf, shapeOf, straight } from './limit-feature'
import { scaleOf } from './meant-unit'
import { asSecondValue } from './other-source'
import { pausedTalk } from './pauses'
import { type Declared, type Said, settleQuantity } from './settle'
import { relationsOf } from './spec-relation'
import { readTold } from './told-limits'

/** A limit read in a sentence that may be a spec of the job, with what tells whether it is one. */
export type LimitFound = {
  readonly sentence: number
  readonly limit: Limit
  readonly quantity: Quantity
  readonly shape: string
  readonly dimension: string
  readonly features: readonly string[]
}

/** How many sentences before one settle what it leaves open. */
const CONTEXT = 12
/** How many sentences tell which system of units a talk counts in. */
const SAMPLE = 400

/** A sentence that holds no figure, number word or qualitative limit has nothing to read. */
const MAY_HOLD =
  /\d|\b(?:zero|nought|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|half|quarter|third|eighth|sixteenth|tenth|tenths|dozen|couple|tight|snug|snugly|flush|level|full|finger|firm|touch\w*|fingers|thumb|hand|clicks?|brim|notch\w*|windows?|arrows?|weep\w*|dribbl\w*|square|parallel|straight|slightly|halfway|between|even|evenly|once|monthly|weekly|yearly|annually|daily|quarterly|hourly|fortnight|fortnightly|nipped|loose|every|twice|just|flush|equal|same|nothing|no (?:play|gap|slack|wobble)|(?:line|mark|middle)s?)\b|\ban? (?:good |full |whole |solid |further |extra |single |complete )?(?:thou|inch|foot|yard|mil|milli\w*|centi\w*|kilo\w*|met(?:re|er)|lit(?:re|er)|quart|pint|gallon|cup|pound|gram|ounce|pint|mile|turn|revolution|minute|second|hour|day|week|month|year|bar|volt|amp|ohm|degree|meg\w*|ton(?:ne)?|kilo|teaspoon|tablespoon|percent)\b/i

/** Words of limits without a figure that freer talk has: its own look, since one pattern of all is slow. */
const MAY_HOLD_LOOSE =
  /\b(?:fingertips?|\w+tight\w*|\w+ enough|dead in|breadth|seam|lip|pip|rings?|neck|slot|taut|stiff|cards?|paper|(?:as|so) (?:tight|strong|hard|firm|slack|loose) as|(?:wider|thicker|deeper|longer|higher|lower|tighter|looser|thinner|bigger|smaller) than|(?:upper|lower|top) |(?:see|until|till) (?:the |some )?(?:fresh|new|clear)|hands|palm|(?:first|another|within the|inside the) (?:hour|minute|day|week|month|year|mile|turn|inch|lit(?:re|er))|each (?:other|second|year|month|week|season)|(?:the|its) (?:lower |upper |top |bottom |outer )?(?:edge|rim|lip|red|green)|flat (?:with|against|to)|(?:until|till?) (?:it|they|she|he|fresh|oil|water|some|the \w+) (?:\w+ )?(?:comes?|runs?|drips?|oozes?|shows?|spills?|flows?|trickles?|sits?|kiss|closes?|stops?|seats?|gone|is gone|see))\b/i

/** @returns whether a sentence may hold a figure, a number word or a qualitative limit: nothing is read in others */
export const mayHoldLimit = (text: string): boolean => MAY_HOLD.test(text) || MAY_HOLD_LOOSE.test(text)

const sameLimits = (a: Quantity, b: Quantity): boolean =>
  a.low === b.low && a.high === b.high && a.nominal === b.nominal && a.unit === b.unit

/** A text with blanks for the limits whose unit was said, those that pass. */
const withoutUnits = ({ text, limits }: Told, passes: (unit: string, said: string) => boolean = () => true): string => {
  let said = text
  for (const { quantity, at, to, text: own } of limits)
    if (quantity.unit !== undefined && passes(quantity.unit, own))
      said = said.slice(0, at) + ' '.repeat(to - at) + said.slice(to)
  return said
}

/** What names heat for sure, unlike degrees. */
const SCALE = /celsius|centigrade|fahrenheit/i
const NOTHING: ReadonlySet<string> = new Set()

type Told = { readonly text: string; readonly limits: readonly Limit[] }

/** Limits of sentences that have punctuation, units left open settled by what was said before. */
const limitsIn = (sentences: readonly Sentence[], readings: readonly Reading[]): readonly LimitFound[] => {
  const found: LimitFound[] = []
  const recent: Said[] = []
  const sample = sentences
    .slice(0, SAMPLE)
    .map(sentence => sentence.text)
    .join(' ')
  const system = voteSystem(sample)
  const scale = scaleOf(sample, system)
  const hint = system === undefined ? '' : system === 'us' ? 'psi inch foot ' : 'millimetre litre bar '
  const told = sentences.map((sentence, i): Told => {
    if (!mayHoldLimit(sentence.text)) return { text: straight(sentence.text), limits: [] }
    const context =
      hint +
      sentences
        .slice(Math.max(0, i - CONTEXT), i)
        .map(other => other.text)
        .join(' ')
    const text = straight(sentence.text)
    return { text, limits: readTold(text, { context, system }) }
  })
  let declared: readonly Declared[] = []
  const twins = unitsOf(told.flatMap(one => one.limits))
  told.forEach(({ text, limits }, i) => {
    const said = declaredUnits(text, limits)
    if (said.length > 0) declared = said.map(unit => ({ unit, sentence: i }))
    if (limits.length === 0) return
    const previous = straight(sentences[i - 1]?.text ?? '')
    const before = straight(`${sentences[i - 2]?.text ?? ''} ${sentences[i - 1]?.text ?? ''}`)
    const hasBare = limits.some(({ quantity }) => quantity.unit === undefined && hasNumber(quantity))
    const unitless = hasBare ? withoutUnits({ text, limits }) : text
    const earlier = hasBare
      ? told
          .slice(Math.max(0, i - 2), i)
          .map(one => withoutUnits(one, (unit, said) => !(toDimension(unit) === 'pressure' || SCALE.test(said))))
          .join(' ')
      : before
    const things = readings[i]?.things ?? NOTHING
    for (const limit of limits) {
      const around = {
        text,
        sentence: i,
        recent,
        system,
        before,
        earlier,
        previous,
        scale,
        unitless,
        twins,
        declared,
        things,
      }
      const bare = findBareUnit(limit, around)
      const by = bare?.by
      const { quantity, isSecond } = asSecondValue(settleQuantity(limit, around, bare), around)
      const isRepeat = hasNumber(quantity) && recent.slice(-3).some(other => sameLimits(other.quantity, quantity))
      found.push({
        sentence: i,
        limit,
        quantity,
        shape: shapeOf(quantity),
        dimension: dimensionOf(quantity),
        features: [
          ...featuresOf(readings, i, limit, quantity, limits.length, isRepeat),
          ...(by === undefined ? [] : [`unit-by:${by}`, `unit-by:${by}+${shapeOf(quantity)}`]),
          ...(isSecond ? ['second-value', `second-value:${by ?? 'said'}`] : []),
        ],
      })
      if (hasNumber(quantity)) recent.push({ quantity, said: limit.text, sentence: i, things })
    }
  })
  const relations = relationsOf(found)
  return found.map((one, i) => ({ ...one, features: [...one.features, ...(relations[i] ?? [])] }))
}

const withoutPauses = (said: string): string => said.replace(/,(?=\s|$)/g, '')

/** A limit of a text that was given commas, as it stands in the text without them. */
const asSaid = (limit: Limit, text: string, back: (place: number) => number): Limit => {
  const [at, to] = [back(limit.at), back(limit.to)]
  return {
    ...limit,
    text: text.slice(at, to),
    at,
    to,
    ...(limit.reference === undefined ? {} : { reference: withoutPauses(limit.reference) }),
    ...(limit.qualitative === undefined ? {} : { qualitative: withoutPauses(limit.qualitative) }),
  }
}

/** Reads the limits of a talk, sentence by sentence; where it has no punctuation, with commas put where they would stand. */
export const findLimits = (sentences: readonly Sentence[], readings: readonly Reading[]): readonly LimitFound[] => {
  const paused = pausedTalk(readings)
  if (paused === undefined) return limitsIn(sentences, readings)
  const told = sentences.map((sentence, i) => ({ ...sentence, text: paused.readings[i]?.text ?? sentence.text }))
  return limitsIn(told, paused.readings).map(one => {
    const [back, text] = [paused.backs[one.sentence], readings[one.sentence]?.text]
    return back === undefined || text === undefined ? one : { ...one, limit: asSaid(one.limit, text, back) }
  })
}
