import { expect, test } from 'vitest'
import { assemble } from '@/components/bench/laying'
import type { Sorted } from '@/components/bench/sorting'
import { emptyProject } from '@/lib/procedure/project'

const footage = (name: string, fingerprint: string): Sorted => ({
  is: 'footage',
  footage: { name, bytes: 9, seconds: 60, fingerprint },
  given: { file: new File(['footage'], name) },
  problems: [],
})
const transcript = (name: string, end = 0): Sorted => ({
  is: 'transcript',
  transcript: { name, form: 'webvtt', cues: end === 0 ? [] : [{ start: 0, end, text: 'Lift the lid.' }] },
  problems: [],
})

test('of two footages and two transcripts the first of each is laid, and the others are named as left aside', () => {
  const parts = [footage('lid_cam-1.mp4', 'a'), transcript('one.vtt'), footage('cam-2.mp4', 'b'), transcript('two.vtt')]
  const laid = assemble(parts, emptyProject())
  expect(laid.project.procedure.title).toBe('lid cam 1')
  expect(laid.project.recording.footage?.name).toBe('lid_cam-1.mp4')
  expect(laid.footage).toBe(parts[0])
  expect(laid.project.recording.transcript?.name).toBe('one.vtt')
  expect(laid.aside).toEqual([
    "“cam-2.mp4” was left aside: this recording's footage is “lid_cam-1.mp4”.",
    "“two.vtt” was left aside: this recording's transcript is “one.vtt”.",
  ])
})

test('a project file takes its own footage beside it, and no other', () => {
  const known = emptyProject()
  const project = {
    ...known,
    recording: { ...known.recording, footage: { name: 'lid.mp4', bytes: 9, seconds: 60, fingerprint: 'a' } },
  }
  const its = footage('copy of lid.mp4', 'a')
  expect(assemble([{ is: 'project', project }, footage('lid.mp4', 'a')], known)).toMatchObject({
    project: { recording: project.recording },
    aside: [],
  })
  expect(assemble([{ is: 'project', project }, its], known)).toMatchObject({
    footage: its,
    project: { recording: { footage: { name: 'copy of lid.mp4' } } },
    aside: ['The footage was “lid.mp4” and is “copy of lid.mp4” now: links are written with that name.'],
  })
  expect(assemble([{ is: 'project', project }, footage('other.mp4', 'b')], known)).toMatchObject({
    footage: undefined,
    aside: ["“other.mp4” was left aside: this recording's footage is “lid.mp4”."],
  })
})

test('a transcript that runs past the footage, or ends in its first half, is doubted; one that ends a little later is not', () => {
  const asideOf = (end: number) => assemble([footage('lid.mp4', 'a'), transcript('lid.vtt', end)], emptyProject()).aside
  expect(asideOf(61.5)).toEqual([])
  expect(asideOf(601)).toEqual([
    '“lid.vtt” runs to 10:01, but “lid.mp4” ends at 1:00: see that they are of one recording.',
  ])
  expect(asideOf(20)).toEqual([
    '“lid.vtt” ends at 0:20, but “lid.mp4” runs to 1:00: see that they are of one recording and that no part of the talk is missing.',
  ])
})
