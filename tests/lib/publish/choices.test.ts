import { expect, test } from 'vitest'
import type { Project } from '@/lib/procedure/project'
import { CHOICES, type PublishChoice, type PublishOptions } from '@/lib/publish/publication'
import { PUBLICATIONS } from '@/lib/publish/publications'
import { caution, projectOf, spec, step } from '../../builders'

const pencilled = { confidence: 0.9, reason: 'a limit' }
const cover = step(0, 4, 'Loosen the lid', { place: 1 })
const marks = [
  cover,
  step(4, 6, 'Lift the lid', { place: 2, pencilled }),
  caution(6, 8, 'Mind the spring', { level: 'warning' }),
  spec(20, 24, 'lid torque', {
    quantity: { low: 18, high: 22, unit: 'N.m' },
    said: 'eighteen to twenty-two newton metres',
    pencilled,
  }),
  step(40, 60, 'Oil the hinge', { place: 3 }),
]
/** A project in which every choice has something to act on. */
const project: Project = {
  ...projectOf(...marks),
  recording: {
    footage: { name: 'lid.mp4', bytes: 9, seconds: 60, fingerprint: 'f' },
    transcript: {
      name: 'lid.vtt',
      form: 'webvtt',
      cues: [
        { start: 0, end: 8, text: 'Loosen the lid and lift it, mind the spring.' },
        { start: 20, end: 24, text: 'It wants eighteen to twenty-two newton metres.' },
        { start: 40, end: 60, text: 'Then oil the hinge.' },
      ],
    },
  },
  waivers: [{ rule: 'no-interval', reason: 'done on demand' }],
}
const plain: PublishOptions = {
  findings: [
    { level: 'fix', message: 'no basis', where: 'step 1' },
    { level: 'consider', message: 'no interval', waived: 'done on demand' },
  ],
}
const chosen: Record<PublishChoice, PublishOptions> = {
  units: { ...plain, units: 'us' },
  footageAddress: { ...plain, footageAddress: 'https://example.org/lid' },
  pencilled: { ...plain, pencilled: 'leave-out' },
  listFindings: { ...plain, listFindings: true },
  leastChapter: { ...plain, notes: { leastChapter: 2 } },
}

test.each(PUBLICATIONS.map(publication => [publication.name, publication] as const))(
  '[P19] %s says which choices change it, all of them and no other',
  async (_, { files, heeds }) => {
    const before = await files(project, plain)
    const acting: PublishChoice[] = []
    for (const choice of CHOICES) {
      const after = await files(project, chosen[choice])
      if (JSON.stringify(after) !== JSON.stringify(before)) acting.push(choice)
    }
    expect(acting).toEqual(heeds)
  },
)
