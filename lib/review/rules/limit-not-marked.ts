import type { Sentence } from '@/lib/procedure/recording'
import { gapBetween, sharedTime } from '@/lib/procedure/time'
import { hasNumber, isToleranced, type Quantity } from '@/lib/quantity/quantity'
import { type Reading, readQuantities } from '@/lib/quantity/read'
import { onceFor } from '../memo'
import type { Found, Rule } from '../rule'
import { numbersIn } from '../said'
import { sample } from '../sample'
import type { Subject } from '../subject'

const readings = onceFor((sentences: readonly Sentence[]): readonly (readonly Reading[])[] =>
  sentences.map(({ text }, i) => readQuantities(text, { context: sentences[i - 1]?.text ?? '' })),
)
/** Firm enough to be a limit of the job and not of a story. */
const FIRM =
  /\b(?:torque|should|must|needs?|at least|at most|no more|no less|between|within|maximum|minimum|max|min|plus or minus|set (?:it|the)|gap|clearance|tolerance|limit|not (?:over|under|more|less)|up to)\b/i
const STORY =
  /\b(?:mine|ours|this one|last (?:week|month|year|time|spring)|i (?:once|had|paid|bought|did)|(?:he|she|they) (?:said|used|put|applied|had|got|did)|was|were|used to|years? (?:ago|old)|cost|trainee|customer|reads?|got|shop down|neighbou?r|other (?:model|machine|one))\b/i

/** Days and weeks are the calendar's, UCUM codes. */
const LONG = new Set(['d', 'wk', 'mo', 'a'])
/** How far people stay away is a caution's. */
const PEOPLE =
  /\b(?:nobody|everybody|everyone|people|anyone|kids|children|bystanders|stand (?:back|clear)|keep (?:back|clear|away))\b/i
/** How long a thing goes on by itself is its nature, no limit of the job. */
const NATURE =
  /\b(?:coasts?|spins? on|runs? on|keeps? (?:turning|spinning|running|its|a)|holds? (?:its|a|the) (?:charge|heat)|stays? (?:hot|live|charged)|weighs?)\b[^.;]*\b(?:for|over|more than|up to)\b/i
/** What a tool covers is no limit of the job. */
const TOOL_RANGE =
  /\b(?:wrench|gauge|meter|multimeter|cal(?:l)?ipers?|micrometer|scales?|driver|screwdriver|thermometer|tester|indicator)\b[^.;]*\b(?:clicks|reads|goes|covers|measures|ranges|scale|range|good for|runs from|marked)\b/i

/** How long one looks is no limit. */
const LOOKS = /\b(?:watch|look|listen|feel|sniff)\w*\b[^.;]*\bfor (?:an?|half an?|a few) /i
const ROUGH = /^(?:an?|one|half an?|a few|a couple of) [a-z ]+$/i

const check = ({ project, sentences }: Subject): readonly Found[] => {
  if (sentences.length === 0 || project.marks.length === 0) return []
  const specs = project.marks.filter(({ kind }) => kind === 'spec').sort((a, b) => a.start - b.start)
  const ranges = project.marks.flatMap(({ capability }) => (capability === undefined ? [] : [capability.range]))
  const isRange = ({ low, high }: Quantity): boolean => ranges.some(range => range.low === low && range.high === high)
  const values = new Set(
    specs
      .flatMap(({ quantity, equivalent }) => [quantity, equivalent])
      .flatMap(own => [own?.low, own?.high, own?.nominal]),
  )
  return sentences.flatMap((sentence, i): Found[] => {
    const own = (readings(sentences)[i] ?? []).filter(
      ({ quantity, equivalentOf }) =>
        hasNumber(quantity) &&
        quantity.unit !== undefined &&
        equivalentOf === undefined &&
        !isRange(quantity) &&
        !LONG.has(quantity.unit),
    )
    const left = own.filter(
      ({ quantity }) =>
        ![quantity.low, quantity.high, quantity.nominal].some(value => value !== undefined && values.has(value)),
    )
    // Beside a limit that is marked, "a quarter turn" or "a minute" says roughly how.
    const isRough =
      (left.length < own.length || LOOKS.test(sentence.text)) && left.every(({ text }) => ROUGH.test(text.trim()))
    if (isRough) return []
    if (
      left.length === 0 ||
      STORY.test(sentence.text) ||
      PEOPLE.test(sentence.text) ||
      TOOL_RANGE.test(sentence.text) ||
      NATURE.test(sentence.text)
    )
      return []
    if (!left.some(({ quantity }) => isToleranced(quantity)) && !FIRM.test(sentence.text)) return []
    if (
      specs.some(
        spec =>
          sharedTime(spec, sentence) > 0 &&
          specs.filter(other => gapBetween(other, sentence) === 0).length >= own.length,
      )
    )
      return []
    const written = project.marks
      .filter(mark => sharedTime(mark, sentence) > 0)
      .map(({ text }) => text)
      .join('\n')
    if (
      left.every(({ quantity }) =>
        [quantity.low, quantity.high, quantity.nominal].some(
          value => value !== undefined && (written.includes(String(value)) || numbersIn(written).includes(value)),
        ),
      )
    )
      return []
    const [first] = left
    return [
      {
        place: { at: 'talk', start: sentence.start, end: sentence.end },
        message: `The talk gives a limit that no spec holds: "${first?.text ?? ''}". Mark it, or leave it out on purpose.`,
      },
    ]
  })
}

/** A limit that stayed in the talk. */
export const limitNotMarked: Rule = {
  id: 'limit-not-marked',
  level: 'consider',
  about: 'A limit is said and no spec holds it.',
  why: 'What is not marked is not on the sheet.',
  source: 'common practice, no source',
  trips: sample([['step', 'Torque the cover screws']], {
    talk: ['Torque the cover screws.', 'They must be between 8 and 10 newton metres.'],
  }),
  passes: sample(
    [
      ['step', 'Torque the cover screws'],
      ['spec', 'cover screw torque', { quantity: { low: 8, high: 10, unit: 'N.m' } }],
    ],
    { talk: ['Torque the cover screws.', 'They must be between 8 and 10 newton metres.'] },
  ),
  check,
}
