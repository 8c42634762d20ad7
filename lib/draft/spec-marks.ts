import type { Basis } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { hasNumber } from '@/lib/quantity/quantity'
import { logit } from '@/lib/trade/model'
import { type NetworkModel, toRows, toWeigher } from './network'
import type { Drafted } from './sentence-marks'
import { sourceWithin } from './span'
import type { LimitFound } from './spec-feature'
import specModel from './spec-model.json'
import { nameOfLimit, withStages } from './spec-name'
import type { Talk } from './talk'

const model = toWeigher(specModel as unknown as NetworkModel)
const rowsOf = toRows(model.names)
/** Log odds from which on a limit is taken. */
const LEAST = logit(model.threshold('spec'))

const PLATE =
  /\b(?:plate|label|sticker|nameplate|stamped|printed|placard|decal|tag on|on the (?:side|lid|can|packet|cap))\b/i
const MANUAL =
  /\b(?:manual|book|service sheet|spec sheet|data ?sheet|handbook|maker'?s|manufacturer|instructions|drawing)\b/i

const basisOf = (text: string): Basis => (MANUAL.test(text) ? 'manual' : PLATE.test(text) ? 'plate' : 'spoken')

/** Specs of a talk: limits that hold for the job, not readings, prices or other machines' figures. */
export const draftSpecs = (talk: Talk): readonly Drafted[] => {
  const bySentence = new Map<number, DraftedLimit[]>()
  for (const one of eachSpec(talk)) bySentence.set(one.sentence, [...(bySentence.get(one.sentence) ?? []), one])
  return [...bySentence].flatMap(([sentence, own]) => {
    const limits = own.map(({ mark: { text }, part, turn }) => ({ name: text, part, turn }))
    const names = withStages(limits, talk.readings[sentence]?.text ?? '')
    return own.map(({ mark }, i): Drafted => ({ mark: { ...mark, text: names[i] ?? mark.text }, sentence }))
  })
}

type DraftedLimit = Drafted & { readonly part: number | undefined; readonly turn: number }

const eachSpec = ({ sentences, readings, limits, replaced }: Talk): readonly DraftedLimit[] => {
  // Turns by sentence and dimension, counted as the limits go by, drafted or not.
  const turns = new Map<string, number>()
  const slips = new Map([...replaced.values()].map(({ from, by }) => [by, from]))
  const odds = model.weigh(rowsOf(limits.map(({ features }) => features)))
  const known = new Map(limits.map((found, i) => [found, odds[i]]))
  const oddsOf = (found: LimitFound): number => known.get(found) ?? Number.NEGATIVE_INFINITY
  return limits.flatMap(found => {
    const key = `${found.sentence} ${found.dimension}`
    const turn = turns.get(key) ?? 0
    turns.set(key, turn + 1)
    const { sentence: i, limit, quantity } = found
    const [sentence, reading] = [sentences[i], readings[i]]
    if (sentence === undefined || reading === undefined || replaced.get(i)?.from === found) return []
    // What takes a value back counts as much as what it takes back, and is of the same thing.
    const first = slips.get(found) ?? found
    const own = Math.max(oddsOf(found), oddsOf(first))
    if (own < LEAST) return []
    const question = limit.notes.find(note => note.kind === 'question')?.text
    const condition = limit.qualitative ?? limit.reference
    const mark: Mark = {
      id: '',
      kind: 'spec',
      ...sourceWithin(sentence, limit.at, limit.to),
      text: nameOfLimit(first, readings[first.sentence] ?? reading, readings[first.sentence - 1]),
      basis: basisOf(reading.text),
      ...(hasNumber(quantity) ? { quantity } : {}),
      ...(condition === undefined ? {} : { reference: condition }),
      pencilled: {
        confidence: model.confidence('spec', own),
        reason: hasNumber(quantity) ? 'a figure that holds for the job' : 'a limit without a figure',
        ...(question === undefined ? {} : { question }),
      },
    }
    return [{ mark, sentence: i, part: limit.part, turn }]
  })
}
