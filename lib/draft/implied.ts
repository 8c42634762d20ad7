import { toDimension } from './dimension'
import type { Drafted } from './sentence-marks'

/** What a figure calls for, where no tool of that name was said. Common practice, no source. */
const IMPLIED: readonly {
  readonly dimensions: readonly string[]
  readonly tool: string
  readonly known: RegExp
  readonly reason: string
}[] = [
  {
    dimensions: ['torque'],
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
  IMPLIED.flatMap(({ dimensions, tool, known, reason }): readonly Drafted[] => {
    const first = specs.find(({ mark }) => dimensions.includes(toDimension(mark.quantity?.unit) ?? ''))
    if (first === undefined || tools.some(({ mark }) => known.test(mark.text))) return []
    const { start, end, said } = first.mark
    return [
      {
        sentence: first.sentence,
        mark: { id: '', kind: 'tool', start, end, said, text: tool, pencilled: { confidence: 0.6, reason } },
      },
    ]
  })
