import type { Edit } from '@/lib/procedure/edit'
import type { Span } from '@/lib/procedure/time'

/** What the sheet can ask of the bench. Stable: the same object all the time. */
export type SheetActions = {
  readonly perform: (...edits: Edit[]) => void
  readonly choose: (id: string | undefined) => void
  readonly playSpan: (span: Span) => void
  /** @returns the moment the footage shows, seconds */
  readonly now: () => number
}
