import { hasNumber } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import { isCount } from './counted'
import { toDimension } from './dimension'
import { habitOf, toInstrument, toMeasurand } from './measurand'
import { NEAR_SOURCE, toldByAnother } from './other-source'
import { isAlike, lastSaid, sizeOf } from './said-before'
import type { Around, Said } from './settle'

/** Units that a bare number can take over from one said before. */
const INHERITED = new Set([
  'torque',
  'length',
  'pressure',
  'temperature',
  'voltage',
  'current',
  'resistance',
  'speed',
  'volume',
  'mass',
])

const INHERITED_OR_TURN = new Set([...INHERITED, 'angle', 'turn'])

const FRACTION = /\b(?:half|third|quarter|fifth|sixth|eighth)s?\b|\d\/\d/i
const RULER = /\b(?:sixteenth|thirty-second|sixty-fourth)s?\b|\/(?:16|32|64)\b/i
/** What joins a second figure to the one before it: `every six months, or three`, `ten minutes, fifteen when it's damp`. */
const ALSO = /\b(?:or|rather|make it)(?: every| about| only| just)? $/i
const ALSO_COMMA = /, (?:and |but |maybe |or )?$/i
const ALSO_WHEN = /^ (?:if|when|where) (?:it's|it is|you|they|the|there|that|she|he)\b/i
const TIMES = new Set(['time', 'interval'])
const TURNED =
  /\b(?:turn\w*|screw\w*|back(?:ed)? (?:it |them )?off|touch\w*|contact|hand[- ]?tight|finger[- ]?tight|snug|clockwise|nut|slacken\w*|undo)\b/i

/** `then a quarter back`. */
const TURNED_AFTER = /^ (?:more|back|further|past|tighter|looser|backwards?)\b/i

/** Lengths of another order than what is set on a bench. */
const AFAR = new Set(['m', 'km', '[mi_i]', '[ft_i]'])

/** Said in passing by those who count in metric units. */
const IMPERIAL = new Set(['[in_i]', '[ft_i]', '[psi]', '[ft_i].[lbf_av]', '[in_i].[lbf_av]', '[degF]'])

/** Nothing in a shop is set to fewer degrees than this without a word for them. Common practice, no source. */
const LEAST_HEAT = 5

/** `count to thirty`, `a slow count of twenty`. */
const COUNTED_TO = /\bcount(?:ing|ed|s)?(?: slowly| out| up)?(?: to| of| off)?(?: about| around| maybe)? $/i
/** `every six months, and the belt every two`. */
const EVERY =
  /\b(?:every|each|(?:again|next|then|it's|is) (?:at|after|in)|it's(?: more like)?|more like every)(?: about| around)? $/i
const EVERY_WORD = /\b(?:every|each)(?: about| around)? $/i
const EVERY_REACH = 2
/** Takes back what was said just before, so that what follows is of the same. */
const AMENDS =
  /(?:,|^| )(?:no|nah|nope|sorry|wait|excuse me|hang on|hold on|i mean|correction|i tell a lie|scratch that|what am i (?:saying|talking about))\b[^.;?!]{0,60}$/i
/** Units of how often something is done. */
const RECURS = new Set(['d', 'wk', 'mo', 'a', 'km', '[mi_i]'])
/** Nothing is done every so many days, months or years. */
const LEAST_FAR = 1000
const DRIVEN =
  /\b(?:ride|rides|riding|drive|driven|road|oil|brakes?|tyres?|tires?|belt|chain|car|bike|truck|trailer|engine|service|miles|kilomet\w+|inspect\w*|look|rivers?)\b/i

/** What turns at hundreds or thousands of revs. */
const TURNS =
  /\b(?:engine|motor|idl(?:e|es|ed|ing)|throttle|revs?|revving|rpm|pto|shaft|spindle|blade|rotor|drum|fan|governor|tick ?over|flat out|wide open)\b/i
const IDLES = /\b(?:idl(?:e|es|ed|ing)|revs?|tick ?over)\b/i
/** Nothing else is set to so many without a unit near what turns. Common practice, no source. */
const LEAST_REVS = 300

/** `run it at five hundred`. */
const RUN_AT =
  /\b(?:run|runs|running|spin|spins|spinning|rev|revs|idles?|idling)(?: (?:it|her|him|them|the \w+))?(?: [a-z]+){0,4} (?:at|up to|to|around|about) $/i

/** Figures this fine are lengths where nothing else is named: `0.05`, `two tenths`, `five hundredths`. Common practice, no source. */
const FINE_SAID = /\b(?:tenths?|hundredths?|thousandths?)\b/i
const FINE_FIGURE = /(?:^|[^\d])0?\.\d\d+/
/** Inches have three decimals or more: `.030`. */
const FINE_INCHES = /(?:^|[^\d])0?\.\d{3}/
/** Inches in decimals are no coarser than this. */
const LEAST_COARSE = 0.26

/** @returns the unit of a figure so fine that it can but be a length */
const fineUnit = (text: string, size: number, system: Around['system']): string | undefined => {
  if (size <= 0 || size >= 1 || !(FINE_SAID.test(text) || FINE_FIGURE.test(text))) return undefined
  if (system === 'metric') return 'mm'
  return system === 'us' && size < LEAST_COARSE && FINE_INCHES.test(text) ? '[in_i]' : undefined
}

/** Sentences for which a unit told without a figure holds. */
const DECLARED_REACH = 8

const PERCENT = /%|\bper ?cent\b/i
const POUNDS = /\bpounds?\b/i
/** What pounds may be of, by what is measured. */
const POUNDS_OF: Readonly<Record<string, string>> = { torque: '[ft_i].[lbf_av]', pressure: '[psi]', mass: '[lb_av]' }
const OF_POUNDS = new Set(Object.values(POUNDS_OF))

/** `0.3 to 0.8 between pin and jaw`, `within 25 of centre`: how far apart. */
const BETWEEN = /^ (?:between (?:the )?[a-z]+(?: [a-z]+)? and|of (?:the )?(?:cent(?:re|er)|middle|edge)) ?\b/i

/** What is told by a figure without a unit. */
const UNITLESS =
  /\bp ?h\b|\b(?:specific gravity|hydrometer|shore|rockwell|octane|parts (?:per|of the|in a) million|ppm)\b/i
/** Nothing else bare is told below nought in a shop. Common practice, no source. */
const BELOW_ZERO = /\bminus (?!or\b)|^-\d/i

/** How near an earlier sentence's figure must be to lend its unit before what is measured is asked. */
const FRESH = 2

/** Whether a value said before may lend its unit to a figure of a size, being at most so many times more or less. */
const fits = ({ quantity }: Said, size: number, most: number): boolean =>
  INHERITED.has(toDimension(quantity.unit) ?? '') &&
  !AFAR.has(quantity.unit ?? '') &&
  isAlike(size, sizeOf(quantity), most)

/** The unit of a dimension as said before of the same, else by the talk's habit. */
const unitOf = (dimension: string, size: number, { recent, system, scale }: Around): string | undefined => {
  const same = recent.findLast(
    ({ quantity: other }) =>
      toDimension(other.unit) === dimension &&
      isAlike(size, sizeOf(other), 30) &&
      !AFAR.has(other.unit ?? '') &&
      !(system === 'metric' && IMPERIAL.has(other.unit ?? '')),
  )
  return same?.quantity.unit ?? (dimension === 'temperature' ? scale : undefined) ?? habitOf(dimension, system)
}

/** `those I pull to eighty`: what a wrench is pulled to. */
const PULLED =
  /\b(?:pull(?:s|ed)?|torqu\w+|tighten\w*|wrench|clicks?|clicker|crank\w*|cinch\w*)\b[^.;\d]{0,28}\b(?:to|at|up to|for)(?: about| around)? $/i

/** What a number of a size measures, but for heat of so few degrees. */
const warmOnly = (named: string | undefined, size: number): string | undefined =>
  named === 'temperature' && size < LEAST_HEAT ? undefined : named

/** The unit of a bare number, and by what it was found. */
export type Found = { readonly unit: string; readonly by: string }

/**
 * The unit of a bare number: of a value beside it, then by what is measured (as said before of the same, else by habit),
 * then of the last value of its size; none rather than a wild guess.
 */
export const findBareUnit = (limit: Limit, around: Around): Found | undefined => {
  const { text, sentence, recent, system, scale, before } = around
  const { quantity } = limit
  if (quantity.unit !== undefined || !hasNumber(quantity) || /degrees?\b|°/i.test(limit.text)) return undefined
  const take = (by: string, unit: string | undefined): Found | undefined =>
    unit === undefined ? undefined : { unit, by }
  if (isCount(limit)) return undefined
  const isFraction = FRACTION.test(limit.text)
  if (isFraction && (TURNED.test(text) || TURNED_AFTER.test(text.slice(limit.to)))) return take('turning', 'circ')
  if (RULER.test(limit.text)) return take('rule', '[in_i]')
  const size = sizeOf(quantity)
  const ahead = text.slice(0, limit.at)
  if (COUNTED_TO.test(ahead)) return take('counting', 's')
  if (UNITLESS.test(text)) return undefined
  if (POUNDS.test(limit.text)) {
    const near = lastSaid(recent, sentence - FRESH, ({ quantity: { unit = '' } }) => OF_POUNDS.has(unit))
    const of = POUNDS_OF[toMeasurand(around.unitless, limit.at, limit.to) ?? '']
    return take('pounds', of ?? near?.quantity.unit ?? '[lb_av]')
  }
  if (BELOW_ZERO.test(limit.text) && size < 0) return take('below zero', scale ?? habitOf('temperature', system))
  if (EVERY.test(ahead) && !/^ (?:[a-z]+ )?[a-z]+s\b/i.test(text.slice(limit.to))) {
    const isEvery = EVERY_WORD.test(ahead)
    const kept = lastSaid(
      recent,
      sentence - EVERY_REACH,
      ({ quantity: { unit = '' } }) => RECURS.has(unit) || (isEvery && unit === 'h'),
    )
    if (size < LEAST_FAR && kept !== undefined) return take('every', kept.quantity.unit)
    if (size >= LEAST_FAR && DRIVEN.test(`${before} ${text}`)) return take('every', system === 'us' ? '[mi_i]' : 'km')
  }
  const also = lastSaid(recent, sentence)
  if (also !== undefined && ALSO.test(ahead) && isAlike(size, sizeOf(also.quantity), 12))
    return take('also', also.quantity.unit)
  if (
    also !== undefined &&
    TIMES.has(toDimension(also.quantity.unit) ?? '') &&
    ALSO_COMMA.test(ahead) &&
    ALSO_WHEN.test(text.slice(limit.to)) &&
    isAlike(size, sizeOf(also.quantity), 6)
  )
    return take('also', also.quantity.unit)
  const measuring = toMeasurand(around.unitless, limit.at, limit.to)
  // The percent of its tolerance is none of a figure's own.
  const measured =
    (measuring === 'share' && PERCENT.test(limit.text) ? undefined : measuring) ??
    (PULLED.test(ahead) ? 'torque' : undefined)
  const own = warmOnly(measured, size) ?? (BETWEEN.test(text.slice(limit.to)) ? 'length' : undefined)
  const amended = AMENDS.test(ahead) ? lastSaid(recent, sentence - 1, said => fits(said, size, 6)) : undefined
  if (amended !== undefined) return take('amended', amended.quantity.unit)
  const beside = lastSaid(recent, sentence, said => fits(said, size, 10))
  if (beside !== undefined && (own === undefined || toDimension(beside.quantity.unit) === own))
    return take('beside', beside.quantity.unit)
  const told = toldByAnother(
    around,
    said => fits(said, size, NEAR_SOURCE) && (own === undefined || own === toDimension(said.quantity.unit)),
  )
  if (told !== undefined) return take('source', told.quantity.unit)
  if (
    size >= LEAST_REVS &&
    (own === undefined || own === 'speed' || (own === 'temperature' && IDLES.test(text))) &&
    (TURNS.test(`${before} ${text}`) || RUN_AT.test(ahead))
  )
    return take('revs', '{rev}/min')
  const declared = around.declared.find(
    one =>
      one.sentence >= sentence - (own === undefined ? FRESH : DECLARED_REACH) &&
      (own === undefined || toDimension(one.unit) === own),
  )
  if (declared !== undefined) return take('declared', declared.unit)
  if (own === 'length' && isFraction && system === 'us') return take('own', '[in_i]')
  const named = own === undefined ? undefined : take('own', unitOf(own, size, around))
  if (named !== undefined) return named
  const fresh = lastSaid(recent, sentence - FRESH, said => fits(said, size, 3))
  const fine = own === undefined || own === 'length' ? fineUnit(limit.text, size, system) : undefined
  if (fine !== undefined && toDimension(fresh?.quantity.unit) !== 'length') return take('fine', fine)
  const read = measured === undefined ? toInstrument(around.previous) : undefined
  const shown = read === undefined ? undefined : take('instrument', unitOf(read, size, around))
  if (shown !== undefined && toDimension(fresh?.quantity.unit) !== read) return shown
  if (fresh !== undefined) return take('fresh', fresh.quantity.unit)
  const twin = around.twins.get(size)
  if (twin !== undefined && INHERITED_OR_TURN.has(toDimension(twin) ?? '')) return take('twin', twin)
  // By the two sentences before, where this one names nothing.
  const all = before.trim()
  const earlier =
    measured === undefined && all !== ''
      ? warmOnly(toMeasurand(all, all.length, all.length, { isNamed: true }), size)
      : undefined
  return (
    (earlier === undefined ? undefined : take('earlier', unitOf(earlier, size, around))) ??
    take('recent', recent.findLast(said => fits(said, size, 3))?.quantity.unit)
  )
}
