import { countOf } from '@/lib/procedure/count'
import type { BenchEntry } from '@/lib/store/store'

/** How many marks a recording has, and how many of them nobody has kept yet. */
export const marksWords = ({ marks, pencilled }: BenchEntry): string =>
  marks === 0 ? 'no marks yet' : `${countOf(marks, 'mark')}${pencilled === 0 ? '' : `, ${pencilled} of them pencilled`}`
