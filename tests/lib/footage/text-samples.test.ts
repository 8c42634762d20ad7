import fc from 'fast-check'
import { expect, test } from 'vitest'
import { box, childrenOf, findBox, readHeader, u32, u64 } from '@/lib/footage/boxes'
import { captionSamples, chapterSamples, type MuxCaption, type TextSample, toUtf8 } from '@/lib/footage/text-samples'

const read = ({ data }: TextSample): string => {
  const length = ((data[0] ?? 0) << 8) | (data[1] ?? 0)
  return new TextDecoder().decode(data.subarray(2, 2 + length))
}

/** What is shown at each millisecond. */
const shownAt = (samples: readonly TextSample[], moment: number): string | undefined => {
  let end = 0
  for (const sample of samples) {
    end += sample.milliseconds
    if (moment < end) return read(sample)
  }
  return undefined
}

const caption = fc
  .record({
    from: fc.integer({ min: 0, max: 900 }),
    length: fc.integer({ min: 0, max: 400 }),
    text: fc.string({ unit: 'grapheme' }),
  })
  .map(({ from, length, text }): MuxCaption => ({ start: from / 1000, end: (from + length) / 1000, text }))

test('[F45] at every moment the captions of that moment are shown, and no others; samples fill the footage', () => {
  fc.assert(
    fc.property(fc.array(caption, { maxLength: 8 }), fc.integer({ min: 0, max: 999 }), (captions, moment) => {
      const samples = captionSamples(captions, 1)
      expect(samples.reduce((sum, { milliseconds }) => sum + milliseconds, 0)).toBe(1000)
      const active = captions.filter(
        ({ start, end, text }) =>
          Math.round(start * 1000) <= moment && moment < Math.round(end * 1000) && text.trim() !== '',
      )
      const shown = shownAt(samples, moment) ?? ''
      expect(shown.length).toBe(active.map(({ text }) => text).join('\n').length)
      for (const { text } of active) expect(shown).toContain(text)
    }),
  )
})

test('[F45] chapters fill the footage; those past its end are left out', () => {
  const chapters = [
    { start: 0, title: 'One' },
    { start: 2.5, title: 'Two' },
    { start: 9, title: 'Three' },
  ]
  expect(chapterSamples(chapters, 7).map(sample => [sample.milliseconds, read(sample)])).toEqual([
    [2500, 'One'],
    [4500, 'Two'],
  ])
  // QuickTime takes text for Mac Roman unless told that it is UTF-8 (from memory).
  const [one] = chapterSamples(chapters, 7)
  expect([...(one?.data.subarray(5) ?? [])]).toEqual([0, 0, 0, 12, 0x65, 0x6e, 0x63, 0x64, 0, 0, 1, 0])
})

test('[F45] text too long for its place is cut at a whole character', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 0, max: 30 }), (text, most) => {
      const bytes = toUtf8(text, most)
      expect(bytes.length).toBeLessThanOrEqual(most)
      const back = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
      expect(
        new TextDecoder('utf-8', { ignoreBOM: true }).decode(new TextEncoder().encode(text)).startsWith(back),
      ).toBe(true)
    }),
  )
})

test('[F47] boxes that are written are read back; sizes of 64 bits and open ends too', () => {
  const inner = box('free', u32(7))
  const outer = box('moov', inner, box('trak', box('tkhd', u64(2 ** 40))))
  expect(childrenOf(outer, 8, outer.length).boxes.map(({ type, start, end }) => [type, start, end])).toEqual([
    ['free', 8, 20],
    ['trak', 20, 44],
  ])
  expect(findBox(outer, ['moov', 'trak', 'tkhd'])).toMatchObject({ content: 36, end: 44 })
  const large = new Uint8Array([...u32(1), ...u32(0x6d646174), ...u64(5 * 2 ** 32)])
  expect(readHeader(large, 100, 1e12)).toEqual({ type: 'mdat', start: 100, content: 116, end: 100 + 5 * 2 ** 32 })
  expect(readHeader(new Uint8Array([0, 0, 0, 0, 0x6d, 0x64, 0x61, 0x74]), 100, 500)).toMatchObject({ end: 500 })
  expect(readHeader(new Uint8Array([0, 0, 0, 7, 0x6d, 0x64, 0x61, 0x74]), 100, 500)).toBeUndefined()
})
