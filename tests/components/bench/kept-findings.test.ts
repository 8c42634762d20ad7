import { expect, test } from 'vitest'
import { keptFindings } from '@/components/bench/useFindings'
import { atMark, type Finding } from '@/lib/review/rule'

const finding = (mark: string, message: string): Finding => ({
  rule: 'a-rule',
  level: 'fix',
  place: atMark({ id: mark }),
  message,
})

test('what a new review finds alike stays the same object; what it says otherwise is the new one', () => {
  const [stays, goes] = [finding('a', 'no unit'), finding('b', 'no unit')]
  const [alike, other] = [finding('a', 'no unit'), finding('b', 'no basis')]
  const kept = keptFindings([stays, goes], [alike, other])
  expect(kept).toEqual([alike, other])
  expect(kept[0]).toBe(stays)
  expect(kept[1]).toBe(other)
})

test('a finding let stand is another than the one before it', () => {
  const open = finding('a', 'no unit')
  const waived = { ...open, waived: 'seen' }
  expect(keptFindings([open], [waived])[0]).toBe(waived)
})
