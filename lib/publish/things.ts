import type { Mark } from '@/lib/procedure/mark'
import type { Sheet } from '@/lib/procedure/sheet'
import { marksOf } from './selection'
import { sameName, stepNumbers } from './standing'
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

/** Cautions of the same level, hazard and text: said once in a summary. */
export type SameCautions = { readonly mark: Mark; readonly all: readonly Mark[] }

/** What makes two cautions the same: level, hazard, text, and whether anyone has kept them. */
export const cautionKey = ({ level = 'caution', hazard = '', text, pencilled }: Mark): string =>
  JSON.stringify([level, toLine(hazard), toLine(text), pencilled !== undefined])

/** @returns cautions grouped where they say the same, in the order given. None is left out. */
export const toSameCautions = (cautions: readonly Mark[]): readonly SameCautions[] => {
  const groups = new Map<string, Mark[]>()
  for (const mark of cautions) groups.set(cautionKey(mark), [...(groups.get(cautionKey(mark)) ?? []), mark])
  return [...groups.values()].flatMap(all => (all[0] === undefined ? [] : [{ mark: all[0], all }]))
}

/** @returns `step 4`, `steps 2, 4`, or nothing where there is no step. */
export const stepsPhrase = (steps: readonly number[]): string => {
  const each = [...new Set(steps)].sort((a, b) => a - b)
  return each.length === 0 ? '' : `${each.length === 1 ? 'step' : 'steps'} ${each.join(', ')}`
}
