import { expect, test } from 'vitest'
import { listedThing } from '@/lib/review/listed'

test('[R3] a bar is a tool, and after a figure a unit', () => {
  expect(listedThing('long pry bar').name).toBe('pry bar')
  expect(listedThing('pressure gauge, 0 to 10 bar').head).toBe('gauge')
})
