import { expect, test } from 'vitest'
import { toHandMark } from '@/lib/draft/hand-mark'

const span = { start: 3, end: 6 }

test('a mark by hand keeps the words held and starts from them', () => {
  expect(toHandMark('step', ' pull the cover  off, ', span, 'a')).toEqual({
    id: 'a',
    kind: 'step',
    start: 3,
    end: 6,
    text: 'Pull the cover off',
    said: 'pull the cover off,',
  })
  expect(toHandMark('tool', 'a ten millimetre socket.', span, 'a').text).toBe('ten millimetre socket')
  expect(toHandMark('caution', 'it bites', span, 'a').level).toBe('caution')
})

test('a spec by hand brings the quantity its words hold, and its name from the rest', () => {
  expect(toHandMark('spec', 'the lid screws want twelve to fifteen newton metres', span, 'a')).toMatchObject({
    quantity: { low: 12, high: 15, unit: 'N.m' },
    basis: 'spoken',
    said: 'the lid screws want twelve to fifteen newton metres',
  })
  expect(toHandMark('spec', 'hand tight', span, 'a')).toMatchObject({ reference: 'hand tight', basis: 'spoken' })
  expect(toHandMark('spec', 'just right', span, 'a')).not.toHaveProperty('quantity')
})
