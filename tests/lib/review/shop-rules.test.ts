import { expect, test } from 'vitest'
import { parseShopRules } from '@/lib/review/shop-rules'

const known = ['no-lockout', 'too-long']
const file = { format: 'tellwright-rules', version: 1 }
const parse = (content: unknown) =>
  parseShopRules(typeof content === 'string' ? content : JSON.stringify(content), known, 'tellwright-rules.json')

test('[R7] a file may be short: what it leaves out asks for nothing', () => {
  expect(parse(file)).toEqual({ ok: true, value: { ...file, levels: {}, phrases: [], hazards: [], names: [] } })
})

test('[R7] all of it is read', () => {
  const full = {
    ...file,
    levels: { 'no-lockout': 'fix', 'too-long': 'off' },
    phrases: [{ phrase: 'two-person lift', where: 'gearbox', level: 'stop', why: 'Two backs were hurt.' }],
    hazards: [{ id: 'crane', words: ['bay 3'], caution: 'The crane may pass; stay out', level: 'warning' }],
    names: [{ use: 'circlip pliers', not: ['snap ring pliers'] }],
  }
  expect(parse(full)).toEqual({ ok: true, value: full })
})

const firstProblem = (content: unknown) => {
  const parsed = parse(content)
  return parsed.ok ? undefined : parsed.problems[0]
}

test('[R7] what is wrong is refused with its place and what to do', () => {
  expect(firstProblem('{')?.code).toBe('not-json')
  expect(firstProblem({ ...file, levels: { 'too-long': 'loud' } })).toMatchObject({
    code: 'bad-shop-rule',
    place: { file: 'tellwright-rules.json', path: 'levels.too-long' },
  })
  expect(firstProblem({ ...file, hazards: [{ id: 'Crane', words: [], caution: '' }] })?.place?.path).toMatch(
    /^hazards\[0\]/,
  )
  expect(firstProblem({ ...file, levles: {} })?.code).toBe('bad-shop-rule')
  expect(firstProblem({ ...file, levels: { 'no-lokout': 'fix' } })).toMatchObject({
    code: 'no-such-rule',
    place: { path: 'levels.no-lokout' },
  })
})
