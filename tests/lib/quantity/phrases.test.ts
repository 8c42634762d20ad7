import { describe, expect, test } from 'vitest'
import { readQuantities } from '@/lib/quantity/read'
import { PHRASES } from './phrases'

const shown = (say: string) => readQuantities(say).map(({ quantity, qualitative }) => qualitative ?? quantity)

describe('phrases of a shop, invented', () => {
  for (const [group, cases] of Object.entries(PHRASES))
    test.for(cases.map(([say, ...want]) => [say, want] as const))(`[Q1] ${group}: %s`, ([say, want]) => {
      expect(shown(say)).toEqual(want)
    })
})
