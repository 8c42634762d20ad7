import type { Edit } from '@/lib/procedure/edit'

/**
 * Moves the focus from a control that is about to go to the line of the mark it belongs to, else to the sheet's head: so
 * that a keyboard goes on from there, not from the top of the page.
 */
export const focusMark = (from: Element): void =>
  (
    from.closest('[data-item]')?.querySelector<HTMLElement>('button') ??
    from.closest('article')?.querySelector<HTMLElement>('header button')
  )?.focus()

/** Frames for which a mark just added is kept in view: steps above it get their heights as they are drawn, and new findings. */
const FRAMES = 60
const HANDS = ['keydown', 'wheel', 'pointerdown', 'touchstart'] as const

/** Brings a mark that was just added into view and keeps it there until all is drawn, or until a hand goes elsewhere. */
export const showAdded = (edits: readonly Edit[]): void => {
  const id = edits.flatMap(edit => (edit.do === 'add-marks' ? edit.marks.map(mark => mark.id) : []))[0]
  if (id === undefined) return
  const hands = new AbortController()
  for (const event of HANDS)
    window.addEventListener(event, () => hands.abort(), { signal: hands.signal, capture: true })
  const show = (left: number): void => {
    if (hands.signal.aborted) return
    document.querySelector(`[data-item="${CSS.escape(id)}"]`)?.scrollIntoView({ block: 'nearest' })
    if (left > 0) requestAnimationFrame(() => show(left - 1))
    else hands.abort()
  }
  // Drawn in the next frame.
  requestAnimationFrame(() => show(FRAMES))
}
