import type { Mark } from '@/lib/procedure/mark'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import type { Hazard } from '@/lib/trade/hazard'
import { HAZARDS } from '@/lib/trade/hazards'
import { onceFor, onceForText } from './memo'

/** A hazard and the steps that bring it, with every caution that speaks of it. */
export type Presence = {
  readonly hazard: Hazard
  /** The first step that signals it, or, where none does, that hints at it. */
  readonly step: SheetStep
  /** Whether that step signals it in so many words, so that a caution has to come by then. */
  readonly isPlain: boolean
  /** The last step that signals or hints at it: a caution after that one is late in any case. */
  readonly last: SheetStep
  /** Cautions against it, with the number of the step they stand before (0: at the front). */
  readonly cautions: readonly { readonly mark: Mark; readonly number: number }[]
  /** Whether something worn, set up or listed answers it, and from which step on (0: listed). */
  readonly protectedFrom: number | undefined
}

const matching = (text: string, of: (hazard: Hazard) => RegExp | undefined): readonly Hazard[] =>
  HAZARDS.filter(hazard => of(hazard)?.test(text) === true && hazard.not?.test(text) !== true)

/** @returns the hazards that a text signals, equipment left aside. */
export const hazardsIn = onceForText((text: string): readonly Hazard[] => matching(text, ({ signals }) => signals))

/** @returns those it hints at. */
const hintsIn = onceForText((text: string): readonly Hazard[] =>
  HAZARDS.filter(({ hints }) => hints?.test(text) === true),
)

const knownOf = onceForText(
  (text: string): ReadonlySet<string> => new Set(HAZARDS.filter(({ known }) => known.test(text)).map(({ id }) => id)),
)

/** A caution's `hazard` field in kebab case. */
const fieldOf = onceFor(({ hazard }: Mark): string | undefined =>
  hazard
    ?.trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/g, '-'),
)

/** @returns whether a caution speaks of a hazard, by its field or its words. */
export const isAgainst = (caution: Mark, { id, alias }: Hazard): boolean => {
  const field = fieldOf(caution)
  return field === id || (field !== undefined && alias.includes(field)) || knownOf(caution.text).has(id)
}

const protectedBy = onceForText(
  (text: string): ReadonlySet<Hazard> => new Set(HAZARDS.filter(({ protection }) => protection?.test(text) === true)),
)

const protects = (hazard: Hazard, text: string): boolean => protectedBy(text).has(hazard)

const equipmentOf = ({ heading }: Sheet): string => `${heading.title} ${heading.equipment}`

const isHere = (hazard: Hazard, sheet: Sheet): boolean =>
  hazard.equipment === undefined || hazard.equipment.test(equipmentOf(sheet))

type Seen = { plain?: SheetStep; hinted?: SheetStep; last: SheetStep }

const seenIn = (sheet: Sheet): ReadonlyMap<Hazard, Seen> => {
  const all = new Map<Hazard, Seen>()
  const machine = equipmentOf(sheet)
  const note = (hazard: Hazard, step: SheetStep, key: 'plain' | 'hinted') => {
    const seen = all.get(hazard) ?? { last: step }
    all.set(hazard, seen)
    seen[key] ??= step
    seen.last = step
  }
  for (const step of sheet.steps)
    for (const { text } of [step.mark, ...step.tools, ...step.materials, ...step.checks]) {
      for (const hazard of hazardsIn(text)) if (isHere(hazard, sheet)) note(hazard, step, 'plain')
      for (const hazard of hintsIn(text)) if (hazard.hintsIn?.test(machine) !== false) note(hazard, step, 'hinted')
    }
  return all
}

/** @returns hazards in the order of the steps that bring them, each once. */
export const presences = onceFor((sheet: Sheet): readonly Presence[] => {
  const placed = [
    ...sheet.loose.filter(({ kind }) => kind === 'caution').map(mark => ({ mark, number: 0 })),
    ...sheet.steps.flatMap(({ cautions, number }) => cautions.map(mark => ({ mark, number }))),
  ]
  return [...seenIn(sheet)].map(([hazard, { plain, hinted, last }]) => ({
    hazard,
    step: plain ?? hinted ?? last,
    isPlain: plain !== undefined,
    last,
    cautions: placed.filter(({ mark }) => isAgainst(mark, hazard)),
    protectedFrom: protectedFrom(sheet, hazard),
  }))
})

const protectedFrom = (sheet: Sheet, hazard: Hazard): number | undefined => {
  if (hazard.protection === undefined) return undefined
  const step = sheet.steps.find(
    ({ mark, checks }) => protects(hazard, mark.text) || checks.some(({ text }) => protects(hazard, text)),
  )
  if (step !== undefined) return step.number
  return sheet.tools.some(({ text }) => protects(hazard, text)) ? 0 : undefined
}
