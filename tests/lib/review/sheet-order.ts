import type { Mark } from '@/lib/procedure/mark'
import { stepsInOrder } from '@/lib/procedure/place'

/** @returns the steps in order, as a list that may be changed. */
export const sheetOrder = (marks: readonly Mark[]): Mark[] => [...stepsInOrder(marks)]
