import { applyEdit, type Edit } from './edit'
import type { Project } from './project'

/** Where a project has been: undo is a list. Parts that did not change are shared, so a long list is cheap. */
export type History = {
  readonly past: readonly Project[]
  readonly present: Project
  readonly future: readonly Project[]
  /** The typing the last change came from; more of it joins that change. */
  readonly typing?: string
}

/** How many changes can be taken back. */
const LONGEST = 1000

/** @returns a history that starts here. */
export const startHistory = (present: Project): History => ({ past: [], present, future: [] })

/**
 * Does several edits as one change.
 *
 * @param typing key of the typing they come from: one change with what came from it just before
 * @returns the history with the change on top; the same history where nothing changed
 */
export const perform = (history: History, edits: readonly Edit[], typing?: string): History => {
  const present = edits.reduce(applyEdit, history.present)
  if (present === history.present) return history
  const joins = typing !== undefined && typing === history.typing
  const past = joins ? history.past : [...history.past.slice(1 - LONGEST), history.present]
  return { past, present, future: [], ...(typing === undefined ? {} : { typing }) }
}

/** @returns the history one change back; the same where there is none. */
export const undo = ({ past, present, future }: History): History => {
  const before = past.at(-1)
  return before === undefined
    ? { past, present, future }
    : { past: past.slice(0, -1), present: before, future: [present, ...future] }
}

/** @returns the history one change forward; the same where there is none. */
export const redo = ({ past, present, future }: History): History => {
  const [after, ...rest] = future
  return after === undefined ? { past, present, future } : { past: [...past, present], present: after, future: rest }
}
