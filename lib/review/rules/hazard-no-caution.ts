import type { Mark } from '@/lib/procedure/mark'
import type { Hazard } from '@/lib/trade/hazard'
import { HAZARD_FAMILIES } from '@/lib/trade/hazard-families'
import { MATERIAL_HEADS } from '@/lib/trade/materials'
import { cautionsIn, type Presence, presences, unspoken } from '../danger'
import { isOfDeed } from '../hazard-signs'
import { quote } from '../late'
import { lateness } from '../lateness'
import { addCaution } from '../remedy'
import { atMark, type FindingLevel, type Found, type Rule, WHOLE } from '../rule'
import { sample } from '../sample'
import { type StemIndex, stemIndex } from '../stem-index'
import type { Subject } from '../subject'
import { contentStems, stemOf, stemSet } from '../words'

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

const FAMILY_OF = new Map(HAZARD_FAMILIES.flatMap((ids, i) => ids.map(id => [id, i] as const)))

/** Of one family at one step, the plainest is asked for. */
const isFirstOfFamily = (own: Presence, _: number, all: readonly Presence[]): boolean => {
  const family = FAMILY_OF.get(own.hazard.id)
  if (family === undefined) return true
  const same = all.filter(other => other.step.number === own.step.number && FAMILY_OF.get(other.hazard.id) === family)
  const best = same.find(({ isPlain, hazard }) => isPlain && !isOfDeed(hazard)) ?? same[0]
  return best === undefined || best === own
}

type Warned = { readonly mark: Mark; readonly number: number }

/** Told that its vapour burns or stupefies, whoever uses it knows that it is no water; what fumes do is a matter of its own. */
const OF_STUFF = new Set(['chemical', 'acid-skin'])
const VOLATILE = /\b(?:vapou?rs?|fumes?|flamm\w*|ignit\w*|flash\w*|catch(?:es)? fire|dizzy)\b/i
const STUFF = new Set(MATERIAL_HEADS.flatMap(head => head.split(' ')).map(stemOf))
/** Whether a caution at the step or before it names the stuff that the step works with. */
const isSpokenOf = ({ hazard, step }: Presence, warned: readonly Warned[]): boolean => {
  if (!OF_STUFF.has(hazard.id)) return false
  const stuff = contentStems(step.mark.text).filter(stem => STUFF.has(stem))
  return warned.some(
    ({ mark, number }) =>
      number <= step.number && VOLATILE.test(mark.text) && stuff.some(stem => stemSet(mark.text).has(stem)),
  )
}

const isMissing = (presence: Presence, index: StemIndex, warned: readonly Warned[]): boolean => {
  const { hazard, step, isPlain, isMet, cautions, protectedFrom } = presence
  if (isSpokenOf(presence, warned)) return false
  if (cautions.length > 0 && (isOfDeed(hazard) || lateness(presence, index) !== 'missing')) return false
  const isWorn = protectedFrom !== undefined && protectedFrom <= step.number
  if (isWorn && (BY_PLACE.has(hazard.id) || BY_WEAR.has(hazard.id))) return false
  // Switched off, locked and unplugged, and no step that goes near what is live: nothing is left to warn of.
  return !isMet || isPlain
}

const check = ({ sheet }: Subject): readonly Found[] => {
  const index = stemIndex(sheet.steps)
  const whole = known(unspoken(sheet))
  const warned = cautionsIn(sheet)
  const found = presences(sheet)
    .filter(presence => isMissing(presence, index, warned))
    .filter(isFirstOfFamily)
    .map(({ hazard, step, isPlain, isMet, protectedFrom }): Found => {
      const message = `Step ${step.number}, ${quote(step.mark)}, brings a hazard (${hazard.id.replaceAll('-', ' ')}) and no caution stands before it. The usual one: ${hazard.caution}`
      return {
        place: atMark(step.mark),
        level: levelOf(hazard, isPlain, isMet || protectedFrom !== undefined),
        message,
        remedy: addCaution(step.mark, hazard.id, hazard.level, hazard.caution),
      }
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
