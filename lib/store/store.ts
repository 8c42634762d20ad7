import type { Result } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'

/** One line of the bench list. */
export type BenchEntry = {
  readonly id: string
  readonly title: string
  readonly equipment: string
  /** When it was last changed: milliseconds since 1970, UTC. */
  readonly changed: number
  readonly marks: number
  readonly pencilled: number
  /** Duration of the footage or of the talk, seconds. */
  readonly seconds: number
}

/** Where the footage can be had again: a handle the browser may reopen, or an address of our own origin (the demo). */
export type FootageSource = { readonly handle: FileSystemFileHandle } | { readonly address: string }

/** Where projects are kept. Every method fails with a TellwrightError (`store-failed`, `disk-full`). */
export type ProjectStore = {
  /** Newest change first. */
  readonly list: () => Promise<readonly BenchEntry[]>
  /** @returns undefined where there is no such project; problems where what is stored is damaged. */
  readonly load: (id: string) => Promise<Result<Project> | undefined>
  /** Resolves when the project is on the disk. */
  readonly save: (id: string, project: Project) => Promise<void>
  /**
   * Keeps a project at once, for a page that goes before a save is done; loading gives it until a later save is on the disk.
   * Changes of the transcript are not in it. Where there is no room, nothing is kept.
   */
  readonly keepLast: (id: string, project: Project) => void
  readonly remove: (id: string) => Promise<void>
  readonly keepSource: (id: string, source: FootageSource) => Promise<void>
  readonly sourceOf: (id: string) => Promise<FootageSource | undefined>
  /** The still of a step: a picture, kept apart from the project because it is large. */
  readonly keepStill: (id: string, mark: string, picture: Blob) => Promise<void>
  /** @returns pictures by the id of their mark. */
  readonly stillsOf: (id: string) => Promise<ReadonlyMap<string, Blob>>
  /** Things made from footage (peaks, speech), by a key that holds its fingerprint: lost without harm. */
  readonly keepMade: (key: string, value: unknown) => Promise<void>
  readonly madeOf: (key: string) => Promise<unknown>
}
