import { expect, test } from 'vitest'
import { isEarlierRevision, nextRevision } from '@/lib/procedure/revision'

test('[J9] revisions count in letters, without those taken for others (ASME Y14.35, from memory)', () => {
  expect(['', 'A', 'H', 'N', 'P', 'R', 'W', 'Y', 'AY', 'YY', 'b', '2024-05', '3'].map(nextRevision)).toEqual([
    'A',
    'B',
    'J',
    'P',
    'R',
    'T',
    'Y',
    'AA',
    'BA',
    'AAA',
    'C',
    'A',
    'A',
  ])
})

test('[J9] an earlier revision has fewer letters or earlier ones; what is no letter is neither', () => {
  expect(isEarlierRevision('A', 'B')).toBe(true)
  expect(isEarlierRevision('Y', 'AA')).toBe(true)
  for (const [one, other] of [
    ['B', 'A'],
    ['a', 'A'],
    ['', 'A'],
    ['3', 'B'],
    ['A', '2024-05'],
  ] as const)
    expect(isEarlierRevision(one, other)).toBe(false)
})
