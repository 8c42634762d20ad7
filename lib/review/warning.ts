import { harmSigns } from '@/lib/trade/harm'
import { cautionParts, harmsPeople, isSerious, tellsGear } from './caution-parts'
import { type HazardModel, toWeigher } from './hazard-model'
import { onceForText } from './memo'
import warningModel from './warning-model.json'
import { contentStems, tokensOf } from './words'

const weigh = toWeigher(warningModel satisfies HazardModel, ['warning'])

/** @returns what a sentence shows of whether it warns: its words, pairs of neighbours, the parts of a safety message. */
export const warningFeatures = (text: string): readonly string[] => {
  const tokens = tokensOf(text).map(token => (/^\d/.test(token) ? '#' : token))
  const { hasHazard, consequence, hasAvoidance } = cautionParts(text)
  return [
    'bias',
    ...new Set([
      ...tokens.map(token => `t:${token}`),
      ...tokens.slice(1).map((token, i) => `t2:${tokens[i]} ${token}`),
    ]),
    `length:${Math.min(6, Math.floor(tokens.length / 5))}`,
    ...(hasHazard ? ['hazard'] : []),
    ...(hasAvoidance ? ['avoidance'] : []),
    ...(consequence === undefined ? [] : [`so:${consequence}`]),
    ...harmSigns(text).map(sign => `harm:${sign}`),
    ...(isSerious(text) ? ['serious'] : []),
    ...(tellsGear(text) ? ['gear'] : []),
    ...contentStems(text).map(stem => `s:${stem}`),
    ...(harmsPeople(text) ? ['people', hasAvoidance ? 'people+avoidance' : 'people-alone'] : []),
  ]
}

/** @returns log odds that a sentence of a talk warns of something */
export const warningOdds = onceForText((text: string): number => weigh(warningFeatures(text))[0] ?? 0)
