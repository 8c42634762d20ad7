import type { SheetStep } from '@/lib/procedure/sheet'
import { PREPARATIONS, type Preparation } from '@/lib/trade/preparations'
import { actionsOf } from '../action'
import { atSteps } from '../chunks'
import { quote } from '../late'
import { onceForText } from '../memo'
import { unlocks } from '../power'
import { moveStep } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isSameThing, type Thing } from '../thing'
import { stemSet } from '../words'

/** What else needs a preparation, beyond the table. Common practice, no source. */
const NEEDS: Readonly<Record<string, RegExp>> = {
  chock:
    /\b(?:raise|lift|jack)\w*\b[^.;]*\b(?:axle|truck|lorry|van|bus|trailer|caravan|tractor|forklift|wheel|corner|vehicle|side)\b/i,
}

const reads = onceForText((text: string) => ({
  prepares: new Set(
    unlocks(text) ? [] : PREPARATIONS.filter(({ prepares, not }) => prepares.test(text) && not?.test(text) !== true),
  ),
  needs: new Set(
    PREPARATIONS.filter(
      ({ id, needs, not }) => (needs.test(text) || NEEDS[id]?.test(text) === true) && not?.test(text) !== true,
    ),
  ),
}))

/** A step that says itself what it comes before is not judged by the table. */
const SAYS_WHEN = /\b(?:before|until|prior to)\b/i

/** Where fluid comes from: a pan under the crankcase has nothing to do with the tank. */
const VESSELS =
  /\b(?:crankcase|gearbox|tank|sump|radiator|boiler|engine|headstock|pump|pot|caliper|axle|filter|transmission|cylinder)\b/gi
const vesselsOf = (text: string): readonly string[] => (text.match(VESSELS) ?? []).map(word => word.toLowerCase())

/** A tag against switching on is no label. */
const LOCKING = /\b(?:do[- ]not|don't|danger|warning|lock\w*|out of (?:order|service))\b/i

/** Whether what prepares is about the step that needs it; a label or a pan may be for something else. */
const isAbout = ({ id }: Preparation, early: string, late: string): boolean => {
  if (id === 'catch') {
    const [one, other] = [vesselsOf(early), vesselsOf(late)]
    return one.length === 0 || other.length === 0 || one.some(word => other.includes(word))
  }
  if (id !== 'label') return true
  if (LOCKING.test(late)) return false
  const own = stemSet(late)
  return [...stemSet(early)].some(stem => own.has(stem))
}

type Turn = { prepares?: SheetStep; needs?: SheetStep }

/** The first step that prepares and the first that needs it, for each preparation. */
const turnsIn = atSteps(step => {
  const { prepares, needs } = reads(step.mark.text)
  return prepares.size + needs.size === 0 ? [] : [{ prepares, needs }]
})

const firstOf = (sheet: Subject['sheet']): ReadonlyMap<Preparation, Turn> => {
  const first = new Map<Preparation, Turn>()
  const of = (preparation: Preparation): Turn => {
    const turn = first.get(preparation) ?? {}
    first.set(preparation, turn)
    return turn
  }
  for (const { step, prepares, needs } of turnsIn(sheet)) {
    for (const preparation of prepares) of(preparation).prepares ??= step
    for (const preparation of needs) if (!prepares.has(preparation)) of(preparation).needs ??= step
  }
  return first
}

/** Marks that only help while the part still sits as it was. */
const WITNESS =
  /\b(?:mark|match-?mark|scribe|witness|index|paint|dot|punch)\b[^.;]*\b(?:against|relative|position|alignment|orientation|shaft|hub|flange|spline|column|body|frame|bracket|where (?:it|they)|which way|how (?:it|they)|to (?:its|each other|the)|both|depth|height|with a (?:paint|marker))\b/i
const NO_WITNESS = /\b(?:wear|level|liquid|before|new|out of (?:order|service)|date)\b/i

/** What a step marks, takes off and puts back. */
const handlesIn = atSteps(step => {
  const actions = actionsOf(step.mark.text)
  const marks =
    WITNESS.test(step.mark.text) && !NO_WITNESS.test(step.mark.text) ? actions.flatMap(({ things }) => things) : []
  const off = actions.filter(({ acts }) => acts.has('remove') || acts.has('disconnect')).flatMap(({ things }) => things)
  const on = actions.filter(({ acts }) => acts.has('refit') || acts.has('connect')).flatMap(({ things }) => things)
  return marks.length + off.length + on.length === 0 ? [] : [{ marks, off, on }]
})

/** A part marked for its place once it is already off. */
const markedLate = ({ sheet }: Subject): readonly Found[] => {
  let off: { readonly thing: Thing; readonly step: SheetStep }[] = []
  const found: Found[] = []
  for (const { step, marks, off: taken, on } of handlesIn(sheet)) {
    const early = off.find(({ thing }) => marks.some(other => other.head !== '' && isSameThing(thing, other)))
    if (early !== undefined && taken.length === 0)
      found.push({
        place: atMark(step.mark),
        message: `Step ${step.number}, ${quote(step.mark)}, belongs before step ${early.step.number}, ${quote(early.step.mark)}, while the ${early.thing.name} still sits as it was.`,
        remedy: moveStep(step.mark, early.step.number),
      })
    off = off.filter(({ thing }) => !on.some(other => isSameThing(thing, other)))
    off.push(...taken.filter(({ head }) => head !== '').map(thing => ({ thing, step })))
  }
  return found
}

const check = (subject: Subject): readonly Found[] => [...unprepared(subject), ...markedLate(subject)]

const unprepared = ({ sheet }: Subject): readonly Found[] => {
  const first = firstOf(sheet)
  return PREPARATIONS.flatMap(preparation => {
    const { prepares: late, needs: early } = first.get(preparation) ?? {}
    if (late === undefined || (SAYS_WHEN.test(late.mark.text) && !/\bput on\b/i.test(late.mark.text))) return []
    if (early === undefined || early.number > late.number || !isAbout(preparation, early.mark.text, late.mark.text))
      return []
    const message = `Step ${late.number}, ${quote(late.mark)}, belongs before step ${early.number}, ${quote(early.mark)}, ${preparation.why}.`
    return [{ place: atMark(late.mark), message, remedy: moveStep(late.mark, early.number) }]
  })
}

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
