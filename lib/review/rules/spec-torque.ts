import type { Mark } from '@/lib/procedure/mark'
import type { SheetStep } from '@/lib/procedure/sheet'
import { readFasteners } from '@/lib/quantity/fastener'
import { checkTorque } from '@/lib/quantity/torque'
import { dimensionOf } from '@/lib/quantity/units'
import { actionsOf } from '../action'
import { inSteps } from '../chunks'
import { onceForText } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import type { Thing } from '../thing'
import { stemSet } from '../words'

const fastenersIn = onceForText(readFasteners)

/** The thread a torque is for, where one only is named with it. */
const threadOf = (spec: Mark, step: SheetStep | undefined) => {
  for (const text of [spec.text, spec.reference ?? '', step?.mark.text ?? '', spec.said]) {
    const [one, another] = fastenersIn(text)
    if (one !== undefined && (another === undefined || another.size === one.size)) return one
  }
  return undefined
}

/** Thread by width across flats, mm; the larger where two are made. @source ISO 272 (from memory), older widths of DIN 931 beside it */
const THREADS: Readonly<Record<string, string>> = {
  '7': 'M4',
  '8': 'M5',
  '10': 'M6',
  '11': 'M6',
  '12': 'M8',
  '13': 'M8',
  '14': 'M10',
  '15': 'M10',
  '16': 'M10',
  '17': 'M10',
  '18': 'M12',
  '19': 'M12',
  '21': 'M14',
  '22': 'M14',
  '24': 'M16',
  '27': 'M18',
  '30': 'M20',
  '32': 'M22',
  '34': 'M22',
  '36': 'M24',
  '41': 'M27',
  '46': 'M30',
}
/** Thread by width across flats, inches. @source ASME B18.2.1 and B18.2.2 (from memory); the next larger thread, to be on the safe side */
const INCH_THREADS: Readonly<Record<string, string>> = {
  '7/16': '1/4-20',
  '1/2': '3/8-16',
  '9/16': '7/16-14',
  '5/8': '1/2-13',
  '11/16': '7/16-14',
  '3/4': '9/16-12',
  '7/8': '5/8-11',
  '15/16': '3/4-10',
  '1-1/8': '3/4-10',
  '1 1/8': '3/4-10',
}
const INCH_FLATS =
  /(?<!\d[- ]|[\d/])\b(1[- ]1\/8|\d{1,2}\/16|\d\/[248])(?:[- ]?(?:in(?:ch)?\b\.?|"|″))? (?:(?!drive)[a-z-]+ ){0,3}?(?:spanners?|wrench(?:es)?|sockets?|nuts?|bolts?)\b/i
const FLATS =
  /\b(\d{1,2})[ -]?mm (?:[a-z-]+ ){0,3}?(?:spanners?|wrench(?:es)?|sockets?|nuts?|bolts?|hex(?:agon)? heads?)\b/i

const turnedIn = onceForText((text: string): readonly Thing[] =>
  actionsOf(text).flatMap(({ things }) => things.filter(({ head }) => TURNED.has(head))),
)
const TURNED = new Set('nut bolt union screw fitting plug banjo'.split(' '))

/** Threads whose hexagon a step fits a spanner on. */
const flatsIn = inSteps(step => {
  const texts = [step.mark.text, ...step.tools.map(({ text }) => text)]
  const thread = texts.flatMap(text => {
    const [, inches] = INCH_FLATS.exec(text) ?? []
    return INCH_THREADS[inches ?? ''] ?? THREADS[FLATS.exec(text)?.[1] ?? ''] ?? []
  })[0]
  const things = thread === undefined ? [] : turnedIn(step.mark.text)
  return thread === undefined || things.length === 0 ? [] : [{ things, thread }]
})

/** The thread that the spanner tells, used on a fastener of the same name anywhere in the procedure. */
const byFlats = (spec: Mark, sheet: Subject['sheet']) => {
  const stems = stemSet(spec.text)
  const row = flatsIn(sheet).find(({ things }) =>
    things.some(({ head, rest }) => stems.has(head) && (rest.length === 0 || rest.some(word => stems.has(word)))),
  )
  return row === undefined ? undefined : fastenersIn(row.thread)[0]
}

/** A nut or bolt whose spanner is named takes no more than the strongest thread of that width. */
const tooMuch = (spec: Mark, sheet: Subject['sheet']): readonly Found[] => {
  const thread = byFlats(spec, sheet)
  const check = spec.quantity && thread && checkTorque(spec.quantity, thread)
  if (check === undefined || check.verdict !== 'high') return []
  const message = `"${spec.text}" is more than a fastener of that width across flats takes. ${check.working} The maker’s manual decides.`
  return [{ place: atMark(spec), message }]
}

const checkSpec = (spec: Mark, step: SheetStep | undefined, sheet: Subject['sheet']): readonly Found[] => {
  const { quantity } = spec
  if (quantity?.unit === undefined || dimensionOf(quantity.unit) !== 'torque') return []
  const thread = threadOf(spec, step)
  if (thread === undefined) return tooMuch(spec, sheet)
  const check = checkTorque(quantity, thread)
  if (check === undefined || check.verdict === 'plausible') return []
  const message = `"${spec.text}" is ${check.verdict === 'high' ? 'more than such a fastener takes' : 'hardly more than hand tight for such a fastener'}. ${check.working} The maker’s manual decides.`
  return [{ place: atMark(spec), message }]
}

const check = ({ sheet }: Subject): readonly Found[] =>
  sheet.steps.flatMap(step => step.specs.flatMap(spec => checkSpec(spec, step, sheet)))

/** An M6 does not take 90 newton metres. */
export const specTorque: Rule = {
  id: 'spec-torque',
  level: 'stop',
  about: 'A torque is far from what its thread can take.',
  why: 'Pounds-feet taken for newton metres, or a lost point, strips the thread or leaves the joint loose.',
  source: 'T = K·F·d (handbook formula) with proof loads of ISO 898-1 and SAE J429; a sanity check only',
  trips: sample([
    ['step', 'Tighten the cover bolts'],
    ['spec', 'M6 cover bolt torque', { quantity: { nominal: 90, unit: 'N.m' } }],
  ]),
  passes: sample([
    ['step', 'Tighten the cover bolts'],
    ['spec', 'M6 cover bolt torque', { quantity: { nominal: 9, unit: 'N.m' } }],
  ]),
  check,
}
