import { countOf } from '@/lib/procedure/count'
import type { Edit } from '@/lib/procedure/edit'
import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import { type Cue, cueText } from '@/lib/procedure/recording'

/** Words that a correction puts in place of others. */
export type Replaced = { readonly from: string; readonly to: string }

const wordsOf = (text: string): readonly string[] => text.split(/\s+/).filter(Boolean)

/** How many words two texts have alike from their beginning. */
const alike = (a: readonly string[], b: readonly string[]): number => {
  const first = a.findIndex((word, i) => word !== b[i])
  return first < 0 ? a.length : first
}

/**
 * @returns what differs between a line and its correction, words alike at both ends and stops left out; undefined where words
 *   were only put in or taken out, which is no rule for other lines
 */
export const replacedWords = (before: string, after: string): Replaced | undefined => {
  const [old, now] = [wordsOf(before), wordsOf(after)]
  const head = alike(old, now)
  const tail = alike(old.slice(head).reverse(), now.slice(head).reverse())
  const rest = (words: readonly string[]) =>
    words
      .slice(head, words.length - tail)
      .join(' ')
      .replace(/[.,;:?!]+$/, '')
  const [from, to] = [rest(old), rest(now)]
  return from === '' || to === '' || from === to ? undefined : { from, to }
}

/** The words wherever they stand whole, in any case and over any white space: not the 14 of 14.5, nor the "can" of "can't". */
const everyWhere = (from: string): RegExp => {
  const words = wordsOf(from).map(word => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
  return new RegExp(
    `(?<![\\p{L}\\p{N}]|\\p{N}[.,:/])${words.join('\\s+')}(?![\\p{L}\\p{N}]|[.,:/]\\p{N}|['’]t\\b)`,
    'giu',
  )
}

const startsLarge = (text: string): boolean => /^\p{Lu}/u.test(text)

/** Words in another place, where those they replace begin otherwise than at the first: `Bolt` at the start of a line, `bolt` in it. */
const asFound = (found: string, { from, to }: Replaced): string => {
  const first = to[0] ?? ''
  if (startsLarge(found) && !startsLarge(from)) return `${first.toUpperCase()}${to.slice(1)}`
  const isOnlyFirst = /^\p{Lu}(?!\p{Lu}|\p{N})/u.test(to)
  return startsLarge(from) && !startsLarge(found) && isOnlyFirst ? `${first.toLowerCase()}${to.slice(1)}` : to
}

const replacer = (replaced: Replaced): ((text: string) => string) => {
  const pattern = everyWhere(replaced.from)
  return text => text.replace(pattern, found => asFound(found, replaced))
}

/** @returns the text with the words replaced; a capital where one stood at their beginning. */
export const replaceWords = (text: string, replaced: Replaced): string => replacer(replaced)(text)

/** @returns the other lines in which the words stand, by number, with what they would say. */
export const elsewhere = (
  cues: readonly Cue[],
  line: number,
  replaced: Replaced,
): readonly { readonly cue: number; readonly text: string }[] => {
  const replace = replacer(replaced)
  return cues.flatMap((cue, i) => {
    const text = replace(cueText(cue))
    return i === line || text === cueText(cue) ? [] : [{ cue: i, text }]
  })
}

const isMadeOf = (mark: Mark, { start, end }: Cue): boolean =>
  end === 0 ? mark.end === 0 : mark.start < end && mark.end > start

/**
 * The edits of a correction: the line itself, the same words in all other lines where asked for, and in the marks made of the
 * lines corrected, what they say and what they were made of. A mark made of another line too, where the old words stay, is left
 * as it is: which of them it says is not known.
 */
export const correctionEdits = (
  project: Project,
  line: number,
  text: string,
  isEverywhere: boolean,
): readonly Edit[] => {
  const cues = project.recording.transcript?.cues ?? []
  const own = cues[line]
  if (own === undefined) return []
  const replaced = replacedWords(cueText(own), text)
  if (replaced === undefined) return [{ do: 'correct-cue', cue: line, text }]
  const others = elsewhere(cues, line, replaced)
  const lines = [{ cue: line, text }, ...(isEverywhere ? others : [])]
  const stay = isEverywhere ? [] : others.flatMap(({ cue }) => cues[cue] ?? [])
  const done = lines.flatMap(({ cue }) => cues[cue] ?? [])
  const marks = project.marks.filter(
    mark => done.some(cue => isMadeOf(mark, cue)) && !stay.some(cue => isMadeOf(mark, cue)),
  )
  return [
    ...lines.map((each): Edit => ({ do: 'correct-cue', ...each })),
    ...marks.flatMap((mark): Edit[] => {
      const to = { text: replaceWords(mark.text, replaced), said: replaceWords(mark.said, replaced) }
      return to.text === mark.text && to.said === mark.said ? [] : [{ do: 'change-mark', id: mark.id, to }]
    }),
  ]
}

/** @returns what a correction did, in words. */
export const correctionWords = (edits: readonly Edit[]): string => {
  const lines = edits.filter(edit => edit.do === 'correct-cue').length
  const marks = edits.length - lines
  return `Corrected in ${countOf(lines, 'line')}${marks === 0 ? '' : ` and ${countOf(marks, 'mark')}`}.`
}
