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

/** Brings a mark that was just added into view, once it is drawn: it may stand above or below what is looked at. */
export const showAdded = (edits: readonly Edit[]): void => {
  const id = edits.flatMap(edit => (edit.do === 'add-marks' ? edit.marks.map(mark => mark.id) : []))[0]
  if (id === undefined) return
  const show = () => document.querySelector(`[data-item="${CSS.escape(id)}"]`)?.scrollIntoView({ block: 'nearest' })
  // Drawn in the next frame; in the one after, the findings of the new review have moved it.
  requestAnimationFrame(() => requestAnimationFrame(show))
}
