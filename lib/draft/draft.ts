import { KINDS, type Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Transcript } from '@/lib/procedure/recording'
import { firstIndex } from '@/lib/procedure/search'
import { toMilliseconds } from '@/lib/procedure/time'
import { impliedTools } from './implied'
import { draftLists } from './list-marks'
import { placeSteps } from './order'
import { type Drafted, draftSentences } from './sentence-marks'
import { separate } from './span'
import { draftSpecs } from './spec-marks'
import { readTalk } from './talk'

/** How far, in sentences, a caution may stand before the step it is about. */
const AHEAD = 2

/** Finds the step a mark belongs to: in its own sentence, else (cautions) the next if near, else the last before. */
const toStepFinder = (steps: readonly Drafted[]): ((one: Drafted) => string | undefined) => {
  const inOrder = [...steps].sort((a, b) => a.sentence - b.sentence)
  return ({ sentence, mark }) => {
    const before = firstIndex(inOrder.length, i => (inOrder[i]?.sentence ?? 0) >= sentence)
    const next = inOrder[before]
    const isNear = next !== undefined && next.sentence - sentence <= (mark.kind === 'caution' ? AHEAD : 0)
    return (isNear ? next : (inOrder[before - 1] ?? inOrder[0]))?.mark.id
  }
}

const numbered = (kind: Kind, drafted: readonly Drafted[]): readonly Drafted[] => {
  const sorted = [...drafted].sort(
    (a, b) => a.mark.start - b.mark.start || a.mark.end - b.mark.end || a.sentence - b.sentence,
  )
  return sorted.map((one, i) => ({ ...one, mark: { ...one.mark, id: `${kind}-${i + 1}` } }))
}

/** @returns a moment to the whole millisecond, inside the talk where that begins or ends between two. */
const toWhole = ({ cues }: Transcript): ((seconds: number) => number) => {
  const from = cues.reduce((least, { start }) => Math.min(least, start), Number.POSITIVE_INFINITY)
  const to = cues.reduce((most, { end }) => Math.max(most, end), 0)
  return seconds => Math.max(from, Math.min(to, toMilliseconds(seconds)))
}

/**
 * Pencils in what a careful writer would take from a talk: marks of every kind, each with the words it comes from, a
 * confidence (share of such marks that are right) and a reason. Steps carry their place, other marks the step they belong to.
 * Deterministic; linear in the talk's length. Never throws.
 *
 * @param options.onProgress called with the share done, 0 to 1
 * @returns marks, in whole milliseconds, within the transcript's time, none overlapping another of its kind
 */
export const draftMarks = (
  transcript: Transcript,
  options: { readonly onProgress?: (done: number) => void } = {},
): readonly Mark[] => {
  const { onProgress = () => {} } = options
  const talk = readTalk(transcript, onProgress)
  const specs = draftSpecs(talk)
  const lists = draftLists(talk)
  onProgress(0.8)
  const told = draftSentences(talk)
  const implied = impliedTools(
    specs,
    lists.filter(({ mark }) => mark.kind === 'tool'),
  )
  const all = [...told, ...specs, ...lists, ...implied]
  const byKind = new Map(
    KINDS.map(kind => [
      kind,
      numbered(
        kind,
        all.filter(({ mark }) => mark.kind === kind),
      ),
    ]),
  )
  const steps = byKind.get('step') ?? []
  const stepFor = toStepFinder(steps)
  const places = new Map(placeSteps(steps).map(mark => [mark.id, mark]))
  const whole = toWhole(transcript)
  const marks = KINDS.flatMap(kind => {
    const own = (byKind.get(kind) ?? []).map(one => {
      if (kind === 'step') return places.get(one.mark.id) ?? one.mark
      const step = stepFor(one)
      return step === undefined ? one.mark : { ...one.mark, step }
    })
    return separate(own).map(mark => ({ ...mark, start: whole(mark.start), end: whole(mark.end) }))
  })
  onProgress(1)
  return marks
}
