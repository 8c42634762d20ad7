/**
 * Moves the focus from a control that is about to go to the line of the mark it belongs to, else to the sheet's head: so
 * that a keyboard goes on from there, not from the top of the page.
 */
export const focusMark = (from: Element): void =>
  (
    from.closest('[data-item]')?.querySelector<HTMLElement>('button') ??
    from.closest('article')?.querySelector<HTMLElement>('header button')
  )?.focus()
