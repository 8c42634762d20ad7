import { logit, sigmoid } from '@/lib/trade/model'
import { hasPause, type RunWord } from './boundary'

/** How often a cue that is cut by length alone ends a sentence, with a pause after it and without. */
const [PAUSED, USUAL] = [0.5, 0.08]
/** Places that such a share beforehand is worth. */
const WORTH = 3
/** Cues that end sentences this often are phrased: each holds what was said in a breath. */
const PHRASED = 0.36
const ROUNDS = 30

/**
 * What to add to the log odds of some places so that they hold as many ends as they are then likely to: by turns, as the
 * shares of other data are fitted (expectation maximisation: Saerens, Latinne and Decaestecker 2002; from memory).
 */
const shiftOf = (odds: readonly number[], places: readonly number[], beforehand: number, density: number): number => {
  let shift = 0
  for (let round = 0; round < ROUNDS; round++) {
    let sum = beforehand * WORTH
    for (const i of places) sum += sigmoid((odds[i] ?? 0) + shift)
    shift = logit(sum / (places.length + WORTH)) - logit(density)
  }
  return shift
}

/**
 * Log odds of an end in captions or lines that are phrased: the ends of cues tell as much as they are found to tell in this talk.
 *
 * @param plain log odds of an end after each word but the last, by the words alone
 * @param density share of all such places where a sentence ends
 * @returns none where cues are cut by length alone
 */
export const heedPhrasing = (
  words: readonly RunWord[],
  plain: readonly number[],
  density: number,
): number[] | undefined => {
  const [paused, ends, insides]: [number[], number[], number[]] = [[], [], []]
  for (let i = 0; i < plain.length; i++) (!words[i]?.isLastOfCue ? insides : hasPause(words, i) ? paused : ends).push(i)
  const afterPause = shiftOf(plain, paused, PAUSED, density)
  const atEnd = shiftOf(plain, ends, USUAL, density)
  const shareAt = (shift: number): number => sigmoid(shift + logit(density))
  const held = paused.length * shareAt(afterPause) + ends.length * shareAt(atEnd)
  if (held <= PHRASED * (paused.length + ends.length)) return undefined
  const odds = [...plain]
  const add = (places: readonly number[], shift: number): void => {
    for (const i of places) odds[i] = (odds[i] ?? 0) + shift
  }
  add(paused, afterPause)
  add(ends, atEnd)
  add(insides, shiftOf(plain, insides, density, density))
  return odds
}
