import type { Mark } from '@/lib/procedure/mark'
import type { Sheet } from '@/lib/procedure/sheet'
import { sameName, stepNumbers } from './sections'
import { marksOf } from './selection'
import { toLine } from './text'

/** A tool or material, once, with the steps that need it. */
export type Thing = {
  readonly mark: Mark
  readonly name: string
  readonly price?: string
  readonly steps: readonly number[]
}

/** @returns tools or materials, each name once, steps in rising order; the price of the first that has one. */
export const toThings = (sheet: Sheet, kind: 'tool' | 'material'): readonly Thing[] => {
  const numbers = stepNumbers(sheet)
  const all = marksOf(sheet).filter(mark => mark.kind === kind)
  return (kind === 'tool' ? sheet.tools : sheet.materials).map(mark => {
    const same = all.filter(other => sameName(other, mark))
    const steps = [...new Set(same.flatMap(other => numbers.get(other.id) ?? []))].sort((a, b) => a - b)
    const price = toLine(same.find(other => toLine(other.price ?? '') !== '')?.price ?? '')
    return { mark, name: toLine(mark.text), steps, ...(price === '' ? {} : { price }) }
  })
}
