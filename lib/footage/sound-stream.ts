import type { InputAudioTrack } from 'mediabunny'
import { adtsHeader } from './adts'
import { packetBundle, takesSeveral } from './packet-bundle'
import type { SoundPiece } from './peaks'
import type { SoundOptions } from './sound'
import { soundPackets } from './sound-packets'

/** Seconds a piece. */
const PIECE = 1

/** Packets handed to the decoder at once, where it takes several: each handing over costs more than decoding one. */
const AT_ONCE = 32

/** Packets given to the decoder ahead of what it has done. */
const AHEAD = 96

/** Between two frames of a stream without a gap timestamps are off by rounding alone, seconds. */
const ROUNDING = 0.005

/** Collects decoded frames into pieces whose memory is used again: fresh memory is what decoding mostly costs. */
const collector = () => {
  const ready: SoundPiece[] = []
  let pool: Float32Array[][] = []
  // When what comes next plays, seconds.
  let next = Number.NEGATIVE_INFINITY
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
    /** @param time when it plays, seconds; containers round it, so that where there is no gap the samples count */
    push: (data: AudioData, time: number): void => {
      const { numberOfFrames: frames, numberOfChannels: count, sampleRate: rate } = data
      const isOnTime = Math.abs(next - time) < ROUNDING
      const start = isOnTime ? next : time
      next = start + frames / rate
      const isNext =
        open !== undefined &&
        open.rate === rate &&
        open.channels.length === count &&
        open.filled + frames <= (open.channels[0]?.length ?? 0) &&
        isOnTime
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
  { from = 0, signal, file }: SoundOptions,
  onDone: (seconds: number) => void,
): AsyncGenerator<SoundPiece> {
  const config = await track.getDecoderConfig()
  if (config === null) return
  const { description, ...alone } = config
  const header = adtsHeader(description)
  const collected = collector()
  const failed: { error?: unknown } = {}
  let wake = () => {}
  // When the packets that are being decoded play; a decoder goes on counting over a gap.
  const times: number[] = []
  const decoder = new AudioDecoder({
    output: data => collected.push(data, times.shift() ?? data.timestamp / 1e6),
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
  let bundle = packetBundle()
  let atOnce = 1
  const decode = () => {
    const chunk = bundle.take()
    if (chunk !== undefined) decoder.decode(chunk)
  }
  try {
    for await (const packets of soundPackets(track, from, file)) {
      if (decoder.state === 'unconfigured') {
        const isStream = header !== undefined && (await takesSeveral(alone, header, packets.slice(0, 4)))
        if (isStream) [bundle, atOnce] = [packetBundle(header), AT_ONCE]
        decoder.configure(isStream ? alone : config)
      }
      for (const packet of packets) {
        check()
        times.push(packet.time)
        if (bundle.add(packet) < atOnce) continue
        decode()
        yield* take()
        while (decoder.decodeQueueSize * atOnce > AHEAD && failed.error === undefined)
          await new Promise<void>(resolve => {
            wake = resolve
          })
      }
    }
    check()
    if (decoder.state === 'unconfigured') return
    decode()
    await decoder.flush()
    collected.close()
    yield* take()
  } finally {
    if (decoder.state !== 'closed') decoder.close()
  }
}
