import { expect, test } from 'vitest'
import { bracketsByParagraph, portionsOf } from '@/components/talk/brackets'
import { toTalk } from '@/lib/transcript/talk'
import { caution, check, step, tool } from '../../builders'

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

/** A talk as text without times gives it. */
const untimed = (...lines: string[]) =>
  toTalk(
    lines.map((text, cue) => ({
      start: 0,
      end: 0,
      text,
      words: [...text.matchAll(/\S+/g)].map(({ 0: word, index }) => ({
        at: index,
        to: index + word.length,
        start: 0,
        end: 0,
        cue,
      })),
    })),
  )

test('without times marks stand by their words, the same words one after the other', () => {
  const talk = untimed('Slide the old pads out.', 'Wipe it, then pad it.', 'Slide the old pads out.')
  const first = step(0, 0, 'Slide them out', { said: 'Slide the old pads out.' })
  const again = step(0, 0, 'Slide them out', { said: 'slide  the old pads out.' })
  const pad = check(0, 0, 'Padded', { said: 'pad' })
  const lost = tool(0, 0, 'wrench', { said: 'a wrench' })
  const words = new Map(
    [...bracketsByParagraph(talk, [first, again, pad, lost], []).values()].flat().map(({ id, words }) => [id, words]),
  )
  expect(words).toEqual(
    new Map([
      [first.id, { from: 0, to: 5 }],
      [pad.id, { from: 8, to: 9 }],
      [again.id, { from: 10, to: 15 }],
    ]),
  )
})

test('brackets are cut into portions; what would be drawn the same stays the same object, list by list', () => {
  const [one, two] = [step(0, 5, 'one'), step(31, 35, 'two')]
  const first = portionsOf(bracketsByParagraph(talk, [one, two], []), 2, 1, [])
  expect(first.map(portion => portion.map(list => list.map(({ id }) => id)))).toEqual([[[one.id]], [[two.id]]])
  const renamed = { ...two, text: 'two, otherwise' }
  const second = portionsOf(bracketsByParagraph(talk, [one, renamed], []), 2, 1, first)
  expect(second[0]).toBe(first[0])
  expect(second[1]?.[0]?.[0]?.label).toBe('step: two, otherwise')
  // A paragraph beside a changed one, in the same portion, keeps its list.
  const together = portionsOf(bracketsByParagraph(talk, [one, two], []), 2, 8, [])
  const later = portionsOf(bracketsByParagraph(talk, [one, renamed], []), 2, 8, together)
  expect(later[0]).not.toBe(together[0])
  expect(later[0]?.[0]).toBe(together[0]?.[0])
  expect(portionsOf(bracketsByParagraph(talk, [], []), 2, 8, together)).toEqual([[[], []]])
})
