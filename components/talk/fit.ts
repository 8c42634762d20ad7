/** What is drawn in the margin, px from the top of its paragraph. */
export type Box = {
  readonly top: number
  readonly height: number
  /** The lane it had in the paragraph before or has in the one after: kept where it is free. */
  readonly held?: number
}

/** Room between two brackets of one lane, px, so that their ends are told apart. */
const GAP = 2

/**
 * Lanes for brackets by where they are drawn, so that none lies over another.
 *
 * @returns a lane for each box, in their order, counted from the text outwards
 */
export const fitLanes = (boxes: readonly Box[]): readonly number[] => {
  const lanes: number[] = boxes.map(() => 0)
  const taken: Box[][] = []
  const isFree = (lane: number, { top, height }: Box): boolean =>
    (taken[lane] ?? []).every(other => other.top + other.height + GAP <= top || top + height + GAP <= other.top)
  const put = (i: number, box: Box, first: number) => {
    let lane = isFree(first, box) ? first : 0
    while (!isFree(lane, box)) lane++
    while (taken.length <= lane) taken.push([])
    taken[lane]?.push(box)
    lanes[i] = lane
  }
  const order = [...boxes.entries()].sort(([, a], [, b]) => a.top - b.top || b.height - a.height)
  for (const [i, box] of order) if (box.held !== undefined) put(i, box, box.held)
  for (const [i, box] of order) if (box.held === undefined) put(i, box, 0)
  return lanes
}
