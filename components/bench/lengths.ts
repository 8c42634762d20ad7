import type { Project } from '@/lib/procedure/project'
import { talkEnd } from '@/lib/procedure/recording'
import { formatTime } from '@/lib/procedure/time'

/** Seconds a last line may stand on after the footage: recognisers round. Judged by hand. */
const LEEWAY = 2

/** A talk that ends in this share of the footage is doubted. Judged by hand. */
const LEAST_SHARE = 0.5

/** @returns what to look at where transcript and footage can't both be whole and of one recording; undefined where they can. */
export const lengthsDoubt = ({ footage, transcript }: Project['recording']): string | undefined => {
  const end = talkEnd(transcript)
  if (footage === null || transcript === null || end === 0 || footage.seconds === 0) return undefined
  const [talk, film] = [`“${transcript.name}”`, `“${footage.name}”`]
  if (end > footage.seconds + LEEWAY)
    return `${talk} runs to ${formatTime(end)}, but ${film} ends at ${formatTime(footage.seconds)}: see that they are of one recording.`
  if (end < footage.seconds * LEAST_SHARE)
    return `${talk} ends at ${formatTime(end)}, but ${film} runs to ${formatTime(footage.seconds)}: see that they are of one recording and that no part of the talk is missing.`
  return undefined
}
