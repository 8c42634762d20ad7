import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fingerprintOf } from '@/lib/footage/fingerprint'

/** A file of many gigabytes that counts what is read of it. */
const hugeFile = (size: number) => {
  const read: number[] = []
  const slice = (from = 0, to = size) => {
    read.push(to - from)
    return new Blob([new Uint8Array(to - from).fill(from % 251)])
  }
  return { file: { size, slice } as unknown as Blob, read }
}

test('[F1] the fingerprint of an empty file is SHA-256 of eight zero bytes', async () => {
  // Source: node:crypto, createHash('sha256').update(Buffer.alloc(8)).
  const { createHash } = await import('node:crypto')
  expect(await fingerprintOf(new Blob([]))).toBe(createHash('sha256').update(Buffer.alloc(8)).digest('hex'))
})

test('[F1] the same bytes have the same fingerprint, other bytes or another length another one', async () => {
  await fc.assert(
    fc.asyncProperty(fc.uint8Array({ minLength: 1, maxLength: 5000 }), fc.nat(), async (bytes, n) => {
      const other = Uint8Array.from(bytes)
      const at = n % bytes.length
      other[at] = ((other[at] ?? 0) + 1) % 256
      const [one, again, changed, longer] = await Promise.all([
        fingerprintOf(new Blob([Uint8Array.from(bytes)])),
        fingerprintOf(new Blob([Uint8Array.from(bytes)])),
        fingerprintOf(new Blob([other])),
        fingerprintOf(new Blob([Uint8Array.from(bytes), new Uint8Array(1)])),
      ])
      expect(again).toBe(one)
      expect(changed).not.toBe(one)
      expect(longer).not.toBe(one)
    }),
    { numRuns: 50 },
  )
})

test('[F1] of a file of 40 GB only three samples are read', async () => {
  const { file, read } = hugeFile(40e9)
  expect(await fingerprintOf(file)).toMatch(/^[0-9a-f]{64}$/)
  expect(read).toEqual([65_536, 65_536, 65_536])
})
