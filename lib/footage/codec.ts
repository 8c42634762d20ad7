/** Names people know codecs by, for messages. Key: mediabunny's name, or the container's own identifier. */
const NAMES: Readonly<Record<string, string>> = {
  avc: 'H.264',
  hevc: 'H.265 (HEVC)',
  vp8: 'VP8',
  vp9: 'VP9',
  av1: 'AV1',
  prores: 'ProRes',
  aac: 'AAC',
  mp3: 'MP3',
  opus: 'Opus',
  vorbis: 'Vorbis',
  flac: 'FLAC',
  ac3: 'AC-3',
  eac3: 'E-AC-3',
  dts: 'DTS',
  ulaw: 'µ-law PCM',
  alaw: 'A-law PCM',
}

/**
 * A codec's name for people.
 *
 * @param codec mediabunny's name; null where it knows none
 * @param internal the container's identifier, such as `mp4v`; shown where there is no better name
 */
export const codecName = (codec: string | null, internal?: unknown): string => {
  if (codec?.startsWith('pcm')) return 'PCM'
  if (codec !== null) return NAMES[codec] ?? codec
  return typeof internal === 'string' || typeof internal === 'number' ? String(internal) : 'unknown'
}
