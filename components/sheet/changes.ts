import type { ClearableField, Edit } from '@/lib/procedure/edit'
import type { Mark } from '@/lib/procedure/mark'
import type { SheetActions } from './actions'

/** @returns the edit that sets a field of a mark, or takes it away where the value is empty. */
export const changeMark = (id: string, field: ClearableField & keyof Mark, value: string): Edit =>
  value === ''
    ? { do: 'change-mark', id, clear: [field] }
    : { do: 'change-mark', id, to: { [field]: value } as Partial<Omit<Mark, 'id'>> }

/** @returns a field's handler that sets a text of the mark. */
export const setText =
  (mark: Mark, field: ClearableField & keyof Mark, actions: SheetActions) =>
  (typed: string): undefined => {
    actions.perform(changeMark(mark.id, field, typed.trim()))
    return undefined
  }
