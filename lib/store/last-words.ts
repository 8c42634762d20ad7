import type { Project } from '@/lib/procedure/project'

/** Where a page that goes can still write: the browser answers at once. */
export type QuickStore = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>

/** Projects, without their transcripts, that a page kept when it went before they were saved. */
export type LastWords = {
  readonly keep: (id: string, project: Project) => void
  /** @returns undefined where nothing was kept or what was kept is damaged. */
  readonly find: (id: string) => unknown
  readonly forget: (id: string) => void
  /** Marks a save as begun. @returns what to do when it is on the disk: forgets what was kept before it began */
  readonly beginSave: (id: string) => () => void
}

/** @returns this page's quick store; undefined where the browser has none or bars it. */
export const quickStore = (): QuickStore | undefined => {
  try {
    return globalThis.localStorage
  } catch {
    return undefined
  }
}

/** @param quick undefined keeps nothing */
export const openLastWords = (name: string, quick: QuickStore | undefined): LastWords => {
  let moment = 0
  const keptAt = new Map<string, number>()
  const keyOf = (id: string) => `${name}/last/${id}`
  const forget = (id: string) => quick?.removeItem(keyOf(id))
  return {
    keep: (id, project) => {
      try {
        quick?.setItem(keyOf(id), JSON.stringify(project))
        keptAt.set(id, ++moment)
      } catch {
        // No room: the page has asked before it goes, and more can't be done while it goes.
      }
    },
    find: id => {
      try {
        return JSON.parse(quick?.getItem(keyOf(id)) ?? 'null') ?? undefined
      } catch {
        return undefined
      }
    },
    forget,
    beginSave: id => {
      const begun = ++moment
      return () => {
        if ((keptAt.get(id) ?? 0) < begun) forget(id)
      }
    },
  }
}
