import type { Mark } from '@/lib/procedure/mark'
import type { Sentence, Transcript } from '@/lib/procedure/recording'
import { type Model, toScorer } from '@/lib/trade/model'
import { toSentences } from '@/lib/transcript/sentence'
import { asSentence, sayTokens } from './clause-text'
import { featuresAt, limitFeatures, type Reading, readSentence } from './feature'
import { gatherThings, type Named } from './gather'
import { toMentions } from './mention'
import mentionModel from './mention-model.json'
import sentenceModel from './sentence-model.json'
import { findLimits } from './spec-feature'
import { nameOfThing } from './thing-name'
import { wordStep } from './wording'

type SentenceKind = 'step' | 'caution' | 'check' | 'reason' | 'symptom'
const SENTENCE_KINDS: readonly SentenceKind[] = ['step', 'caution', 'check', 'reason', 'symptom']
const sentenceScorer = toScorer<SentenceKind>(sentenceModel as unknown as Model)
const mentionScorer = toScorer<'tool' | 'material'>(mentionModel as unknown as Model)

const round = (n: number): number => Math.round(n * 100) / 100

const spanOf = (sentence: Sentence) => ({ start: sentence.start, end: sentence.end, said: sentence.text })

const sentenceMarks = (sentences: readonly Sentence[], readings: readonly Reading[]): readonly Mark[] =>
  sentences.flatMap((sentence, i) => {
    const reading = readings[i]
    if (reading === undefined) return []
    const indices = featuresAt(readings, i).flatMap(name => sentenceScorer.indexOf(name) ?? [])
    return SENTENCE_KINDS.flatMap((kind): Mark[] => {
      const odds = sentenceScorer.logOdds(kind, indices)
      if (1 / (1 + Math.exp(-odds)) < sentenceScorer.threshold(kind)) return []
      const { text, question } =
        kind === 'step'
          ? wordStep(reading)
          : { text: asSentence(sayTokens(reading.text, reading.tokens, 0, reading.tokens.length)), question: undefined }
      return [
        {
          id: '',
          kind,
          ...spanOf(sentence),
          text,
          pencilled: {
            confidence: round(sentenceScorer.confidence(kind, odds)),
            reason: kind,
            ...(question === undefined ? {} : { question }),
          },
        },
      ]
    })
  })

const listMarks = (sentences: readonly Sentence[], readings: readonly Reading[]): readonly Mark[] => {
  const named: Record<'tool' | 'material', Named[]> = { tool: [], material: [] }
  readings.forEach((reading, i) => {
    for (const { phrase, features } of toMentions(reading)) {
      const indices = features.flatMap(name => mentionScorer.indexOf(name) ?? [])
      const name = nameOfThing(reading.tokens, phrase)
      for (const kind of ['tool', 'material'] as const)
        named[kind].push({ sentence: i, name, head: phrase.name, odds: mentionScorer.logOdds(kind, indices) })
    }
  })
  return (['tool', 'material'] as const).flatMap(kind =>
    gatherThings(named[kind], mentionScorer.threshold(kind)).flatMap((thing): Mark[] => {
      const sentence = sentences[thing.sentence]
      return sentence === undefined
        ? []
        : [
            {
              id: '',
              kind,
              ...spanOf(sentence),
              text: thing.name,
              pencilled: { confidence: round(mentionScorer.confidence(kind, thing.odds)), reason: kind },
            },
          ]
    }),
  )
}

/** Pencilled marks for a transcript. Deterministic. */
export const draftMarks = (transcript: Transcript): readonly Mark[] => {
  const sentences = toSentences(transcript)
  const readings = sentences.map(sentence => readSentence(sentence.text))
  const marks = [...sentenceMarks(sentences, readings), ...listMarks(sentences, readings)]
  const counts = new Map<string, number>()
  return marks.map(mark => {
    const n = (counts.get(mark.kind) ?? 0) + 1
    counts.set(mark.kind, n)
    return { ...mark, id: `${mark.kind}-${n}`, ...(mark.kind === 'step' ? { place: n } : {}) }
  })
}
