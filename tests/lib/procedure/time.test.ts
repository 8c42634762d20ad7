import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formatFragment, formatTime, gapBetween, parseTime, sharedTime } from '@/lib/procedure/time'

test('[J7] a whole second reads back from its time for people', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 400_000 }), seconds => {
      expect(parseTime(formatTime(seconds))).toBe(seconds)
    }),
  )
})

test('[J7] times are read as people write them, and what is none is refused', () => {
  expect(['83', '83,5', '1:23', '1:02:03.250', ' 0:07 '].map(parseTime)).toEqual([83, 83.5, 83, 3723.25, 7])
  expect(['', 'soon', '1:75', '1:60:00', '-3', '1:2:3:4'].map(parseTime)).toEqual(Array(6).fill(undefined))
})

test('[J7] shared time and gaps', () => {
  const a = { start: 1, end: 4 }
  expect([sharedTime(a, { start: 3, end: 9 }), sharedTime(a, { start: 4, end: 5 })]).toEqual([1, 0])
  expect([gapBetween(a, { start: 6, end: 7 }), gapBetween(a, { start: 3, end: 7 })]).toEqual([2, 0])
})

/** Normal play time of the W3C Media Fragments URI 1.0 test cases: `t=npt:a,b`, `t=a,b`, seconds or h:mm:ss. */
const parseNpt = (fragment: string): [number, number] | undefined => {
  const match = /(?:^|&)t=(?:npt:)?([^,&]*)(?:,([^&]*))?$/.exec(fragment)
  const [start, end] = [match?.[1] === '' ? 0 : parseTime(match?.[1] ?? 'x'), parseTime(match?.[2] ?? 'x')]
  return start === undefined || end === undefined ? undefined : [start, end]
}

const suite = join(process.env.TELLWRIGHT_SUITES ?? '../shared/suites', 'media-fragments/testcases.tsv')

describe.skipIf(!existsSync(suite))(
  'against the W3C media fragment test cases (skipped where they are not at hand)',
  () => {
    const rows = existsSync(suite)
      ? readFileSync(suite, 'utf8')
          .split('\n')
          .map(line => line.split('\t'))
      : []
    test('[J7] what we write is what the valid cases with a start and an end write', () => {
      const cases = rows.flatMap(row => {
        const fragment = row.find(cell => /#t=\d+(\.\d+)?,\d+(\.\d+)?$/.test(cell))?.split('#')[1]
        return fragment === undefined ? [] : [fragment]
      })
      expect(cases.length).toBeGreaterThan(2)
      for (const fragment of cases) {
        const [start, end] = parseNpt(fragment) ?? [Number.NaN, Number.NaN]
        if (start < end) expect(parseNpt(formatFragment({ start, end }))).toEqual([start, end])
      }
    })
  },
)
