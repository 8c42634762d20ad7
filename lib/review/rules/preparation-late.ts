import { PREPARATIONS, type Preparation } from '@/lib/trade/preparations'
import { quote } from '../late'
import { onceForText } from '../memo'
import { moveStep } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { stemSet } from '../words'

const reads = onceForText((text: string) => ({
  prepares: new Set(PREPARATIONS.filter(({ prepares, not }) => prepares.test(text) && not?.test(text) !== true)),
  needs: new Set(PREPARATIONS.filter(({ needs, not }) => needs.test(text) && not?.test(text) !== true)),
}))

const GENERAL = new Set(['drain', 'plug', 'pan', 'put', 'place', 'bucket', 'tray', 'valve', 'remove', 'loosen'])
/** A step that says itself what it comes before is not judged by the table. */
const SAYS_WHEN = /\b(?:before|until|prior to)\b/i

/** What protects or catches is for one place; label, photograph and catch only count against what they name. */
const isAbout = (preparation: Preparation, early: string, late: string): boolean => {
  if (preparation.id !== 'label' && preparation.id !== 'catch') return true
  const own = stemSet(late)
  return [...stemSet(early)].some(stem => own.has(stem) && !GENERAL.has(stem))
}

const check = ({ sheet: { steps } }: Subject): readonly Found[] =>
  PREPARATIONS.flatMap(preparation => {
    const late = steps.find(({ mark }) => reads(mark.text).prepares.has(preparation))
    if (late === undefined || (SAYS_WHEN.test(late.mark.text) && !/\bput on\b/i.test(late.mark.text))) return []
    const early = steps.find(
      ({ mark }) => reads(mark.text).needs.has(preparation) && !reads(mark.text).prepares.has(preparation),
    )
    if (early === undefined || early.number > late.number || !isAbout(preparation, early.mark.text, late.mark.text))
      return []
    const message = `Step ${late.number}, ${quote(late.mark)}, belongs before step ${early.number}, ${quote(early.mark)}, ${preparation.why}.`
    return [{ place: atMark(late.mark), message, remedy: moveStep(late.mark, early.number) }]
  })

/** Gloves after the acid. */
export const preparationLate: Rule = {
  id: 'preparation-late',
  level: 'fix',
  about: 'Something that prepares or protects comes after the step that needs it.',
  why: 'Chocks, gloves, labels and lockouts only work when they come first.',
  source:
    'IEC/IEEE 82079-1:2019: steps in the order of doing (from memory); single orders are common practice, no source',
  trips: sample([
    ['step', 'Jack up the front of the car'],
    ['step', 'Chock the rear wheels'],
  ]),
  passes: sample([
    ['step', 'Chock the rear wheels'],
    ['step', 'Jack up the front of the car'],
  ]),
  check,
}
