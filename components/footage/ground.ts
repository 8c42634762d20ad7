import { KIND_KEYS } from '@/components/ui/kinds'
import type { Span } from '@/lib/procedure/time'
import { type Placed, ROW_HEIGHT, ROWS, toPixels, type View } from './lanes'

export type Ground = {
  readonly view: View
  readonly placed: readonly Placed[]
  readonly chosen: string | undefined
  /** The chosen mark's span, as it is being moved. */
  readonly span: Span | undefined
  readonly speech: readonly Span[]
  readonly shots: readonly number[]
}

/** Where the sound begins below the rows of marks, pixels. */
export const SOUND_TOP = ROWS * ROW_HEIGHT + 4

/** @returns the first index whose span ends after `at`; spans in order */
const firstAfter = (spans: readonly Span[], at: number): number => {
  let [low, high] = [0, spans.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if ((spans[middle]?.end ?? 0) > at) high = middle
    else low = middle + 1
  }
  return low
}

const LETTERS = Object.fromEntries(KIND_KEYS.map(({ kind, key }) => [kind, key.toUpperCase()]))

/** Narrowest bracket that has room for its kind's letter, pixels. */
const LETTER_ROOM = 16

const bracket = (pen: CanvasRenderingContext2D, { mark, row, left, right }: Placed): void => {
  const top = row * ROW_HEIGHT + 2.5
  const [from, to] = [Math.round(left) + 0.5, Math.max(Math.round(left) + 2.5, Math.round(right) - 0.5)]
  pen.beginPath()
  pen.moveTo(from, top + 6)
  pen.lineTo(from, top)
  pen.lineTo(to, top)
  pen.lineTo(to, top + 6)
  pen.stroke()
  if (to - Math.max(0, from) > LETTER_ROOM) pen.fillText(LETTERS[mark.kind] ?? '', Math.max(0, from) + 4, top + 10)
}

/**
 * Draws what lies behind the sound: speech, the chosen mark's span, picture changes, and every visible mark as a thin
 * bracket above it. Colours come from the page's CSS variables.
 */
export const drawGround = (canvas: HTMLCanvasElement, ground: Ground): void => {
  const pen = canvas.getContext('2d')
  if (pen === null) return
  const { view, placed, chosen, span, speech, shots } = ground
  const ratio = globalThis.devicePixelRatio || 1
  const { clientWidth, clientHeight } = canvas
  canvas.width = Math.round(clientWidth * ratio)
  canvas.height = Math.round(clientHeight * ratio)
  pen.scale(ratio, ratio)
  const style = getComputedStyle(canvas)
  const colour = (name: string, otherwise: string) => style.getPropertyValue(name).trim() || otherwise
  const box = ({ start, end }: Span, top: number) => {
    const left = Math.max(0, toPixels(view, start))
    pen.fillRect(left, top, Math.max(1, Math.min(clientWidth, toPixels(view, end)) - left), clientHeight - top)
  }
  pen.fillStyle = colour('--blue-wash', '#e3eaf2')
  for (let i = firstAfter(speech, view.start); i < speech.length; i++) {
    const one = speech[i]
    if (one === undefined || one.start > view.end) break
    box(one, SOUND_TOP)
  }
  if (span !== undefined) {
    pen.globalAlpha = 0.55
    pen.fillStyle = colour('--brass-wash', '#f3e6c8')
    box(span, 0)
    pen.globalAlpha = 1
  }
  pen.strokeStyle = colour('--rule-2', '#8a8574')
  pen.lineWidth = 1
  pen.setLineDash([2, 3])
  for (const at of shots) {
    if (at < view.start || at > view.end) continue
    const x = Math.round(toPixels(view, at)) + 0.5
    pen.beginPath()
    pen.moveTo(x, SOUND_TOP)
    pen.lineTo(x, clientHeight)
    pen.stroke()
  }
  pen.fillStyle = colour('--ink', '#16202b')
  pen.font = `10px ${colour('--text', 'sans-serif')}`
  for (const place of placed) {
    const isChosen = place.mark.id === chosen
    pen.strokeStyle = isChosen ? colour('--brass', '#a87b2d') : colour('--blue', '#17457a')
    pen.lineWidth = isChosen ? 2.5 : 1.25
    pen.setLineDash(place.mark.isPencilled ? [3, 2] : [])
    bracket(pen, place)
  }
  pen.setLineDash([])
}
