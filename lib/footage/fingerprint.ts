/** Bytes sampled at the start, in the middle and at the end. */
const SAMPLE = 65_536

/**
 * A short digest that tells whether a file is the same footage. Reads at most three samples of 64 KiB, whatever the
 * size, so it takes milliseconds on a file of many gigabytes; two files that differ only outside the samples and have
 * the same length get the same fingerprint (footage of the same job never does in practice, but it is no proof).
 *
 * @param file the user's file; not changed
 * @returns 64 hexadecimal digits: SHA-256 over the size (8 bytes, little-endian) and the samples
 * @throws whatever the file system says when the file can't be read any more (moved, unplugged)
 */
export const fingerprintOf = async (file: Blob): Promise<string> => {
  const { size } = file
  const spans: readonly (readonly [number, number])[] =
    size <= 3 * SAMPLE
      ? [[0, size]]
      : [
          [0, SAMPLE],
          [Math.floor((size - SAMPLE) / 2), Math.floor((size - SAMPLE) / 2) + SAMPLE],
          [size - SAMPLE, size],
        ]
  const length = new Uint8Array(8)
  new DataView(length.buffer).setBigUint64(0, BigInt(size), true)
  const parts: Uint8Array[] = [length]
  for (const [from, to] of spans) parts.push(new Uint8Array(await file.slice(from, to).arrayBuffer()))
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    all.set(part, at)
    at += part.length
  }
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', all))
  return Array.from(digest, byte => byte.toString(16).padStart(2, '0')).join('')
}
