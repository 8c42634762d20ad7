import { type Cue, cueText } from '@/lib/procedure/recording'

/** A run of letters and signs without white space, as said in a cue. Times are filled in by timing.ts. */
export type Token = {
  readonly text: string
  /** Index of the cue in the transcript. */
  readonly cue: number
  readonly speaker: string | undefined
  /** Whether a sentence must begin here: a mark of a new speaker (`-`, `>>`) or a new line of plain text before it. */
  opens: boolean
  /** Whether it is the first of its cue, of those not repeated from the cue before. */
  isFirst: boolean
  start: number
  end: number
}

/** Sounds and settings that captions put in brackets (`[Music]`, `(laughs)`), and notes of music: nobody said them. */
const NOT_SAID =
  /\[[^\][\d]{0,40}\]|\((?:music|laugh\w{0,5}|applause|cough\w{0,5}|sigh\w{0,5}|inaudible|crosstalk)\)|[♪♫]/gi

const TURN = /^(?:[-–—]|>>+)(?=\s|\p{L})\s*/u

/** A word as it is compared: small letters and digits only; the whole text where it has neither. */
export const toKey = (text: string): string => {
  const small = text.toLowerCase()
  if (/^[a-z0-9]+$/.test(small)) return small
  const bare = small.replace(/[^\p{L}\p{N}]+/gu, '')
  return bare === '' ? text : bare
}

/** @returns the words of a text in order, without marks of a new speaker and without what nobody said. */
export const toPieces = (text: string): readonly { readonly text: string; readonly opens: boolean }[] => {
  const said = /[[(♪♫]/.test(text) ? text.replace(NOT_SAID, ' ') : text
  const isDialogue = /^[^\S\n]*(?:[-–—]|>>)/m.test(said)
  if (!isDialogue) return (said.match(/\S+/g) ?? []).map(word => ({ text: word, opens: false }))
  const pieces: { text: string; opens: boolean }[] = []
  for (const line of said.split('\n')) {
    const bare = line.trim().replace(TURN, '')
    const isTurn = bare !== line.trim()
    ;(bare.match(/\S+/g) ?? []).forEach((word, i) => void pieces.push({ text: word, opens: isTurn && i === 0 }))
  }
  return pieces
}

/** @returns the tokens of a cue as the user corrected it, not yet timed (NaN). */
export const toTokens = (cue: Cue, index: number): readonly Token[] =>
  toPieces(cueText(cue)).map(({ text, opens }, i) => ({
    text,
    cue: index,
    speaker: cue.speaker,
    opens,
    isFirst: i === 0,
    start: Number.NaN,
    end: Number.NaN,
  }))

/** Whether a token numbers its line ("1.", "2)", "(3)"): nobody says it. */
export const isListNumber = ({ text, isFirst }: Token): boolean => isFirst && /^(?:\d{1,3}[.)]|\(\d{1,3}\))$/.test(text)
