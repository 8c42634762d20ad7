import type { Packet } from './packet-reader'

/** Makes the header before a packet of so many bytes that lets it stand in a stream by itself; see adts.ts. */
export type HeaderFor = (length: number) => Uint8Array

/** Packets put together that are handed to a decoder at once, in memory used again: a chunk copies its data. */
export const packetBundle = (header?: HeaderFor) => {
  let memory = new Uint8Array(1 << 14)
  let [filled, count, start] = [0, 0, 0]
  const put = (bytes: Uint8Array) => {
    if (filled + bytes.length > memory.length) {
      const larger = new Uint8Array(2 * (filled + bytes.length))
      larger.set(memory.subarray(0, filled))
      memory = larger
    }
    memory.set(bytes, filled)
    filled += bytes.length
  }
  return {
    /** @returns how many are in it now */
    add: ({ time, data }: Packet): number => {
      if (count === 0) start = time
      if (header) put(header(data.length))
      put(data)
      return ++count
    },
    /** Empties it. @returns undefined where there was nothing in it */
    take: (): EncodedAudioChunk | undefined => {
      if (count === 0) return undefined
      const chunk = new EncodedAudioChunk({
        type: 'key',
        timestamp: Math.round(start * 1e6),
        data: memory.subarray(0, filled),
      })
      filled = 0
      count = 0
      return chunk
    },
  }
}

/**
 * Whether the browser's decoder takes several packets at once as a stream and gives a frame for each: Chromium's does, the
 * WebCodecs registration of AAC doesn't promise it. Tried out on a decoder of its own.
 *
 * @param config without description, as a stream says itself what it is
 * @param packets some of the first; one alone tells nothing
 */
export const takesSeveral = async (
  config: AudioDecoderConfig,
  header: HeaderFor,
  packets: readonly Packet[],
): Promise<boolean> => {
  const bundle = packetBundle(header)
  for (const packet of packets) bundle.add(packet)
  const chunk = bundle.take()
  if (chunk === undefined || packets.length < 2) return false
  let [frames, isDecoded] = [0, true]
  const decoder = new AudioDecoder({
    output: data => {
      frames++
      data.close()
    },
    error: () => {
      isDecoded = false
    },
  })
  try {
    decoder.configure(config)
    decoder.decode(chunk)
    await decoder.flush()
  } catch {
    return false
  } finally {
    if (decoder.state !== 'closed') decoder.close()
  }
  return isDecoded && frames === packets.length
}
