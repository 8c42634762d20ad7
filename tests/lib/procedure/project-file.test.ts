import fc from 'fast-check'
import { expect, test } from 'vitest'
import { formatProblems } from '@/lib/procedure/problem'
import { emptyProject } from '@/lib/procedure/project'
import { formatProject, parseProject } from '@/lib/procedure/project-file'
import { anyProject } from '../../arbitraries'
import { projectOf, step } from '../../builders'

const refused = (text: string) => {
  const result = parseProject(text, 'job.tellwright.json')
  return result.ok ? [] : result.problems.map(({ code, place }) => ({ code, path: place?.path }))
}

test('[J1] any project reads back the same', () => {
  fc.assert(
    fc.property(anyProject(), project => {
      expect(parseProject(formatProject(project))).toEqual({ ok: true, value: project })
    }),
  )
})

test('[J1] unknown fields are kept, at the top, in a mark and in a cue', () => {
  const later = JSON.parse(formatProject(projectOf(step(1, 2, 'Do'))))
  later.colour = 'green'
  later.marks[0].mood = { of: 'the maker' }
  later.recording.transcript = { name: 'a', form: 'webvtt', cues: [{ start: 0, end: 1, text: 'a', pitch: 3 }] }
  const result = parseProject(JSON.stringify(later))
  expect(result.ok && JSON.parse(formatProject(result.value))).toEqual(later)
})

test('[J2] what is wrong is named by its path', () => {
  const project = JSON.parse(formatProject(projectOf(step(1, 2, 'Do'), step(3, 4, 'Do'))))
  project.marks[1].start = 'soon'
  project.marks[0].kind = 'stage'
  expect(refused(JSON.stringify(project))).toEqual([
    { code: 'bad-project-field', path: 'marks[0].kind' },
    { code: 'bad-project-field', path: 'marks[1].start' },
  ])
})

test.each<[string, (project: { marks: Record<string, unknown>[]; procedure?: unknown }) => void, string]>([
  [
    'nothing where fields should be',
    project => delete project.procedure,
    'this field is missing: expected fields in braces',
  ],
  [
    'text for a number',
    project => Object.assign(project.marks[0] ?? {}, { start: 'soon' }),
    'expected a number, found text',
  ],
  [
    'a word that is none of some',
    project => Object.assign(project.marks[0] ?? {}, { level: 'grave' }),
    'expected one of "danger", "warning", "caution", "notice"',
  ],
  ['too little', project => Object.assign(project.marks[0] ?? {}, { end: -1 }), 'too small: expected 0 or more'],
  ['no text', project => Object.assign(project.marks[0] ?? {}, { id: '' }), 'expected some text, found none'],
])('[J2] what is wrong is told in plain words: %s', (_, spoil, words) => {
  const project = JSON.parse(formatProject(projectOf(step(1, 2, 'Do'))))
  spoil(project)
  const result = parseProject(JSON.stringify(project))
  expect(result.ok ? [] : result.problems.map(({ message }) => message.split('. The file')[0])).toEqual([words])
})

test('[J2] what is no project, or a newer one, or names a mark twice, is said to be', () => {
  expect(refused('')).toEqual([{ code: 'not-json', path: undefined }])
  expect(refused('[1]')).toEqual([{ code: 'not-a-project', path: 'format' }])
  expect(refused(JSON.stringify({ ...emptyProject(), version: 2 }))).toEqual([
    { code: 'newer-project', path: 'version' },
  ])
  const twice = projectOf(step(1, 2, 'Do', { id: 'a' }), step(3, 4, 'Do', { id: 'a' }))
  expect(refused(formatProject(twice))).toEqual([{ code: 'duplicate-mark-id', path: 'marks[1].id' }])
})

test('[J2] a project file that was cut short is told so, and the file is named', () => {
  const whole = formatProject(projectOf(step(1, 2, 'Do', { id: 'a' }), step(3, 4, 'Do', { id: 'a' })))
  const told = (text: string, file: string) => {
    const result = parseProject(text, file)
    return result.ok ? '' : formatProblems(result.problems)
  }
  expect(told(whole.slice(0, 200), 'lid.tellwright.json')).toMatch(/^lid\.tellwright\.json: .*cut short.*earlier copy/)
  expect(told('{', 'lid.json')).toContain('Choose a *.tellwright.json file')
  expect(told(whole, 'lid.tellwright.json')).toMatch(/^lid\.tellwright\.json, marks\[1\]\.id: /)
})

test('[J2] many problems are told in few lines', () => {
  const problems = Array.from({ length: 9 }, (_, i) => ({ code: 'x', message: `no. ${i}` }))
  expect(formatProblems(problems, 3)).toBe('no. 0\nno. 1\nand 7 more such problems.')
  expect(formatProblems(problems.slice(0, 3), 3)).toBe('no. 0\nno. 1\nno. 2')
})

test('[J2] no text makes it throw', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json()), text => {
      expect(parseProject(text).ok).toBe(false)
    }),
  )
})
