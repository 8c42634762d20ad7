import type { Mark } from '@/lib/procedure/mark'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'

/** The step each mark stands under, by the mark's id. */
export type StepNumbers = ReadonlyMap<string, number>

export const stepNumbers = (sheet: Sheet): StepNumbers =>
  new Map(
    sheet.steps.flatMap(step => [step.mark, ...ownedBy(step)].map((mark): [string, number] => [mark.id, step.number])),
  )

/** Everything under a step but its cautions, in the order it is read. */
export const detailsOf = (step: SheetStep): readonly Mark[] => [
  ...step.tools,
  ...step.materials,
  ...step.specs,
  ...step.checks,
  ...step.reasons,
  ...step.symptoms,
]

const ownedBy = (step: SheetStep): readonly Mark[] => [...step.cautions, ...detailsOf(step)]

/** @returns whether two tools or materials are the same thing by name. */
export const sameName = (a: Mark, b: Mark): boolean => a.text.trim().toLowerCase() === b.text.trim().toLowerCase()
