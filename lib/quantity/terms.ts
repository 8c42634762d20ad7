import type { Lexeme } from './lexemes'
import { BETWEEN, findUnit, sized, unitAt } from './said-units'
import type { UnitWord } from './unit-words'

/** One number with the unit said right after it. */
export type Term = {
  readonly value: number
  readonly unit?: UnitWord
  /** Lexeme indices [from, to). */
  readonly from: number
  readonly to: number
  /** The number was implied: `a quart`. */
  readonly isImplied?: boolean
  readonly isVague?: boolean
  readonly isNegative?: boolean
  /** The number's lexeme, where there is one. */
  readonly number?: Extract<Lexeme, { is: 'number' }>
  readonly slips: readonly string[]
}

const THOUSANDS = new Set(['thousands', "thousand's"])

/** `an inch and a quarter`: a fraction after the unit that has no unit of its own. */
const fractionAfter = (lexemes: readonly Lexeme[], i: number): { value: number; to: number } | undefined => {
  if (lexemes[i]?.text !== 'and') return undefined
  const fraction = lexemes[i + 1]
  if (fraction?.is !== 'number' || fraction.numeral.denominator === undefined || fraction.numeral.value >= 1)
    return undefined
  const next = lexemes[i + 2]
  return next?.is === 'unit' && next.unit.isSymbol !== true ? undefined : { value: fraction.numeral.value, to: i + 2 }
}

/** Whether a number right after minutes or hours is of the next smaller: nothing but an end or a range follows. */
const isSixtieths = (number: Extract<Lexeme, { is: 'number' }>, next: Lexeme | undefined): boolean =>
  Number.isInteger(number.numeral.value) &&
  number.numeral.value >= 5 &&
  number.numeral.value < 60 &&
  (next === undefined || next.text === '.' || (next.is === 'role' && next.role === 'range' && next.text === 'to'))

const COMPOUND_KINDS = new Set(['time', 'length', 'mass'])

/** `two hours thirty minutes`, `5 ft 3 in`, `two minutes thirty`: a smaller unit of the same kind after the first. */
const addSmaller = (lexemes: readonly Lexeme[], term: Term): Term => {
  const big = sized(term.unit)
  if (big === undefined || !COMPOUND_KINDS.has(big.kind) || !Number.isInteger(term.value)) return term
  const at = lexemes[term.to]?.text === 'and' ? term.to + 1 : term.to
  const number = lexemes[at]
  if (number?.is !== 'number') return term
  const unit = findUnit(lexemes, at + 1, number)
  // "six foot three"
  const next = lexemes[at + 1]
  if (
    unit === undefined &&
    term.unit?.code === '[ft_i]' &&
    at === term.to &&
    number.numeral.value < 12 &&
    (next === undefined || next.is === 'stop')
  )
    return { ...term, value: term.value + number.numeral.value / 12, to: at + 1 }
  // "Six minutes ten"
  const isSeconds = term.unit?.code === 'min' || term.unit?.code === 'h'
  if (unit === undefined && isSeconds && at === term.to && isSixtieths(number, next))
    return { ...term, value: term.value + number.numeral.value / 60, to: at + 1 }
  const small = sized(unit?.unit)
  if (unit === undefined || small === undefined || small.kind !== big.kind || small.factor >= big.factor) return term
  if (big.system !== small.system || number.numeral.value * small.factor >= big.factor) return term
  const isPounds = term.unit?.ambiguous === 'pound'
  return {
    ...term,
    value: term.value + (number.numeral.value * small.factor) / big.factor,
    to: unit.to,
    ...(isPounds
      ? { unit: { code: '[lb_av]', count: 'any' }, slips: [...term.slips, 'pounds and ounces together read as weight'] }
      : {}),
  }
}

/**
 * The term that starts at lexeme `i`: a number with its unit, or `a quart`.
 *
 * @param isImpliedAllowed whether an article before a unit counts as one
 */
export const readTerm = (lexemes: readonly Lexeme[], i: number, isImpliedAllowed: boolean): Term | undefined => {
  const first = lexemes[i]
  if (first === undefined) return undefined
  if (first.is === 'role' && (first.role === 'minus' || first.text === '-')) return readNegative(lexemes, i)
  if (first.text === '-' && first.is === 'word') return readNegative(lexemes, i)
  if (first.is === 'number') return readNumbered(lexemes, i, first)
  const isArticle =
    first.text === 'a' ||
    first.text === 'an' ||
    (first.is === 'role' && first.role === 'filler' && /^(?:an? |another)/.test(first.text))
  if (isImpliedAllowed && first.is === 'unit') return readUnnumbered(lexemes, i)
  if (!isImpliedAllowed || !isArticle) return undefined
  let at = i + 1
  for (let n = 0; n < 2 && BETWEEN.has(lexemes[at]?.text ?? ''); n++) at++
  const unit = lexemes[at]
  if (unit?.is !== 'unit' || unit.unit.count === 'many' || unit.unit.isSymbol === true) return undefined
  const fraction = fractionAfter(lexemes, at + 1)
  return {
    value: 1 + (fraction?.value ?? 0),
    unit: unit.unit,
    from: i,
    to: fraction?.to ?? at + 1,
    isImplied: true,
    slips: [],
  }
}

/** `Inch and a quarter.`, `that same foot and a half`: the one is left out. */
const readUnnumbered = (lexemes: readonly Lexeme[], i: number): Term | undefined => {
  const [unit, before] = [lexemes[i], lexemes[i - 1]]
  if (unit?.is !== 'unit' || unit.unit.count === 'many' || unit.unit.isSymbol === true) return undefined
  if (before !== undefined && before.is !== 'stop' && !UNNUMBERED_AFTER.has(before.text)) return undefined
  const fraction = fractionAfter(lexemes, i + 1)
  return fraction === undefined
    ? undefined
    : { value: 1 + fraction.value, unit: unit.unit, from: i, to: fraction.to, isImplied: true, slips: [] }
}

const UNNUMBERED_AFTER = new Set(
  "the same that's it's is was about around say at over under past than only just exactly of be".split(' '),
)

const readNumbered = (lexemes: readonly Lexeme[], i: number, first: Extract<Lexeme, { is: 'number' }>): Term => {
  const slips = first.numeral.slip === undefined ? [] : [first.numeral.slip]
  const base = {
    value: first.numeral.value,
    from: i,
    to: i + 1,
    number: first,
    ...(first.numeral.isVague === true ? { isVague: true } : {}),
  }
  // "thirty-five thousands" can only be thousandths.
  if (THOUSANDS.has(lexemes[i + 1]?.text ?? '') && first.numeral.value < 1000) {
    const isNamed =
      lexemes[i + 2]?.text === 'of' && ['a', 'an'].includes(lexemes[i + 3]?.text ?? '') && lexemes[i + 4]?.is === 'unit'
    const named = isNamed ? unitAt(lexemes, i + 4) : undefined
    const isPlain = lexemes[i + 2]?.text !== 'of'
    if (isPlain || named !== undefined)
      return {
        ...base,
        value: first.numeral.value / 1000,
        unit: named?.unit ?? { code: '[in_i]', count: 'many' },
        to: named?.to ?? i + 2,
        slips: [...slips, `“thousands” read as thousandths`],
        number: {
          ...first,
          numeral: {
            ...first.numeral,
            numerator: first.numeral.value,
            denominator: 1000,
            value: first.numeral.value / 1000,
          },
        },
      }
  }
  const unit = findUnit(lexemes, i + 1, first)
  if (unit === undefined) return { ...base, slips }
  if (unit.unit.slip !== undefined) slips.push(`“${unit.unit.slip}” read as the unit it sounds like`)
  const fraction = fractionAfter(lexemes, unit.to)
  return addSmaller(lexemes, {
    ...base,
    value: first.numeral.value + (fraction?.value ?? 0),
    unit: unit.unit,
    to: fraction?.to ?? unit.to,
    slips,
  })
}

const readNegative = (lexemes: readonly Lexeme[], i: number): Term | undefined => {
  const before = lexemes[i - 1]
  const sign = lexemes[i]
  const number = lexemes[i + 1]
  if (number?.is !== 'number' || before?.is === 'number' || before?.is === 'unit') return undefined
  if (sign?.text === '-' && !number.isGlued) return undefined
  const term = readNumbered(lexemes, i + 1, number)
  return { ...term, value: -term.value, from: i, isNegative: true }
}
