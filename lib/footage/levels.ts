import type { Span } from '@/lib/procedure/time'

/** Samples of a frame: 10 ms at 16 kHz. */
const FRAME = 160

/** Frames a second. */
const PER_SECOND = 100

/** Level of each 10 ms of sound at 16 kHz, decibels of full scale; silence is -90. */
export const levelsOf = (samples: Float32Array): Float32Array =>
  Float32Array.from({ length: Math.floor(samples.length / FRAME) }, (_, i) => {
    let sum = 0
    for (let k = i * FRAME; k < (i + 1) * FRAME; k++) sum += (samples[k] ?? 0) ** 2
    return 10 * Math.log10(sum / FRAME + 1e-9)
  })

/** Level that a share of the sorted levels lies below. */
export const levelAt = (sorted: Float32Array, share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? -90

/** Where the voice is less than this above what lies under it, decibels, there is noise that may pass for speech. */
const NOISY = 30

/**
 * Tells speech from a noise that was taken for speech, by how loud the words of the text are.
 *
 * @returns `push` takes the sound of the talk in order of time; `judge` gives whether a span is as loud as the
 *   words are, or the talk free of noise. Keeps 400 bytes a second of speech: 1.4 MB an hour.
 */
export const voiceLevels = () => {
  const parts: { readonly start: number; readonly levels: Float32Array }[] = []
  const sortedIn = (spans: readonly Span[]): Float32Array => {
    const found: Float32Array[] = []
    let first = 0
    for (const { start, end } of spans) {
      const isBefore = (i: number) => (parts[i]?.start ?? 0) + (parts[i]?.levels.length ?? 0) / PER_SECOND <= start
      while (first < parts.length && isBefore(first)) first++
      for (let i = first; i < parts.length && (parts[i]?.start ?? 0) < end; i++) {
        const { start: from = 0, levels = new Float32Array() } = parts[i] ?? {}
        const at = (seconds: number) => Math.max(0, Math.round((seconds - from) * PER_SECOND))
        found.push(levels.subarray(at(start), at(end)))
      }
    }
    const all = new Float32Array(found.reduce((sum, levels) => sum + levels.length, 0))
    let to = 0
    for (const levels of found) {
      all.set(levels, to)
      to += levels.length
    }
    return all.sort()
  }
  return {
    push: (start: number, samples: Float32Array): void => void parts.push({ start, levels: levelsOf(samples) }),
    /** @param words where the text is said, in order of time */
    judge: (words: readonly Span[]): ((span: Span) => boolean) => {
      const said = sortedIn(words)
      const isNoisy = levelAt(said, 0.1) > levelAt(said, 0.9) - NOISY
      return span => !isNoisy || levelAt(sortedIn([span]), 0.9) >= levelAt(said, 0.5)
    },
  }
}
