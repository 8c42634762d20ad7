import fc from 'fast-check'
import { expect, test } from 'vitest'
import { blobPieces } from '@/lib/footage/blob-target'

test('[F20] a clip put together from pieces has the bytes that were written last, wherever they were written', async () => {
  const piece = fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), data: fc.uint8Array({ maxLength: 9 }) })
  await fc.assert(
    fc.asyncProperty(fc.array(piece, { maxLength: 12 }), async list => {
      const { write, blob } = blobPieces()
      const expected: number[] = []
      for (const { at, data } of list) {
        const position = Math.round(at * expected.length)
        write({ data, position })
        expected.splice(position, data.length, ...data)
      }
      expect([...new Uint8Array(await blob('video/mp4').arrayBuffer())]).toEqual(expected)
    }),
  )
})
