/** A frame of the footage, made small: 64 by 36 pixels do. */
export type SmallFrame = {
  /** When it is shown, seconds. */
  readonly time: number
  readonly width: number
  readonly height: number
  /** Brightness 0 to 255, row by row. */
  readonly luma: Uint8Array
}

/** A frame as it is compared: a coarse grid of brightness, its mean and its contrast. */
export type Picture = {
  readonly time: number
  readonly columns: number
  readonly rows: number
  /** Brightness 0 to 255 of each cell, row by row. */
  readonly cells: Float32Array
  readonly mean: number
  /** Standard deviation of the cells. */
  readonly contrast: number
}

/** Cells along the longer and the shorter side: noise and grain average out, and so do people's hands. */
const [LONG, SHORT] = [32, 18]

/** Pictures of less contrast have nothing to be known by: black, a cap on the lens. */
const FLAT = 4

/** Averages the frame down to the grid. */
export const toPicture = ({ time, width, height, luma }: SmallFrame): Picture => {
  const [columns, rows] = width >= height ? [LONG, SHORT] : [SHORT, LONG]
  const cells = new Float32Array(columns * rows)
  let [sum, squares] = [0, 0]
  for (let row = 0; row < rows; row++) {
    const [top, bottom] = [Math.floor((row * height) / rows), Math.ceil(((row + 1) * height) / rows)]
    for (let column = 0; column < columns; column++) {
      const [left, right] = [Math.floor((column * width) / columns), Math.ceil(((column + 1) * width) / columns)]
      let cell = 0
      for (let y = top; y < bottom; y++) for (let x = left; x < right; x++) cell += luma[y * width + x] ?? 0
      cell /= (bottom - top) * (right - left)
      cells[row * columns + column] = cell
      sum += cell
      squares += cell * cell
    }
  }
  const mean = sum / cells.length
  return { time, columns, rows, cells, mean, contrast: Math.sqrt(Math.max(0, squares / cells.length - mean * mean)) }
}

/** @returns whether there is nothing to be seen but one brightness. */
export const isFlat = (picture: Picture): boolean => picture.contrast < FLAT

/** Correlation of two pictures where they overlap when the second is shifted by so many cells; -1 to 1. */
const correlation = (a: Picture, b: Picture, right: number, down: number): number => {
  const { columns, rows } = a
  let [n, sa, sb, saa, sbb, sab] = [0, 0, 0, 0, 0, 0]
  for (let y = Math.max(0, down); y < Math.min(rows, rows + down); y++)
    for (let x = Math.max(0, right); x < Math.min(columns, columns + right); x++) {
      const [p, q] = [a.cells[y * columns + x] ?? 0, b.cells[(y - down) * columns + x - right] ?? 0]
      n++
      sa += p
      sb += q
      saa += p * p
      sbb += q * q
      sab += p * q
    }
  const [va, vb] = [saa - (sa * sa) / n, sbb - (sb * sb) / n]
  const least = n * FLAT * FLAT * 0.25
  return va < least || vb < least ? 0 : (sab - (sa * sb) / n) / Math.sqrt(va * vb)
}

/** Below this two pictures are the same without looking for a shift. */
const SAME = 0.12

/** Farthest a camera is followed from one picture to the other, share of each side. */
const REACH = 0.34

/**
 * How different two pictures are, whatever the exposure and wherever the camera has moved in between: 1 less their
 * correlation at the shift that fits best.
 *
 * @returns 0 (same) to about 1; two flat pictures differ by their brightness
 */
export const difference = (a: Picture, b: Picture): number => {
  if (a.columns !== b.columns) return 1
  if (isFlat(a) || isFlat(b)) {
    const levels = Math.abs(a.mean - b.mean) / 40
    return isFlat(a) && isFlat(b) ? Math.min(1, levels) : 1
  }
  let best = correlation(a, b, 0, 0)
  if (1 - best < SAME) return Math.max(0, 1 - best)
  let [right, down] = [0, 0]
  const look = (x: number, y: number) => {
    const found = correlation(a, b, x, y)
    if (found > best) [best, right, down] = [found, x, y]
  }
  const [farX, farY] = [Math.floor(a.columns * REACH), Math.floor(a.rows * REACH)]
  for (let y = -farY; y <= farY; y += 2) for (let x = -farX; x <= farX; x += 2) look(x, y)
  const [x0, y0] = [right, down]
  for (let y = y0 - 1; y <= y0 + 1; y++) for (let x = x0 - 1; x <= x0 + 1; x++) look(x, y)
  return Math.max(0, 1 - best)
}
