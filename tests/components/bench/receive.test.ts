import { expect, test } from 'vitest'
import { receive } from '@/components/bench/receive'
import type { Sorted } from '@/components/bench/sorting'
import { emptyProject, type Project } from '@/lib/procedure/project'

const cues = [{ start: 0, end: 4, text: 'Lift the lid.' }]
const footage = (name: string): Sorted => ({
  is: 'footage',
  footage: { name, bytes: 9, seconds: 60, fingerprint: name },
  given: { file: new File(['footage'], name) },
  problems: [],
})
const transcript = (name: string): Sorted => ({
  is: 'transcript',
  transcript: { name, form: 'webvtt', cues },
  problems: [],
})
const projectOf = (talk: string | undefined, film: string | undefined): Project => ({
  ...emptyProject(),
  recording: {
    footage: film === undefined ? null : { name: film, bytes: 9, seconds: 60, fingerprint: film },
    transcript: talk === undefined ? null : { name: talk, form: 'webvtt', cues },
  },
})

test('files dropped on an open bench go where there is room for them', () => {
  const parts = [footage('lid.mp4'), transcript('lid.vtt')]
  const received = receive(parts, projectOf(undefined, undefined), false)
  expect(received.footage?.file.name).toBe('lid.mp4')
  expect(received.transcript?.name).toBe('lid.vtt')
  expect(received.words).toEqual([])
})

test('what an open bench has no room for is left aside, and said what to do with', () => {
  const parts: readonly Sorted[] = [
    footage('cam-2.mp4'),
    transcript('better.vtt'),
    { is: 'project', project: { ...emptyProject(), procedure: { ...emptyProject().procedure, title: 'Lathe' } } },
  ]
  expect(receive(parts, projectOf('lid.vtt', 'lid.mp4'), true)).toEqual({
    words: [
      "“cam-2.mp4” was left aside: this recording's footage is “lid.mp4”.",
      "“better.vtt” was left aside: this recording's transcript is “lid.vtt”. Times, over the talk, takes another in its place.",
      'The project “Lathe” was left aside: lay it on the bench from the start page.',
    ],
  })
})
