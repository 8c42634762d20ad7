import type { Mark } from '@/lib/procedure/mark'
import { type Model, toScorer } from '@/lib/trade/model'
import { gatherThings, type Named } from './gather'
import { toMentions } from './mention'
import mentionModel from './mention-model.json'
import type { Drafted } from './sentence-marks'
import { sourceWithin } from './span'
import type { Talk } from './talk'
import { nameOfThing } from './thing-name'

type ListKind = 'tool' | 'material'
const scorer = toScorer<ListKind>(mentionModel as unknown as Model)

type Place = Named & { readonly at: number; readonly to: number }

const namedIn = ({ readings }: Talk): Readonly<Record<ListKind, readonly Place[]>> => {
  const named: Record<ListKind, Place[]> = { tool: [], material: [] }
  readings.forEach((reading, i) => {
    for (const { phrase, features } of toMentions(reading)) {
      const indices = features.flatMap(name => scorer.indexOf(name) ?? [])
      const place = {
        sentence: i,
        name: nameOfThing(reading.tokens, phrase),
        head: phrase.name,
        at: reading.tokens[phrase.from]?.at ?? 0,
        to: reading.tokens[phrase.to - 1]?.to ?? 0,
      }
      for (const kind of ['tool', 'material'] as const)
        named[kind].push({ ...place, odds: scorer.logOdds(kind, indices) })
    }
  })
  return named
}

/** Tools and materials of a talk, once each, where they are first named with conviction. */
export const draftLists = (talk: Talk): readonly Drafted[] => {
  const named = namedIn(talk)
  return (['tool', 'material'] as const).flatMap(kind =>
    gatherThings(named[kind], scorer.threshold(kind)).flatMap((thing): readonly Drafted[] => {
      const sentence = talk.sentences[thing.sentence]
      const place = named[kind].find(one => one.sentence === thing.sentence && one.head === thing.head)
      if (sentence === undefined || place === undefined) return []
      const times = thing.places.length
      const reason = times > 1 ? `named ${times} times as something used` : 'named as something used'
      const mark: Mark = {
        id: '',
        kind,
        ...sourceWithin(sentence, place.at, place.to),
        text: thing.name,
        pencilled: { confidence: Math.round(scorer.confidence(kind, thing.odds) * 100) / 100, reason },
      }
      return [{ mark, sentence: thing.sentence }]
    }),
  )
}
