import type { Mark } from '@/lib/procedure/mark'
import { hasNumber } from '@/lib/quantity/quantity'
import { dimensionOf } from '@/lib/quantity/units'
import { checkTool, type ToolCheck } from '@/lib/quantity/verify'
import { instrumentIn, isTooCoarse } from '../instrument'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

type Measuring = Mark & { readonly capability: NonNullable<Mark['capability']> }

const isMeasuring = (mark: Mark): mark is Measuring => mark.kind === 'tool' && mark.capability !== undefined
const TORQUE_TOOL = /\btorque\b|\bangle gauge\b|\bclick\w*\b/i

/**
 * A shop tool is trusted while its error is no wider than the tolerance, give or take what both figures are rounded by; 4:1, as for
 * calibration, would rule out most wrenches to ISO 6789. Common practice, no source.
 */
const RATIO = 0.95

const measures = (spec: Mark, { capability }: Measuring): ToolCheck | undefined =>
  spec.quantity &&
  checkTool(
    spec.quantity,
    {
      range: capability.range,
      ...(capability.deviation === undefined ? {} : { deviation: capability.deviation }),
    },
    { threshold: RATIO },
  )

/** A jug for a litre of acid is not there for the hundred litres of water beside it: vessels that fit a spec of their own step. */
const isForAnother = (tool: Measuring, spec: Mark, specs: readonly Mark[]): boolean =>
  dimensionOf(spec.quantity?.unit ?? '') === 'volume' &&
  tool.step !== spec.step &&
  specs.some(other => other !== spec && other.step === tool.step && measures(other, tool)?.isCovered === true)

/** The doubt about one spec: every tool that measures such a thing is out of range or too coarse. */
const doubt = (spec: Mark, tools: readonly Measuring[]): string | undefined => {
  const coarse = tools.filter(tool => isTooCoarse(spec, tool.text))
  const checks = tools.filter(tool => !coarse.includes(tool)).flatMap(tool => measures(spec, tool) ?? [])
  const [first] = coarse
  if (checks.length === 0 && first !== undefined && measures(spec, first) !== undefined)
    return `"${first.text}" cannot be read as finely as the tolerance asks.`
  if (checks.length === 0 || checks.some(({ isCovered, isEnough }) => isCovered && isEnough !== false)) return undefined
  return (checks.find(({ isCovered }) => isCovered) ?? checks[0])?.text
}

/** Whether a tool without a range, by its name, may measure a spec: an instrument of its kind, fine enough. */
const mayMeasure = (spec: Mark, name: string): boolean => {
  const instrument = instrumentIn(name)
  const dimension = dimensionOf(spec.quantity?.unit ?? '')
  return (
    instrument !== undefined &&
    (instrument.kinds.length === 0 || dimension === undefined || instrument.kinds.includes(dimension)) &&
    !isTooCoarse(spec, name)
  )
}

/** Tools whose range nobody told: instruments by name, torque tools by the step they are listed with. */
const rangeless = (marks: readonly Mark[], measuring: readonly Measuring[]) => {
  const known = new Set(measuring.map(({ text }) => text.toLowerCase()))
  const names = new Set<string>()
  const torqueSteps = new Set<string | undefined>()
  for (const { kind, text, capability, step } of marks) {
    if (kind !== 'tool' || capability !== undefined) continue
    if (!TORQUE_TOOL.test(text)) names.add(text)
    else if (!known.has(text.toLowerCase())) torqueSteps.add(step)
  }
  return { names: [...names], torqueSteps }
}

const check = ({ project }: Subject): readonly Found[] => {
  const specs = project.marks.filter(
    ({ kind, quantity }) => kind === 'spec' && quantity?.unit !== undefined && hasNumber(quantity),
  )
  if (specs.length === 0) return []
  const tools = project.marks.filter(isMeasuring)
  const { names, torqueSteps } = rangeless(project.marks, tools)
  const measured = (tools.length === 0 ? [] : specs).flatMap((spec): Found[] => {
    const isOpen =
      dimensionOf(spec.quantity?.unit ?? '') === 'torque'
        ? torqueSteps.has(spec.step)
        : names.some(name => mayMeasure(spec, name))
    const text = isOpen
      ? undefined
      : doubt(
          spec,
          tools.filter(tool => !isForAnother(tool, spec, specs)),
        )
    return text === undefined
      ? []
      : [
          {
            place: atMark(spec),
            message: `No listed tool can verify "${spec.text}". ${text} Choose a finer tool or one of the right range.`,
          },
        ]
  })
  const torque = specs.find(({ quantity }) => dimensionOf(quantity?.unit ?? '') === 'torque')
  const isListed = project.marks.some(({ kind, text }) => kind === 'tool' && TORQUE_TOOL.test(text))
  if (torque === undefined || isListed) return measured
  return [
    ...measured,
    {
      place: atMark(torque),
      message: `"${torque.text}" is a torque and no torque tool is listed. List one whose range covers it.`,
    },
  ]
}

/** A limit nobody can measure is a wish. */
export const toolCannotVerify: Rule = {
  id: 'tool-cannot-verify',
  level: 'fix',
  about: 'No listed tool can measure a spec: none of the right kind, out of range, or too coarse for its tolerance.',
  why: 'Read at the end of its scale, a wrench shows a number and proves nothing.',
  source:
    'ISO 6789-1:2017 for torque tools; 1:1 for shop tools is common practice, no source (ANSI/NCSL Z540.3-2006 asks 4:1 of calibration, from memory)',
  trips: sample([
    ['step', 'Torque the cover screws'],
    ['spec', 'cover screw torque', { quantity: { low: 4, high: 5, unit: 'N.m' } }],
    ['tool', 'large torque wrench', { capability: { range: { low: 40, high: 200, unit: 'N.m' } } }],
  ]),
  passes: sample([
    ['step', 'Torque the cover screws'],
    ['spec', 'cover screw torque', { quantity: { low: 4, high: 6, unit: 'N.m' } }],
    ['tool', 'torque screwdriver', { capability: { range: { low: 1, high: 8, unit: 'N.m' }, deviation: 4 } }],
  ]),
  check,
}
