import type { Reading } from './feature'

const FRAMES: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    order: 'said as an order',
    you: 'told as what you do',
    i: 'told as what the speaker does now',
    we: 'told as what we do',
    passive: 'told as what is done to the part',
    nominal: 'named by where the part goes',
    past: 'told as what was done',
  },
  null,
)

/** @returns in a few words why a mark of a kind was drafted. */
export const explain = (kind: string, reading: Reading): string => {
  const main = reading.clauses.find(clause => clause.marker === undefined && FRAMES[clause.frame] !== undefined)
  if (kind === 'step') return main === undefined ? 'an action by its words' : (FRAMES[main.frame] ?? '')
  if (kind === 'caution')
    return reading.own.includes('forbids')
      ? 'forbids something and says what happens otherwise'
      : 'says what can hurt someone or spoil the work'
  if (kind === 'check')
    return reading.own.includes('has-limit')
      ? 'says what should be found, with a limit'
      : 'looks at, measures or tries something'
  if (kind === 'reason')
    return reading.clauses.some(clause => clause.marker === 'because')
      ? 'says why, with “because”'
      : 'explains what was just said'
  return 'says what a sign means'
}
