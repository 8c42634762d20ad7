import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import { atLine } from './reading'

/**
 * Largest transcript taken, in bytes: some 400 hours of talk as text, 25 hours as JSON with a time for each word. Ten times
 * as much was measured to run Node out of memory (4 GB).
 */
export const LARGEST_TRANSCRIPT = 25_000_000

/** What was expected of a file, as messages say it. */
export type Expected = { readonly text: string; readonly ifFootage?: string }

/** Text of a file, without byte order mark, and what had to be assumed to read it. */
export type Decoded = { readonly text: string; readonly problems: readonly Problem[] }

const startsWith = (bytes: Uint8Array, signature: readonly number[], at = 0): boolean =>
  signature.every((byte, i) => byte < 0 || bytes[at + i] === byte)

const ascii = (text: string): number[] => [...text].map(letter => letter.charCodeAt(0))

/** First bytes of files that are no text. @source the formats' own documents, from memory */
const SIGNATURES: readonly (readonly [what: string, signature: readonly number[], at?: number])[] = [
  ['an MP4 or QuickTime video', ascii('ftyp'), 4],
  ['a Matroska or WebM video', [0x1a, 0x45, 0xdf, 0xa3]],
  ['a WAV or AVI file', ascii('RIFF')],
  ['an Ogg file', ascii('OggS')],
  ['a FLAC file', ascii('fLaC')],
  ['an MP3 file', ascii('ID3')],
  ['a PDF', ascii('%PDF')],
  ['a ZIP archive or an office document', [0x50, 0x4b, 3, 4]],
  ['a gzip archive', [0x1f, 0x8b, 8]],
  ['a PNG picture', [0x89, 0x50, 0x4e, 0x47]],
  ['a JPEG picture', [0xff, 0xd8, 0xff]],
  ['an RTF document', ascii('{\\rtf')],
]

/** What a transcript may be, for messages. */
const TRANSCRIPT: Expected = {
  text: 'expected text: WebVTT, SubRip, lines headed by times, recogniser JSON, a table, or plain lines.',
  ifFootage: ' If it is the footage, load it as footage.',
}

/** Share of bytes that text never has (control codes but tab, line ends, form feed and escape). */
const shareOfControls = (bytes: Uint8Array): number => {
  const sample = bytes.subarray(0, 65_536)
  let controls = 0
  for (const byte of sample) if (byte < 32 && ![9, 10, 11, 12, 13, 27].includes(byte)) controls++
  return sample.length === 0 ? 0 : controls / sample.length
}

/** UTF-16 without a byte order mark shows in Latin text as a zero in every second byte. */
const guessUtf16 = (bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined => {
  const sample = bytes.subarray(0, 4096)
  if (sample.length < 4 || sample.length % 2 === 1) return undefined
  let even = 0
  let odd = 0
  sample.forEach((byte, i) => {
    if (byte !== 0) return
    if (i % 2 === 0) even++
    else odd++
  })
  const half = sample.length / 2
  if (odd > 0.7 * half && even < 0.05 * half) return 'utf-16le'
  if (even > 0.7 * half && odd < 0.05 * half) return 'utf-16be'
  return undefined
}

const decodeUtf8 = (bytes: Uint8Array): Decoded => {
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), problems: [] }
  } catch {
    const isWebVtt = startsWith(bytes, ascii('WEBVTT')) || startsWith(bytes, ascii('WEBVTT'), 3)
    if (!isWebVtt) {
      const text = new TextDecoder('windows-1252').decode(bytes)
      const line = text.slice(0, text.search(/[\u0080-\uffff]/)).split('\n').length
      const message =
        'this file is not UTF-8; it was read as Windows-1252. Where accented letters or signs are wrong, save it as UTF-8 and choose it again.'
      return { text, problems: [atLine(line, 'assumed-encoding', message)] }
    }
    const text = new TextDecoder('utf-8').decode(bytes)
    const line = text.slice(0, text.indexOf('\uFFFD')).split('\n').length
    const message =
      'bytes here are not UTF-8, which WebVTT is always in; they are shown as \uFFFD. Save it as UTF-8 and choose it again.'
    return { text, problems: [atLine(line, 'not-utf-8', message)] }
  }
}

/**
 * The text of a transcript or another file of words: UTF-8 or UTF-16, with or without byte order mark; anything else is read
 * as Windows-1252, with a problem that says so.
 *
 * @param expected what else than a transcript was expected, for messages
 * @returns text; or problem `too-large` (over 25 MB), `empty-file`, `binary-file`. Never throws.
 * @source WHATWG Encoding; WebVTT is UTF-8 with replacement characters for what is not
 */
export const decodeText = (bytes: Uint8Array, file: string, expected = TRANSCRIPT): Result<Decoded> => {
  const place = { file }
  const { text: wanted, ifFootage = '' } = expected
  if (bytes.length > LARGEST_TRANSCRIPT) {
    const size = `${(bytes.length / 1e6).toFixed(1)} MB`
    const message = `this file is ${size}; text of at most 25 MB (some 400 hours of talk) is read.${ifFootage}`
    return refusal({ code: 'too-large', message, place })
  }
  if (bytes.length === 0) return refusal({ code: 'empty-file', message: `this file is empty; ${wanted}`, place })
  const found = SIGNATURES.find(([, signature, at]) => startsWith(bytes, signature, at))?.[0]
  if (found !== undefined) {
    const message = `this is ${found}, whatever its name says; ${wanted}${ifFootage}`
    return refusal({ code: 'binary-file', message, place })
  }
  if (startsWith(bytes, [0xff, 0xfe])) return success({ text: new TextDecoder('utf-16le').decode(bytes), problems: [] })
  if (startsWith(bytes, [0xfe, 0xff])) return success({ text: new TextDecoder('utf-16be').decode(bytes), problems: [] })
  const wide = guessUtf16(bytes)
  if (wide !== undefined) return success({ text: new TextDecoder(wide).decode(bytes), problems: [] })
  const isWebVtt = startsWith(bytes, ascii('WEBVTT')) || startsWith(bytes, ascii('WEBVTT'), 3)
  if (!isWebVtt && shareOfControls(bytes) > 0.05) {
    const message = `this file is not text (it is full of bytes that no text has); ${wanted}`
    return refusal({ code: 'binary-file', message, place })
  }
  return success(decodeUtf8(bytes))
}
