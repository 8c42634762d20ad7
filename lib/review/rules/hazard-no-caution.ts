import type { Hazard } from '@/lib/trade/hazard'
import { presences, unspoken } from '../danger'
import { isOfDeed } from '../hazard-signs'
import { quote } from '../late'
import { lateness } from '../lateness'
import { addCaution } from '../remedy'
import { atMark, type FindingLevel, type Found, type Rule, WHOLE } from '../rule'
import { sample } from '../sample'
import { stemIndex } from '../stem-index'
import type { Subject } from '../subject'

/** Protection without a word of why weighs least; a mere hint weighs less than a plain sign. */
const levelOf = (hazard: Hazard, isPlain: boolean, isProtected: boolean): FindingLevel => {
  if (isProtected || !isPlain || isOfDeed(hazard)) return 'consider'
  return hazard.level === 'danger' ? 'stop' : 'fix'
}

/** Told to do it outdoors, nobody breathes exhaust: the place is the whole precaution. */
const BY_PLACE = new Set(['carbon-monoxide'])

/** What glasses, muffs and the like say all about: who is told to wear them knows why. */
const BY_WEAR = new Set([
  'sprung-clip',
  'sheet-edge',
  'stone-dust',
  'flying-particles',
  'compressed-air',
  'thrown-objects',
  'noise',
])

/** One finding for all that the machine is known for: it concerns the whole. */
const known = (hazards: readonly Hazard[]): readonly Found[] => {
  const [first] = hazards
  if (first === undefined) return []
  const names = hazards.map(({ id }) => id.replaceAll('-', ' ')).join(', ')
  const message = `Such a machine is known for hazards that no caution speaks of: ${names}. ${hazards.length > 1 ? 'One of the usual ones' : 'The usual one'}: ${first.caution}`
  return [{ place: WHOLE, level: 'consider', message }]
}

const check = ({ sheet }: Subject): readonly Found[] => {
  const index = stemIndex(sheet.steps)
  const whole = known(unspoken(sheet))
  const found = presences(sheet).flatMap((presence): Found[] => {
    const { hazard, step, isPlain, isMet, cautions, protectedFrom } = presence
    if (cautions.length > 0 && (isOfDeed(hazard) || lateness(presence, index) !== 'missing')) return []
    if (BY_PLACE.has(hazard.id) && protectedFrom !== undefined && protectedFrom <= step.number) return []
    // Switched off, locked and unplugged, and no step that goes near what is live: nothing is left to warn of.
    if (isMet && !isPlain) return []
    if (BY_WEAR.has(hazard.id) && protectedFrom !== undefined && protectedFrom <= step.number) return []
    const level = levelOf(hazard, isPlain, isMet || protectedFrom !== undefined)
    const message = `Step ${step.number}, ${quote(step.mark)}, brings a hazard (${hazard.id.replaceAll('-', ' ')}) and no caution stands before it. The usual one: ${hazard.caution}`
    return [
      {
        place: atMark(step.mark),
        level,
        message,
        remedy: addCaution(step.mark, hazard.id, hazard.level, hazard.caution),
      },
    ]
  })
  return [...found, ...whole]
}

/** The hazard is there; the warning is not. */
export const hazardNoCaution: Rule = {
  id: 'hazard-no-caution',
  level: 'stop',
  about: 'Steps, tools or materials bring a hazard and no caution speaks of it before.',
  why: 'An experienced hand takes the care without saying so; the reader does not know that it was taken.',
  source: 'ANSI Z535.6; IEC/IEEE 82079-1:2019 on warnings (from memory); hazard by hazard see lib/trade/hazards*.ts',
  trips: sample([['step', 'Blow the dust out of the housing with an air gun']]),
  passes: sample([
    ['step', 'Blow the dust out of the housing with an air gun'],
    [
      'caution',
      'Compressed air throws grit that can blind; wear safety glasses',
      { level: 'caution', hazard: 'eye-injury' },
    ],
  ]),
  check,
}
