import type { Mark } from '@/lib/procedure/mark'
import type { SheetStep } from '@/lib/procedure/sheet'
import { actionsOf } from './action'
import { isMeant, laterActions } from './before'

/** "Before you start" means before the first step. */
const FIRST_OF_ALL =
  /\bbefore (?:you )?(?:start(?:ing)?|begin(?:ning)?|anything else|any of (?:this|that)|(?:the )?work)\b(?: work)?\s*(?:[.,;]|$)/i

const LOCKS = new Set('lock padlock tag isolate'.split(' '))

/**
 * Finds the step that a text says must come later although it stands earlier.
 *
 * @param text of a step or caution that says "before …"
 * @param steps in order
 * @param number steps below this number are looked at
 */
export const doneTooEarly = (text: string, steps: readonly SheetStep[], number: number): SheetStep | undefined => {
  if (FIRST_OF_ALL.test(text) && number > 2) return steps[0]
  for (const meant of laterActions(text)) {
    const isLocal = LOCKS.has(meant.verb)
    const early = steps.find(
      step =>
        step.number < number &&
        actionsOf(step.mark.text).some(
          action =>
            isMeant(meant, action, true) ||
            (isLocal && LOCKS.has(action.verb)) ||
            (isLocal && /\bpadlock|\block\b/i.test(step.mark.text)),
        ),
    )
    if (
      early !== undefined &&
      !steps.some(
        step =>
          step.number >= number &&
          step.mark.text !== text &&
          actionsOf(step.mark.text).some(action => isMeant(meant, action, true)),
      )
    )
      return early
  }
  return undefined
}

/** @returns a short name of a step for messages. */
export const quote = (mark: Mark): string =>
  `"${mark.text.length > 60 ? `${mark.text.slice(0, 57).trimEnd()}…` : mark.text}"`
