import { hasNumber } from '@/lib/quantity/quantity'
import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'

const FEEL =
  /\b(?:snug|tight|firm\w*|nip\w*|good and|just (?:touch\w*|right)|not too|bit|little|some|enough|about|roughly|finger|hand|moderate|light\w*|gentl\w*|well|properly|sufficient\w*|normal)\b/i
const MEASURED =
  /\b(?:mark|line|dot|between|sight glass|flush|level with|bottom of|top of|full|same|equal|on the|in line|paper|turn|no (?:gap|play|movement|slack|light)|without (?:gap|play)|one hand|two fingers|contact)\b/i

/** "Snug" is a feeling. */
export const specVague: Rule = {
  id: 'spec-vague',
  level: 'consider',
  about: 'A spec is only a feeling: snug, tight, a bit.',
  why: 'Two people’s snug differ by a factor of three.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Tighten the wing nut'],
    ['spec', 'wing nut', { reference: 'snug' }],
  ]),
  passes: sample([
    ['step', 'Fill the reservoir'],
    ['spec', 'fluid level', { reference: 'between the two marks' }],
  ]),
  ...eachMark(['spec'], mark => {
    if (mark.quantity !== undefined && hasNumber(mark.quantity)) return []
    const reference = mark.reference ?? ''
    if (reference !== '' && !(FEEL.test(reference) && !MEASURED.test(reference))) return []
    const what = reference === '' ? 'has neither a value nor a mark to go by' : `is only "${reference}"`
    return [
      {
        place: atMark(mark),
        message: `"${mark.text}" ${what}. Give a value with limits, or what to see or feel that settles it.`,
      },
    ]
  }),
}
