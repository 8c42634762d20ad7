import type { Draft, Drafted } from './draft'
import type { Lexeme } from './lexemes'

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '))

const AIMED = set('for to at around about')
const ENDS = set(', . ; : ? ! then and so')

/** `we go for 40, 42, and watch it`: two figures without a unit after a word that aims, close together, and no third. */
const isAimed = (lexemes: readonly Lexeme[], a: Draft, b: Draft): boolean => {
  const next = lexemes[b.to]
  const isClosed = next === undefined || ENDS.has(next.text)
  const isThird = lexemes[b.to + 1]?.is === 'number' || lexemes[b.to + 2]?.is === 'number'
  return isClosed && !isThird && AIMED.has(lexemes[a.from - 1]?.text ?? lexemes[a.from]?.text ?? '')
}

/** `ten, fifteen minutes`: two figures close together and nothing but a comma between are the ends of a range. */
export const joinPairs = ({ lexemes, drafts }: Drafted): void => {
  for (let n = 0; n < drafts.length - 1; n++) {
    const [a, b] = [drafts[n], drafts[n + 1]]
    if (a?.nominal === undefined || b?.nominal === undefined || a.dropped !== undefined || b.dropped !== undefined)
      continue
    const isBarePair = a.unit === undefined && b.unit === undefined && isAimed(lexemes, a, b)
    const isPair =
      (isBarePair || (a.isInherited === true && a.isCorrection !== true && b.isInherited !== true)) &&
      b.from === a.to + 1 &&
      lexemes[a.to]?.text === ','
    const isListed = lexemes[a.from - 1]?.text === ',' && drafts[n - 1]?.to === a.from - 1
    if (!isPair || isListed || b.nominal <= a.nominal || b.nominal > a.nominal * 1.6) continue
    if (a.low !== undefined || b.low !== undefined || a.high !== undefined || b.high !== undefined) continue
    b.low = a.nominal
    b.high = b.nominal
    delete b.nominal
    b.from = a.from
    a.dropped = 'joined with the value after it'
  }
}
