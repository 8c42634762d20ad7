import { expect, test } from 'vitest'
import { bracketsByParagraph } from '@/components/talk/brackets'
import { toTalk } from '@/lib/transcript/talk'
import { caution, step, tool } from '../../builders'

const words = (count: number, from: number) =>
  Array.from({ length: count }, (_, i) => ({ at: i * 2, to: i * 2 + 1, start: from + i, end: from + i + 1, cue: 0 }))
const line = (count: number, from: number) => ({
  start: from,
  end: from + count,
  text: Array(count).fill('w').join(' '),
  words: words(count, from),
})
const talk = toTalk([line(20, 0), line(20, 30)])

test('marks on the same words stand in lanes side by side, marks far apart share one', () => {
  const one = step(0, 5, 'one')
  const two = caution(2, 4, 'two')
  const three = tool(15, 18, 'three')
  const lanes = [...(bracketsByParagraph(talk, [three, two, one], []).get(0) ?? [])].map(({ id, lane }) => [id, lane])
  expect(lanes).toEqual([
    [one.id, 0],
    [two.id, 1],
    [three.id, 0],
  ])
})

test('a mark over two paragraphs stands in both, a mark over no words by the one before it', () => {
  const long = step(15, 35, 'long')
  const lost = step(24, 26, 'in the pause')
  const brackets = bracketsByParagraph(talk, [long, lost], [])
  expect([...brackets.keys()]).toEqual([0, 1])
  expect(brackets.get(0)?.map(({ id, words }) => [id, words])).toEqual([
    [long.id, { from: 15, to: 25 }],
    [lost.id, { from: 19, to: 20 }],
  ])
  expect(brackets.get(1)?.map(({ id, words }) => [id, words])).toEqual([[long.id, { from: 15, to: 25 }]])
})

test('a doubt about the talk stands among the marks', () => {
  const brackets = bracketsByParagraph(talk, [], [{ start: 3, end: 6, id: 'finding:0', label: 'fix: not covered' }])
  expect(brackets.get(0)).toEqual([
    {
      id: 'finding:0',
      kind: 'doubt',
      label: 'fix: not covered',
      isPencilled: false,
      words: { from: 3, to: 6 },
      lane: 0,
    },
  ])
})
