import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import { type SampleMark, sample } from '@/lib/review/sample'

// Machine, lone step, and the caution it needs: common practice, no source. Only pairs that hold; see tests/samples/review/README.md.
const PAIRS = readFileSync('tests/samples/review/pairs.txt', 'utf8')
  .trim()
  .split('\n')
  .map(row => row.split(' | '))

const dangersOf = (marks: readonly SampleMark[], equipment: string): readonly string[] =>
  reviewProject(sample(marks, { heading: { title: '', equipment } }))
    .filter(({ rule }) => ['hazard-no-caution', 'licensed-work', 'caution-incomplete', 'signal-word'].includes(rule))
    .map(({ message }) => message)

test.each(PAIRS)('[R2] on a %s, "%s" is asked about without its caution and not with it', (machine, step, caution) => {
  const marks: readonly SampleMark[] = [['step', step ?? '']]
  const level = caution?.startsWith('W') === true ? 'warning' : 'caution'
  expect(dangersOf(marks, machine ?? '')).not.toEqual([])
  expect(dangersOf([...marks, ['caution', caution?.slice(2) ?? '', { level }]], machine ?? '')).toEqual([])
})
