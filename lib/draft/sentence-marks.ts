import type { Mark } from '@/lib/procedure/mark'
import { logit } from '@/lib/trade/model'
import { isWarning } from '@/lib/trade/warned'
import { gradeCaution } from './caution'
import { wordCaution } from './caution-wording'
import { asSentence, sayTokens } from './clause-text'
import { nameDeed } from './deed'
import { type Course, furtherCourse, namesNoAction } from './deed-feature'
import { explain } from './explain'
import type { Reading } from './feature'
import { toFeatureIndex } from './indexed'
import { type NetworkModel, toWeigher } from './network'
import { SENTENCE_KINDS, type SentenceKind } from './sentence-kinds'
import sentenceModel from './sentence-model.json'
import { type Source, sourceOf, sourceWithin } from './span'
import type { Talk } from './talk'
import { type Worded, wordStep } from './wording'

/** A drafted mark and the sentence it is from. */
export type Drafted = { readonly mark: Mark; readonly sentence: number }

const model = toWeigher(sentenceModel as unknown as NetworkModel)
const features = toFeatureIndex(model.names)

/** Log odds from which on a kind is taken. */
const LEAST = SENTENCE_KINDS.map(kind => ({ kind, least: logit(model.threshold(kind)) }))

/** A second kind for the same sentence has to be this much surer than it would alone, in log odds. */
const SECOND = 1

/** How far below its threshold, in log odds, a caution may be where harm is said and nothing else was found, or a reason. */
const NEARLY = -1.5
const DOUBTFUL = -4

/** Whether a sentence tells harm to people, whether it orders anything beside, or calls for care and says why. */
type Harm = 'none' | 'told' | 'alone' | 'warned'

type KindOdds = { readonly kind: SentenceKind; readonly odds: number }

/**
 * Kinds of one sentence with their log odds, the surest first; steps and checks seldom share one.
 *
 * @param weighed log odds by kind
 */
const kindsOf = (weighed: Float64Array, harm: Harm): readonly KindOdds[] => {
  const told = LEAST.map(({ kind, least }, k) => {
    const odds = weighed[k] ?? 0
    return { kind, odds, margin: odds - least }
  })
  const passing = told
    .filter(({ margin }) => margin >= 0)
    .sort((a, b) => b.margin - a.margin)
    .filter(({ margin }, i) => i === 0 || margin >= SECOND)
  const [first] = passing
  const caution = told.find(({ kind }) => kind === 'caution')
  if (harm === 'none' || caution === undefined) return passing
  // What warns is not told once more as the reason.
  if (passing.includes(caution)) return passing.filter(({ kind }) => kind !== 'reason')
  if (harm === 'warned') {
    const others = passing.filter(({ kind, margin }) => kind !== 'reason' && margin >= SECOND)
    return [{ ...caution, odds: caution.odds - caution.margin + SECOND }, ...others]
  }
  // Harm to people said plainly warns, whatever else it explains; it is as sure as a caution at its threshold.
  const isNoOrder = first?.kind === 'reason' || (first?.kind === 'step' && harm === 'alone')
  if (first === undefined ? caution.margin < NEARLY : !isNoOrder || caution.margin < DOUBTFUL) return passing
  return [{ ...caution, odds: caution.odds - caution.margin }, ...passing.filter(({ kind }) => kind !== first?.kind)]
}

const textOf = (
  kind: SentenceKind,
  reading: Reading,
  before: Reading | undefined,
  after: Reading | undefined,
): Worded => {
  if (kind === 'step') return wordStep(reading, before, after)
  if (kind === 'caution') return { text: wordCaution(reading, before) }
  return { text: asSentence(sayTokens(reading.text, reading.tokens, 0, reading.tokens.length)) }
}

const ordersAnew = ({ clauses, tokens }: Reading): boolean =>
  clauses.some(
    ({ frame, verb }) => frame === 'order' && !/^(?:make|wait|hang|hold|mean)$/.test(tokens[verb ?? -1]?.word ?? ''),
  )

const NEEDS =
  /^(?:(?:so|now|okay|right|and|well|first|also|today|for (?:this|that)(?: (?:job|one))?|before (?:we|you|i) (?:start|begin))[, ]+)*(?:what )?(?:you|we|i)(?:'ll| will|'re going to| are going to|'re gonna)? (?:also |only |just |both |all )?(?:need|want)(?: is)? (?!to\b)/i

const HEADED = /^(?:tools?|materials?|parts|consumables|equipment|you need|needed)(?: needed| required)?\s*[:–-]/i

/** "You will need a hex key and some grease" lists what is needed: with no action in it that is no step. */
const onlyNeeds = ({ text, phrases }: Reading, step: string): boolean =>
  namesNoAction(step) &&
  (HEADED.test(text) || NEEDS.test(text.replaceAll('’', "'"))) &&
  phrases.some(({ isTool, isMaterial }) => isTool || isMaterial)

/** How many sentences of a talk may say what it is about. */
const TITLES = 2

/** "Changing the filter on the pump." at the head of a talk is its title. */
const isTitle = ({ clauses: [first, ...more], tokens }: Reading, i: number): boolean =>
  i < TITLES && first?.frame === 'nominal' && more.length === 0 && tokens[first.start]?.tag === 'ing'

const harmIn = (reading: Reading): Harm => {
  if (reading.isQuestion) return 'none'
  if (!reading.own.includes('all-past') && isWarning(reading.text)) return 'warned'
  if (!reading.own.includes('harm')) return 'none'
  return namesNoAction(wordStep(reading).text) ? 'alone' : 'told'
}

/** Marks of the kinds that whole sentences tell, in order; ids and places are still to come. */
export const draftSentences = ({ sentences, readings, told, limitNames, replaced }: Talk): readonly Drafted[] => {
  const count = SENTENCE_KINDS.length
  const odds = model.weigh(readings.map((_, i) => features.at(readings, i, limitNames)))
  let course: Course = { share: 0, undone: new Set(), before: '' }
  return sentences.flatMap((sentence, i) => {
    const reading = told[i]
    // "Sorry, that should be thirty": told in the step it corrects.
    if (reading === undefined || (replaced.has(i - 1) && !ordersAnew(reading))) return []
    return kindsOf(odds.subarray(i * count, (i + 1) * count), harmIn(reading)).flatMap(
      ({ kind, odds: own }): readonly Drafted[] => {
        const { more, ...plain } = textOf(kind, reading, told[i - 1], told[i + 1])
        if (kind === 'step' && (onlyNeeds(reading, plain.text) || isTitle(reading, i))) return []
        course = { ...course, share: i / sentences.length }
        const first = kind === 'step' ? nameDeed(plain, reading, course) : plain
        if (kind === 'step') course = furtherCourse(course, first.text)
        const confidence = model.confidence(kind, own)
        const toDrafted = ({ text, question }: Worded, source: Source): Drafted => {
          const asks = question === undefined ? {} : { question }
          const pencilled = { confidence, reason: explain(kind, reading), ...asks }
          const mark: Mark = { id: '', kind, ...source, text, pencilled }
          return { sentence: i, mark: kind === 'caution' ? { ...mark, ...gradeCaution(reading) } : mark }
        }
        if (more === undefined || reading.text !== sentence.text) return [toDrafted(first, sourceOf(sentence))]
        return [
          toDrafted(first, sourceWithin(sentence, 0, more.at)),
          toDrafted(more, sourceWithin(sentence, more.at, sentence.text.length)),
        ]
      },
    )
  })
}
