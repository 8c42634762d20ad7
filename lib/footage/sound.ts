import { AudioSampleSink, type EncodedPacket, EncodedPacketSink, type InputAudioTrack } from 'mediabunny'
import { adtsHeader } from './adts'
import type { SoundPiece } from './peaks'
import { soundStream } from './sound-stream'

/**
 * Decodes a whole small file (a few packets wrapped so that they stand alone). In a page that is decodeAudioData, several
 * times faster than WebCodecs packet by packet; workers don't have it, so they ask the page.
 */
export type DecodeWhole = (bytes: Uint8Array<ArrayBuffer>, rate: number) => Promise<Omit<SoundPiece, 'start'>>

export type SoundOptions = {
  /** Seconds; from here. */
  readonly from?: number
  /** Seconds; up to here. */
  readonly to?: number
  readonly signal?: AbortSignal
  readonly decodeWhole?: DecodeWhole
  /** Samples are not kept: each piece may be overwritten by the next; see sound-stream.ts. */
  readonly isOnePass?: boolean
  /** The track's file, for one pass: it is then read by its index. */
  readonly file?: Blob
  /** Told of spans that could not be decoded and were left out. */
  readonly onGap?: (at: number, why: string) => void
}

/** Seconds a piece: small enough for memory (8 MB in stereo), long enough that wrapping costs nothing. */
const PIECE = 20

/** Packets decoded before a piece and thrown away, so that its first samples are right (overlap, bit reservoir). */
const LEAD_IN: Readonly<Record<string, number>> = { aac: 2, mp3: 12 }

type Wrap = (packet: EncodedPacket) => readonly Uint8Array[]

const wrapFor = async (track: InputAudioTrack): Promise<{ wrap: Wrap; leadIn: number } | undefined> => {
  const codec = await track.getCodec()
  const leadIn = LEAD_IN[codec ?? ''] ?? 0
  if (codec === 'mp3') return { wrap: packet => [packet.data], leadIn }
  if (codec !== 'aac') return undefined
  const header = adtsHeader((await track.getDecoderConfig())?.description)
  return header && { wrap: packet => [header(packet.data.length), packet.data], leadIn }
}

const joined = (parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> => {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    all.set(part, at)
    at += part.length
  }
  return all
}

/** One span of packets, decoded in one go; the lead-in is cut off by its share of the decoded samples. */
const decodePackets = async (
  lead: readonly EncodedPacket[],
  packets: readonly EncodedPacket[],
  wrap: Wrap,
  rate: number,
  decodeWhole: DecodeWhole,
): Promise<SoundPiece> => {
  const bytes = joined([...lead, ...packets].flatMap(packet => wrap(packet)))
  const decoded = await decodeWhole(bytes, rate)
  const length = decoded.channels[0]?.length ?? 0
  const cut = Math.round((length * lead.length) / (lead.length + packets.length))
  return {
    start: packets[0]?.timestamp ?? 0,
    rate: decoded.rate,
    channels: decoded.channels.map(samples => samples.subarray(cut)),
  }
}

async function* byPieces(
  track: InputAudioTrack,
  { from = 0, to = Number.POSITIVE_INFINITY, signal, onGap }: SoundOptions,
  { wrap, leadIn }: { wrap: Wrap; leadIn: number },
  decodeWhole: DecodeWhole,
): AsyncGenerator<SoundPiece> {
  const sink = new EncodedPacketSink(track)
  const rate = await track.getSampleRate()
  const first =
    from > 0 ? ((await sink.getPacket(from - 0.5)) ?? (await sink.getFirstPacket())) : await sink.getFirstPacket()
  if (first === null) return
  let lead: EncodedPacket[] = []
  let packets: EncodedPacket[] = []
  const underway: { at: number; piece: Promise<SoundPiece | string> }[] = []
  const send = () => {
    const at = packets[0]?.timestamp ?? 0
    const piece = decodePackets(lead, packets, wrap, rate, decodeWhole).catch((error: unknown) =>
      error instanceof Error ? error.message : String(error),
    )
    underway.push({ at, piece })
    lead = packets.slice(-leadIn)
    packets = []
  }
  async function* take(atMost: number): AsyncGenerator<SoundPiece> {
    while (underway.length > atMost) {
      const next = underway.shift()
      const piece = await next?.piece
      signal?.throwIfAborted()
      if (typeof piece === 'string') onGap?.(next?.at ?? 0, piece)
      else if (piece !== undefined) yield piece
    }
  }
  for await (const packet of sink.packets(first)) {
    signal?.throwIfAborted()
    if (packet.timestamp >= to) break
    if (packet.timestamp + packet.duration <= from) {
      lead = [...lead, packet].slice(-leadIn)
      continue
    }
    packets.push(packet)
    if (packet.timestamp - (packets[0]?.timestamp ?? 0) < PIECE) continue
    send()
    yield* take(1)
  }
  if (packets.length > 0) send()
  yield* take(0)
}

/** Seconds stepped over after packets that can't be decoded, and how often before giving up. */
const SKIP = 1
const GAPS = 50

async function* bySamples(
  track: InputAudioTrack,
  { from = 0, to = Number.POSITIVE_INFINITY, signal, onGap }: SoundOptions,
): AsyncGenerator<SoundPiece> {
  let at = from
  for (let gaps = 0; gaps <= GAPS; gaps++) {
    try {
      const samples = new AudioSampleSink(track).samples(at, to)
      for await (const sample of samples) {
        signal?.throwIfAborted()
        const channels = Array.from({ length: sample.numberOfChannels }, (_, planeIndex) => {
          const plane = new Float32Array(sample.numberOfFrames)
          sample.copyTo(plane, { planeIndex, format: 'f32-planar' })
          return plane
        })
        const piece = { start: sample.timestamp, rate: sample.sampleRate, channels }
        at = sample.timestamp + sample.duration
        sample.close()
        yield piece
      }
      return
    } catch (error) {
      signal?.throwIfAborted()
      onGap?.(at, error instanceof Error ? error.message : String(error))
      at += SKIP
    }
  }
}

/**
 * Decodes a track's sound in a stream, piece by piece, in order; never more than two pieces are in memory.
 *
 * @param track of an open input, decodable here
 * @returns pieces of at most about 20 s; the first may start a little before `from`
 * @throws the signal's reason when cancelled; spans that can't be decoded are stepped over and told to `onGap`
 */
export async function* soundPieces(track: InputAudioTrack, options: SoundOptions = {}): AsyncGenerator<SoundPiece> {
  const { decodeWhole } = options
  if (options.isOnePass && typeof AudioDecoder !== 'undefined' && (await track.getCodec()) === 'aac') {
    let done = options.from ?? 0
    try {
      yield* soundStream(track, options, seconds => {
        done = seconds
      })
    } catch (error) {
      options.signal?.throwIfAborted()
      options.onGap?.(done, error instanceof Error ? error.message : String(error))
      yield* bySamples(track, { ...options, from: done + SKIP })
    }
    return
  }
  const wrapping = decodeWhole && (await wrapFor(track))
  if (decodeWhole && wrapping) yield* byPieces(track, options, wrapping, decodeWhole)
  else yield* bySamples(track, options)
}
