import type { Mark } from '@/lib/procedure/mark'
import type { SheetStep } from '@/lib/procedure/sheet'
import { shorten } from '@/lib/procedure/shorten'
import { type Action, actionsOf } from './action'
import { isMeant, laterActions } from './before'
import { onceForText } from './memo'
import { type StemIndex, stemIndex } from './stem-index'
import { stemOf, stemSet } from './words'

/** @returns the steps somebody told: one put in where it was forgotten bears the time of the step beside it, and no words */
export const toldSteps = (steps: readonly SheetStep[]): readonly SheetStep[] => {
  const times = new Map<string, number>()
  const timeOf = ({ mark }: SheetStep): string => `${mark.start} ${mark.end}`
  for (const step of steps) times.set(timeOf(step), (times.get(timeOf(step)) ?? 0) + 1)
  return steps.filter(step => step.mark.said.trim() !== '' || times.get(timeOf(step)) === 1)
}

/** "Before you start" means before the first step. */
const FIRST_OF_ALL =
  /\bbefore (?:you )?(?:start(?:ing)?|begin(?:ning)?|anything else|any of (?:this|that)|(?:the )?work)\b(?: work)?\s*(?:[.,;]|$)/i

const LOCKS = new Set('lock padlock tag isolate'.split(' '))

/** Steps that may be the one meant: they name the thing, or, where none is named, the verb. */
const candidates = (meant: Action, index: StemIndex): readonly number[] => {
  const heads = meant.things.map(({ head }) => head).filter(head => head !== '')
  const stems = heads.length > 0 ? heads.map(stemOf) : LOCKS.has(meant.verb) ? [...LOCKS] : [meant.verb]
  return [...new Set(stems.flatMap(stem => index.get(stem) ?? []))].sort((a, b) => a - b)
}

const tellsOf = onceForText((text: string) => ({ isFirst: FIRST_OF_ALL.test(text), later: laterActions(text) }))

/** @returns whether a text says that it comes before something. */
export const saysWhen = (text: string): boolean => {
  const { isFirst, later } = tellsOf(text)
  return isFirst || later.length > 0
}

/** Whether a step names the thing and then does it to "it": "Support the chassis and slide it out". */
const isMeantByPronoun = (meant: Action, action: Action, text: string): boolean => {
  const named = meant.things.filter(({ head }) => head !== '')
  if (named.length === 0 || action.things.some(({ head }) => head !== '')) return false
  const stems = stemSet(text)
  const isSame = action.verb === meant.verb || [...meant.acts].some(act => action.acts.has(act))
  return isSame && named.every(({ head }) => stems.has(stemOf(head)))
}

/** Whether a step handles a thing that the text handles: "Mark the first cutter before filing" is of filing cutters. */
const isOnSame = (text: string, { mark }: SheetStep): boolean => {
  const stems = stemSet(mark.text)
  return actionsOf(text).some(({ things }) => things.some(({ head }) => head !== '' && stems.has(stemOf(head))))
}

/** Whether a text names by two words what its own step has and the earlier one has not. */
const isOfOwn = (text: string, early: SheetStep, own: SheetStep | undefined): boolean => {
  if (own === undefined || own === early || own.mark.text === text) return false
  const [mine, other] = [stemSet(own.mark.text), stemSet(early.mark.text)]
  return [...stemSet(text)].filter(stem => mine.has(stem) && !other.has(stem)).length >= 2
}

/** "Furl, brake and lash it before you work": what it orders is what the steps there do. */
const isDoneBy = (text: string, steps: readonly SheetStep[], number: number): boolean => {
  const ordered = text.split(/[;:]/).slice(1).flatMap(actionsOf)
  const done = steps.slice(0, number).flatMap(({ mark }) => actionsOf(mark.text))
  return ordered.some(({ verb }) => !LOCKS.has(verb) && done.at(-1)?.verb === verb)
}

/**
 * Finds the step that a text says must come later although it stands earlier.
 *
 * @param text of a step or caution that says "before …"
 * @param steps in order
 * @param number steps below this number are looked at
 */
export const doneTooEarly = (text: string, steps: readonly SheetStep[], number: number): SheetStep | undefined => {
  const { isFirst, later } = tellsOf(text)
  if (isFirst && number > 2 && !isDoneBy(text, steps, number)) return steps[0]
  for (const meant of later) {
    const isLock = LOCKS.has(meant.verb)
    const does = ({ mark }: SheetStep): boolean =>
      mark.text !== text &&
      (actionsOf(mark.text).some(
        action => isMeant(meant, action, true) || isMeantByPronoun(meant, action, mark.text),
      ) ||
        (isLock && LOCKED.test(mark.text)))
    const all = candidates(meant, stemIndex(steps)).flatMap(at => steps[at - 1] ?? [])
    const early = all.find(step => step.number < number && does(step))
    if (early === undefined || isOfOwn(text, early, steps[number - 1])) continue
    const after = all.filter(step => step.number >= number && does(step))
    if (after.length === 0 || (isOnSame(text, early) && !after.some(step => isOnSame(text, step)))) return early
  }
  return undefined
}

const LOCKED = /\b(?:pad)?lock(?:ed)?\b|\bisolat/i

/** @returns a short name of a step for messages. */
export const quote = (mark: Mark): string => `"${shorten(mark.text.trim().replace(/[.!]$/, ''), 60)}"`
