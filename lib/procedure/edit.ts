import type { Kind } from './kinds'
import type { Mark } from './mark'
import type { Heading, Project } from './project'
import type { Footage, Transcript } from './recording'

/** Fields of a mark that may be taken away. */
export type ClearableField =
  | 'pencilled'
  | 'place'
  | 'step'
  | 'level'
  | 'hazard'
  | 'quantity'
  | 'equivalent'
  | 'reference'
  | 'basis'
  | 'citation'
  | 'price'
  | 'capability'
  | 'still'

/** One change to a project, as plain data: the bench makes them, undo lists them, a finding's remedy carries them. */
export type Edit =
  | { readonly do: 'add-marks'; readonly marks: readonly Mark[] }
  | {
      readonly do: 'change-mark'
      readonly id: string
      readonly to?: Partial<Omit<Mark, 'id'>>
      readonly clear?: readonly ClearableField[]
    }
  | { readonly do: 'drop-marks'; readonly ids: readonly string[] }
  | { readonly do: 'keep-marks'; readonly ids: readonly string[] }
  | { readonly do: 'move-step'; readonly id: string; readonly place: number }
  | { readonly do: 'change-heading'; readonly to: Partial<Heading> }
  | { readonly do: 'clear-interval' }
  | { readonly do: 'correct-cue'; readonly cue: number; readonly text: string }
  | { readonly do: 'name-speaker'; readonly cues: readonly number[]; readonly speaker: string }
  | { readonly do: 'set-footage'; readonly footage: Footage | null }
  | { readonly do: 'set-transcript'; readonly transcript: Transcript | null }
  | { readonly do: 'redraft'; readonly marks: readonly Mark[] }
  | { readonly do: 'waive'; readonly rule: string; readonly mark?: string; readonly reason: string }
  | { readonly do: 'unwaive'; readonly rule: string; readonly mark?: string }

const without = <T extends object, K extends keyof T>(from: T, fields: readonly K[]): T => {
  const rest = { ...from }
  for (const field of fields) delete rest[field]
  return rest
}

const mapMark = (project: Project, id: string, change: (mark: Mark) => Mark): Project => ({
  ...project,
  marks: project.marks.map(mark => (mark.id === id ? change(mark) : mark)),
})

/** Steps in procedure order: by place, then by time. Steps without a place stand where they were said. */
export const stepsInOrder = (marks: readonly Mark[]): readonly Mark[] =>
  marks
    .filter(mark => mark.kind === 'step')
    .sort(
      (a, b) =>
        (a.place ?? Number.POSITIVE_INFINITY) - (b.place ?? Number.POSITIVE_INFINITY) ||
        a.start - b.start ||
        a.end - b.end,
    )

/** Numbers every step 1..n; a step that has no place yet goes where its time puts it among the others. */
const renumber = (project: Project): Project => {
  const placed = [...stepsInOrder(project.marks.filter(mark => mark.place !== undefined))]
  const unplaced = stepsInOrder(project.marks.filter(mark => mark.place === undefined))
  for (const step of unplaced) {
    let at = placed.length
    while (at > 0 && (placed[at - 1]?.start ?? 0) > step.start) at--
    placed.splice(at, 0, step)
  }
  const places = new Map(placed.map((step, i) => [step.id, i + 1]))
  return {
    ...project,
    marks: project.marks.map(mark => {
      const place = places.get(mark.id)
      if (place === undefined) return mark.place === undefined ? mark : without(mark, ['place'])
      return mark.place === place ? mark : { ...mark, place }
    }),
  }
}

const moveStep = (project: Project, id: string, place: number): Project => {
  const order = stepsInOrder(project.marks).map(step => step.id)
  if (!order.includes(id)) return project
  const rest = order.filter(other => other !== id)
  rest.splice(Math.max(0, Math.min(rest.length, Math.round(place) - 1)), 0, id)
  const places = new Map(rest.map((step, i) => [step, i + 1]))
  return {
    ...project,
    marks: project.marks.map(mark => {
      const to = places.get(mark.id)
      return to === undefined || mark.place === to ? mark : { ...mark, place: to }
    }),
  }
}

const dropMarks = (project: Project, ids: readonly string[]): Project => {
  const gone = new Set(ids)
  const dropped = project.marks
    .filter(mark => gone.has(mark.id) && mark.pencilled !== undefined)
    .map(({ kind, start, end, text }) => ({ kind, start, end, text }))
  const marks = project.marks
    .filter(mark => !gone.has(mark.id))
    .map(mark => (mark.step !== undefined && gone.has(mark.step) ? without(mark, ['step']) : mark))
  const waivers = project.waivers.filter(waiver => waiver.mark === undefined || !gone.has(waiver.mark))
  return {
    ...project,
    marks,
    waivers,
    ...(dropped.length > 0 ? { dropped: [...(project.dropped ?? []), ...dropped] } : {}),
  }
}

const overlaps = (a: { start: number; end: number }, b: { start: number; end: number }): boolean =>
  Math.min(a.end, b.end) - Math.max(a.start, b.start) > 0.5 * Math.min(a.end - a.start, b.end - b.start)

/** A fresh draft replaces what is pencilled; what was kept or dropped stays as it is, and is not drafted a second time. */
const redraft = (project: Project, drafted: readonly Mark[]): Project => {
  const kept = project.marks.filter(mark => mark.pencilled === undefined)
  const settled: readonly { kind: Kind; start: number; end: number; text: string }[] = [
    ...kept,
    ...(project.dropped ?? []),
  ]
  const isListed = (kind: Kind) => kind === 'tool' || kind === 'material'
  const isSettled = (mark: Mark) =>
    settled.some(
      s =>
        s.kind === mark.kind &&
        (isListed(mark.kind) ? s.text.toLowerCase() === mark.text.toLowerCase() : overlaps(s, mark)),
    )
  const taken = new Set(kept.map(mark => mark.id))
  const fresh = drafted.filter(mark => !isSettled(mark))
  const ids = new Map<string, string>()
  for (const mark of fresh) {
    let id = mark.id
    for (let n = 2; taken.has(id); n++) id = `${mark.id}-${n}`
    taken.add(id)
    ids.set(mark.id, id)
  }
  const byTime = new Map<string, Mark>()
  for (const mark of kept) if (mark.kind === 'step') byTime.set(mark.id, mark)
  const stepFor = (mark: Mark): { step: string } | undefined => {
    if (mark.step === undefined) return undefined
    const fresh = ids.get(mark.step)
    if (fresh !== undefined) return { step: fresh }
    const original = drafted.find(other => other.id === mark.step)
    const twin = original && kept.find(other => other.kind === 'step' && overlaps(other, original))
    return twin && { step: twin.id }
  }
  const marks = fresh.map(mark => {
    const { step: _, ...rest } = mark
    return {
      ...(kept.length > 0 && mark.kind === 'step' ? without(rest as Mark, ['place']) : rest),
      id: ids.get(mark.id) ?? mark.id,
      ...stepFor(mark),
    }
  })
  return { ...project, marks: [...kept, ...marks] }
}

const changeCues = (project: Project, change: (transcript: Transcript) => Transcript): Project =>
  project.recording.transcript === null
    ? project
    : { ...project, recording: { ...project.recording, transcript: change(project.recording.transcript) } }

/**
 * Applies one edit.
 *
 * @returns a new project (unchanged parts shared with the old one); edits that name a mark or cue which is not there
 *   change nothing. Steps are numbered 1..n afterwards. Never throws.
 */
export const applyEdit = (project: Project, edit: Edit): Project => {
  switch (edit.do) {
    case 'add-marks':
      return renumber({ ...project, marks: [...project.marks, ...edit.marks] })
    case 'change-mark':
      return renumber(mapMark(project, edit.id, mark => ({ ...without(mark, edit.clear ?? []), ...edit.to })))
    case 'drop-marks':
      return renumber(dropMarks(project, edit.ids))
    case 'keep-marks': {
      const ids = new Set(edit.ids)
      return { ...project, marks: project.marks.map(mark => (ids.has(mark.id) ? without(mark, ['pencilled']) : mark)) }
    }
    case 'move-step':
      return moveStep(renumber(project), edit.id, edit.place)
    case 'change-heading':
      return { ...project, procedure: { ...project.procedure, ...edit.to } }
    case 'clear-interval':
      return { ...project, procedure: without(project.procedure, ['interval']) }
    case 'correct-cue':
      return changeCues(project, transcript => ({
        ...transcript,
        cues: transcript.cues.map((cue, i) => {
          if (i !== edit.cue) return cue
          return edit.text === cue.text ? without(cue, ['corrected']) : { ...cue, corrected: edit.text }
        }),
      }))
    case 'name-speaker': {
      const cues = new Set(edit.cues)
      return changeCues(project, transcript => ({
        ...transcript,
        cues: transcript.cues.map((cue, i) => {
          if (!cues.has(i)) return cue
          return edit.speaker === '' ? without(cue, ['speaker']) : { ...cue, speaker: edit.speaker }
        }),
      }))
    }
    case 'set-footage':
      return { ...project, recording: { ...project.recording, footage: edit.footage } }
    case 'set-transcript':
      return { ...project, recording: { ...project.recording, transcript: edit.transcript } }
    case 'redraft':
      return renumber(redraft(project, edit.marks))
    case 'waive': {
      const { rule, mark, reason } = edit
      const others = project.waivers.filter(waiver => waiver.rule !== rule || waiver.mark !== mark)
      return { ...project, waivers: [...others, { rule, reason, ...(mark === undefined ? {} : { mark }) }] }
    }
    case 'unwaive':
      return { ...project, waivers: project.waivers.filter(w => w.rule !== edit.rule || w.mark !== edit.mark) }
  }
}
