import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Heading, type Project } from '@/lib/procedure/project'
import type { Finding } from '@/lib/review/rule'
import { RESTORE } from './faults'

/** A fault put in by hand: what it changes of the sound procedure, and where a foreman may point. */
type Fault = {
  readonly rule: string
  /** Ids of marks, or `whole`. */
  readonly places: readonly string[]
  readonly what: string
  readonly drop?: readonly string[]
  readonly add?: readonly Mark[]
  /** By id; null clears a field. */
  readonly set?: Readonly<Record<string, Readonly<Record<string, unknown>>>>
  /** Ids of all steps as they stand then. */
  readonly order?: readonly string[]
  readonly heading?: Readonly<Record<string, unknown>>
}

/** A sound procedure with its talk and the faults put into it; see tests/samples/review/README.md. */
export type Unseen = {
  readonly name: string
  readonly heading: Partial<Heading>
  readonly seconds: number
  readonly cues: readonly (readonly [start: number, end: number, text: string])[]
  readonly marks: readonly Mark[]
  readonly faults: readonly Fault[]
}

const FOLDER = 'tests/samples/review'

/** @returns the procedures of each file of a sort, by the file's name; what was learned from which, see the README there. */
export const unseenSets = (
  sort: 'unseen' | 'taught' | 'fresh' | 'first' | 'next' | 'later' | 'since' | 'last',
): readonly (readonly [string, readonly Unseen[]])[] =>
  readdirSync(FOLDER)
    .filter(file => file.startsWith(sort) && file.endsWith('.json'))
    .sort()
    .map(file => [file, JSON.parse(readFileSync(join(FOLDER, file), 'utf8')) as readonly Unseen[]] as const)

/** @returns the sound procedure as a project. */
export const soundProject = ({ name, heading, seconds, cues, marks }: Unseen): Project => {
  const empty = emptyProject()
  return {
    ...empty,
    procedure: { ...empty.procedure, ...heading },
    recording: {
      footage: { name: `${name}.mp4`, bytes: 1, seconds, fingerprint: '' },
      transcript: {
        name: `${name}.vtt`,
        form: 'webvtt',
        cues: cues.map(([start, end, text]) => ({ start, end, text })),
      },
    },
    marks,
  }
}

const changed = <T extends object>(value: T, to: Readonly<Record<string, unknown>> | undefined): T =>
  to === undefined
    ? value
    : (Object.fromEntries(Object.entries({ ...value, ...to }).filter(([, own]) => own !== null)) as T)

/** @returns the project with one fault in it. */
export const faultyProject = (sound: Project, { drop = [], add = [], set = {}, order, heading }: Fault): Project => {
  const kept = sound.marks.filter(({ id }) => !drop.includes(id)).map(mark => changed(mark, set[mark.id]))
  const steps =
    order ??
    kept
      .filter(({ kind }) => kind === 'step')
      .sort((a, b) => (a.place ?? 0) - (b.place ?? 0))
      .map(({ id }) => id)
  const marks = [...kept, ...add].map(mark =>
    mark.kind === 'step' ? { ...mark, place: steps.indexOf(mark.id) + 1 } : mark,
  )
  return { ...sound, procedure: changed(sound.procedure, heading), marks }
}

const RESTORED = [...RESTORE, 'run-unready']

/** Which rules answer which kind of fault; a kind that is not here is named as its rule. */
const ANSWERS: Readonly<Record<string, readonly string[]>> = {
  'missing-caution': ['hazard-no-caution', 'warning-not-marked', 'no-lockout', 'licensed-work'],
  'licensed-work': ['licensed-work', 'warning-not-marked'],
  'no-lockout': ['no-lockout'],
  'no-disposal': ['no-disposal'],
  'not-reconnected': RESTORED,
  'not-refitted': RESTORED,
  'not-reopened': RESTORED,
  'not-refilled': RESTORED,
  'not-closed': RESTORED,
  'not-retightened': RESTORED,
  'not-unlocked': RESTORED,
  'not-lowered': RESTORED,
  'aid-left': RESTORED,
  'step-order': [
    'step-late',
    'told-late',
    'order-unlike-talk',
    'preparation-late',
    'needs-later',
    'run-unready',
    'caution-late',
  ],
  'warning-after-step': ['caution-late'],
  'no-unit': ['spec-no-unit'],
  'no-tolerance': ['spec-no-tolerance', 'spec-vague'],
  'direction-conflict': ['direction-disagrees'],
  'no-leak-test': ['no-leak-test'],
  'equivalents-disagree': ['spec-equivalent'],
  'tool-cannot-verify': ['tool-cannot-verify'],
  'two-actions': ['two-actions'],
  conflict: ['spec-conflict'],
  'no-equipment': ['no-equipment'],
  implausible: ['spec-implausible', 'spec-torque'],
  'tool-not-listed': ['tool-not-listed', 'driver-not-named', 'tool-cannot-verify'],
  'caution-lacks-consequence': ['caution-incomplete'],
  'caution-lacks-avoidance': ['caution-incomplete'],
  'caution-lacks-hazard': ['caution-incomplete'],
  'too-long': ['too-long'],
  jargon: ['unexplained-short-form'],
  'spoken-only': ['spec-no-basis'],
  'listed-not-used': ['tool-not-used'],
  'no-verb-first': ['no-verb-first'],
  'no-brake-test': ['brakes-not-tested', 'no-function-test'],
  'vague-reference': ['vague-thing'],
  'no-function-test': ['no-function-test', 'brakes-not-tested', 'safety-device-not-tested'],
  'several-names': ['several-names'],
  'wrong-signal-word': ['signal-word'],
  'no-interval': ['no-interval'],
  'no-torque-recheck': ['no-retorque'],
  'no-rotation': ['no-rotation-check'],
}

/** @returns whether a finding is of the fault's kind and at a place where a foreman may point. */
export const isAnswer = ({ rule, place }: Finding, fault: Fault): boolean =>
  (ANSWERS[fault.rule] ?? [fault.rule]).includes(rule) &&
  (place.at === 'mark' ? fault.places.includes(place.mark) : fault.places.includes('whole'))
