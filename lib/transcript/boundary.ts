import { onceForText } from '@/lib/trade/memo'
import { type Emit, nameOfParts } from '@/lib/trade/model'
import { toTokens as tagWords } from '@/lib/trade/tagger'
import type { Token } from './token'

/** A word of a run without punctuation, as the boundary model sees it. */
export type RunWord = {
  readonly word: string
  readonly tag: string
  readonly start: number
  readonly end: number
  readonly cue: number
  readonly isLastOfCue: boolean
  /** Time its cue takes over what its words need, in words; says that somebody paused in it. */
  readonly slack: number | undefined
}

/** Cues longer than this, in seconds, say nothing about a pause inside. */
const LONG_CUE = 8

const suffixOf = onceForText((word: string): string => {
  if (/\d/.test(word)) return '#'
  return /(ing|ed|ly|s)$/.exec(word)?.[1] ?? '-'
})

/** A word in small letters without the signs around it; as it is where it is all signs. */
const bareWord = onceForText(
  (text: string): string =>
    text
      .toLowerCase()
      .replaceAll('’', "'")
      .replace(/^[^\p{L}\p{N}$]+|[^\p{L}\p{N}%]+$/gu, '') || text,
)

const tagsOf = (words: readonly string[]): readonly string[] => {
  const tokens = tagWords(words.join(' '))
  let [at, next] = [0, 0]
  return words.map(word => {
    while ((tokens[next]?.at ?? Number.POSITIVE_INFINITY) < at) next++
    const token = tokens[next]
    const tag = token?.at === at ? token.tag : 'none'
    at += word.length + 1
    return tag
  })
}

/** Cues from which the pace of a talk can be told. */
const ENOUGH_CUES = 12

type CueLength = { readonly seconds: number; readonly words: number }

/** Time each cue fills with words, pauses seen between its words left out. */
const cueLengths = (tokens: readonly Token[]): ReadonlyMap<number, CueLength> => {
  const cues = new Map<number, { seconds: number; words: number; end: number }>()
  for (const token of tokens) {
    const cue = cues.get(token.cue) ?? { seconds: 0, words: 0, end: token.start }
    cue.seconds += token.end - Math.max(cue.end, token.start)
    cue.end = token.end
    cue.words++
    cues.set(token.cue, cue)
  }
  return cues
}

/** How long cues are for their words in a talk, and what a word needs: a low percentile over the cues, so that pauses don't count. */
export type Pace = { readonly lengths: ReadonlyMap<number, CueLength>; readonly perWord: number | undefined }

/** @returns the pace of a talk; none where it has too few cues to tell. */
export const paceOf = (tokens: readonly Token[]): Pace => {
  const lengths = cueLengths(tokens)
  const paces = [...lengths.values()]
    .filter(cue => cue.words >= 3 && cue.seconds > 0)
    .map(cue => cue.seconds / cue.words)
  paces.sort((a, b) => a - b)
  return { lengths, perWord: paces.length < ENOUGH_CUES ? undefined : paces[Math.floor(paces.length * 0.3)] }
}

/** @returns tokens [from, to) with what tells where sentences end. */
export const toRunWords = (tokens: readonly Token[], from: number, to: number, pace: Pace): readonly RunWord[] => {
  const run = tokens.slice(from, to)
  const words = run.map(token => bareWord(token.text))
  const tags = tagsOf(words)
  return run.map((token, i) => {
    const cue = pace.lengths.get(token.cue)
    const isTold = cue !== undefined && pace.perWord !== undefined && cue.seconds <= LONG_CUE
    return {
      word: words[i] ?? '',
      tag: tags[i] ?? 'none',
      start: token.start,
      end: token.end,
      cue: token.cue,
      isLastOfCue: run[i + 1]?.cue !== token.cue,
      slack: isTold ? cue.seconds / (pace.perWord ?? 1) - cue.words : undefined,
    }
  })
}

const gapBucket = (gap: number): number => (gap < 0.05 ? 0 : gap < 0.2 ? 1 : gap < 0.4 ? 2 : gap < 0.8 ? 3 : 4)

/** Whether somebody is seen to pause after words[i], by the times of the words. */
export const hasPause = (words: readonly RunWord[], i: number): boolean => {
  const [here, next] = [words[i], words[i + 1]]
  return here !== undefined && next !== undefined && gapBucket(next.start - here.end) > 1
}

/** How much a cue runs over, in steps. */
export const slackBucket = (slack: number): number =>
  [-0.3, 0.15, 0.4, 0.7, 1, 1.6, 2.4].findLastIndex(limit => slack >= limit) + 1

/** Words of a run as parts of features, with one before and two after for the edges of the run. */
export type Seen<Part> = {
  readonly word: readonly Part[]
  readonly tag: readonly Part[]
  readonly suffix: readonly Part[]
}

/** @returns the words as parts; words[i] is at i + 1. */
export const seenAs = <Part>(words: readonly RunWord[], partOf: (text: string) => Part): Seen<Part> => {
  const edged = (told: (word: RunWord) => string): readonly Part[] => [
    partOf('^'),
    ...words.map(word => partOf(told(word))),
    partOf('$'),
    partOf('$'),
  ]
  return { word: edged(({ word }) => word), tag: edged(({ tag }) => tag), suffix: edged(({ word }) => suffixOf(word)) }
}

/** Tells the features of the place after words[i]: does a sentence end there? */
export const eachBoundaryFeature = <Part>(
  words: readonly RunWord[],
  { word, tag, suffix }: Seen<Part>,
  i: number,
  partOf: (text: string) => Part,
  emit: Emit<Part>,
): void => {
  const here = words[i]
  const next = words[i + 1]
  if (here === undefined || next === undefined) return
  const [a, b, c, d, e] = [word[i], word[i + 1], word[i + 2], word[i + 3], word[i + 4]]
  const [ta, tb, tc, td] = [tag[i], tag[i + 1], tag[i + 2], tag[i + 3]]
  const [bs, cs] = [suffix[i + 1], suffix[i + 2]]
  emit('bias')
  emit('b', b)
  emit('c', c)
  emit('d', d)
  emit('a', a)
  emit('bc', b, c)
  emit('cd', c, d)
  emit('ab', a, b)
  emit('cde', c, d, e)
  emit('bs', bs)
  emit('cs', cs)
  emit('bsc', bs, c)
  emit('tb', tb)
  emit('tc', tc)
  emit('td', td)
  emit('tbc', tb, tc)
  emit('tcd', tc, td)
  emit('tab', ta, tb)
  emit('tbcd', tb, tc, td)
  emit('tabcd', ta, tb, tc, td)
  emit('tbwc', tb, c)
  emit('wbtc', b, tc)
  emit('tbwctd', tb, c, td)
  emit(here.isLastOfCue ? 'end-of-cue' : 'inside', partOf(String(gapBucket(next.start - here.end))))
  if (!here.isLastOfCue && here.slack !== undefined) emit('slack', partOf(String(slackBucket(here.slack))))
}

/** Names of the features of the place after each word. */
export const boundaryFeatures = (words: readonly RunWord[]): readonly (readonly string[])[] => {
  const asIs = (text: string): string => text
  const seen = seenAs(words, asIs)
  return words.map((_, i) => {
    const found: string[] = []
    eachBoundaryFeature(words, seen, i, asIs, (...parts) => void found.push(nameOfParts(...parts)))
    return found
  })
}
