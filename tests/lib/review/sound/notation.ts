import type { Kind, Level } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Project } from '@/lib/procedure/project'

/** What a line of a sound procedure is good for, so that faults know what they take away: `>belt` undoes, `<belt` makes good. */
export type Note = {
  readonly undoes: readonly string[]
  readonly restores: readonly string[]
  readonly before: readonly string[]
  readonly after: readonly string[]
  readonly proves: readonly string[]
}

/** A sound procedure with its notes by mark id. */
export type Sound = { readonly name: string; readonly project: Project; readonly notes: ReadonlyMap<string, Note> }

const KINDS: Readonly<Record<string, Kind>> = {
  '-': 'step',
  '!': 'caution',
  '=': 'spec',
  '?': 'check',
  '+': 'tool',
  '*': 'material',
}
const SPOKEN: Readonly<Record<string, string>> = {
  'N.m': 'newton metres',
  mm: 'millimetres',
  bar: 'bar',
  L: 'litres',
  min: 'minutes',
  Cel: 'degrees Celsius',
  Ohm: 'ohms',
  V: 'volts',
  A: 'amps',
  h: 'hours',
}

const NOTE = /\s*([<>])([a-z]+)|\s*\{(before|after|proves) ([a-z-]+)\}/g

const noteOf = (line: string): Note => {
  const all = [...line.matchAll(NOTE)]
  const of = (sign: string) =>
    all.flatMap(([, arrow, thing, word, other]) =>
      arrow === sign ? [thing ?? ''] : word === sign ? [other ?? ''] : [],
    )
  return { undoes: of('>'), restores: of('<'), before: of('before'), after: of('after'), proves: of('proves') }
}

/** `name: 8..10 N.m @manual torque table | cold` */
const readSpec = (line: string): Partial<Mark> & { text: string } => {
  const [, text = '', low = '', high = '', unit = '', basis = '', citation = '', reference] =
    /^(.*?): ([\d.]*)\.\.([\d.]*) (\S+) @(\S+) ([^|]*?)(?: \| (.*))?$/.exec(line) ?? []
  return {
    text,
    quantity: { ...(low === '' ? {} : { low: Number(low) }), ...(high === '' ? {} : { high: Number(high) }), unit },
    basis: basis as NonNullable<Mark['basis']>,
    citation: citation.trim(),
    ...(reference === undefined ? {} : { reference }),
  }
}

const spokenSpec = ({ text, quantity }: Partial<Mark> & { text: string }): string => {
  const unit = SPOKEN[quantity?.unit ?? ''] ?? quantity?.unit ?? ''
  if (quantity?.low !== undefined && quantity.high !== undefined)
    return `The ${text} is ${quantity.low} to ${quantity.high} ${unit}.`
  return quantity?.low === undefined
    ? `The ${text} is at most ${quantity?.high} ${unit}.`
    : `The ${text} is at least ${quantity.low} ${unit}.`
}

const SECONDS = 6

/**
 * Reads a sound procedure: a head of `title:`, `equipment:`, `months:`, then a line a mark: `-` step, `!` caution
 * (`! warning pressure: …`, for the step that follows), `=` spec, `?` check, `+` tool, `*` material (for the step before).
 */
export const readSound = (name: string, text: string): Sound => {
  const empty = emptyProject()
  const head: Record<string, string> = {}
  const marks: Mark[] = []
  const notes = new Map<string, Note>()
  const cues: { start: number; end: number; text: string }[] = []
  let place = 0
  let waiting: number[] = []
  for (const line of text
    .split('\n')
    .map(row => row.trim())
    .filter(row => row !== '')) {
    const [, key, value] = /^(title|equipment|months|scope): (.*)$/.exec(line) ?? []
    if (key !== undefined) {
      head[key] = value ?? ''
      continue
    }
    const kind = KINDS[line[0] ?? '']
    if (kind === undefined) throw new Error(`${name}: ${line}`)
    const body = line.slice(2).replaceAll(NOTE, '').trim()
    const id = `${kind}-${marks.length + 1}`
    const start = cues.length * SECONDS
    const step = marks.findLast(mark => mark.kind === 'step')?.id
    const base = {
      id,
      kind,
      start,
      end: start + SECONDS - 1,
      said: '',
      ...(kind === 'step' ? { place: ++place } : step === undefined ? {} : { step }),
    }
    const [, level, hazard, caution] = /^(danger|warning|caution|notice) ([a-z-]+): (.*)$/.exec(body) ?? []
    const spec = kind === 'spec' ? readSpec(body) : undefined
    const said = spec === undefined ? `${caution ?? body}.` : spokenSpec(spec)
    const mark: Mark = {
      ...base,
      text: body,
      ...(spec ?? {}),
      ...(caution === undefined ? {} : { text: caution, level: level as Level, hazard: hazard ?? '' }),
    }
    marks.push({ ...mark, said })
    notes.set(id, noteOf(line))
    cues.push({ start, end: start + SECONDS - 1, text: said })
    if (kind === 'caution') waiting.push(marks.length - 1)
    if (kind === 'step') {
      for (const at of waiting) marks[at] = { ...(marks[at] as Mark), step: id }
      waiting = []
    }
  }
  const project: Project = {
    ...empty,
    procedure: {
      ...empty.procedure,
      title: head.title ?? '',
      equipment: head.equipment ?? '',
      scope: head.scope ?? '',
      ...(head.months === undefined ? {} : { interval: { months: Number(head.months) } }),
    },
    recording: {
      footage: { name: `${name}.mp4`, bytes: 1, seconds: cues.length * SECONDS + 2, fingerprint: '' },
      transcript: { name: `${name}.vtt`, form: 'webvtt', cues },
    },
    marks,
  }
  return { name, project, notes }
}
