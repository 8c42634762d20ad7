/** A file that is no transcript, whatever its name says: how to make it, and what its refusal must say. */
export type BadFile = {
  readonly name: string
  readonly make: () => Uint8Array
  /** Code of the first problem. */
  readonly code: string
  /** What the message must hold: what was found, or what to do. */
  readonly says: RegExp
}

const bytes = (...values: number[]): Uint8Array => Uint8Array.from(values)
const text = (content: string): Uint8Array => new TextEncoder().encode(content)
const tag = (content: string): number[] => [...content].map(letter => letter.charCodeAt(0))

/** Bad transcripts, one of a kind; made when asked for, so that nothing large lies about. */
export const BAD_TRANSCRIPTS: readonly BadFile[] = [
  { name: 'empty.vtt', make: () => bytes(), code: 'empty-file', says: /empty.*expected text/ },
  { name: 'blank.txt', make: () => text(' \r\n\t\n'), code: 'empty-file', says: /white space/ },
  {
    name: 'film.vtt',
    make: () => bytes(0, 0, 0, 24, ...tag('ftypisom'), 0, 0, 2, 0, ...tag('isomiso2')),
    code: 'binary-file',
    says: /MP4.*load it as footage/,
  },
  {
    name: 'film.srt',
    make: () => bytes(0x1a, 0x45, 0xdf, 0xa3, 0x9f, 0x42, 0x86, 0x81),
    code: 'binary-file',
    says: /Matroska.*load it as footage/,
  },
  { name: 'manual.txt', make: () => text('%PDF-1.7\n'), code: 'binary-file', says: /PDF/ },
  { name: 'notes.txt', make: () => bytes(0x50, 0x4b, 3, 4, 20, 0), code: 'binary-file', says: /office document/ },
  {
    name: 'noise.vtt',
    make: () => Uint8Array.from({ length: 4096 }, (_, i) => (i * 7919 + 13) % 251),
    code: 'binary-file',
    says: /not text/,
  },
  { name: 'page.srt', make: () => text('<!DOCTYPE html><p>Talk</p>'), code: 'mark-up', says: /save it as WebVTT/ },
  { name: 'cut.json', make: () => text('{"segments":[{"start":0,"en'), code: 'not-json', says: /not whole/ },
  { name: 'other.json', make: () => text('{"colours":["red"]}'), code: 'no-segments', says: /start, end and text/ },
  {
    name: 'job.tellwright.json',
    make: () => text('{"format":"tellwright","version":1}'),
    code: 'project-as-transcript',
    says: /Open it as a project/,
  },
  {
    name: 'year.txt',
    make: () => new Uint8Array(200_000_000).fill(0x61),
    code: 'too-large',
    says: /200\.0 MB.*at most 25 MB/,
  },
]
