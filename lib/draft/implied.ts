import type { Mark } from '@/lib/procedure/mark'
import { convert } from '@/lib/quantity/units'
import { toDimension } from './dimension'
import type { Drafted } from './sentence-marks'

/** Most that a torque screwdriver does, in newton metres. */
const MOST_BY_HAND = 5

/** Small screws take a screwdriver, where bolts take a wrench. */
const isForScrews = ({ quantity, text, said }: Mark): boolean => {
  const value = quantity?.high ?? quantity?.nominal ?? quantity?.low
  if (value === undefined || quantity?.unit === undefined || !/\bscrews?\b/i.test(`${text} ${said ?? ''}`)) return false
  const torque = convert(value, quantity.unit, 'N.m')
  return torque.ok && torque.value <= MOST_BY_HAND
}

/** What a figure calls for, where no tool of that name was said. Common practice, no source. */
const IMPLIED: readonly {
  readonly dimensions: readonly string[]
  readonly fits?: (spec: Mark) => boolean
  readonly tool: string
  readonly known: RegExp
  readonly reason: string
}[] = [
  {
    dimensions: ['torque'],
    fits: isForScrews,
    tool: 'torque screwdriver',
    known: /torque|click/i,
    reason: 'a torque of a small screw is given; nobody named the tool',
  },
  {
    dimensions: ['torque'],
    fits: spec => !isForScrews(spec),
    tool: 'torque wrench',
    known: /torque|click/i,
    reason: 'a torque is given; nobody named the tool',
  },
  {
    dimensions: ['resistance', 'voltage', 'current'],
    tool: 'multimeter',
    known: /meter|tester|lamp/i,
    reason: 'an electrical figure is given; nobody named the meter',
  },
]

/** Tools that nobody named but a figure calls for; each once, where the first such figure is. */
export const impliedTools = (specs: readonly Drafted[], tools: readonly Drafted[]): readonly Drafted[] =>
  IMPLIED.flatMap(({ dimensions, fits = () => true, tool, known, reason }): readonly Drafted[] => {
    const first = specs.find(({ mark }) => dimensions.includes(toDimension(mark.quantity?.unit) ?? '') && fits(mark))
    if (first === undefined || tools.some(({ mark }) => known.test(mark.text))) return []
    const { start, end, said } = first.mark
    return [
      {
        sentence: first.sentence,
        mark: { id: '', kind: 'tool', start, end, said, text: tool, pencilled: { confidence: 0.6, reason } },
      },
    ]
  })
