import { EncodedPacketSink, type InputAudioTrack } from 'mediabunny'
import { type Packet, readPackets } from './packet-reader'
import { soundPlaces } from './sound-places'

/** Packets a lot, where they come one by one. */
const LOT = 32

/**
 * Encoded packets of a sound track in order, from the one before a moment on, as AAC overlaps.
 *
 * @param from seconds
 * @param file the track is of: MP4, M4A and MOV are then read by their index, several times faster
 * @returns lots of packets, whose bytes are overwritten once the next lot is asked for
 */
export async function* soundPackets(
  track: InputAudioTrack,
  from: number,
  file?: Blob,
): AsyncGenerator<readonly Packet[]> {
  const sink = new EncodedPacketSink(track)
  const head = await sink.getFirstPacket({ metadataOnly: true })
  if (head === null) return
  const places = file && (await soundPlaces(file, track.id, head.timestamp))
  if (file && places) {
    const after = places.times.findIndex(time => time > from)
    yield* readPackets(file, places, Math.max(0, (after < 0 ? places.times.length : after) - 2))
    return
  }
  const first = (from > 0 ? await sink.getPacket(from - 0.1) : null) ?? (await sink.getFirstPacket())
  if (first === null) return
  let lot: Packet[] = []
  for await (const { timestamp: time, data } of sink.packets(first)) {
    lot.push({ time, data })
    if (lot.length < LOT) continue
    yield lot
    lot = []
  }
  if (lot.length > 0) yield lot
}
