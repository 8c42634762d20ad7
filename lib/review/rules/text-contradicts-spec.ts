import type { Mark } from '@/lib/procedure/mark'
import { formatQuantity } from '@/lib/quantity/format'
import { isToleranced, type Quantity } from '@/lib/quantity/quantity'
import type { Reading } from '@/lib/quantity/read'
import { dimensionOf } from '@/lib/quantity/units'
import { inSteps, type StepBody } from '../chunks'
import { disagree } from '../disagreeing'
import { quote } from '../late'
import { atMark, type Found, type Remedy, type Rule } from '../rule'
import { readingsIn } from '../said'
import { sample } from '../sample'
import { contentStems, stemSet } from '../words'

/** What a step may have several of: how far, how long. There a number counts only where the step names what the spec is of. */
const MANIFOLD: ReadonlySet<string> = new Set(['m', 's'].map(unit => dimensionOf(unit) ?? unit))

/** Words of a spec's name that say what is measured, or of how many kinds of part. */
const GENERAL = new Set(
  'torque pressure gap limit temperature time level value tension length clearance distance depth width height thickness'.split(
    ' ',
  ),
)

type Pair = { readonly told: Reading; readonly spec: Mark }

const kindOf = ({ quantity }: Pick<Mark, 'quantity'>): string | undefined => dimensionOf(quantity?.unit ?? '')

const SEAM = /[,;:]|\b(?:and|then|before|after|until|while)\b/i

/** Whether the spec's thing is named in the same breath as the number. */
const isNamed = (spec: Mark, text: string, { at, to }: Reading): boolean => {
  const before = text.slice(0, at).split(SEAM).at(-1) ?? ''
  const [after = ''] = text.slice(to).split(SEAM)
  const stems = stemSet(`${before} ${after}`)
  return contentStems(spec.text).some(stem => !GENERAL.has(stem) && stems.has(stem))
}

/** Numbers of a text that no spec of their dimension bears out, with the specs of that dimension nothing in the text bears out. */
const contradictionsIn = (text: string, specs: readonly Mark[]): readonly Pair[] => {
  const told = readingsIn(text).filter(reading => reading.equivalentOf === undefined && kindOf(reading) !== undefined)
  const agree = (reading: Reading, { quantity }: Mark): boolean =>
    quantity !== undefined && kindOf(reading) === kindOf({ quantity }) && !disagree(reading.quantity, quantity)
  const stray = told.filter(reading => !specs.some(spec => agree(reading, spec)))
  const open = specs.filter(spec => !told.some(reading => agree(reading, spec)))
  return stray.flatMap(reading =>
    open
      .filter(spec => kindOf(spec) === kindOf(reading))
      .filter(spec => !MANIFOLD.has(kindOf(spec) ?? '') || isNamed(spec, text, reading))
      .map(spec => ({ told: reading, spec })),
  )
}

/** Whether the number in the step's words was put there by hand: nobody spoke it. */
const isByHand = ({ said }: Mark, { quantity }: Reading): boolean =>
  said.trim() !== '' && !readingsIn(said).some(reading => !disagree(reading.quantity, quantity))

/** Sums of decimals without their last binary digits. */
const rounded = (value: number): number => Number(value.toPrecision(12))

/**
 * The corrected value with as much tolerance as the spec gave the old one; a sole limit stays one.
 *
 * @returns undefined where the units differ, so that the tolerance can't be kept as it was written
 */
const withTolerance = (told: Quantity, spec: Quantity | undefined): Quantity | undefined => {
  const { nominal } = told
  if (spec === undefined || nominal === undefined || isToleranced(told)) return told
  const { low, high } = spec
  if (low === undefined && high === undefined) return told
  if (spec.unit !== told.unit) return undefined
  const unit = told.unit === undefined ? {} : { unit: told.unit }
  if (low === undefined) return { high: nominal, ...unit }
  if (high === undefined) return { low: nominal, ...unit }
  const middle = spec.nominal ?? (low + high) / 2
  const limits = { low: rounded(nominal - (middle - low)), high: rounded(nominal + (high - middle)) }
  return { ...limits, ...(spec.nominal === undefined ? {} : { nominal }), ...unit }
}

const remedyFor = (step: Mark, { told, spec }: Pair): Remedy | undefined => {
  const { id, text } = step
  const value = formatQuantity(spec.quantity ?? {})
  if (value === '' || told.part !== undefined) return undefined
  // Whoever corrected the words knew better than the talk.
  if (isByHand(step, told)) {
    const quantity = withTolerance(told.quantity, spec.quantity)
    return quantity === undefined
      ? undefined
      : {
          label: `Say ${formatQuantity(quantity)} in the spec`,
          edits: [{ do: 'change-mark', id: spec.id, to: { quantity } }],
        }
  }
  return {
    label: `Say ${value} in the step`,
    edits: [{ do: 'change-mark', id, to: { text: `${text.slice(0, told.at)}${value}${text.slice(told.to)}` } }],
  }
}

const checkStep = ({ mark, specs }: StepBody): readonly Found[] => {
  const pairs = specs.length === 0 ? [] : contradictionsIn(mark.text, specs)
  const [first] = pairs
  if (first === undefined) return []
  const remedy = pairs.length === 1 ? remedyFor(mark, first) : undefined
  return [
    {
      place: atMark(mark),
      message: `${quote(mark)} says ${first.told.text}, and its spec ${quote(first.spec)} ${formatQuantity(first.spec.quantity ?? {})}. Find out which one holds and let the sheet say that one only.`,
      ...(remedy === undefined ? {} : { remedy }),
    },
  ]
}

const inEach = inSteps(checkStep)

/** The instruction and the spec beside it say two values. */
export const textContradictsSpec: Rule = {
  id: 'text-contradicts-spec',
  level: 'stop',
  about: 'A number in the words of a step contradicts its spec.',
  why: 'Hands follow the sentence, not the box beside it: the value that was taken back or mistyped is the one they set.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Tighten the hub nut to 40 N·m'],
    ['spec', 'hub nut torque', { quantity: { low: 28, high: 32, unit: 'N.m' } }],
  ]),
  passes: sample([
    ['step', 'Tighten the hub nut to 30 N·m'],
    ['spec', 'hub nut torque', { quantity: { low: 28, high: 32, unit: 'N.m' } }],
    ['step', 'Back the hub nut off 5 mm and set the axle gap'],
    ['spec', 'axle gap', { quantity: { low: 0.1, high: 0.2, unit: 'mm' } }],
  ]),
  check: ({ sheet }) => inEach(sheet),
}
