import { expect, test } from 'vitest'
import { thingsOf } from '@/components/sheet/thing'
import { toSheet } from '@/lib/procedure/sheet'
import { projectOf, step, tool } from '../../builders'

test('a tool is listed once, whatever its case, with its other marks in order of time', () => {
  const [first, second, third] = [tool(1, 2, 'Hex key'), tool(11, 12, 'hex key '), tool(21, 22, 'HEX KEY')]
  const other = tool(5, 6, 'torque wrench')
  const sheet = toSheet(projectOf(step(0, 10, 'Loosen it.'), step(10, 30, 'Tighten it.'), third, second, first, other))
  expect(thingsOf(sheet, 'tool')).toEqual([
    { mark: first, again: [second, third] },
    { mark: other, again: [] },
  ])
})
