/** Units in which the trade speaks of fractions, with the finest one shown. @source common practice, no source */
const FRACTIONED: Readonly<Record<string, number>> = Object.setPrototypeOf(
  { circ: 16, '{turn}': 16, '[in_i]': 64 },
  null,
)

/**
 * A number for people: decimals with a point and a true minus, fractions where the trade speaks of them (`1 3/4`).
 *
 * @param unit UCUM code, decides about fractions
 * @returns exact: reading it back gives the same number
 */
export const formatFigure = (value: number, unit?: string): string => {
  const finest = FRACTIONED[unit ?? '']
  const fraction = finest === undefined ? undefined : toFraction(Math.abs(value), finest)
  const size = fraction ?? String(Math.abs(value))
  return value < 0 ? `−${size}` : size
}

const toFraction = (value: number, finest: number): string | undefined => {
  const whole = Math.floor(value)
  const rest = value - whole
  if (rest === 0 || whole > 99) return undefined
  for (let bottom = 2; bottom <= finest; bottom *= 2) {
    const top = rest * bottom
    if (Number.isInteger(top)) return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`
  }
  // A third of a turn: told only where it reads back exactly.
  for (const bottom of finest === FRACTIONED['{turn}'] ? [3, 6, 12] : []) {
    const top = Math.round(rest * bottom)
    if (whole + top / bottom === value && (whole === 0 ? top > 0 : true))
      return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`
  }
  return undefined
}

const FIGURE = /^([-−])?(?:(?:(\d+) )?(\d+)\/(\d+)|(\d+(?:\.\d+)?(?:e[+-]?\d+)?|\.\d+))/

/** A number as `formatFigure` writes it, from the start of a text. @returns its value and length, or undefined */
export const parseFigure = (text: string): { readonly value: number; readonly length: number } | undefined => {
  const match = FIGURE.exec(text)
  if (match === null) return undefined
  const [all, minus, whole, top, bottom, plain] = match
  const size = plain === undefined ? Number(whole ?? 0) + Number(top) / Number(bottom) : Number(plain)
  return Number.isFinite(size) ? { value: minus === undefined ? size : -size, length: all.length } : undefined
}
