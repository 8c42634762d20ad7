import { countOf } from './count'
import type { Mark } from './mark'
import type { Project } from './project'
import { quoted } from './shorten'
import { formatTime } from './time'

/** What sets two states of a project apart. */
export type Difference = {
  /** In plain words, such as `step “Pull the plug” kept`; empty where they are the same. */
  readonly words: string
  /** Id of the mark, where it is about one alone. */
  readonly mark?: string
}

type Happened = { readonly mark: Mark; readonly what: string }

const isSame = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b)

/** Fields as people call them; all others go by their own name. */
const FIELD_WORDS: Readonly<Record<string, string>> = {
  start: 'time',
  end: 'time',
  text: 'words',
  level: 'signal word',
  quantity: 'value',
  equivalent: 'equal value',
  reference: 'condition',
  step: 'step it belongs to',
  still: 'picture',
  capability: 'range',
}

const fieldsOf = (before: Mark, after: Mark): readonly string[] => {
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]) as Set<keyof Mark>
  return [...keys].filter(key => key !== 'place' && !isSame(before[key], after[key]))
}

/** What happened to one mark that both states have; undefined where nothing but its number did. */
const changeOf = (before: Mark, after: Mark): Happened | undefined => {
  if (before === after) return undefined
  const fields = fieldsOf(before, after)
  if (fields.length === 0) return undefined
  const wasKept = before.pencilled !== undefined && after.pencilled === undefined
  const others = fields.filter(field => field !== 'pencilled')
  const names = [...new Set(others.map(field => FIELD_WORDS[field] ?? field))]
  if (names.length === 0) return { mark: after, what: wasKept ? 'kept' : 'pencilled again' }
  return { mark: after, what: `changed (${names.join(', ')})` }
}

/**
 * The step that was moved, where places are all that changed: the one that went furthest. Which of two neighbours that changed
 * places it was can't be told: the one that came first names both.
 */
const movedStep = (before: ReadonlyMap<string, Mark>, after: readonly Mark[]): Happened | undefined => {
  const moves = after.flatMap(mark => {
    const [from, to] = [before.get(mark.id)?.place, mark.place]
    return mark.kind !== 'step' || from === undefined || to === undefined || from === to ? [] : [{ mark, from, to }]
  })
  const farOf = ({ from, to }: { from: number; to: number }) => Math.abs(to - from)
  const [first, second, ...more] = moves.sort((a, b) => farOf(b) - farOf(a) || a.to - b.to)
  if (first === undefined) return undefined
  const { mark, from, to } = first
  const isSwap = second !== undefined && more.length === 0 && from === second.to && to === second.from
  if (isSwap && to === from - 1) return { mark, what: `now stands before ${quoted(second.mark.text, 48)}` }
  return { mark, what: `moved from place ${from} to place ${to}` }
}

const markWords = (all: readonly Happened[]): readonly string[] => {
  const groups = new Map<string, Mark[]>()
  for (const { mark, what } of all) groups.set(what, [...(groups.get(what) ?? []), mark])
  return [...groups].map(([what, marks]) => {
    const [one] = marks
    return marks.length === 1 && one !== undefined
      ? `${one.kind} ${quoted(one.text, 48)} ${what}`
      : `${countOf(marks.length, 'mark')} ${what}`
  })
}

const happenedTo = (before: readonly Mark[], after: readonly Mark[]): readonly Happened[] => {
  if (before === after) return []
  const old = new Map(before.map(mark => [mark.id, mark]))
  const ids = new Set(after.map(mark => mark.id))
  // What belonged to a step that went, or belongs to one that came back, only follows it.
  const follows = (was: Mark, is: Mark): boolean => {
    const isGone = was.step !== undefined && old.has(was.step) && !ids.has(was.step)
    const isBack = is.step !== undefined && ids.has(is.step) && !old.has(is.step)
    return (isGone || isBack) && fieldsOf(was, is).every(field => field === 'step')
  }
  const happened = [
    ...before.filter(mark => !ids.has(mark.id)).map(mark => ({ mark, what: 'taken out' })),
    ...after.flatMap(mark => {
      const known = old.get(mark.id)
      if (known === undefined) return { mark, what: 'added' }
      return follows(known, mark) ? [] : (changeOf(known, mark) ?? [])
    }),
  ]
  if (happened.length > 0) return happened
  const moved = movedStep(old, after)
  return moved === undefined ? [] : [moved]
}

const waiverWords = ({ waivers: before }: Project, { waivers: after }: Project): readonly string[] => {
  if (before === after) return []
  const isIn = (list: Project['waivers'], { rule, mark, reason }: Project['waivers'][number]) =>
    list.some(other => other.rule === rule && other.mark === mark && other.reason === reason)
  return [
    ...after.filter(waiver => !isIn(before, waiver)).map(({ reason }) => `finding let stand: ${quoted(reason)}`),
    ...before.filter(waiver => !isIn(after, waiver)).map(() => 'finding raised again'),
  ]
}

/** The same footage under another name is told by that. */
const footageWords = ({ footage: was }: Project['recording'], { footage: is }: Project['recording']): string[] => {
  if (was === is) return []
  if (is === null) return ['footage taken away']
  return [was?.fingerprint === is.fingerprint ? `the footage is ${quoted(is.name)} now` : 'footage set']
}

const recordingWords = ({ recording: before }: Project, { recording: after }: Project): readonly string[] => {
  const [was, is] = [before.transcript, after.transcript]
  const cue = is?.cues.findIndex((other, i) => was !== is && !isSame(other, was?.cues[i])) ?? -1
  const start = is?.cues[cue]?.start
  return [
    ...footageWords(before, after),
    ...(was === is || isSame(was, is)
      ? []
      : [
          was?.cues.length === is?.cues.length && start !== undefined
            ? `the talk changed at ${formatTime(start)}`
            : 'transcript set',
        ]),
  ]
}

/** A new revision alone is a release, or one taken back; its letter says more than that the head changed. */
const headingWords = ({ procedure: before }: Project, { procedure: after }: Project): readonly string[] => {
  if (before === after || isSame(before, after)) return []
  if (!isSame({ ...before, revision: after.revision }, after)) return ['the head changed']
  return [after.revision === '' ? 'revision taken away' : `revision set to ${quoted(after.revision)}`]
}

/** @returns what makes the project `after` of the project `before`. Never throws. */
export const differenceOf = (before: Project, after: Project): Difference => {
  const happened = happenedTo(before.marks, after.marks)
  const words = [
    ...markWords(happened),
    ...headingWords(before, after),
    ...waiverWords(before, after),
    ...recordingWords(before, after),
  ].join(', ')
  const [one, ...more] = happened
  return { words, ...(one === undefined || more.length > 0 ? {} : { mark: one.mark.id }) }
}
