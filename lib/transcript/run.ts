import { type Model, sigmoid, toPartsIndex, toScorer } from '@/lib/trade/model'
import { eachBoundaryFeature, type Pace, type RunWord, seenAs, slackBucket, toRunWords } from './boundary'
import boundaryModel from './boundary-model.json'
import { isInsideFigure } from './figure'
import { isInsideLimit } from './inside-limit'
import { heedPhrasing } from './phrased'
import type { Token } from './token'

/** The boundary model, how long sentences are, and how often a cue that runs over holds an end. Made by `scripts/fit-draft.mjs`. */
export type BoundaryModel = Model & {
  /** Share of sentences of 0, 1, 2 … words; the last for all longer. */
  readonly lengths: readonly number[]
  /** Share of places between words where a sentence ends. */
  readonly density: number
  /** Share of cues that hold an end, by slack bucket; 0 where too few were seen. */
  readonly held: readonly number[]
}

/** Words alone miss more ends than they make up: what evens that out. Tried on cases left out. */
const UNTIMED = 0.8

/** Log odds of what never is. */
const NEVER = -1000

/** Log odds of an end after each word of a run but the last: by words, cues and pauses, and by the words alone. */
export type Odds = { readonly timed: number[]; readonly plain: number[] }

/** How much the length of sentences weighs against the words at a place. Tried on left-out cases. */
const LENGTH_WEIGHT = 0.7

/** Shifts the log odds inside every cue so that, all told, it holds an end as often as its pause says. */
const heedPauses = (words: readonly RunWord[], odds: number[], held: readonly number[]): void => {
  let from = 0
  for (let i = 0; i < words.length; i++) {
    const here = words[i]
    if (here === undefined || !(here.isLastOfCue || i === words.length - 1)) continue
    const gap = (words[i + 1]?.start ?? here.end) - here.end
    const to = i < words.length - 1 && gap < 0.05 ? i + 1 : i
    const share = here.slack === undefined ? 0 : (held[slackBucket(here.slack)] ?? 0)
    if (to > from && share > 0) shiftTo(odds, from, Math.min(to, odds.length), Math.min(0.98, Math.max(0.005, share)))
    from = i + 1
  }
}

const shiftTo = (odds: number[], from: number, to: number, share: number): void => {
  let [low, high] = [-10, 10]
  for (let round = 0; round < 18; round++) {
    const shift = (low + high) / 2
    let none = 1
    for (let i = from; i < to; i++) none *= 1 - sigmoid((odds[i] ?? 0) + shift)
    if (1 - none > share) high = shift
    else low = shift
  }
  for (let i = from; i < to; i++) odds[i] = (odds[i] ?? 0) + low
}

/** Best division by the odds of every place and the lengths of sentences. Linear: a sentence has at most as many words as `lengths`. */
const divide = (odds: readonly number[], count: number, { lengths, density }: BoundaryModel): readonly number[] => {
  const fits = lengths.map(
    (share, n) => LENGTH_WEIGHT * (Math.log(share) - Math.log(density) - (n - 1) * Math.log(1 - density)),
  )
  const best = new Float64Array(count + 1).fill(Number.NEGATIVE_INFINITY)
  const from = new Int32Array(count + 1)
  best[0] = 0
  for (let j = 1; j <= count; j++) {
    const here = j < count ? (odds[j - 1] ?? 0) : 0
    for (let n = 1; n < lengths.length && n <= j; n++) {
      const score = (best[j - n] ?? 0) + here + (fits[n] ?? 0)
      if (score > (best[j] ?? 0)) {
        best[j] = score
        from[j] = j - n
      }
    }
  }
  const ends: number[] = []
  for (let j = count; j > 0; j = from[j] ?? 0) ends.push(j - 1)
  return ends.reverse()
}

const model = boundaryModel as unknown as BoundaryModel
const scorer = toScorer<keyof Odds>(model)
const [timedWeights, plainWeights] = [scorer.weights('timed'), scorer.weights('plain')]
const features = toPartsIndex(scorer.names)

/**
 * Divides a run, with a model of one's own for fitting: where cues are phrased by how they are, in text without times by the
 * words alone, else by words and pauses.
 *
 * @param odds by the model; changed
 * @returns indices, relative to the run, of the last word of every sentence
 */
export const divideRun = (
  words: readonly RunWord[],
  { timed, plain }: Odds,
  given: BoundaryModel,
): readonly number[] => {
  const at = (i: number): string => words[i]?.word ?? ''
  for (let i = 0; i < words.length - 1; i++)
    if (
      isInsideFigure(words[i - 1]?.word, at(i), at(i + 1), words[i + 2]?.word) ||
      isInsideLimit(offset => at(i + offset))
    )
      timed[i] = plain[i] = NEVER
  const phrased = heedPhrasing(words, plain, given.density)
  if (phrased !== undefined) return divide(phrased, words.length, given)
  if (words[0]?.start === words.at(-1)?.end)
    return divide(
      plain.map(own => own + UNTIMED),
      words.length,
      given,
    )
  heedPauses(words, timed, given.held)
  return divide(timed, words.length, given)
}

const oddsOf = (words: readonly RunWord[]): Odds => {
  const seen = seenAs(words, features.partOf)
  let [byAll, byWords] = [0, 0]
  const weigh = (prefix: string, a?: number, b?: number, c?: number, d?: number): void => {
    const index = features.at(prefix, a, b, c, d)
    if (index < 0) return
    byAll += timedWeights[index] ?? 0
    byWords += plainWeights[index] ?? 0
  }
  const odds: Odds = { timed: [], plain: [] }
  for (let i = 0; i < words.length - 1; i++) {
    byAll = byWords = 0
    eachBoundaryFeature(words, seen, i, features.partOf, weigh)
    odds.timed.push(byAll)
    odds.plain.push(byWords)
  }
  return odds
}

/**
 * Cuts a run without usable punctuation into sentences: by the words and kinds of words at a place, by pauses seen or
 * felt in a cue's length, and by how long sentences are.
 *
 * @param tokens timed, in order
 * @param pace of the whole talk
 * @returns indices of the last token of each sentence, ascending, the last one `to - 1`
 */
export const cutRun = (tokens: readonly Token[], from: number, to: number, pace: Pace): readonly number[] => {
  const words = toRunWords(tokens, from, to, pace)
  return divideRun(words, oddsOf(words), model).map(end => from + end)
}
