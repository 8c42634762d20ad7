import fc from 'fast-check'
import { expect, test } from 'vitest'
import { LEVELS } from '@/lib/procedure/kinds'
import { toSheet } from '@/lib/procedure/sheet'
import { anyProject } from '../../arbitraries'
import { caution, check, projectOf, reason, spec, step, symptom, tool } from '../../builders'

test('[J5] every mark is on the sheet exactly once, in its step or among the loose', () => {
  fc.assert(
    fc.property(anyProject(), project => {
      const sheet = toSheet(project)
      const inSteps = sheet.steps.flatMap(({ number: _, mark, ...lists }) => [mark, ...Object.values(lists).flat()])
      const all = [...inSteps, ...sheet.loose].map(mark => mark.id)
      expect(all.toSorted()).toEqual(project.marks.map(mark => mark.id).toSorted())
    }),
  )
})

test('[J5] the safety summary has every caution, gravest first (ANSI Z535.6 order of signal words, from memory)', () => {
  fc.assert(
    fc.property(anyProject(), project => {
      const { safety } = toSheet(project)
      const ranks = safety.map(mark => LEVELS.indexOf(mark.level ?? 'caution'))
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
      expect(safety.length).toBe(project.marks.filter(mark => mark.kind === 'caution').length)
    }),
  )
})

test('[J5] a mark goes to the step it names, else to the one it shares time with, else by nearness', () => {
  const first = step(10, 20, 'Loosen the plug')
  const second = step(40, 50, 'Drain the sump')
  const named = caution(12, 13, 'Hot', { step: second.id })
  const inside = spec(45, 48, 'amount')
  const before = caution(36, 39, 'Slippery')
  const after = check(22, 25, 'Thread is clean')
  const why = reason(30, 31, 'It drains better')
  const sheet = toSheet(projectOf(second, first, named, inside, before, after, why))
  expect(sheet.steps.map(({ number, mark }) => [number, mark.text])).toEqual([
    [1, 'Loosen the plug'],
    [2, 'Drain the sump'],
  ])
  expect(sheet.steps[0]).toMatchObject({ cautions: [], checks: [after], reasons: [why], specs: [] })
  expect(sheet.steps[1]).toMatchObject({ cautions: [named, before], specs: [inside] })
})

test('[J5] tools and materials are listed once each; without steps all is loose', () => {
  const sheet = toSheet(projectOf(tool(1, 2, '10 mm socket'), tool(8, 9, '10 mm Socket '), symptom(3, 4, 'It squeals')))
  expect(sheet.tools.map(mark => mark.text)).toEqual(['10 mm socket'])
  expect(sheet.loose.length).toBe(3)
  expect(sheet.symptoms.map(mark => mark.text)).toEqual(['It squeals'])
})
