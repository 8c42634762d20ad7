import type { Mark } from '@/lib/procedure/mark'
import type { Sheet } from '@/lib/procedure/sheet'
import type { Remedy } from './rule'

/**
 * @returns a remedy that adds a step after step `number` (0 for the front), taking the time of `near`. It is added and then moved
 *   to its number: the steps of a file may have no places yet. With a question that only the shop can answer it is pencilled.
 */
export const addStep = (id: string, text: string, number: number, near: Mark, question?: string): Remedy => {
  const { start, end } = near
  const pencilled = question === undefined ? {} : { pencilled: { confidence: 0.5, reason: 'nobody said it', question } }
  const step: Mark = { id: `step-${id}-${near.id}`, kind: 'step', start, end, text, said: '', ...pencilled }
  return {
    label: `Add "${text}" as step ${number + 1}`,
    edits: [
      { do: 'add-marks', marks: [step] },
      { do: 'move-step', id: step.id, place: number + 1 },
    ],
  }
}

/** @returns a remedy that moves a step to the given number. */
export const moveStep = (step: Mark, number: number): Remedy => ({
  label: `Move it to step ${number}`,
  edits: [{ do: 'move-step', id: step.id, place: number }],
})

/** @returns a remedy that attaches a caution to another step. */
export const attachTo = (caution: Mark, step: Mark, number: number): Remedy => ({
  label: `Move it before step ${number}`,
  edits: [{ do: 'change-mark', id: caution.id, to: { step: step.id } }],
})

/** @returns a remedy that adds a caution to a step. */
export const addCaution = (step: Mark, hazard: string, level: NonNullable<Mark['level']>, text: string): Remedy => ({
  label: 'Add the usual caution',
  edits: [
    {
      do: 'add-marks',
      marks: [
        {
          id: `caution-${hazard}-${step.id}`,
          kind: 'caution',
          start: step.start,
          end: step.end,
          text,
          said: '',
          step: step.id,
          level,
          hazard,
        },
      ],
    },
  ],
})

/** @returns a remedy that rewrites what a mark says. */
export const rewrite = (mark: Mark, text: string): Remedy => ({
  label: `Write "${text}"`,
  edits: [{ do: 'change-mark', id: mark.id, to: { text } }],
})

const STARTS =
  /^(?:[a-z]+ly |now |then |finally )?(?:run|start|switch on|turn on|restore|plug in|power up|energi[sz]e|test|remove (?:the |your )?(?:lock|padlock)|unlock|reconnect the (?:battery|supply|power))\b/i

/** @returns after which step something left undone is best made good: before the first run or test that follows, else at the end. */
export const placeToMend = ({ steps }: Sheet, after: number): number => {
  const run = steps.find(({ number, mark }) => number > after && STARTS.test(mark.text))
  return run === undefined ? steps.length : run.number - 1
}
