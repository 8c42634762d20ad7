import type { Mark } from '@/lib/procedure/mark'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import { HAZARDS, type Hazard } from '@/lib/trade/hazards'
import { onceFor, onceForText } from './memo'

/** A hazard and the first step that brings it, with every caution that speaks of it. */
export type Presence = {
  readonly hazard: Hazard
  readonly step: SheetStep
  /** Cautions against it, with the number of the step they stand before (0: at the front). */
  readonly cautions: readonly { readonly mark: Mark; readonly number: number }[]
  /** Whether something worn, set up or listed answers it, and from which step on (0: listed). */
  readonly protectedFrom: number | undefined
}

/** @returns the hazards that a text signals, equipment left aside. */
export const hazardsIn = onceForText((text: string): readonly Hazard[] =>
  HAZARDS.filter(({ signals, not }) => signals.test(text) && not?.test(text) !== true),
)

const knownOf = onceForText(
  (text: string): ReadonlySet<string> => new Set(HAZARDS.filter(({ known }) => known.test(text)).map(({ id }) => id)),
)

/** @returns whether a caution speaks of a hazard, by its field or its words. */
export const isAgainst = (caution: Mark, { id, alias }: Hazard): boolean => {
  const field = caution.hazard
    ?.trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/g, '-')
  return field === id || (field !== undefined && alias.includes(field)) || knownOf(caution.text).has(id)
}

const protects = (hazard: Hazard, text: string): boolean => hazard.protection?.test(text) === true

const equipmentOf = ({ heading }: Sheet): string => `${heading.title} ${heading.equipment}`

const isHere = (hazard: Hazard, sheet: Sheet): boolean =>
  hazard.equipment === undefined || hazard.equipment.test(equipmentOf(sheet))

/** @returns hazards in the order of the steps that bring them, each once. */
export const presences = onceFor((sheet: Sheet): readonly Presence[] => {
  const first = new Map<Hazard, SheetStep>()
  for (const step of sheet.steps) {
    const texts = [step.mark, ...step.tools, ...step.materials, ...step.checks].map(({ text }) => text)
    for (const text of texts)
      for (const hazard of hazardsIn(text)) if (!first.has(hazard) && isHere(hazard, sheet)) first.set(hazard, step)
  }
  const placed = [
    ...sheet.loose.filter(({ kind }) => kind === 'caution').map(mark => ({ mark, number: 0 })),
    ...sheet.steps.flatMap(({ cautions, number }) => cautions.map(mark => ({ mark, number }))),
  ]
  return [...first].map(([hazard, step]) => ({
    hazard,
    step,
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
