import type { OpenFootage } from '@/lib/footage/open'
import type { Edit } from '@/lib/procedure/edit'
import type { Span } from '@/lib/procedure/time'

/** What the sheet can ask of the bench. Stable: the same object all the time. */
export type SheetActions = {
  readonly perform: (...edits: Edit[]) => void
  readonly choose: (id: string | undefined) => void
  /** Drops a mark and chooses its neighbour. */
  readonly drop: (id: string) => void
  readonly playSpan: (span: Span) => void
  /** @returns the moment the footage shows, seconds */
  readonly now: () => number
  /** @returns the footage, where it is open. */
  readonly footage: () => OpenFootage | undefined
  /** Pictures of steps, by the id of their mark. */
  readonly stills: {
    readonly get: (mark: string) => Promise<Blob | undefined>
    readonly put: (mark: string, picture: Blob) => Promise<void>
  }
}
