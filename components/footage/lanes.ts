import type { Span } from '@/lib/procedure/time'
import type { StripMark } from './types'

/** What of the footage the strip shows, and how wide it is on screen. */
export type View = Span & {
  /** Pixels. */
  readonly width: number
}

/** Rows for marks above the sound, and the height of one in pixels. */
export const ROWS = 3
export const ROW_HEIGHT = 13

/** A mark with its place in the view. */
export type Placed = { readonly mark: StripMark; readonly row: number; readonly left: number; readonly right: number }

/** @returns pixels from the left edge of the view; may lie outside it. */
export const toPixels = (view: View, seconds: number): number =>
  ((seconds - view.start) / Math.max(1e-9, view.end - view.start)) * view.width

/** @returns seconds at a distance in pixels from the left edge of the view. */
export const toSeconds = (view: View, pixels: number): number =>
  view.start + (pixels / Math.max(1, view.width)) * (view.end - view.start)

/**
 * Places the marks that show in the view: each in the first row that is free there, the last one when all are taken.
 * Steps come first, so that they lie in the top row unless they overlap each other.
 */
export const placeMarks = (marks: readonly StripMark[], view: View): readonly Placed[] => {
  const visible = marks.filter(mark => mark.end > view.start && mark.start < view.end)
  const order = [...visible].sort(
    (a, b) => Number(b.kind === 'step') - Number(a.kind === 'step') || a.start - b.start || a.end - b.end,
  )
  const free: Span[][] = Array.from({ length: ROWS }, () => [])
  return order.map(mark => {
    const isFree = (taken: readonly Span[]) => taken.every(other => other.end <= mark.start || other.start >= mark.end)
    const found = free.findIndex((taken, row) => (row > 0 || mark.kind === 'step') && isFree(taken))
    const row = found < 0 ? ROWS - 1 : found
    if (found >= 0) free[row]?.push(mark)
    return { mark, row, left: toPixels(view, mark.start), right: toPixels(view, mark.end) }
  })
}

/** Pixels beside a bracket that still count as on it. */
const REACH = 4

/** @returns the mark under a point of the rows; the shortest where several lie there. */
export const markAt = (placed: readonly Placed[], x: number, y: number): StripMark | undefined => {
  const row = Math.min(ROWS - 1, Math.floor(y / ROW_HEIGHT))
  const near = placed.filter(place => x >= place.left - REACH && x <= place.right + REACH)
  const here = near.filter(place => place.row === row)
  const width = (place: Placed) => place.right - place.left
  return (here.length > 0 ? here : near).reduce<Placed | undefined>(
    (best, place) => (best === undefined || width(place) < width(best) ? place : best),
    undefined,
  )?.mark
}
