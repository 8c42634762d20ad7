import type { Reading as Limit } from '@/lib/quantity/read'

/** Characters around a number in which words of a limit are looked for. */
const REACH = 64

/** From the next figure in words on. */
const NEXT_FIGURE =
  / (?:for|of|in|at|to|by) (?:about |only |another )?(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]+teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty)\b.*$/i

/** What stands after a number up to the next figure or the sentence's end. */
export const afterOf = (text: string, to: number): string =>
  (/^[^.;?!\d]*/.exec(text.slice(to, to + REACH))?.[0] ?? '')
    .replace(NEXT_FIGURE, '')
    .replace(/^['’]s\b/, ' is')
    .replace(/^['’]d\b/, ' would')
    .replace(/^['’]ll\b/, ' will')
    .replace(/^['’]re\b/, ' are')
/** What stands before it from the last end of a sentence. */
export const beforeOf = (text: string, at: number): string =>
  /[^.;?!]*$/.exec(text.slice(Math.max(0, at - REACH), at))?.[0] ?? ''

const TAKEN_BACK = /^“([^”]+)” was said first/
/** Where a figure begins, or what was said first and taken back: `you're allowed 1/16, no, 1/32` allows the second. */
export const firstAt = ({ at, notes }: Limit, text: string): number => {
  const gone = notes.find(note => note.kind === 'withdrawn')?.text
  const said = gone === undefined ? undefined : TAKEN_BACK.exec(gone)?.[1]
  const first = said === undefined ? -1 : text.lastIndexOf(said, at)
  return first < 0 ? at : first
}
