import type { Draft } from './draft'
import type { Lexeme } from './lexemes'

/** How far back a value said again counts as said before: drafts, and lexemes. */
const RECENT = 6
const REACH = 60

const isDuplicate = (a: Draft, b: Draft): boolean =>
  a.low === b.low && a.high === b.high && a.nominal === b.nominal && (a.code === b.code || b.unit === undefined)

/** The same value said twice in one breath is one reading. */
export const dropRepeats = (drafts: readonly Draft[]): void => {
  const recent: Draft[] = []
  for (const draft of drafts) {
    if (draft.dropped !== undefined) continue
    const same = recent.find(other => draft.from - other.to <= REACH && isDuplicate(other, draft))
    // "Four, four bar": the one with its own unit says it better.
    if (
      same?.isInherited === true &&
      draft.isInherited !== true &&
      draft.unit !== undefined &&
      draft.from - same.to <= 2
    ) {
      same.dropped = 'said again with its unit'
      draft.notes.push(...same.notes)
      if (same.isCorrection === true) draft.isCorrection = true
      recent.push(draft)
      continue
    }
    if (same !== undefined) {
      draft.dropped = 'said before'
      continue
    }
    recent.push(draft)
    if (recent.length > RECENT) recent.shift()
  }
}

const isSameSize = (a: Draft, b: Draft): boolean =>
  a.nominal !== undefined &&
  a.nominal === b.nominal &&
  a.unit?.code === b.unit?.code &&
  a.unit?.ambiguous === b.unit?.ambiguous

/** A tool's size said again is the same tool: `13 mil, no, 12, 12 mil spanner`. What was taken back is not said again. */
export const dropToolSizes = (drafts: readonly Draft[]): void => {
  drafts.forEach((draft, n) => {
    const isTool = draft.dropped === 'the size of a tool'
    if (!isTool && draft.dropped !== 'withdrawn by the speaker') return
    for (const other of drafts.slice(Math.max(0, n - RECENT), n + RECENT + 1)) {
      if (other.dropped !== undefined || (other.isCorrection === true && !isTool)) continue
      const isAgain = isTool ? isSameSize(draft, other) : other.isInherited === true && isSameSize(draft, other)
      if (isAgain) other.dropped = isTool ? 'the size of a tool' : 'withdrawn by the speaker'
    }
  })
}

const SEQUENCE = new Set([
  'then',
  'pass',
  'stage',
  'followed',
  'finally',
  'plus',
  'final',
  'next',
  'second',
  'step',
  'another',
])
const ENDS = new Set(['.', ';', '?', '!'])
const GAP = 8

const isThen = (lexemes: readonly Lexeme[], from: number, to: number): boolean => {
  if (to - from > GAP) return false
  const words = lexemes.slice(from, to).map(lexeme => lexeme.text)
  return !words.some(word => ENDS.has(word)) && words.some(word => SEQUENCE.has(word))
}

/** Numbers the members of a sequence: `to 10, then 20, then 34`. */
export const markParts = (lexemes: readonly Lexeme[], drafts: readonly Draft[]): void => {
  let run: Draft[] = []
  const close = (): void => {
    if (run.length > 1)
      run.forEach((draft, i) => {
        draft.part = i
      })
    run = []
  }
  for (const draft of drafts) {
    const last = run.at(-1)
    if (last !== undefined && !isThen(lexemes, last.to, draft.from)) close()
    run.push(draft)
  }
  close()
}
