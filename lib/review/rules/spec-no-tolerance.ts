import type { Mark } from '@/lib/procedure/mark'
import { isToleranced } from '@/lib/quantity/quantity'
import type { QuantityKind } from '@/lib/quantity/unit-row'
import { dimensionOf } from '@/lib/quantity/units'
import { eachMark } from '../memo'
import { atMark, type FindingLevel, type Rule } from '../rule'
import { sample } from '../sample'

/** Where a limit nearly always has a range in the manual, and missing it damages something. */
const TIGHT = new Set<QuantityKind>(['torque', 'pressure', 'current', 'resistance', 'capacitance', 'force'])
/** Lengths and angles that decide whether a thing works, not how far a lid is lifted. */
const FITS =
  /\b(?:gap|clearance|play|wear|thickness|rise|runout|end ?float|backlash|deflection|sag|slack|protrusion|preload|lash|offset|toe|camber|timing)\b/i

/** What is due, not what is measured: "every 200 hours" needs no tolerance. */
const DUE = /\b(interval|every|due|schedule|service life|recheck distance|re-check distance)\b/i

/** What it is rated or set to begin with, and by how much it is raised: no reading is compared with it. */
const NOMINAL =
  /\b(?:fuses?(?! (?:[a-z]+ )*(?:torque|screws?|bolts?|nuts?))|foil|shim stock|at a time|each time|per (?:step|turn)|increments?|(?:starting|first|initial) (?:[a-z]+ )*(?:pressure|fill|charge|speed|setting|heat))\b/i

const CALENDAR = new Set(['mo', 'a', 'wk', 'd'])

const isDue = ({ text, reference = '', quantity }: Mark): boolean =>
  DUE.test(text) ||
  /\b(?:whichever|every)\b/i.test(reference) ||
  CALENDAR.has(quantity?.unit ?? '') ||
  dimensionOf(quantity?.unit ?? '') === 'distance'

const levelFor = ({ text, quantity }: Mark): FindingLevel => {
  const kind = dimensionOf(quantity?.unit ?? '')
  return (kind !== undefined && TIGHT.has(kind)) || FITS.test(text) ? 'fix' : 'consider'
}

/** One value without limits can't be checked: every reading misses it. */
export const specNoTolerance: Rule = {
  id: 'spec-no-tolerance',
  level: 'fix',
  about: 'A spec gives one value with no limit on either side.',
  why: 'No one hits a single value exactly; without limits nobody can say whether a reading is good.',
  source: 'IEC/IEEE 82079-1:2019 on measurable criteria (from memory); common practice, no source',
  trips: sample([
    ['step', 'Torque the cover screws'],
    ['spec', 'cover screw torque', { quantity: { nominal: 4, unit: 'N.m' } }],
  ]),
  passes: sample([
    ['step', 'Torque the cover screws'],
    ['spec', 'cover screw torque', { quantity: { nominal: 4, low: 3.5, high: 4.5, unit: 'N.m' } }],
    ['spec', 'service interval', { quantity: { nominal: 200, unit: 'h' } }],
  ]),
  ...eachMark(['spec'], mark => {
    const { quantity } = mark
    if (quantity?.nominal === undefined || isToleranced(quantity)) return []
    if (isDue(mark) || NOMINAL.test(mark.text)) return []
    const message = `"${mark.text}" is one value without limits. Add the range or the plus-or-minus the maker gives, or say that it is a maximum or a minimum.`
    return [{ place: atMark(mark), level: levelFor(mark), message }]
  }),
}
