import { useCallback, useState } from 'react'
import type { Surface } from './ThumbBar'

const SURFACES: readonly Surface[] = ['talk', 'footage', 'sheet']

const placeOf = (name: Surface): HTMLElement | null => document.querySelector(`[data-surface-name="${name}"]`)

/** What takes the focus of a surface: the talk itself, else its first button. */
const focusIn = (name: Surface): void =>
  (
    placeOf(name)?.querySelector<HTMLElement>('[aria-roledescription="talk"]') ??
    placeOf(name)?.querySelector<HTMLElement>('button:not([disabled]):not([tabindex="-1"])')
  )?.focus()

const inFocus = (): Surface | undefined => SURFACES.find(name => placeOf(name)?.contains(document.activeElement))

/** Which surface is in front (all three are where there is room), and whether the sheet is read full width. */
export const useSurface = () => {
  const [surface, show] = useState<Surface>('talk')
  const [isReading, setReading] = useState(false)
  const nextSurface = useCallback((by: 1 | -1) => {
    const from = inFocus()
    const at = from === undefined ? (by > 0 ? -1 : 0) : SURFACES.indexOf(from)
    const next = SURFACES[(at + by + SURFACES.length) % SURFACES.length] ?? 'talk'
    show(next)
    setReading(false)
    // The surface has to be in front before it can take the focus.
    requestAnimationFrame(() => focusIn(next))
  }, [])
  return { surface, show, isReading, setReading, nextSurface }
}
