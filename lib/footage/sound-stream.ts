import { EncodedPacketSink, type InputAudioTrack } from 'mediabunny'
import type { SoundPiece } from './peaks'
import type { SoundOptions } from './sound'

/** Seconds a piece. */
const PIECE = 1

/** Packets given to the decoder ahead of what it has done. */
const AHEAD = 96

/** Between two frames of a stream without a gap timestamps are off by rounding alone, seconds. */
const ROUNDING = 0.005

/** Collects decoded frames into pieces whose memory is used again: fresh memory is what decoding mostly costs. */
const collector = () => {
  const ready: SoundPiece[] = []
  let pool: Float32Array[][] = []
  let open: { start: number; rate: number; filled: number; channels: Float32Array[] } | undefined
  const close = () => {
    if (open === undefined || open.filled === 0) return
    const { start, rate, filled, channels } = open
    ready.push({ start, rate, channels: channels.map(samples => samples.subarray(0, filled)) })
    open = undefined
  }
  return {
    ready,
    close,
    /** Takes back a piece that was worked on. */
    free: ({ channels }: SoundPiece) => void pool.push(channels.map(samples => new Float32Array(samples.buffer))),
    push: (data: AudioData): void => {
      const { numberOfFrames: frames, numberOfChannels: count, sampleRate: rate, timestamp } = data
      const start = timestamp / 1e6
      const isNext =
        open !== undefined &&
        open.rate === rate &&
        open.channels.length === count &&
        open.filled + frames <= (open.channels[0]?.length ?? 0) &&
        Math.abs(open.start + open.filled / rate - start) < ROUNDING
      if (!isNext) close()
      if (open === undefined) {
        const length = Math.max(frames, Math.round(PIECE * rate))
        pool = pool.filter(channels => channels.length === count && (channels[0]?.length ?? 0) === length)
        const channels = pool.pop() ?? Array.from({ length: count }, () => new Float32Array(length))
        open = { start, rate, filled: 0, channels }
      }
      for (const [planeIndex, samples] of open.channels.entries())
        data.copyTo(samples.subarray(open.filled, open.filled + frames), { planeIndex, format: 'f32-planar' })
      open.filled += frames
      data.close()
    },
  }
}

/**
 * Decodes AAC in a stream by WebCodecs, for one pass over long sound in a worker.
 *
 * @returns pieces of about a second in order. A piece's samples are overwritten once the next one is asked for: copy what
 *   is to be kept
 * @throws what the decoder can't bear, with how far it came told to `onDone` before (seconds); the signal's reason when
 *   cancelled
 */
export async function* soundStream(
  track: InputAudioTrack,
  { from = 0, signal }: SoundOptions,
  onDone: (seconds: number) => void,
): AsyncGenerator<SoundPiece> {
  const config = await track.getDecoderConfig()
  const sink = new EncodedPacketSink(track)
  // One packet before: AAC overlaps.
  const first = (from > 0 ? await sink.getPacket(from - 0.1) : null) ?? (await sink.getFirstPacket())
  if (config === null || first === null) return
  const collected = collector()
  const failed: { error?: unknown } = {}
  let wake = () => {}
  const decoder = new AudioDecoder({
    output: data => collected.push(data),
    error: error => {
      failed.error = error
      wake()
    },
  })
  decoder.ondequeue = () => wake()
  function* take(): Generator<SoundPiece> {
    for (let piece = collected.ready.shift(); piece !== undefined; piece = collected.ready.shift()) {
      yield piece
      onDone(piece.start + (piece.channels[0]?.length ?? 0) / piece.rate)
      collected.free(piece)
    }
  }
  const check = () => {
    signal?.throwIfAborted()
    if (failed.error !== undefined) throw failed.error
  }
  try {
    decoder.configure(config)
    for await (const packet of sink.packets(first)) {
      check()
      decoder.decode(packet.toEncodedAudioChunk())
      yield* take()
      while (decoder.decodeQueueSize > AHEAD && failed.error === undefined)
        await new Promise<void>(resolve => {
          wake = resolve
        })
    }
    check()
    await decoder.flush()
    collected.close()
    yield* take()
  } finally {
    if (decoder.state !== 'closed') decoder.close()
  }
}
