import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Project } from '@/lib/procedure/project'
import type { Finding } from '@/lib/review/rule'
import { contentStems } from '@/lib/review/words'

type GoldSpec = {
  readonly low: number | null
  readonly high: number | null
  readonly nominal: number | null
  readonly tol: number | null
  readonly unit: string | null
  readonly ref: string | null
}

/** A development case as ../shared/cases/README.md describes it. */
export type Gold = {
  readonly title: string
  readonly equipment: string
  readonly duration: number
  readonly sentences: readonly {
    readonly speaker: string
    readonly start: number
    readonly end: number
    readonly text: string
  }[]
  readonly marks: readonly {
    readonly kind: Mark['kind']
    readonly start: number
    readonly end: number
    readonly text: string
    readonly hazard?: string
    readonly level?: Mark['level']
  }[]
  readonly specs: readonly GoldSpec[]
  readonly review: readonly { readonly rule: string; readonly text: string }[]
}

/** @returns the cases of a folder by name; empty where the folder is not at hand. */
export const goldCases = (folder: string): readonly (readonly [string, Gold])[] =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter(file => file.endsWith('.gold.json'))
        .sort()
        .map(
          file =>
            [file.replace('.gold.json', ''), JSON.parse(readFileSync(join(folder, file), 'utf8')) as Gold] as const,
        )
    : []

const quantityOf = ({ low, high, nominal, tol, unit }: GoldSpec): Mark['quantity'] => {
  const [least, most] = tol === null || nominal === null ? [low, high] : [nominal - tol, nominal + tol]
  const quantity = {
    ...(least === null ? {} : { low: least }),
    ...(most === null ? {} : { high: most }),
    ...(nominal === null ? {} : { nominal }),
    ...(unit === null ? {} : { unit }),
  }
  return Object.keys(quantity).length === 0 ? undefined : quantity
}

/** @returns the case as a project: its marks all kept, specs spoken only, the talk a cue a sentence. */
export const goldProject = (gold: Gold): Project => {
  let spec = 0
  const marks = gold.marks.map((mark, i): Mark => {
    const said = gold.sentences.filter(({ start, end }) => start < mark.end && end > mark.start).map(({ text }) => text)
    const base = {
      id: `${mark.kind}-${i + 1}`,
      kind: mark.kind,
      start: mark.start,
      end: mark.end,
      text: mark.text,
      said: said.join(' '),
    }
    if (mark.kind === 'caution')
      return { ...base, ...(mark.level ? { level: mark.level } : {}), ...(mark.hazard ? { hazard: mark.hazard } : {}) }
    if (mark.kind !== 'spec') return base
    const own = gold.specs[spec++]
    const quantity = own && quantityOf(own)
    return { ...base, basis: 'spoken', ...(quantity ? { quantity } : {}), ...(own?.ref ? { reference: own.ref } : {}) }
  })
  const empty = emptyProject()
  return {
    ...empty,
    procedure: { ...empty.procedure, title: gold.title, equipment: gold.equipment },
    recording: {
      footage: { name: 'case.mp4', bytes: 1, seconds: gold.duration, fingerprint: '' },
      transcript: {
        name: 'case.vtt',
        form: 'webvtt',
        cues: gold.sentences.map(({ start, end, text, speaker }) => ({ start, end, text, speaker })),
      },
    },
    marks,
  }
}

/** Which rules of ours answer which tag of the cases. */
export const TAGS: Readonly<Record<string, readonly string[]>> = {
  'no-function-test': ['no-function-test', 'brakes-not-tested', 'safety-device-not-tested'],
  'no-leak-test': ['no-leak-test'],
  'no-lockout': ['no-lockout'],
  'missing-caution': ['hazard-no-caution', 'caution-late', 'run-unready', 'licensed-work'],
  'no-tolerance': ['spec-no-tolerance', 'spec-vague'],
  'unverified-spec': ['spec-no-basis'],
  conflict: ['spec-conflict', 'limit-not-marked', 'corrected-value'],
  'not-refitted': ['not-refitted', 'not-closed', 'not-reconnected', 'not-tightened', 'run-unready'],
  'tool-not-introduced': ['tool-not-listed', 'driver-not-named', 'tool-cannot-verify'],
  'vague-reference': ['vague-thing'],
  'no-disposal': ['no-disposal'],
  rotation: ['no-rotation-check'],
  'step-order': ['step-late', 'told-late', 'preparation-late', 'caution-late', 'needs-later', 'run-unready'],
}

/** What a finding is about: the words of its mark and of the things it quotes, not of the rule's own phrases. */
const wordsOf = ({ place, message }: Finding, project: Project): readonly string[] => {
  const mark = place.at === 'mark' ? project.marks.find(({ id }) => id === place.mark) : undefined
  const quoted = [...message.matchAll(/"([^"]*)"|: the ([^.]*?) (?:is|are) /g)].map(match => match[1] ?? match[2] ?? '')
  return contentStems([mark?.text ?? '', ...quoted].join(' ').replaceAll('-', ' '))
}

/** Words of the lists that say nothing of what they are about. */
const EMPTY = new Set(
  'give value single state mention hand take range follow say check first source come go sheet torque'.split(' '),
)

/** Tags of what is missing altogether: there is no place but the end. */
const ONE_A_CASE = new Set(['no-function-test', 'no-leak-test', 'no-lockout', 'rotation'])

/** Whether a finding answers what is listed: a rule of its tag, and a word in common with what it is about. */
export const answers = (finding: Finding, listed: Gold['review'][number], project: Project): boolean => {
  if (TAGS[listed.rule]?.includes(finding.rule) !== true) return false
  const about = wordsOf(finding, project)
  const own = new Set(listed.rule === 'missing-caution' ? [...about, ...contentStems(finding.message)] : about)
  if (ONE_A_CASE.has(listed.rule) || /\bwhole job\b/.test(listed.text) || finding.place.at === 'whole') return true
  return contentStems(listed.text.replaceAll('-', ' ')).some(stem => own.has(stem) && !EMPTY.has(stem))
}

/** What was found of a case's list, what was missed, and what stop and fix findings it does not list. */
export const scoreCase = (gold: Gold, findings: readonly Finding[], project: Project) => {
  const missed = gold.review.filter(listed => !findings.some(finding => answers(finding, listed, project)))
  const further = findings.filter(
    finding => finding.level !== 'consider' && !gold.review.some(listed => answers(finding, listed, project)),
  )
  return { listed: gold.review.length, missed, further }
}
