import { readFileSync, statSync } from 'node:fs'
import { expect, test } from 'vitest'
import { fingerprintOf } from '@/lib/footage/fingerprint'
import { kindSchema } from '@/lib/procedure/mark'
import { parseProject } from '@/lib/procedure/project-file'
import { readTranscript } from '@/lib/transcript/read'
import { toSentences } from '@/lib/transcript/sentence'

const read = (name: string) => readFileSync(new URL(`../public/demo/${name}`, import.meta.url))

const project = () => {
  const parsed = parseProject(read('demo.tellwright.json').toString())
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.value
}

const transcript = () => {
  const result = readTranscript(read('demo.vtt'), 'demo.vtt')
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  expect(result.value.problems).toEqual([])
  return result.value.transcript
}

test('the demo project knows its footage and holds its captions', async () => {
  const { footage, transcript: held } = project().recording
  const film = new Blob([read('demo.mp4')])
  expect(footage).toMatchObject({ name: 'demo.mp4', bytes: film.size, fingerprint: await fingerprintOf(film) })
  expect(held).toEqual(transcript())
})

test('the demo is short and small, its index stands in front', () => {
  const { footage } = project().recording
  expect(footage?.seconds).toBeGreaterThan(120)
  expect(footage?.seconds).toBeLessThan(180)
  expect(statSync(new URL('../public/demo/demo.mp4', import.meta.url)).size).toBeLessThan(5_000_000)
  const film = read('demo.mp4')
  expect(film.indexOf('moov')).toBeLessThan(film.indexOf('mdat'))
})

test('the captions are cut as a machine cuts them: at most five seconds, across sentences', () => {
  const { cues } = transcript()
  for (const { start, end } of cues) expect(end - start).toBeLessThanOrEqual(5.001)
  expect(cues.filter(({ text }) => /[.?] \S/.test(text)).length).toBeGreaterThan(2)
  expect(new Set(cues.map(({ speaker }) => speaker))).toEqual(new Set(['Hedda', 'Ivo']))
})

test('every kind of mark is there, kept, and said in the talk', () => {
  const { marks } = project()
  const talk = toSentences(transcript())
    .map(({ text }) => text)
    .join(' ')
  expect(new Set(marks.map(({ kind }) => kind))).toEqual(new Set(kindSchema.options))
  for (const { said, start, end, pencilled, id } of marks) {
    expect(talk, id).toContain(said)
    expect(end, id).toBeGreaterThan(start)
    expect(pencilled, id).toBeUndefined()
  }
})
