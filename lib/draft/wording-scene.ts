import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import * as kind from './wording-kinds'
import { hasPauses, type Stretch, TAKEN_BACK } from './wording-stretch'

/** What an order by names alone says, and whether it was guessed from the sentences around. */
export type Named = { readonly text: string; readonly isGuess: boolean }

export const sure = (text: string): Named => ({ text, isGuess: false })

export const guess = (text: string): Named => ({ text, isGuess: true })

/** The thing a stretch opens with, up to the first word that places it. */
export const headOf = (
  { tokens, text }: Reading,
  { from, to }: Stretch,
): { readonly head: string; readonly at: number; readonly word: string } => {
  for (let i = from + 1; i < to; i++) {
    const { tag, word } = tokens[i] ?? {}
    if (word === 'of') continue
    if (tag === 'preposition' || tag === 'particle' || tag === 'to')
      return { head: sayTokens(text, tokens, from, i), at: i, word: word ?? '' }
  }
  return { head: sayTokens(text, tokens, from, to), at: to, word: '' }
}

export const nounOf = (head: string): string =>
  head
    .replace(/,? (?:first|next|last|again|now|then|twice|once|only|here|too)$/i, '')
    .replace(/ (?:of|wi'|with) .*$/i, '')

export const isNamed = ({ tokens }: Pick<Reading, 'tokens'>, from: number, to: number): boolean =>
  tokens.slice(from, to).some(
    ({ tag, word }, i) =>
      // "Old one out".
      (i > 0 && /^ones?$/.test(word)) ||
      tag === 'part' ||
      tag === 'tool' ||
      tag === 'material' ||
      tag === 'noun' ||
      tag === 'ing' ||
      tag === 'word',
  )

/** A sentence that names no action, taken apart. */
export type Scene = {
  readonly reading: Reading
  readonly stretches: readonly Stretch[]
  readonly around: readonly (string | undefined)[]
  readonly first: Stretch
  /** Everything said, with commas. */
  readonly all: string
  /** The first stretch; its thing; that thing's name; what follows the thing in `all`. */
  readonly whole: string
  readonly head: string
  readonly noun: string
  readonly rest: string
  /** Token and word that place the thing; the first stretch's end where none does. */
  readonly at: number
  readonly word: string
  readonly hasPauses: boolean
  /** Fasteners named right behind the thing: what holds it. */
  readonly holders: readonly Stretch[]
}

export type Rule = (scene: Scene) => Named | undefined

/** Running captions have no commas: they are put where another thing begins. */
export const sayAll = ({ tokens, text }: Reading, stretches: readonly Stretch[], isPaused: boolean): string =>
  isPaused
    ? sayTokens(text, tokens, stretches[0]?.from ?? 0, stretches.at(-1)?.to ?? 0)
    : stretches
        .map(({ from, to }, i) => {
          const seam = i === 0 ? '' : tokens[from]?.word === 'and' ? ' and ' : ', '
          return `${seam}${sayTokens(text, tokens, from, to)}`
        })
        .join('')

export const toScene = (
  reading: Reading,
  stretches: readonly Stretch[],
  around: readonly (string | undefined)[],
): Scene | undefined => {
  const { tokens, text } = reading
  const [first] = stretches
  if (first === undefined || TAKEN_BACK.test(text)) return undefined
  const isPaused = hasPauses(tokens)
  const { head, at, word } = headOf(reading, first)
  const noun = nounOf(head)
  const all = sayAll(reading, stretches, isPaused)
  if (
    noun === '' ||
    kind.NO.test(all) ||
    kind.NO_THING.test(head) ||
    /. (?:where|which|that|what|every|now (?=\w))\b/i.test(head)
  )
    return undefined
  const holders = stretches
    .slice(1, 3)
    .filter(({ from, to }) => to - from < 6 && kind.FASTENERS.test(sayTokens(text, tokens, from, to)))
  const whole = sayTokens(text, tokens, first.from, first.to)
  const rest = all.slice(head.length)
  return {
    reading,
    stretches,
    around,
    first,
    all,
    whole,
    head,
    noun,
    rest,
    at,
    word,
    hasPauses: isPaused,
    holders,
  }
}
