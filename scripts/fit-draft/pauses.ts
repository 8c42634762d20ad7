import { eachPauseFeature, openersOf, seenIn } from '@/lib/draft/pause-feature'
import { type Model, nameOfParts, sigmoid } from '@/lib/trade/model'
import { toTokens } from '@/lib/trade/tagger'
import type { Case } from './cases'
import { fitOutcomes, oddsOf, type Sample, type Settings } from './features'
import { f1At } from './logistic'
import { packModel } from './pack'

const SETTINGS: Settings = { leastCases: 6, penalty: 1, scaleOf: () => 1 }
/** Weights under this are left out: they change nothing and make most of the file. */
const LEAST = 0.3

/**
 * From which probability on a comma is set: one too many parts what belongs together and does more harm than one too few.
 * By limits and things read in talks whose commas the model had not seen; more for limits, less for things.
 */
const AT = 0.55

/** Letters and digits of a text, by which its punctuated and its bare form are laid side by side. */
const lettersOf = (text: string): number => text.toLowerCase().replace(/[^a-z0-9]/g, '').length

/** Letters said up to each comma, other sign or end of a sentence. */
const pausesOf = ({ gold }: Case): ReadonlySet<number> => {
  const found = new Set<number>()
  let n = 0
  for (const { text } of gold.sentences)
    for (const word of text.split(/\s+/)) {
      n += lettersOf(word)
      if (/[,;:.?!…—–][^\w]*$/.test(word) || word === '-') found.add(n)
    }
  return found
}

/** Every place between two words of a sentence of raw captions: whether a writer paused there. */
const toSamples = (source: Case): readonly Sample[] => {
  const pauses = pausesOf(source)
  let n = 0
  return source.sentences.flatMap(({ text }) => {
    const tokens = toTokens(text)
    const seen = seenIn(tokens, part => part)
    const openers = openersOf(tokens)
    const samples = tokens.slice(0, -1).map((token, i): Sample => {
      const features: string[] = []
      eachPauseFeature(seen, openers[i] ?? '-', i, (...parts) => void features.push(nameOfParts(...parts)))
      const isPause = pauses.has(n + lettersOf(text.slice(0, token.to)))
      return { name: source.name, features, outcomes: new Set(isPause ? ['pause'] : []) }
    })
    n += lettersOf(text)
    return samples
  })
}

/** Fits where a writer would set a comma in captions without punctuation; prints how well it holds on cases left out. */
export const fitPauses = (cases: readonly Case[]): Model => {
  const raw = cases.filter(one => one.form === 'raw.srt')
  const names = raw.map(one => one.name)
  const samples = raw.flatMap(toSamples)
  const out = new Set(names.filter((_, i) => i % 6 === 0))
  const rest = fitOutcomes(
    samples.filter(({ name }) => !out.has(name)),
    ['pause'],
    SETTINGS,
  )
  const judged = samples
    .filter(({ name }) => out.has(name))
    .map(({ features, outcomes }) => ({
      p: sigmoid(oddsOf(rest, 'pause', features)),
      isTrue: outcomes.has('pause'),
      weight: 1,
    }))
  const { f1, precision, recall } = f1At(judged, AT, 0)
  console.log(`left out pauses F1 ${f1.toFixed(3)} (p ${precision.toFixed(2)} r ${recall.toFixed(2)}) at ${AT}`)
  return packModel(fitOutcomes(samples, ['pause'], SETTINGS), { pause: AT }, {}, LEAST)
}
