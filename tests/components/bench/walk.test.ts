import { expect, test } from 'vitest'
import { nextFinding } from '@/components/bench/walk'
import type { Finding } from '@/lib/review/rule'

const finding = (message: string): Finding => ({
  rule: 'spec-no-tolerance',
  level: 'fix',
  message,
  place: { at: 'whole' },
})

const walk = (isReviewed: boolean, findings: readonly Finding[]) => {
  const said: string[] = []
  const chosen: (Finding | undefined)[] = []
  nextFinding(
    {
      findings,
      isReviewed,
      chosenFinding: undefined,
      findingAt: undefined,
      chooseFinding: one => chosen.push(one),
      tell: (...notice) => said.push(notice.join(' | ')),
    },
    1,
  )
  return { said, chosen }
}

test('asked for before the first review is done, findings are not said to be none', () => {
  expect(walk(false, [])).toEqual({
    said: ['The sheet is still being reviewed: ask for its findings again in a moment.'],
    chosen: [],
  })
})

test('reviewed, the walk goes to the first finding, or says that none is open', () => {
  const first = finding('no tolerance')
  expect(walk(true, [first])).toEqual({ said: ['Finding 1 of 1, fix | no tolerance'], chosen: [first] })
  expect(walk(true, [])).toEqual({ said: ['No findings are open.'], chosen: [undefined] })
})
