import { difference, isFlat, type Picture, type SmallFrame, toPicture } from './small-picture'

/** A moment where the picture changes to another view. */
export type PictureChange = {
  /** Seconds; half-way between the frames it was found between. */
  readonly time: number
  /** How different the views are, 0.35 to 1. */
  readonly strength: number
}

/** Frames a second that suffice: a change is then known to a tenth of a second. */
export const FRAMES_PER_SECOND = 5

/** Least difference of two views. Set by trial on pictures made by ffmpeg, as are the values below. */
const LEAST = 0.35

/** How many times greater a change is than what goes on around it: a moving camera changes the picture again and again. */
const STANDS_OUT = 2.2

/** Frames before and after a change that must differ from each other: a flash or a hand passing is over by then. */
const [BEFORE, AFTER] = [2, 3]

/** Share of its contrast in the frames to come that a picture must have when it follows black, or it is fading in. */
const AT_ONCE = 0.6

type Step = { readonly picture: Picture; readonly by: number }

/**
 * Finds changes of the picture in a stream of small frames: cuts, and a view that comes back as another after black.
 * Flashes, light turned up and down, fades and moves of the camera don't count. Sees brightness only: two views that
 * differ in nothing but colour or exposure are one to it. A dissolve that takes longer than the frames are apart is not
 * found, nor a view that stands for less than half a second.
 *
 * @returns `push` takes the next frame, in order of time, about 5 a second, all of one size, and gives the changes that
 *   are certain by now; `end` gives the rest. Keeps a dozen frames.
 */
export const changeFinder = () => {
  let steps: Step[] = []
  let view: Picture | undefined
  let blackFrom: number | undefined
  let isCutToBlack = false

  const differAround = (at: number): boolean => {
    const before = steps.slice(Math.max(0, at - BEFORE), at)
    const after = steps.slice(at, at + AFTER)
    return before.every(a => after.every(b => difference(a.picture, b.picture) >= LEAST))
  }

  const isCut = (at: number): boolean => {
    const [before, here] = [steps[at - 1], steps[at]]
    if (before === undefined || here === undefined || here.by < LEAST) return false
    const around = Math.max(steps[at - 1]?.by ?? 0, steps[at + 1]?.by ?? 0)
    if (here.by < STANDS_OUT * around) return false
    const contrastOf = (list: readonly Step[]) => Math.max(...list.map(({ picture }) => picture.contrast))
    if (isFlat(before.picture) && !isFlat(here.picture))
      if (here.picture.contrast < AT_ONCE * contrastOf(steps.slice(at, at + 2 * AFTER))) return false
    if (isFlat(here.picture) && !isFlat(before.picture))
      if (before.picture.contrast < AT_ONCE * contrastOf(steps.slice(Math.max(0, at - 2 * AFTER), at))) return false
    return differAround(at)
  }

  /** Looks at the step to frame `at`, with frames on both sides known. */
  const judge = (at: number): PictureChange[] => {
    const here = steps[at]
    if (here === undefined) return []
    const found: PictureChange[] = []
    const time = (here.picture.time + (steps[at - 1]?.picture.time ?? here.picture.time)) / 2
    const cut = isCut(at)
    if (cut) found.push({ time, strength: Math.min(1, here.by) })
    if (isFlat(here.picture)) {
      if (blackFrom === undefined) {
        blackFrom = time
        isCutToBlack = cut
      } else if (cut) isCutToBlack = true
      return found
    }
    if (blackFrom !== undefined && !cut && !isCutToBlack && view !== undefined) {
      const strength = difference(view, here.picture)
      if (strength >= LEAST) found.push({ time: (blackFrom + time) / 2, strength: Math.min(1, strength) })
    }
    blackFrom = undefined
    view = here.picture
    return found
  }

  const KEPT = 2 * AFTER
  let judged = 0
  return {
    push: (frame: SmallFrame): PictureChange[] => {
      const picture = toPicture(frame)
      const last = steps.at(-1)?.picture
      steps.push({ picture, by: last === undefined ? 0 : difference(last, picture) })
      if (steps.length - judged <= KEPT) return []
      const found = judge(judged++)
      if (judged > KEPT) {
        steps = steps.slice(1)
        judged--
      }
      return found
    },
    end: (): PictureChange[] => {
      const found: PictureChange[] = []
      while (judged < steps.length) found.push(...judge(judged++))
      return found
    },
  }
}

/** @returns every change of the picture in the frames, in order; see changeFinder. */
export const findChanges = async (
  frames: AsyncIterable<SmallFrame> | Iterable<SmallFrame>,
): Promise<readonly PictureChange[]> => {
  const finder = changeFinder()
  const found: PictureChange[] = []
  for await (const frame of frames) found.push(...finder.push(frame))
  return [...found, ...finder.end()]
}
