import { expect, test } from 'vitest'
import { nextRevision } from '@/lib/procedure/revision'

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
