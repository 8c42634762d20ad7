import { reviewProject } from '@/lib/review/review'
import { sample } from '@/lib/review/sample'

type Marks = Parameters<typeof sample>[0]

/** How many findings of a rule a sheet of such marks gets. */
export const asked = (rule: string, marks: Marks, options?: Parameters<typeof sample>[1]): number =>
  reviewProject(sample(marks, options)).filter(finding => finding.rule === rule).length

/** Steps alone, as marks of a sheet. */
export const steps = (...texts: readonly string[]): Marks => texts.map(text => ['step', text] as const)
