import { applyCorrections } from './corrections'
import { type Draft, toDrafts } from './draft'
import type { Lexeme } from './lexemes'

/** Words a speaker took back: offsets [at, to) from the first of them to the first word of what stands in their place. */
export type TakenBack = {
  readonly at: number
  readonly to: number
  /** End of the value that stands. */
  readonly until: number
  /** The unit as it was said with the old value, where the new one was said without; else empty. */
  readonly unit: string
  /** What was said between the two values: the words that take back, and whatever else. */
  readonly between: string
}

const unitOf = (text: string, lexemes: readonly Lexeme[], { from, to }: Draft): string => {
  const unit = lexemes.slice(from, to).findLast(({ is }) => is === 'unit')
  return unit === undefined ? '' : text.slice(unit.at, unit.to)
}

/**
 * Where a text takes back a value, sizes of tools too: "to 45, no, sorry, 35 newton metres".
 *
 * @param text one sentence or a few; any string
 * @returns in the order of the text, none overlapping. Never throws; linear in length.
 */
export const findTakenBack = (text: string): readonly TakenBack[] => {
  const drafted = toDrafts(text)
  const { lexemes } = drafted
  const found: TakenBack[] = []
  for (const { gone, by } of applyCorrections(drafted)) {
    const [first, stands] = [lexemes[gone.from], lexemes[by.from]]
    // "The old iron one" is no number.
    const isPronoun = stands?.text === 'one' && by.to === by.from + 1
    if (first === undefined || stands === undefined || isPronoun) continue
    const end = lexemes[gone.to - 1]?.to ?? first.to
    const before = found.at(-1)
    // "45, no, 40, no, 35": taken back twice.
    const isAgain = before !== undefined && before.to === first.at
    if (isAgain) found.pop()
    found.push({
      at: isAgain ? before.at : first.at,
      to: stands.at,
      until: lexemes[by.to - 1]?.to ?? text.length,
      unit: by.isInherited === true ? unitOf(text, lexemes, gone) : '',
      between: text.slice(end, stands.at).trim(),
    })
  }
  return found
}
