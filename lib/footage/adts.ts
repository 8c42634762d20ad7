/**
 * Makes the header that lets AAC packets stand alone as an ADTS stream.
 *
 * @param description AudioSpecificConfig, as the container carries it
 * @returns a function from a packet's length in bytes to its 7-byte header; undefined where ADTS can't say what the
 *   configuration says (object types above 4, rates outside the table, channels by programme configuration)
 * @source ISO/IEC 14496-3, AudioSpecificConfig and adts_fixed_header (from memory; a test plays the result)
 */
export const adtsHeader = (
  description: AllowSharedBufferSource | undefined,
): ((length: number) => Uint8Array) | undefined => {
  if (description === undefined) return undefined
  const bytes = ArrayBuffer.isView(description)
    ? new Uint8Array(description.buffer, description.byteOffset, description.byteLength)
    : new Uint8Array(description)
  const [one = 0, two = 0] = bytes
  const objectType = one >> 3
  const rateIndex = ((one & 7) << 1) | (two >> 7)
  const channels = (two >> 3) & 15
  if (objectType < 1 || objectType > 4 || rateIndex > 12 || channels < 1 || channels > 7) return undefined
  return packetLength => {
    const length = packetLength + 7
    return Uint8Array.of(
      0xff,
      0xf1,
      ((objectType - 1) << 6) | (rateIndex << 2) | (channels >> 2),
      ((channels & 3) << 6) | (length >> 11),
      (length >> 3) & 0xff,
      ((length & 7) << 5) | 0x1f,
      0xfc,
    )
  }
}
