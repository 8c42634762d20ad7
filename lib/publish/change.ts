import type { Edit } from '@/lib/procedure/edit'
import { shorten } from '@/lib/procedure/shorten'
import { toLine } from './text'

/** One thing a hand changed in a sheet. */
export type Change = {
  /** What keeping it would do, in plain words. */
  readonly about: string
  /** Line of the sheet, counted from 1. */
  readonly line: number
  /** Id of the mark it is about; absent for the heading. */
  readonly mark?: string
  /** Why it may not be meant, and what to do; such a change is kept only where the user says so. */
  readonly doubt?: string
  readonly edit: Edit
}

/** @returns the text as a line of at most 60 characters, of whole words. */
export const clip = (text: string): string => shorten(toLine(text), 60)
