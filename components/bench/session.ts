import type { During } from '@/components/ui/typing'
import type { Edit } from '@/lib/procedure/edit'
import { type History, perform, redo, startHistory, undo } from '@/lib/procedure/history'
import type { Project } from '@/lib/procedure/project'
import type { ProjectStore } from '@/lib/store/store'

/** How safe the work is: on disk, on its way, or not to be saved (and why). */
export type Saved =
  | { readonly is: 'saved' }
  | { readonly is: 'saving' }
  | { readonly is: 'failed'; readonly why: string }

export type SessionState = { readonly history: History; readonly saved: Saved }

/** Once what an edit changed is on screen: to save a talk of hours takes longer than a frame. At once where there is no screen. */
const painted = (): Promise<void> | undefined =>
  typeof requestAnimationFrame === 'undefined'
    ? undefined
    : new Promise(resolve => {
        requestAnimationFrame(() => setTimeout(resolve))
        // A page that is not shown has no frames.
        setTimeout(resolve, 200)
      })

/** One project being worked on: what it is, what can be taken back, and whether it is saved. */
export type Session = {
  readonly get: () => SessionState
  readonly subscribe: (listener: () => void) => () => void
  /** Does edits as one change and saves. */
  readonly perform: (...edits: Edit[]) => void
  /** Does work whose edits come from typing: all of one key are one change; without a key they join the last typing. */
  readonly during: During
  readonly undo: () => void
  readonly redo: () => void
  /** Tries a failed save again. */
  readonly save: () => void
  /** Keeps at once what is in no store yet: the page goes. */
  readonly keepLast: () => void
}

/**
 * Opens a session that saves after every change, one save at a time, always the newest.
 *
 * @param store where to save, or undefined for a session that must not (the project is open elsewhere)
 */
export const openSession = (id: string, project: Project, store: ProjectStore | undefined): Session => {
  let state: SessionState = { history: startHistory(project), saved: { is: 'saved' } }
  const listeners = new Set<() => void>()
  let isSaving = false
  let isBehind = false
  let typing: string | undefined

  const tell = (next: Partial<SessionState>) => {
    state = { ...state, ...next }
    for (const listener of listeners) listener()
  }

  const save = async () => {
    if (store === undefined) return
    if (isSaving) {
      isBehind = true
      return
    }
    isSaving = true
    tell({ saved: { is: 'saving' } })
    try {
      do {
        const shown = painted()
        if (shown !== undefined) await shown
        isBehind = false
        await store.save(id, state.history.present)
      } while (isBehind)
      tell({ saved: { is: 'saved' } })
    } catch (error) {
      tell({ saved: { is: 'failed', why: error instanceof Error ? error.message : String(error) } })
    } finally {
      isSaving = false
    }
  }

  const change = (history: History) => {
    if (history.present === state.history.present) return
    tell({ history })
    void save()
  }

  return {
    get: () => state,
    subscribe: listener => {
      listeners.add(listener)
      return () => void listeners.delete(listener)
    },
    perform: (...edits) => change(perform(state.history, edits, typing)),
    during: (key, work) => {
      const before = typing
      typing = key ?? state.history.typing
      try {
        return work()
      } finally {
        typing = before
      }
    },
    undo: () => change(undo(state.history)),
    redo: () => change(redo(state.history)),
    save: () => void save(),
    keepLast: () => {
      if (state.saved.is !== 'saved') store?.keepLast(id, state.history.present)
    },
  }
}
