import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { sizeOf } from './said-before'

const HEAT =
  /\b(?:heat\w*|hot\w*|warm\w*|cool\w*|cold\w*|temp\w*|boil\w*|bak\w*|cook\w*|cur(?:e|es|ing)\b|melt\w*|oven|iron|thermo\w*|firing|rinse|tank|bath|water|oil|grease|cycle|celsius|fahrenheit|freez\w*|chill\w*|flame|burn\w*|steam|wash\w*|room|air|kilns?|fires?|butter|syrup|honey|wax|thaw\w*|caustic|fridge|outside|outdoors|weather|summer|winter|paint|lacquer|varnish|glue|glued|resin|adhesive|dough|milk|mash|wort)\b/i
const ANGLE =
  /\b(?:angle\w*|bevel\w*|tilt\w*|handle|pitch|protractor|lean\w*|latch\w*|squeegee|ski|skis|joints?|folds?|twist\w*|vane|apart|plumb|spirit level|torpedo level|(?:be|is|sit|sits|stand|stands) (?:dead )?level|arc|backcheck|hinge|crank\w*|steering|elbow|bend|offset|turn(?:s|ed|ing)?(?! (?:it |them |her |the \w+ )?(?:on|off)\b)|rotat\w*|square|slope|camber|caster|toe|mitre|miter|edge|hon(?:e|es|ed|ing)\b|sharpen\w*|grind\w*|whet\w*|chamfer\w*|(?:knife|knives|chisels?|scissors|blades?)(?=,|'s|\b.{0,24}\bdegrees)|a side|fence|ladder|jib|off the (?:ground|floor|vertical|horizontal)|flatter|steeper|back(?:ed)? (?:it |them )?off|rake|past contact|swing|clockwise)\b/i

/** What makes degrees an angle though something near may be hot or wet. */
const SURE_ANGLE =
  /\b(?:protractor|bevel\w*|(?:in)?clinometer|(?:spirit|digital|torpedo) level|before top|top dead|dead cent(?:re|er)|tilt\w*|tips?|nose[- ]down|grind\w*|sharpen\w*|hon(?:e|es|ed|ing)|ladder|angles?|rake|mit(?:re|er)|slopes?|lean\w*|skew\w*|clockwise)\b/i
/** What makes them heat though something near is turned. */
const SURE_HEAT =
  /\b(?:heat\w*|hot|hotter|warm\w*|cool\w*|cold\w*|temp|temps|temperature|boil\w*|oven|kilns?|celsius|fahrenheit|freez\w*|chill\w*|room)\b/i

/** What heat is read off: where it is named, no degrees are of an angle. */
const HEAT_READ = /\b(?:thermometer|thermocouple|infra-?red|pyrometer|temperature)\b/i

/** Degrees that are turned or cut to more often than heated to. Common practice, no source. */
const COMMON_ANGLES = new Set([1, 2, 15, 22.5, 30, 45, 60, 90, 120, 135, 180, 270, 360])

/** The scale of temperatures. */
export type Scale = 'Cel' | '[degF]' | undefined

const DEGREES = new Set(['deg', 'Cel', '[degF]'])

/** "82 degrees" of a rinse is no angle and "45 degrees" of a bevel no heat: what the sentence speaks of tells, and the talk which scale. */
const heatOrAngle = (quantity: Quantity, limit: Limit, text: string, talkScale: Scale, previous: string): Quantity => {
  const scale = talkScale !== undefined && sizeOf(quantity) <= FAR_BELOW ? 'Cel' : talkScale
  const isOpen = quantity.unit === undefined && hasNumber(quantity) && /degrees?\b|°/i.test(limit.text)
  if (
    !(isOpen || DEGREES.has(quantity.unit ?? '')) ||
    /celsius|centigrade|fahrenheit|°\s?[CF]|\d\s?[CF]\b/i.test(limit.text)
  )
    return quantity
  const isSurelyTurned = SURE_ANGLE.test(text) && !SURE_HEAT.test(text) && !HEAT_READ.test(text)
  const isSilent = !(isSurelyTurned || HEAT.test(text) || ANGLE.test(text))
  const isReadBefore = HEAT_READ.test(previous)
  const isHot =
    !isSurelyTurned &&
    (HEAT.test(text) || isReadBefore || (isSilent && SURE_HEAT.test(previous) && !SURE_ANGLE.test(previous)))
  const isTurned =
    isSurelyTurned ||
    (ANGLE.test(text) && !HEAT_READ.test(text) && (SURE_ANGLE.test(text) || !(SURE_HEAT.test(text) || isReadBefore))) ||
    (isSilent && !isHot && SURE_ANGLE.test(previous) && !SURE_HEAT.test(previous))
  const isBound = (quantity.low === undefined) !== (quantity.high === undefined) && quantity.nominal === undefined
  const isLikelyHot =
    isHot ||
    ((/degrees?$/i.test(limit.text) || (isBound && !isTurned)) && !COMMON_ANGLES.has(Math.abs(sizeOf(quantity))))
  if (isOpen) {
    if (isTurned && !isHot) return { ...quantity, unit: 'deg' }
    return isLikelyHot && scale !== undefined ? { ...quantity, unit: scale } : quantity
  }
  if (quantity.unit === 'deg')
    return isLikelyHot && !isTurned && scale !== undefined ? { ...quantity, unit: scale } : quantity
  if (isTurned && !isHot) return { ...quantity, unit: 'deg' }
  return scale === undefined ? quantity : { ...quantity, unit: scale }
}

const CELSIUS = /\b(?:celsius|centigrade)\b|°\s?C/gi
const FAHRENHEIT = /\bfahrenheit\b|°\s?F/gi
const BRITISH =
  /\b(?:\w*(?:metre|litre)s?|colour\w*|tyres?|spanners?|grey|centre|petrol|whilst|mould|plough|kerb|aluminium|lorry|torch|mum|fibre|calliper\w*|bar|newton|kilos?|chapel|quid|celsius|wee|bloody|tap|taps|mains|lads?|lass|telly|rubbish|grandad|biro|tin|tins|bin|pence|euros?|washing-up|hoover|spirit level|bonnet|cuppa|blokes?|kettle|skirting|aye)\b/gi
const AMERICAN =
  /\b(?:color\w*|tires?|gray|center|gasoline|psi|foot[- ]pounds?|inch[- ]pounds?|quarts?|gallons?|gonna|ain't|y'all|mom|aluminum|fahrenheit|(?<!torque |click )wrench(?:es)?|trucks?|faucet|flashlight|dollars?|bucks|trash|sidewalk|gotta|kinda|grandpa|nickel|vise|gals?|okay|garbage|yard|buddy|guys|folks|ma'am|tubing|half-inch|quarter-inch)\b/gi

/** Degrees Fahrenheit are seldom told finer than whole ones, or so far below nought. Common practice, no source. */
const FINE_DEGREES =
  /\b(?:half|fifth|tenth)(?: of)? a degree\b|\d\.\d degrees\b|\bpoint \w+ degrees\b|\bminus (?:eighteen|twenty|twenty-five|thirty|18|20|25|30)\b/i
/** What is told so far below nought is told in Celsius. Common practice, no source. */
const FAR_BELOW = -10

const count = (pattern: RegExp, text: string): number => text.match(pattern)?.length ?? 0

/**
 * @param system the units the talk counts in: who counts in metric ones counts in Celsius, however the words are spelt
 * @returns the scale a talk counts temperature in: as it names it, else by its spellings and units
 */
export const scaleOf = (text: string, system: 'us' | 'metric' | undefined): Scale => {
  const named = count(CELSIUS, text) - count(FAHRENHEIT, text)
  const vote = named === 0 ? count(BRITISH, text) - count(AMERICAN, text) : named
  if (vote === 0 && system !== undefined) return system === 'metric' || FINE_DEGREES.test(text) ? 'Cel' : '[degF]'
  if (vote === 0) return undefined
  return vote > 0 || (named === 0 && system === 'metric') ? 'Cel' : '[degF]'
}

const WATER: Readonly<Record<string, string>> = { "[in_i'H2O]": '[in_i]', 'mm[H2O]': 'mm', 'cm[H2O]': 'cm' }
const STANDS =
  /\b(?:over|above|left|deep|standing|level|bottom|tank|pit|sump|bucket|float|tub|tray|bowl|trough|rises?|drops?)\b/i
const BLOWS = /\b(?:pressure|gas|manometer|draught|draft|static|suction|vacuum|duct|regulator|burner|fan|column)\b/i

/** "Eight inches of water over the bottom" is a depth where nothing blows. */
const depthOfWater = (quantity: Quantity, text: string): Quantity => {
  const unit = WATER[quantity.unit ?? '']
  return unit !== undefined && STANDS.test(text) && !BLOWS.test(text) ? { ...quantity, unit } : quantity
}

/** So many turns are a speed. */
const REVVED = 250

/** `60 turns a minute`, `no faster than eight turns in the minute`. */
const A_MINUTE = /\b(?:a|per|each|every|(?:to|in) (?:a|the|one|every)) minute$/i
const REACH_MINUTE = 22
const REVS = /\brev(?:s|olutions?)?\b/i
const RUNS = /\b(?:speeds?|runs?|running|slow(?:ly)?|fast(?:er)?|idles?|tick(?:s|ing)? over|platter)\b/i
/** What is moved by hand by so many revs. */
const WOUND = /\b(?:wind|wound|crank|by hand|give (?:it|her))\b/i

const turnsOrSpeed = (quantity: Quantity, limit: Limit, text: string): Quantity => {
  if (quantity.unit !== 'circ' && quantity.unit !== '{turn}') return quantity
  const said = `${limit.text}${/^ [a-z ]{0,14}\bminute\b/i.exec(text.slice(limit.to, limit.to + REACH_MINUTE))?.[0] ?? ''}`
  const isSpeed =
    sizeOf(quantity) >= REVVED || A_MINUTE.test(said) || (REVS.test(limit.text) && RUNS.test(text) && !WOUND.test(text))
  return isSpeed ? { ...quantity, unit: '{rev}/min' } : quantity
}

/** What is measured out by the mil where it flows. */
const MILS = /\bmils?\b/i
const FLOWS =
  /\b(?:pour\w*|top(?:ped|ping)? (?:it |her )?up|fill\w*|squeez\w*|syringe|inject\w*|oil|fluid|coolant|detergent|descaler|additive|cleaner|ounces?|lit(?:re|er)s?|jug|beaker|cylinder full|bottle|mils? (?:altogether|a side|each side|a minute|per minute)|gear ?oil|water|shampoo|vinegar|bleach|acid|lubricant|nozzle output|beaker|measuring (?:glass|cylinder)|cc)\b/i
/** What is spread or left is as thick or as wide as so many mils. */
const SPREAD =
  /\b(?:gap|space|leave|plaster\w*|trowel\w*|spread|strip\w*|coat|layer|thick\w*|depth|deep|bury|buried|sticks? out|apart|cover(?:s|ed|ing)?)\b/i
const POURS =
  /\b(?:pour\w*|top(?:ped|ping)? (?:it |her )?up|syringe|inject\w*|jug|beaker|bottle|squirt\w*|drink\w*|takes?|holds?|cc)\b/i
const SPANS =
  /\b(?:gap\w*|thick\w*|thin\w*|wide|width|long|deep|depth|deeper|diameter|spanner|wrench|socket|hex|allen|drill\w*|bit|feeler|clearance|play|travel|stroke|apart|above|below|over|under|off|from|hose|pipe|tube|bolts?|nuts?|screws?|stud|key|stands?|sits?|proud|movement|lift|lip|edge|face|worn|wear|groove|tread|slack|sag|deflection|between|hole|bore|ring|seal|plate|washer|high|level|line|mark)\b/i
/** Less is seldom poured. Common practice, no source. */
const LEAST_POURED = 4

/** "In goes 150 mil of the SAE 30": what flows is told in millilitres. */
const pouredMils = (quantity: Quantity, limit: Limit, text: string): Quantity =>
  quantity.unit === 'mm' &&
  MILS.test(limit.text) &&
  sizeOf(quantity) >= LEAST_POURED &&
  FLOWS.test(text) &&
  !SPANS.test(text) &&
  !SPREAD.test(text)
    ? { ...quantity, unit: 'mL' }
    : quantity

/** "A gap of 150 to 200 mil" over what is wet is a length still. */
const spannedMils = (quantity: Quantity, limit: Limit, text: string): Quantity =>
  quantity.unit === 'mL' && MILS.test(limit.text) && SPREAD.test(text) && !POURS.test(text)
    ? { ...quantity, unit: 'mm' }
    : quantity

/**
 * A quantity whose unit was said, in the unit its sentence means: degrees of heat or of an angle, mils of length or of what
 * is poured, inches of water as a depth, turns by the hundred as a speed.
 *
 * @param scale in which the talk tells temperatures
 * @param previous the sentence before, which tells where this one does not
 */
export const asMeant = (quantity: Quantity, limit: Limit, text: string, scale: Scale, previous: string): Quantity =>
  spannedMils(
    pouredMils(
      depthOfWater(turnsOrSpeed(heatOrAngle(quantity, limit, text, scale, previous), limit, text), text),
      limit,
      text,
    ),
    limit,
    text,
  )
