import type { Mark } from '@/lib/procedure/mark'
import type { Thing } from './thing'
import type { Undone } from './undone'

/** Something undone in a step and not made good by any later one. */
export type Open = {
  readonly undone: Undone
  readonly thing: Thing
  readonly step: Mark
  readonly number: number
  /** What it holds: the panel of "the four screws of the base panel". */
  readonly of: Thing | undefined
  /** How many things the same words undo: "the mount, bearing and upper seat". */
  readonly among: number
}

/** The same before its step has a number. */
export type Unplaced = Omit<Open, 'number'>
