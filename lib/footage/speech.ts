import type { Span } from '@/lib/procedure/time'
import { type Detector, FRAME } from './detector'

/** Frames a second. */
const PER_SECOND = 100

/** Pauses shorter than this belong to the speech around them, seconds: stop consonants last up to 0.15 s. */
const SHORTEST_PAUSE = 0.28

/** Speech shorter than this is a knock or a click, seconds. */
const SHORTEST_SPEECH = 0.12

/** Least rise above the noise for an edge of speech, and the share of the way from noise to voice, both in decibels. */
const [RISE, SHARE] = [3, 0.3]

/** Share of the sample before that is taken off, so that the hum of a machine counts less than the hiss of speech. */
const EMPHASIS = 0.5

/** Frames on either side that a frame's level is the mean of. */
const SMOOTH = 2

/**
 * Seconds a span of speech is widened at both ends for what lies under the noise there: in full where the voice stands
 * less than CLOSE decibels above the noise, not at all from CLEAR on.
 */
const [WIDEN, CLOSE, CLEAR] = [0.06, 30, 50]

/** Seconds looked at around a frame to tell noise from voice. */
const AROUND = 8

/** Levels of the given shares of decibels. */
const quantiles = (levels: Float32Array, shares: readonly number[]): readonly number[] => {
  const sorted = levels.slice().sort()
  return shares.map(share => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? -100)
}

/** For each second the level, in decibels, that parts noise from voice around it. */
const thresholds = (levels: Float32Array): readonly { limit: number; widen: number }[] => {
  const seconds = Math.ceil(levels.length / PER_SECOND)
  return Array.from({ length: seconds }, (_, second) => {
    const near = levels.subarray(Math.max(0, (second - AROUND) * PER_SECOND), (second + AROUND + 1) * PER_SECOND)
    const [noise = -100, voice = -100] = quantiles(near, [0.08, 0.92])
    const clear = Math.min(1, Math.max(0, (CLEAR - (voice - noise)) / (CLEAR - CLOSE)))
    return { limit: noise + Math.max(RISE, SHARE * (voice - noise)), widen: WIDEN * clear }
  })
}

/** Mean of the levels around each frame. */
const smoothed = (levels: Float32Array): Float32Array => {
  const means = new Float32Array(levels.length)
  for (let i = 0; i < levels.length; i++) {
    const [from, to] = [Math.max(0, i - SMOOTH), Math.min(levels.length, i + SMOOTH + 1)]
    let sum = 0
    for (let at = from; at < to; at++) sum += levels[at] ?? 0
    means[i] = sum / (to - from)
  }
  return means
}

const spansOf = (flags: Uint8Array, widenAt: (seconds: number) => number): Span[] => {
  const spans: { start: number; end: number }[] = []
  let open = -1
  for (let i = 0; i <= flags.length; i++) {
    if (flags[i] === 1 && open < 0) open = i
    if (flags[i] !== 1 && open >= 0) {
      const last = spans.at(-1)
      if (last !== undefined && open / PER_SECOND - last.end < SHORTEST_PAUSE) last.end = i / PER_SECOND
      else spans.push({ start: open / PER_SECOND, end: i / PER_SECOND })
      open = -1
    }
  }
  const end = flags.length / PER_SECOND
  return spans
    .filter(span => span.end - span.start >= SHORTEST_SPEECH)
    .map(span => ({
      start: Math.max(0, span.start - widenAt(span.start)),
      end: Math.min(end, span.end + widenAt(span.end)),
    }))
}

/**
 * Finds speech in a stream of sound.
 *
 * @param detector of 10 ms frames
 * @returns `push` takes the next samples (16 kHz mono, -1 to 1); `end` gives the spans of speech in order, seconds from
 *   the first sample, not overlapping, and frees the detector. Keeps 5 bytes a frame: 1.8 MB an hour.
 */
export const speechFinder = (detector: Detector) => {
  const frame = new Int16Array(FRAME)
  let filled = 0
  let levels = new Float32Array(1 << 12)
  let flags = new Uint8Array(1 << 12)
  let frames = 0
  let before = 0
  const take = () => {
    if (frames === levels.length) {
      const [moreLevels, moreFlags] = [new Float32Array(2 * frames), new Uint8Array(2 * frames)]
      moreLevels.set(levels)
      moreFlags.set(flags)
      levels = moreLevels
      flags = moreFlags
    }
    let sum = 0
    for (let i = 0; i < FRAME; i++) {
      const sample = frame[i] ?? 0
      const rise = sample - EMPHASIS * before
      before = sample
      sum += rise * rise
    }
    levels[frames] = 10 * Math.log10(sum / FRAME / 2 ** 30 + 1e-9)
    flags[frames] = detector.hears(frame) ? 1 : 0
    frames++
    filled = 0
  }
  return {
    push: (samples: Float32Array): void => {
      for (let at = 0; at < samples.length; ) {
        const until = Math.min(samples.length, at + FRAME - filled)
        for (; at < until; at++) {
          // Half up, as Math.round does; cheaper.
          const level = Math.floor((samples[at] ?? 0) * 32767 + 0.5)
          frame[filled++] = level > 32767 ? 32767 : Math.max(level, -32768)
        }
        if (filled === FRAME) take()
      }
    },
    end: (): readonly Span[] => {
      detector.free()
      const heard = smoothed(levels.subarray(0, frames))
      const limits = thresholds(heard)
      const spoken = flags.slice(0, frames).map((flag, i) => {
        const limit = limits[Math.floor(i / PER_SECOND)]?.limit ?? 0
        return flag === 1 && (heard[i] ?? -100) > limit ? 1 : 0
      })
      return spansOf(spoken, at => limits[Math.floor(at)]?.widen ?? 0)
    },
  }
}
