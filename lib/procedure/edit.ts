import type { Mark } from './mark'
import { moveStep, renumber } from './place'
import type { Heading, Project } from './project'
import type { Footage, Transcript } from './recording'
import { redraft } from './redraft'
import { without } from './without'

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

const mapMark = (project: Project, id: string, change: (mark: Mark) => Mark): Project => ({
  ...project,
  marks: project.marks.map(mark => (mark.id === id ? change(mark) : mark)),
})

/** Whether a change of fields changes nothing: a choice made again is no change to take back. */
const isSoAlready = (mark: Mark, { to = {}, clear = [] }: Extract<Edit, { do: 'change-mark' }>): boolean =>
  clear.every(field => mark[field] === undefined || to[field] !== undefined) &&
  Object.entries(to).every(([field, value]) => JSON.stringify(mark[field as keyof Mark]) === JSON.stringify(value))

const dropMarks = (project: Project, ids: readonly string[]): Project => {
  const gone = new Set(ids)
  const dropped = project.marks
    .filter(mark => gone.has(mark.id) && mark.pencilled !== undefined && mark.said !== '')
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
      if (project.marks.every(mark => mark.id !== edit.id || isSoAlready(mark, edit))) return project
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
      return redraft(project, edit.marks)
    case 'waive': {
      const { rule, mark, reason } = edit
      const others = project.waivers.filter(waiver => waiver.rule !== rule || waiver.mark !== mark)
      return { ...project, waivers: [...others, { rule, reason, ...(mark === undefined ? {} : { mark }) }] }
    }
    case 'unwaive':
      return { ...project, waivers: project.waivers.filter(w => w.rule !== edit.rule || w.mark !== edit.mark) }
  }
}
