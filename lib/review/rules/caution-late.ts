import type { Mark } from '@/lib/procedure/mark'
import type { SheetStep } from '@/lib/procedure/sheet'
import { cautionsIn, isPowering, presences } from '../danger'
import { isOfDeed } from '../hazard-signs'
import { doneTooEarly, quote, saysWhen, toldSteps } from '../late'
import { isApart, lateness, ownStems } from '../lateness'
import { attachTo } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import { type StemIndex, stemIndex } from '../stem-index'
import type { Subject } from '../subject'
import { stemSet } from '../words'

/** A step that sets a part in motion is where a caution against its motion belongs. */
const MOVES =
  /^(?:raise|lower|lift|extend|retract|swing|tilt|drive|travel|jog|inch|cycle|open|close|tip|fold|slew|let down|move)\b/i
/** "When power returns", "while dressing": said to be for later. */
const FOR_LATER =
  /\b(?:when|once|as soon as|the moment|after) (?:the |your )?(?:\w+ )?(?:power|supply|current|battery|air|engine|motor|machine|water|gas|it) (?:returns?|comes? (?:back|on)|is (?:back|on|restored|live|opened)|goes? on|starts?|runs?)\b/i

/** The earlier step a caution speaks of in so many words, where its own and every later step say nothing of it. */
const spokenOf = (
  caution: Mark,
  number: number,
  steps: readonly SheetStep[],
  index: StemIndex,
): SheetStep | undefined => {
  const own = steps[number - 1]
  if (!isApart(caution, number, index) || (own !== undefined && (isPowering(own) || MOVES.test(own.mark.text))))
    return undefined
  const counts = new Map<number, number>()
  for (const stem of ownStems(caution.text))
    for (const step of index.get(stem) ?? []) counts.set(step, (counts.get(step) ?? 0) + 1)
  const most = [...counts].filter(([, count]) => count >= 2).map(([step]) => step)
  return most.length === 0 ? undefined : steps[Math.min(...most) - 1]
}

/** How many steps the talk tells between a warning and the one it stands before, for it to have slipped down the sheet. */
const FAR_BEHIND = 2

/**
 * The step right before which the talk gives the warning, where the sheet has it steps later: what is said at the front of all
 * stands where it is wanted, what is said amid the work, about that work, is wanted there. A step that was moved down took its
 * warning along.
 */
const toldBefore = (caution: Mark, own: SheetStep | undefined, steps: readonly SheetStep[]): SheetStep | undefined => {
  const at = own === undefined ? -1 : steps.indexOf(own)
  if (own === undefined || at < 0) return undefined
  let from = at
  while (from > 0 && (steps[from - 1]?.mark.start ?? 0) >= caution.end) from--
  const between = steps.slice(from, at)
  const [next] = between
  if (next === undefined || between.length < FAR_BEHIND || own.mark.start < next.mark.start) return undefined
  const isOfThese = between.some(({ mark }) => sharesStem(caution, mark.text))
  return isOfThese && !sharesStem(caution, own.mark.text) ? next : undefined
}
const sharesStem = (caution: Mark, text: string): boolean => {
  const stems = stemSet(text)
  return ownStems(caution.text).some(stem => stems.has(stem))
}

const check = ({ sheet, sentences }: Subject): readonly Found[] => {
  const index = stemIndex(sheet.steps)
  const steps = toldSteps(sheet.steps)
  const found = new Map<Mark, SheetStep>()
  // Where the danger is only hinted at, lateness is arguable.
  const hinted = new Set<Mark>()
  for (const presence of presences(sheet)) {
    const [first] = presence.cautions
    if (
      first === undefined ||
      isOfDeed(presence.hazard) ||
      saysWhen(first.mark.text) ||
      FOR_LATER.test(first.mark.text) ||
      lateness(presence, index) !== 'late'
    )
      continue
    found.set(first.mark, presence.step)
    if (!presence.isPlain) hinted.add(first.mark)
  }
  for (const { mark: caution, number } of cautionsIn(sheet)) {
    const early =
      found.get(caution) ??
      doneTooEarly(caution.text, sheet.steps, number) ??
      (FOR_LATER.test(caution.text) ? undefined : spokenOf(caution, number, sheet.steps, index))
    if (early !== undefined) found.set(caution, early)
    else if (sentences.length > 0 && !FOR_LATER.test(caution.text)) {
      const told = toldBefore(caution, sheet.steps[number - 1], steps)
      if (told === undefined) continue
      found.set(caution, told)
      hinted.add(caution)
    }
  }
  return [...found].map(([caution, step]) => ({
    place: atMark(caution),
    ...(hinted.has(caution) ? { level: 'consider' as const } : {}),
    message: `The ${caution.level ?? 'caution'} ${quote(caution)} stands after step ${step.number}, ${quote(step.mark)}, which brings the danger. Move it before that step.`,
    remedy: attachTo(caution, step.mark, step.number),
  }))
}

/** A warning after the fact warns nobody. */
export const cautionLate: Rule = {
  id: 'caution-late',
  level: 'stop',
  about: 'A caution stands after the step it is for.',
  why: 'Whoever works down the sheet has done the dangerous thing by the time the warning is read.',
  source:
    'ANSI Z535.6 on embedded safety messages; IEC/IEEE 82079-1:2019: the warning comes before the action (from memory)',
  trips: sample([
    ['step', 'Remove the coil spring with a spring compressor'],
    ['step', 'Fit the damper'],
    [
      'caution',
      'A compressed spring can fly out and kill; never stand in its line',
      { level: 'danger', hazard: 'spring' },
    ],
  ]),
  passes: sample([
    ['step', 'Remove the coil spring with a spring compressor'],
    [
      'caution',
      'A compressed spring can fly out and kill; never stand in its line',
      { level: 'danger', hazard: 'spring' },
    ],
    ['step', 'Fit the damper'],
  ]),
  check,
}
