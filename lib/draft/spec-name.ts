import { toDimension } from './dimension'
import type { Reading } from './feature'
import { toNounPhrases } from './noun-phrase'
import type { LimitFound } from './spec-feature'

/** What a limit is of, by what its unit measures; a word said in the sentence goes first. */
const PROPERTIES: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    torque: 'torque',
    pressure: 'pressure',
    temperature: 'temperature',
    length: 'distance',
    volume: 'quantity',
    angle: 'angle',
    turn: 'turning',
    speed: 'speed',
    voltage: 'voltage',
    current: 'current',
    resistance: 'resistance',
    power: 'power',
    mass: 'weight',
    time: 'time',
    interval: 'interval',
    share: 'share',
  },
  null,
)
const SAID =
  /\b(gap|clearance|deflection|slack|play|depth|thickness|height|length|travel|diameter|width|level|capacity|interval|backlash|runout|run-out|end float|preload|tension|slope|overlap|spacing|stroke|lift|angle|speed|pressure|temperature|torque|voltage|current|resistance|time|distance|weight|pitch|wear|rise|drop)\b/i

/** Words that are no thing to be measured. */
const EMPTY = new Set(
  'turn minute hour second degree mil millimetre metre newton pound foot inch way time thing bit lot end side bar'.split(
    ' ',
  ),
)

/** @returns a name such as "drain plug torque": the thing named nearest before the limit (else after it, else in the sentence before), and what is measured. */
export const nameOfLimit = (found: LimitFound, reading: Reading, before: Reading | undefined): string => {
  const { limit, quantity } = found
  const property = SAID.exec(reading.text)?.[1]?.toLowerCase() ?? PROPERTIES[toDimension(quantity.unit) ?? ''] ?? ''
  const things = (source: Reading): readonly { name: string; at: number }[] =>
    toNounPhrases(source.tokens)
      .filter(phrase => !EMPTY.has(phrase.name) && source.tokens[phrase.to - 1]?.tag !== 'word')
      .map(phrase => ({
        name: source.tokens
          .slice(phrase.from, phrase.to)
          .filter(token => !['number', 'unit', 'past', 'ing'].includes(token.tag))
          .map(token => token.word)
          .join(' '),
        at: source.tokens[phrase.from]?.at ?? 0,
      }))
      .filter(({ name }) => name !== '' && !name.split(' ').includes(property))
  const own = things(reading)
  const thing =
    own.findLast(({ at }) => at < limit.at) ??
    own.find(({ at }) => at >= limit.to) ??
    (before === undefined ? undefined : things(before).at(-1))
  const name = [thing?.name, property].filter(part => part !== undefined && part !== '').join(' ')
  return name === '' ? limit.text : name
}
