import { logit, type Model, toScorer } from '@/lib/trade/model'
import { asSentence, cutToWords } from './clause-text'
import { type Course, deedFeatures, deedOf, isOpenDeed, namesNoAction } from './deed-feature'
import deedModel from './deed-model.json'
import { withDeed } from './deed-text'
import type { Reading } from './feature'
import { GUESSED, type Worded } from './wording'

/**
 * Says a step by the verb a procedure writer would use, where nobody spoke one ("lid on", "two knobs on the front") or one
 * that says nothing ("put", "do this"). Learned from steps as writers worded them; where it is not sure enough, or the order
 * would not read, the step stays as it is.
 *
 * @param course how far the talk has come
 */
export type NameDeed = (worded: Worded, reading: Reading, course: Course) => Worded

/** From which probability on another verb is taken; below `SURE` it is asked about, and where nothing at all was named not taken. */
const [LEAST, SURE] = [0.2, 0.5]

/** @returns how steps are named by the verbs of a model */
export const toNameDeed = (model: Model, least = LEAST): NameDeed => {
  const scorer = toScorer<string>(model)
  const deeds = Object.keys(model.weights)
  // By feature, then by verb: one pass over the features of a step weighs every verb.
  const weights = new Float64Array(scorer.names.length * deeds.length)
  deeds.forEach((deed, k) => {
    for (const [at, weight] of scorer.weights(deed).entries()) weights[at * deeds.length + k] = weight
  })
  return (worded, reading, course) => {
    if (!isOpenDeed(worded.text, reading)) return worded
    const indices = scorer.indicesOf(deedFeatures(worded.text, reading, course))
    const own = deedOf(worded.text)
    const odds = new Float64Array(deeds.length)
    for (const at of indices)
      for (let k = 0; k < deeds.length; k++) odds[k] = (odds[k] ?? 0) + (weights[at * deeds.length + k] ?? 0)
    const most = odds.reduce((best, each, k) => (each > (odds[best] ?? 0) ? k : best), 0)
    const [deed, surest] = [deeds[most], odds[most] ?? 0]
    if (deed === undefined || surest < logit(least) || deed === own) return worded
    const isNameless = namesNoAction(worded.text)
    const isSure = surest >= logit(SURE)
    const text = isNameless && !isSure ? undefined : withDeed(worded.text, deed, reading)
    if (text === undefined) return worded
    const question = isNameless ? GUESSED : (worded.question ?? (isSure ? undefined : GUESSED))
    return { ...worded, text: asSentence(cutToWords(text)), ...(question === undefined ? {} : { question }) }
  }
}

/** `NameDeed` by the fitted model. */
export const nameDeed = toNameDeed(deedModel as unknown as Model)
