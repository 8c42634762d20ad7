import type { Mark } from '@/lib/procedure/mark'
import type { SheetStep } from '@/lib/procedure/sheet'
import { readFasteners } from '@/lib/quantity/fastener'
import { checkTorque } from '@/lib/quantity/torque'
import { dimensionOf } from '@/lib/quantity/units'
import { onceForText } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const fastenersIn = onceForText(readFasteners)

/** The thread a torque is for, where one only is named with it. */
const threadOf = (spec: Mark, step: SheetStep | undefined) => {
  for (const text of [spec.text, spec.reference ?? '', step?.mark.text ?? '', spec.said]) {
    const [one, another] = fastenersIn(text)
    if (one !== undefined && (another === undefined || another.size === one.size)) return one
  }
  return undefined
}

const checkSpec = (spec: Mark, step: SheetStep | undefined): readonly Found[] => {
  const { quantity } = spec
  if (quantity?.unit === undefined || dimensionOf(quantity.unit) !== 'torque') return []
  const thread = threadOf(spec, step)
  const check = thread && checkTorque(quantity, thread)
  if (check === undefined || check.verdict === 'plausible') return []
  const message = `"${spec.text}" is ${check.verdict === 'high' ? 'more than such a fastener takes' : 'hardly more than hand tight for such a fastener'}. ${check.working} The maker’s manual decides.`
  return [{ place: atMark(spec), message }]
}

const check = ({ sheet }: Subject): readonly Found[] =>
  sheet.steps.flatMap(step => step.specs.flatMap(spec => checkSpec(spec, step)))

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
