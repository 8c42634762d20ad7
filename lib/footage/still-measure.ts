/** Brightness of each pixel, row by row, 0 to 255. */
export type Plane = { readonly width: number; readonly height: number; readonly values: Float32Array }

/** What was measured of a frame. */
export type FrameMeasure = {
  /** Seconds. */
  readonly time: number
  /** Spread of the second derivative of brightness: high where edges are crisp. */
  readonly sharpness: number
  /** Share of pixels neither crushed to black nor burnt to white, times how well the range is used; 0 to 1. */
  readonly exposure: number
  /** Mean change of brightness against the frame just before, 0 to 255; 0 where nothing moves. */
  readonly motion: number
}

/** Brightness at or beyond which a pixel is crushed or burnt. Common practice, no source. */
const [BLACK, WHITE] = [12, 243]

/** Spread of brightness that uses the range well: a quarter of it. */
const GOOD_SPREAD = 64

/** Change per frame that halves a frame's worth, of 255. */
const MOVING = 8

/** Variance of the Laplacian, a usual measure of focus. @source Pech-Pacheco et al. 2000 (from memory) */
const sharpnessOf = ({ width, height, values }: Plane): number => {
  let [sum, squares, count] = [0, 0, 0]
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x
      const around = (values[i - 1] ?? 0) + (values[i + 1] ?? 0) + (values[i - width] ?? 0) + (values[i + width] ?? 0)
      const edge = around - 4 * (values[i] ?? 0)
      sum += edge
      squares += edge * edge
      count++
    }
  return count === 0 ? 0 : squares / count - (sum / count) ** 2
}

const exposureOf = ({ values }: Plane): number => {
  let [sum, squares, lost] = [0, 0, 0]
  for (const value of values) {
    sum += value
    squares += value * value
    if (value <= BLACK || value >= WHITE) lost++
  }
  const mean = sum / Math.max(1, values.length)
  const spread = Math.sqrt(Math.max(0, squares / Math.max(1, values.length) - mean * mean))
  return (1 - lost / Math.max(1, values.length)) * Math.min(1, spread / GOOD_SPREAD)
}

const motionOf = (now: Plane, before: Plane): number => {
  let sum = 0
  for (let i = 0; i < now.values.length; i++) sum += Math.abs((now.values[i] ?? 0) - (before.values[i] ?? 0))
  return sum / Math.max(1, now.values.length)
}

/** @param before the frame just before, of the same size; absent: taken as still */
export const measureFrame = (time: number, plane: Plane, before?: Plane): FrameMeasure => ({
  time,
  sharpness: sharpnessOf(plane),
  exposure: exposureOf(plane),
  motion: before === undefined ? 0 : motionOf(plane, before),
})

/** Worth of a frame among its neighbours, 0 to 1: sharpness against the sharpest, times exposure, times steadiness. */
const worthOf = ({ sharpness, exposure, motion }: FrameMeasure, sharpest: number): number =>
  Math.sqrt(sharpness / Math.max(1e-9, sharpest)) * (0.2 + 0.8 * exposure) * (MOVING / (MOVING + motion))

/** Least worth, against the best, for a frame to be proposed for being elsewhere in the span. */
const WORTHY = 0.5

/**
 * The best frames that are not next to each other: as far apart as the good ones allow, at most a sixth of the span.
 *
 * @param seconds length of the span
 * @returns best first; `count` of them where there are so many
 */
export const pickStills = (
  measures: readonly FrameMeasure[],
  count: number,
  seconds: number,
): readonly FrameMeasure[] => {
  const sharpest = Math.max(...measures.map(({ sharpness }) => sharpness), 0)
  const ranked = measures
    .map(measure => ({ measure, worth: worthOf(measure, sharpest) }))
    .sort((a, b) => b.worth - a.worth)
  const good = ranked.filter(({ worth }) => worth >= WORTHY * (ranked[0]?.worth ?? 0))
  const picked = new Set<FrameMeasure>()
  const pick = (from: typeof ranked, apart: number) => {
    for (const { measure } of from) {
      if (picked.size >= count) return
      if ([...picked].every(other => Math.abs(other.time - measure.time) > apart)) picked.add(measure)
    }
  }
  for (const share of [6, 12, 24]) pick(good, seconds / share)
  pick(ranked, seconds / 12)
  for (const { measure } of ranked) if (picked.size < count) picked.add(measure)
  return [...picked]
}
