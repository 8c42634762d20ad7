import type { Mark } from '@/lib/procedure/mark'
import { logit, type Model, toScorer } from '@/lib/trade/model'
import { gatherThings, type Named, type Thing } from './gather'
import type { Drafted } from './sentence-marks'
import { sourceWithin } from './span'
import type { Talk } from './talk'
import thingModel from './thing-model.json'
import { isWorkedOn, ownersIn } from './worked-on'

type ListKind = 'tool' | 'material'
const scorer = toScorer<ListKind>(thingModel as unknown as Model)

const ANNOUNCES =
  /\b(?:today|in this (?:video|film|episode|one)|(?:we|i)(?:'re| are|'m| am) (?:doing|going to do|looking at|changing|replacing))\b/i
/** How many sentences of a talk may tell what it is about. */
const OPENING = 3

/** What a deed or a fastener calls for was not named. */
const isNamed = ({ features }: Named): boolean =>
  !features.some(name => name === 'is:fastener' || name.startsWith('is:implied'))

/** The first mention that names it and does more than tell what the talk is about; the first of all where none does. */
const firstUsed = ({ mentions }: Thing, talk: Talk): Named | undefined => {
  const isUsed = ({ sentence }: Named): boolean =>
    sentence >= OPENING || !ANNOUNCES.test(talk.sentences[sentence]?.text ?? '')
  return mentions.find(one => isNamed(one) && isUsed(one)) ?? mentions.find(isUsed) ?? mentions[0]
}

/** Tools and materials of a talk, once each, where they are first named, but for sentences that tell what the talk is about. What may be either goes where it is surer. */
export const draftLists = (talk: Talk): readonly Drafted[] => {
  const owners = ownersIn(talk.readings)
  return gatherThings(talk.readings).flatMap((thing): readonly Drafted[] => {
    const indices = scorer.indicesOf(thing.features)
    const [best] = (['tool', 'material'] as const)
      .map(kind => ({ kind, odds: scorer.logOdds(kind, indices) }))
      .map(one => ({ ...one, margin: one.odds - logit(scorer.threshold(one.kind)) }))
      .filter(({ margin }) => margin >= 0)
      .sort((a, b) => b.margin - a.margin)
    const first = firstUsed(thing, talk)
    const sentence = first === undefined ? undefined : talk.sentences[first.sentence]
    if (best === undefined || first === undefined || sentence === undefined) return []
    if (best.kind === 'tool' && isWorkedOn(thing, talk.readings, owners)) return []
    const times = thing.mentions.filter(isNamed).length
    const confidence = Math.round(scorer.confidence(best.kind, best.odds) * 100) / 100
    const mark: Mark = {
      id: '',
      kind: best.kind,
      ...sourceWithin(sentence, first.at, first.to),
      text: thing.name,
      pencilled: {
        confidence,
        reason:
          times === 0
            ? 'called for by what is done, not named'
            : times > 1
              ? `named ${times} times as something used`
              : 'named as something used',
      },
    }
    return [{ mark, sentence: first.sentence }]
  })
}
