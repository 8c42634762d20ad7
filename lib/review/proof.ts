import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import type { Act } from '@/lib/trade/pairs'
import { actionsOf } from './action'
import { atSteps } from './chunks'
import { onceForLast } from './memo'

/** Everything the sheet tells to do or look at, in order: steps, then their checks. */
export type Line = { readonly text: string; readonly step: SheetStep; readonly isCheck: boolean }

const linesIn = atSteps(({ mark, checks }): readonly Omit<Line, 'step'>[] => [
  { text: mark.text, isCheck: false },
  ...checks.map(({ text }) => ({ text, isCheck: true })),
])

/** @returns every step and check of a sheet in order. */
export const linesOf = onceForLast((sheet: Sheet): readonly Line[] => linesIn(sheet))

/** @returns the last step whose text matches, or that does one of the acts on a thing that matches. */
export const lastStep = (sheet: Sheet, is: (step: SheetStep) => boolean): SheetStep | undefined =>
  sheet.steps.findLast(is)

/** @returns whether a step does one of the acts to a thing one of whose words matches. */
export const actsOn = (text: string, acts: ReadonlySet<Act>, words: RegExp): boolean =>
  actionsOf(text).some(
    action =>
      [...action.acts].some(act => acts.has(act)) &&
      action.things.some(thing => thing.words.some(word => words.test(word))),
  )

/** Acts that put something together. */
export const REDO: ReadonlySet<Act> = new Set<Act>(['refit', 'tighten', 'connect'])
