import { hasNumber } from '@/lib/quantity/quantity'
import type { Reading as Limit } from '@/lib/quantity/read'
import {
  AFAR,
  ALSO,
  ALSO_COMMA,
  ALSO_WHEN,
  AMENDS,
  AT,
  BELOW_ZERO,
  BETWEEN,
  COUNTED_TO,
  DECLARED_REACH,
  DRIVEN,
  ENDS,
  EVERY,
  EVERY_REACH,
  EVERY_WORD,
  FASTENED,
  FINE_FIGURE,
  FINE_INCHES,
  FINE_SAID,
  FRACTION,
  IDLES,
  IMPERIAL,
  IN_TIME,
  IN_TIME_SAID,
  INHERITED,
  INHERITED_OR_TURN,
  LEAST_COARSE,
  LEAST_FAR,
  LEAST_HEAT,
  LEAST_REVS,
  NEAR_TIME,
  OF_POUNDS,
  PERCENT,
  POUNDS,
  POUNDS_OF,
  RECALLED,
  RECALLED_OR_TORQUE,
  RECURS,
  RULER,
  RUN_AT,
  SPACED,
  TIMES,
  TOLD_ANEW,
  TURNED,
  TURNED_AFTER,
  TURNS,
  UNITLESS,
  WORN_FROM_NEW,
} from './bare-words'
import { isCount } from './counted'
import { toDimension } from './dimension'
import { habitOf, toInstrument, toMeasurand } from './measurand'
import { NEAR_SOURCE, toldByAnother } from './other-source'
import { isAlike, lastSaid, sizeOf } from './said-before'
import type { Around, Said } from './settle'

/** @returns the unit of a figure so fine that it can but be a length */
const fineUnit = (text: string, size: number, system: Around['system']): string | undefined => {
  if (size <= 0 || size >= 1 || !(FINE_SAID.test(text) || FINE_FIGURE.test(text))) return undefined
  if (system === 'metric' || (system === undefined && /\bhundredths?\b/i.test(text))) return 'mm'
  return system === 'us' && size < LEAST_COARSE && FINE_INCHES.test(text) ? '[in_i]' : undefined
}

/** How near an earlier sentence's figure must be to lend its unit before what is measured is asked. */
const FRESH = 2

/** Whether a value said before may lend its unit to a figure of a size, being at most so many times more or less. */
const fits = ({ quantity }: Said, size: number, most: number, of: ReadonlySet<string> = INHERITED): boolean =>
  of.has(toDimension(quantity.unit) ?? '') && !AFAR.has(quantity.unit ?? '') && isAlike(size, sizeOf(quantity), most)

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
  const { text, sentence, recent, system, scale, before, previous } = around
  const { quantity } = limit
  if (quantity.unit !== undefined || !hasNumber(quantity) || /degrees?\b|°/i.test(limit.text)) return undefined
  const take = (by: string, unit: string | undefined): Found | undefined =>
    unit === undefined ? undefined : { unit, by }
  if (isCount(limit)) return undefined
  const isFraction = FRACTION.test(limit.text)
  if (
    isFraction &&
    !(RULER.test(limit.text) && !/\bturn/i.test(text)) &&
    (TURNED.test(text) || TURNED_AFTER.test(text.slice(limit.to)))
  )
    return take('turning', 'circ')
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
    if (kept === undefined && size < LEAST_FAR && system === 'metric' && SPACED.test(text)) return take('every', 'mm')
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
  // "It must answer inside thirty."
  const soon =
    (own === undefined || own === 'time') &&
    (IN_TIME.test(ahead) || IN_TIME_SAID.test(limit.text)) &&
    ENDS.test(text.slice(limit.to))
      ? lastSaid(
          recent,
          sentence - 1,
          ({ quantity: said }) => TIMES.has(toDimension(said.unit) ?? '') && isAlike(size, sizeOf(said), 40),
        )
      : undefined
  if (soon !== undefined) return take('soon', soon.quantity.unit)
  const amended = AMENDS.test(ahead) ? lastSaid(recent, sentence - 1, said => fits(said, size, 6)) : undefined
  if (amended !== undefined) return take('amended', amended.quantity.unit)
  const beside = lastSaid(recent, sentence, said => fits(said, size, 10, own === undefined ? INHERITED : TOLD_ANEW))
  if (beside !== undefined && (own === undefined || toDimension(beside.quantity.unit) === own))
    return take('beside', beside.quantity.unit)
  const told = toldByAnother(around, said => {
    const of = toDimension(said.quantity.unit)
    return (
      fits(said, size, TIMES.has(of ?? '') ? NEAR_TIME : NEAR_SOURCE, TOLD_ANEW) && (own === undefined || own === of)
    )
  })
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
  // "To what pressure?" "Forty."
  const asked =
    own === undefined && previous.endsWith('?')
      ? toMeasurand(previous, previous.length, previous.length, { isNamed: true })
      : undefined
  const answer = asked === undefined ? undefined : take('asked', unitOf(asked, size, around))
  if (answer !== undefined) return answer
  const named = own === undefined ? undefined : take('own', unitOf(own, size, around))
  if (named !== undefined) return named
  if (own === undefined && system === 'metric' && WORN_FROM_NEW.test(text)) return take('worn', 'mm')
  const fresh = lastSaid(recent, sentence - FRESH, said => fits(said, size, 3))
  const fine = own === undefined || own === 'length' ? fineUnit(limit.text, size, system) : undefined
  if (fine !== undefined && toDimension(fresh?.quantity.unit) !== 'length') return take('fine', fine)
  const read = measured === undefined ? toInstrument(around.previous) : undefined
  const shown = read === undefined ? undefined : take('instrument', unitOf(read, size, around))
  if (shown !== undefined && toDimension(fresh?.quantity.unit) !== read) return shown
  if (fresh !== undefined) return take('fresh', fresh.quantity.unit)
  // "Five minutes warms it, and two more."
  const lasting = lastSaid(recent, sentence - 1)
  if (
    toMeasurand(around.unitless, limit.at, limit.to, { isNamed: true }) === undefined &&
    lasting !== undefined &&
    !AT.test(ahead) &&
    TIMES.has(toDimension(lasting.quantity.unit) ?? '') &&
    isAlike(size, sizeOf(lasting.quantity), 3)
  )
    return take('lasting', lasting.quantity.unit)
  const twin = around.twins.get(size)
  if (twin !== undefined && INHERITED_OR_TURN.has(toDimension(twin) ?? '')) return take('twin', twin)
  // By the two sentences before, where this one names nothing.
  const all = around.earlier.trim()
  const earlier =
    measured === undefined && all !== ''
      ? warmOnly(toMeasurand(all, all.length, all.length, { isNamed: true }), size)
      : undefined
  return (
    (earlier === undefined ? undefined : take('earlier', unitOf(earlier, size, around))) ??
    take(
      'recent',
      recent.findLast(said => fits(said, size, 3, FASTENED.test(`${before} ${text}`) ? RECALLED_OR_TORQUE : RECALLED))
        ?.quantity.unit,
    )
  )
}
