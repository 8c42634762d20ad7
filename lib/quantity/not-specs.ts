import type { Draft, Drafted } from './draft'
import type { Lexeme } from './lexemes'
import { unitOf } from './units'

const set = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/))

/** Tools: a number before one is its size, whatever the unit's number. */
const TOOLS = set(
  'socket sockets wrench wrenches spanner spanners key keys hex allen allens drive ratchet ratchets driver drivers bit bits drill drills tap taps die dies torx crowfoot extension extensions adapter adapters nutdriver screwdriver screwdrivers chisel punch reamer endmill cutter hexes combination t-handle breaker impact deepwell ring-spanner nut-driver feeler feelers leaf leaves mallet router bits',
)
/** Parts: a number with a singular unit before one is a rating or size: `a 50 amp breaker`. */
const PARTS = set(
  'bolt bolts screw screws nut nuts washer washers stud studs hose hoses pipe pipes line lines tube tubes tubing fitting fittings wire wires cable cables rope cord o-ring ring rings rod rods stock bar bars file files brush clamp clamps jack hammer gauge fuse fuses breaker breakers battery batteries bulb bulbs lamp motor motors engine engines pump pumps supply system systems resistor resistors charger outlet circuit bike truck trailer tires tyres rim rims wheel wheels rotor rotors tank jug bottle bucket can cans drum tin tub container syringe pack bag box filter mesh gearbox element heater cartridge grinder disc discs disk disks blade blades hole holes chain belt machine generator compressor bearing bearings shaft shafts pin pins dowel nail nails plank timber board boards plywood sheet sheets job jobs ride trip walk class lesson video show break warranty dragon one ones lead leads winch hoist crane jackstand unit units model panel panels valve valves connector connectors plug plugs receptacle switch transformer inverter solar laser saw tape ruler lathe mill press chip shim shims plate plates tarp membrane poly piece pieces bracket spacer spacers bushing gasket gaskets thread threads radiator compressor cooler magnet rail rails column beam joist stud studs nozzle nozzles orifice jet jets needle needles barrel monitor camera lens mower chainsaw truck van car cars scooter house room shop bay ladder fan blower duct vent tile tiles pot pots pan pans bowl glass cup mug drum drums keg carboy injector plywood strap straps chain chains drill-bit tow tow-rope sledge maul sledgehammer weight weights plates dumbbell load bearing loads test-bar collet collets mandrel arbor arbors boring-bar spindle light lights lightbulb strip bolts. dispenser canister cylinder cylinders relay contactor capacitor capacitors phone tooth deck boat rifle scope bipod air-gun syringes slot slots gap-filler keyway bore journal piston pistons sleeve stroker head heads offset rebar conduit anchor anchors lag lags staple staples foam insulation glass window windows door doors',
)
/** Things that are measured: a number before one is their value: `a thirty thou gap`. */
const MEASURED = set(
  'gap clearance limit minimum maximum min max interval torque turn turns soak rest wait preload runout play lash deflection drop rise travel stroke fill pressure reading tolerance range setting cut pass depth height width slack backlash endplay free overlap protrusion stickout wear crush squeeze stretch interference fit cure drying bleed warm-up warmup cooldown dwell step more per pull load shim-gap air spacing apart spread lap projection idle slope fall pitch-change bake hold vacuum charge dose mix difference lift offset margin allowance thickness total differential service change oil swap dip rinse purge burn-in test run each max. in on at with for and or to if of all across from until before after between is as so then but when while around round right here there please back out up down off over through it that',
)
/** Adjectives between a size and its tool. */
const ADJECTIVES = set(
  'deep shallow long short impact open ended open-ended box ring flex ball end swivel stubby big little small wide thin thick flat hollow steel brass copper rubber plastic stainless hardened drill deep-well six twelve point sided combination old new cheap cordless air nylon braided high low heavy duty galvanized black white red blue green wooden metal inch drive jaw socket nut hex allen torx tip inside cup masonry twist spade hand round square good nice single double pressure vacuum-rated garden extension fuel brake coolant power',
)

/** Speech about another time, machine or person: its numbers are no limits here. */
const ASIDES: readonly RegExp[] = [
  /\b(?:my|his|her|our|their|a) (?:brother|mate|buddy|uncle|dad|daddy|father|cousin|friend|neighbor|neighbour|sister|wife|husband|boss|granddad|grandfather|brother-in-law|old (?:one|truck|car|bike|machine|shop|boss)|other (?:one|bike|car|truck|machine|printer)|dirt bike|last one|first one)(?:'s)?\b/i,
  /\b(?:mate|buddy|friend|guy|fella|lad|lady|man|woman|kid|apprentice|trainee|customer|bloke|chap|fellow|somebody|someone|dude) (?:of mine|once|i (?:know|knew|rode|worked)|at my|down the|last|who|did|ran|put|had|took|went|used|brought)\b/i,
  /\bi (?:once|knew|know a|paid|bought|sold|got this|got mine|spent|charge|ask|saw one|watched|have been|'ve been|did mine|ran mine|did the last|picked (?:this|it|one)|had one|used to|remember|weigh|drove|only paid|gave|gives?(?= \$)|was (?:born|about|like|maybe|only))\b/i,
  /\bi've (?:been|only (?:done|had)|had|seen|owned|got this since|driven|put)\b/i,
  /\b(?:we|they|you|he|she) (?:did|sold|bought|paid|charged?|once|used to|had a|were|spent|made|built|got) (?!it|them|the|to|this|that|your|not)\b/i,
  /\b(?:mine|ours|yours) (?:did|was|does|had|got|runs?|reads?|landed|went|took|came|measured|is (?:at|about|on)|will)\b/i,
  /\b(?:mine|ours)'s (?!to\b)/i,
  /\bi'm (?:on|at|seeing|getting|reading) /i,
  /\bi (?:get|got|read|measured|see|saw|have) (?:about |around |like |maybe )?(?:\d|[a-z]+ (?:point|and)|(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b)/i,
  /\b(?:last|that) (?:week|month|year|winter|summer|spring|fall|autumn|night|time|job|one|tuesday|friday|monday|thursday|wednesday|saturday|sunday|christmas|season)\b/i,
  /\b(?:when i was|back in (?:the|my|'?\d|nineteen|twenty)|years? ago|months? ago|weeks? ago|days? ago|hours? ago|back when|the other day|yesterday|once upon|in my (?:first|last|younger))\b/i,
  /\b(?:if|suppose|say) (?:you|i|he|she|we|they) (?:went|did|put|set|used|left|leaned|cranked|tried|took|ran|had)\b/i,
  /\b(?:ignore that|don't email me|totally normal on that|that's another animal|different (?:bike|car|truck|animal|machine|story))\b/i,
  /\b(?:cost|costs|paid|price|priced|worth|bucks|quid|dollars|cheap at)\b.*\b(?:me|us|for|each|a pair|online|apiece)\b/i,
  /\b(?:weighs|weighed) (?:about |around |in at |like |maybe |a good |something like )?/i,
  /\b(?:stands?|rated (?:at|for)|sold|model|serial|made in|built in|bought (?:it|this|one)|dates? from)\b(?= )/i,
]

const text = (lexeme: Lexeme | undefined): string => lexeme?.text ?? ''

/** The next word that is not an adjective, after `to`. */
const headAfter = (lexemes: readonly Lexeme[], to: number): string => {
  let at = to
  if (text(lexemes[at]) === '-') at++
  for (let n = 0; n < 4; n++) {
    const lexeme = lexemes[at]
    if (lexeme === undefined || lexeme.is === 'stop' || lexeme.is === 'number') return ''
    const word = text(lexeme).replace(/'s$/, '')
    if (
      TOOLS.has(word) ||
      PARTS.has(word) ||
      !(ADJECTIVES.has(word) || (lexeme.is === 'unit' && n > 0) || word === '-')
    )
      return word
    at++
  }
  return ''
}

const isAttributive = (lexemes: readonly Lexeme[], draft: Draft): string | undefined => {
  const head = headAfter(lexemes, draft.to)
  if (head === '') return undefined
  if (TOOLS.has(head)) return 'the size of a tool'
  if (draft.phrase.hasTolerance || draft.bound !== undefined || draft.unit?.count === 'many') return undefined
  if (PARTS.has(head)) return 'the size or rating of a part'
  const next = lexemes[draft.to]
  const isRating =
    draft.unit?.count === 'one' &&
    Math.abs(draft.nominal ?? draft.high ?? 0) > 1 &&
    !draft.phrase.isRange &&
    draft.phrase.term.number !== undefined
  return isRating &&
    next?.is === 'word' &&
    next.text !== '-' &&
    !MEASURED.has(head) &&
    /^[a-z]{3,}$/.test(head) &&
    isNoun(head)
    ? 'a rating before a noun'
    : undefined
}

/** Words after a singular unit that are not nouns it rates. */
const SMALL = set(
  'the and that this those these not just then because cause when while until only really usually maybe if you your they them she his her him our its who why how what where which too also again now today always never ever still both some any every none plus minus either neither also yeah yes yep okay right well sorry thank thanks please',
)
const isNoun = (word: string): boolean => !SMALL.has(word) && !word.endsWith('ly') && !word.endsWith('ing')

const AGO = set('ago old later straight flat now back earlier long-ago')
const LONG_AGO = set('last past next previous')
const INTERVAL_CUES = set(
  'every once or replace replaced change changed interval after least whichever within lasts good service due until before rebuild inspect inspected check checked expires expire wait cure cures curing dry dries leave let sit stand soak for up recheck again store stored wear in at than under over more less most about',
)
const LONG_TIMES = new Set(['a', 'mo', 'wk', 'd'])
const WAITING = set(
  'for wait give it least takes after within half let sit needs about hold leave in run once every of another around under than to over count most until be exactly only just takes take',
)

const isTime = (code: string): boolean => unitOf(code)?.kind === 'time'

const wordsBefore = (lexemes: readonly Lexeme[], from: number, count: number): readonly string[] =>
  lexemes.slice(Math.max(0, from - count), from).map(lexeme => lexeme.text)

const timeDoubt = (lexemes: readonly Lexeme[], draft: Draft, code: string): string | undefined => {
  const next = text(lexemes[draft.to])
  const previous = text(lexemes[draft.from - 1])
  if (AGO.has(next) || (next === '-' && text(lexemes[draft.to + 1]) === 'old')) return 'an age or how long ago'
  if (
    next === 'in' &&
    ['business', 'the'].includes(text(lexemes[draft.to + 1])) &&
    ['trade', 'business', 'game'].includes(text(lexemes[draft.to + 2]))
  )
    return 'an age'
  if (
    ['of', 'on'].includes(next) &&
    ['experience', 'it', 'this', 'doing', 'work', 'labor', 'labour', 'them', 'practice', 'my', 'your', 'two'].includes(
      text(lexemes[draft.to + 1]),
    )
  )
    return 'time already spent'
  if (LONG_AGO.has(previous)) return 'how long ago'
  const before = wordsBefore(lexemes, draft.from, 6)
  if (
    before.some(word =>
      [
        'took',
        'been',
        'spent',
        'ran',
        'wasted',
        'since',
        'lasted',
        'meter',
        "meter's",
        'drove',
        'had',
        'worked',
        'waited',
      ].includes(word),
    )
  )
    return 'time already spent'
  if (LONG_TIMES.has(code)) {
    const isDue =
      before.some(word => INTERVAL_CUES.has(word)) || draft.bound !== undefined || lexemes[draft.from]?.is === 'role'
    if (!isDue) return 'a time without a reason to be a limit'
  }
  if (
    draft.phrase.term.isImplied === true &&
    !before.slice(-2).some(word => WAITING.has(word)) &&
    draft.bound === undefined &&
    draft.phrase.term.value === 1
  )
    return 'an idiom'
  return undefined
}

const IMPLIED = new Set(['[in_i]', 'mm', 'L', '[mil_i]', 'circ', 'h', 'min', 'V', 'um', 'cm'])

const impliedDoubt = (lexemes: readonly Lexeme[], draft: Draft): string | undefined => {
  const { term } = draft.phrase
  if (term.isImplied !== true || term.value !== 1) return undefined
  const code = draft.unit?.code ?? draft.unit?.ambiguous ?? ''
  const isMeasured = draft.bound !== undefined || draft.phrase.hasTolerance || draft.isApproximate
  const next = text(lexemes[draft.to])
  if (isMeasured) return next === 'at' && code === 'circ' ? undefined : undefined
  if (
    ['quart', 'pint', 'gallon', 'cup', 'pound', 'ounce'].includes(code) ||
    ['L', 'g', 'kg', '[tsp_us]', '[tbs_us]'].includes(code)
  )
    return next === 'of' || lexemes[draft.to] === undefined
      ? undefined
      : next === 'and' || lexemes[draft.to]?.is === 'stop'
        ? undefined
        : 'an article, not a measure'
  if (code === 'circ')
    return ['past', 'more', 'out', 'in', 'beyond'].includes(next) || next === 'or' ? undefined : 'an idiom'
  if (code === 'h' || code === 'min') return undefined
  if (code === '[in_i]' || code === 'mm' || code === '[mil_i]' || code === 'cm') return undefined
  return IMPLIED.has(code) && isMeasured ? undefined : 'an article, not a measure'
}

const distanceDoubt = (lexemes: readonly Lexeme[], draft: Draft): string | undefined => {
  const next = text(lexemes[draft.to])
  const after = text(lexemes[draft.to + 1])
  if (
    ['on', 'in'].includes(next) &&
    ['it', 'this', 'that', 'those', 'them', 'the', 'her', 'him', 'these', 'my'].includes(after)
  )
    return 'a distance already run'
  const before = wordsBefore(lexemes, draft.from, 4)
  if (
    before.some(word =>
      [
        'done',
        'did',
        'drove',
        'has',
        "it's",
        'got',
        'had',
        'rode',
        'run',
        'ran',
        'with',
        'showing',
        'only',
        'away',
        'walked',
        'live',
        'lives',
        'do',
        "i've",
        'about two',
      ].includes(word),
    ) &&
    !before.some(word => ['every', 'after', 'first', 'recheck', 'within', 'at'].includes(word))
  )
    return 'a distance already run'
  if (['away', 'later', 'old', 'ago', 'down', 'from'].includes(next)) return 'a distance already run'
  return undefined
}

const PRICE_WORDS = set(
  'cost costs paid pay pays price priced worth bill saved save spent spend charge charged charges cheap expensive sells selling sold quid apiece',
)

const priceDoubt = (lexemes: readonly Lexeme[], draft: Draft): string | undefined => {
  if (draft.unit !== undefined && draft.unit.ambiguous !== 'pound') return undefined
  const before = wordsBefore(lexemes, draft.from, 6)
  const index = before.findLastIndex(word => PRICE_WORDS.has(word))
  if (index < 0) return undefined
  const word = before[index] ?? ''
  // Batteries and air conditioners are charged too.
  if (word.startsWith('charge') && !['i', 'they', 'we', 'me', 'you', 'he'].some(who => before.includes(who)))
    return undefined
  return 'a price'
}

const percentDoubt = (lexemes: readonly Lexeme[], draft: Draft): string | undefined => {
  if (draft.unit?.code !== '%' || draft.bound !== undefined || draft.phrase.isRange || draft.phrase.hasTolerance)
    return undefined
  const value = draft.nominal ?? 0
  const next = text(lexemes[draft.to])
  if (
    (value === 100 || value === 110 || value === 99) &&
    (lexemes[draft.to] === undefined ||
      [
        'sure',
        'certain',
        'of',
        'agree',
        'positive',
        'right',
        ',',
        '.',
        'the',
        'on',
        'confident',
        'worth',
        'not',
        'that',
        'happy',
        'correct',
        'done',
      ].includes(next)) &&
    !['humidity', 'duty', 'throttle', 'charge'].includes(text(lexemes[draft.to + 1]))
  )
    return 'an idiom'
  return next === 'of' &&
    ['the', 'people', 'you', 'these', 'them', 'my', 'all'].includes(text(lexemes[draft.to + 1])) &&
    ['time', 'people', 'guys', 'folks', 'failures', 'them', 'customers', 'ones', 'us'].includes(
      text(lexemes[draft.to + 2]),
    )
    ? 'an idiom'
    : undefined
}

/** The clause around a draft, for the aside patterns. */
const sentenceAround = ({ text: whole, lexemes }: Drafted, draft: Draft): string => {
  let from = draft.from
  while (from > 0 && !['.', '?', '!', ';'].includes(text(lexemes[from - 1])) && draft.from - from < 40) from--
  let to = draft.to
  while (to < lexemes.length && !['.', '?', '!', ';'].includes(text(lexemes[to])) && to - draft.to < 40) to++
  return whole.slice(lexemes[from]?.at ?? 0, lexemes[to - 1]?.to ?? 0)
}

const isAside = (sentence: string): boolean => ASIDES.some(aside => aside.test(sentence))

const dimensionDoubt = (lexemes: readonly Lexeme[], draft: Draft): string | undefined => {
  const next = text(lexemes[draft.to])
  const previous = text(lexemes[draft.from - 1])
  const isBy = (word: string): boolean => word === 'by' || word === 'x' || word === '×'
  return (isBy(next) && lexemes[draft.to + 1]?.is === 'number') ||
    (isBy(previous) && lexemes[draft.from - 2]?.is === 'number')
    ? 'a size'
    : undefined
}

/**
 * Why a phrase with a unit is no limit after all.
 *
 * @returns undefined where it may be one
 */
export const whyNoSpec = (drafted: Drafted, draft: Draft): string | undefined => {
  const { lexemes } = drafted
  const code = draft.unit?.code ?? ''
  const kind = unitOf(code)?.kind
  return (
    isAttributive(lexemes, draft) ??
    dimensionDoubt(lexemes, draft) ??
    priceDoubt(lexemes, draft) ??
    percentDoubt(lexemes, draft) ??
    (isTime(code) ? timeDoubt(lexemes, draft, code) : undefined) ??
    (kind === 'distance' ? distanceDoubt(lexemes, draft) : undefined) ??
    impliedDoubt(lexemes, draft) ??
    (isAside(sentenceAround(drafted, draft)) && !draft.phrase.hasTolerance
      ? 'about another time, machine or person'
      : undefined)
  )
}
