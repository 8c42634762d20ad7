import type { Problem } from '@/lib/procedure/problem'
import type { Span } from '@/lib/procedure/time'
import { cutClip } from './clip'
import { commonLevel, gainTo } from './level'
import { type Loudness, measureLoudness } from './loudness'
import type { OpenFootage } from './open'
import { soundPieces } from './sound'

/** One clip that is wanted: its span in seconds, its title, and the name of its file without ending. */
export type WantedClip = Span & { readonly title: string; readonly name: string }

/** One clip that was cut, or why it was not. */
export type MadeClip =
  | { readonly ok: true; readonly name: string; readonly blob: Blob; readonly notices: readonly Problem[] }
  | { readonly ok: false; readonly name: string; readonly problems: readonly Problem[] }

export type ClipSetOptions = {
  readonly way: 'copy' | 'exact'
  /** Brings all clips to one loudness (ITU-R BS.1770); their sound is then encoded anew. */
  readonly isLevelled: boolean
  readonly signal?: AbortSignal
  /** @param done clips finished, or parts of them */
  readonly onProgress?: (done: number) => void
}

/** Decodes a small file in the page. */
const decodeWhole = async (bytes: Uint8Array<ArrayBuffer>, rate: number) => {
  const buffer = await new OfflineAudioContext(1, 1, rate).decodeAudioData(bytes.buffer)
  const channels = Array.from({ length: buffer.numberOfChannels }, (_, i) => buffer.getChannelData(i).slice())
  return { rate: buffer.sampleRate, channels }
}

const loudnessOf = async (footage: OpenFootage, span: Span, signal?: AbortSignal): Promise<Loudness | undefined> => {
  const track = await footage.input?.getPrimaryAudioTrack()
  if (!track) return undefined
  const abort = signal === undefined ? {} : { signal }
  return measureLoudness(soundPieces(track, { from: span.start, to: span.end, decodeWhole, ...abort }), span)
}

/** Gain of each clip, decibels; 0 where it is silent or nothing is to be levelled. */
const gainsFor = async (
  footage: OpenFootage,
  wanted: readonly WantedClip[],
  options: ClipSetOptions,
): Promise<readonly number[]> => {
  if (!options.isLevelled || !footage.hasSound) return wanted.map(() => 0)
  const measured: (Loudness | undefined)[] = []
  for (const span of wanted) measured.push(await loudnessOf(footage, span, options.signal))
  const target = commonLevel(measured.filter(sound => sound !== undefined))
  return measured.map(sound => (sound === undefined ? 0 : (gainTo(sound, target)?.decibels ?? 0)))
}

/**
 * Cuts clips one after the other; only one is in memory at a time where the caller lets go of each.
 *
 * @throws the signal's reason when cancelled
 */
export async function* cutClips(
  footage: OpenFootage,
  wanted: readonly WantedClip[],
  options: ClipSetOptions,
): AsyncGenerator<MadeClip> {
  const { way, signal, onProgress } = options
  const gains = await gainsFor(footage, wanted, options)
  for (const [i, { title, name, ...span }] of wanted.entries()) {
    signal?.throwIfAborted()
    const gain = gains[i] ?? 0
    const clip = await cutClip(footage, span, {
      way,
      title,
      gain: Math.abs(gain) < 0.1 ? 0 : gain,
      onProgress: share => onProgress?.(i + share),
      ...(signal === undefined ? {} : { signal }),
    })
    if (clip.ok) {
      const { blob, extension, notices } = clip.value
      yield { ok: true, name: `${name}${extension}`, blob, notices }
    } else yield { ok: false, name, problems: clip.problems }
    onProgress?.(i + 1)
  }
}
