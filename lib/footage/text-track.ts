import { box, fullBox, letters, type Part, u16, u32, u64 } from './boxes'
import type { TextSample } from './text-samples'

/** Milliseconds: the clock of our text tracks. */
const CLOCK = 1000

/** Where the text stands in the track: one chunk of the file. */
export type TextTrack = {
  readonly kind: 'chapters' | 'captions'
  readonly id: number
  readonly samples: readonly TextSample[]
  /** ISO 639-2 code of three letters. */
  readonly language: string
  /** Width and height on screen as the picture's track header has them, 8 bytes; none for chapters. */
  readonly size?: Uint8Array
}

/** How the handler of our caption track names itself, so that a second copy replaces it. */
export const CAPTIONS_NAME = 'Tellwright captions'

const MATRIX = [0x10000, 0, 0, 0, 0x10000, 0, 0, 0, 0x40000000].flatMap(u32)
const zeros = (count: number): readonly number[] => new Array(count).fill(0)

/** Five bits a letter. @source ISO/IEC 14496-12, media header (from memory) */
const packLanguage = (code: string): readonly number[] =>
  u16(
    [...(/^[a-z]{3}$/.test(code) ? code : 'und')].reduce(
      (sum, letter) => (sum << 5) | (letter.charCodeAt(0) - 0x60),
      0,
    ),
  )

/** White 18 point text at the foot. @source 3GPP TS 26.245, `tx3g` sample entry (from memory) */
const captionEntry = (): Uint8Array =>
  box(
    'tx3g',
    zeros(6),
    u16(1),
    u32(0),
    [1, 255],
    zeros(4),
    zeros(8),
    [u16(0), u16(0), u16(1), [0, 18], [255, 255, 255, 255]].flat(),
    box('ftab', u16(1), u16(1), [5], letters('Serif')),
  )

/** @source Apple, QuickTime File Format, text sample description (from memory) */
const chapterEntry = (): Uint8Array =>
  box(
    'text',
    zeros(6),
    u16(1),
    u32(0),
    u32(1),
    zeros(6),
    zeros(8),
    zeros(8),
    u16(0),
    u16(0),
    [0],
    u16(0),
    zeros(6),
    [0],
  )

/** Header of QuickTime's generic media, which its text needs. */
const genericHeader = (): Uint8Array =>
  box(
    'gmhd',
    fullBox('gmin', 0, 0, u16(0x40), u16(0x8000), u16(0x8000), u16(0x8000), u16(0), u16(0)),
    box('text', MATRIX),
  )

/** Counts runs of equal durations. */
const durations = (samples: readonly TextSample[]): readonly number[] => {
  const runs: [number, number][] = []
  for (const { milliseconds } of samples) {
    const last = runs.at(-1)
    if (last !== undefined && last[1] === milliseconds) last[0]++
    else runs.push([1, milliseconds])
  }
  return [...u32(runs.length), ...runs.flatMap(run => run.flatMap(u32))]
}

const sampleTable = ({ kind, samples }: TextTrack, offset: number): Uint8Array =>
  box(
    'stbl',
    fullBox('stsd', 0, 0, u32(1), kind === 'chapters' ? chapterEntry() : captionEntry()),
    fullBox('stts', 0, 0, durations(samples)),
    fullBox('stsc', 0, 0, u32(1), u32(1), u32(samples.length), u32(1)),
    fullBox(
      'stsz',
      0,
      0,
      u32(0),
      u32(samples.length),
      samples.flatMap(({ data }) => u32(data.length)),
    ),
    // Always of 64 bits, so that the size does not hang on where the text comes to stand.
    fullBox('co64', 0, 0, u32(1), u64(offset)),
  )

/**
 * Track of text, all of it in one chunk.
 *
 * @param movieClock ticks a second of the movie
 * @param offset where in the file its samples begin, one after the other
 * @source ISO/IEC 14496-12, track box and below (from memory; the tests read the result with ffprobe)
 */
export const textTrack = (track: TextTrack, movieClock: number, offset: number): Uint8Array => {
  const isChapters = track.kind === 'chapters'
  const milliseconds = track.samples.reduce((sum, sample) => sum + sample.milliseconds, 0)
  const length = Math.round((milliseconds * movieClock) / CLOCK)
  const place: Part = [
    ...zeros(8),
    ...u16(0),
    ...u16(isChapters ? 0 : 2),
    ...zeros(4),
    ...MATRIX,
    ...(track.size ?? zeros(8)),
  ]
  return box(
    'trak',
    // Chapters are in the movie, but not shown; captions are.
    fullBox('tkhd', 1, isChapters ? 2 : 3, zeros(16), u32(track.id), u32(0), u64(length), place),
    box(
      'mdia',
      fullBox('mdhd', 1, 0, zeros(16), u32(CLOCK), u64(milliseconds), packLanguage(track.language), u16(0)),
      fullBox(
        'hdlr',
        0,
        0,
        u32(0),
        letters(isChapters ? 'text' : 'sbtl'),
        zeros(12),
        letters(isChapters ? 'Chapters' : CAPTIONS_NAME),
        [0],
      ),
      box(
        'minf',
        isChapters ? genericHeader() : fullBox('nmhd', 0, 0),
        box('dinf', fullBox('dref', 0, 0, u32(1), fullBox('url ', 0, 1))),
        sampleTable(track, offset),
      ),
    ),
  )
}
