import { EncodedPacketSink, type InputTrack } from 'mediabunny'

/**
 * How far the packets of a track can really be read. A recording that was cut short (camera lost power, copy broke off)
 * still announces its whole length where the index stands at the start.
 *
 * @param track of an open input
 * @param announced end of the track by its index, seconds
 * @returns seconds, at most `announced`; equal to it where the last packet can be read. Reads about 20 packets when it
 *   can't, one when it can.
 */
export const readableEnd = async (track: InputTrack, announced: number): Promise<number> => {
  const sink = new EncodedPacketSink(track)
  const canRead = async (at: number): Promise<boolean> => {
    try {
      return (await sink.getPacket(at)) !== null
    } catch {
      return false
    }
  }
  if (await canRead(Number.POSITIVE_INFINITY)) return announced
  let [low, high] = [0, announced]
  while (high - low > 0.25) {
    const middle = (low + high) / 2
    if (await canRead(middle)) low = middle
    else high = middle
  }
  return low
}
