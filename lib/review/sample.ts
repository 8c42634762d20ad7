import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Heading, type Project } from '@/lib/procedure/project'
import type { Cue } from '@/lib/procedure/recording'

/** A mark of a sample: kind, text, and what else it carries. */
export type SampleMark = readonly [kind: Kind, text: string, more?: Partial<Mark>]

/** What a sample has besides marks. */
export type SampleMore = {
  readonly heading?: Partial<Heading>
  /** Lines of the talk; each takes five seconds, beginning at 0, as marks do. */
  readonly talk?: readonly string[]
  /** Duration of the footage, seconds; without it there is none. */
  readonly footage?: number
}

/**
 * A small project for a rule's samples. Marks last five seconds each, one after the other; ids are `step-1`, `caution-2` …
 * by position; marks that are not steps belong to the last step before them, or the first.
 */
export const sample = (marks: readonly SampleMark[], more: SampleMore = {}): Project => {
  const empty = emptyProject()
  const ids = marks.map(([kind], i) => `${kind}-${i + 1}`)
  const stepFor = (at: number): string | undefined => {
    const before = marks.slice(0, at).findLastIndex(([kind]) => kind === 'step')
    const found = before >= 0 ? before : marks.findIndex(([kind]) => kind === 'step')
    return ids[found]
  }
  let place = 0
  const full = marks.map(([kind, text, own], i): Mark => {
    const step = stepFor(i)
    const start = i * 5
    return {
      id: ids[i] ?? '',
      kind,
      start,
      end: start + 5,
      text,
      said: '',
      ...(kind === 'step' ? { place: ++place } : step === undefined ? {} : { step }),
      ...own,
    }
  })
  const cues = more.talk?.map((text, i): Cue => ({ start: i * 5, end: i * 5 + 5, text }))
  return {
    ...empty,
    procedure: { ...empty.procedure, title: 'Sample job', equipment: 'bench machine', ...more.heading },
    recording: {
      footage:
        more.footage === undefined ? null : { name: 'sample.mp4', bytes: 1, seconds: more.footage, fingerprint: '' },
      transcript: cues === undefined ? null : { name: 'sample.vtt', form: 'webvtt', cues },
    },
    marks: full,
  }
}
