'use client'

import { memo, useMemo } from 'react'
import { useGrowing } from '@/components/ui/useGrowing'
import type { Mark } from '@/lib/procedure/mark'
import type { SheetStep } from '@/lib/procedure/sheet'
import type { Finding } from '@/lib/review/rule'
import type { SheetActions } from './actions'
import { SheetItem } from './SheetItem'
import styles from './sheet.module.css'

/** What every part of the sheet is shown with. */
export type Showing = {
  /** Findings by the mark they are about. */
  readonly findings: ReadonlyMap<string, readonly Finding[]>
  /** Id of the chosen mark. */
  readonly chosen: string | undefined
  readonly chosenFinding: Finding | undefined
  readonly steps: readonly Mark[]
  readonly actions: SheetActions
}

const NONE: readonly Finding[] = []
/** Only the fields of the chosen mark list the steps: others stay undrawn when one of them changes. */
const NO_STEPS: readonly Mark[] = []

type ItemProps = { readonly mark: Mark; readonly number?: number; readonly showing: Showing }

/** One mark on the sheet, with what concerns it alone: so that others stay undrawn when it changes. */
export const Item = ({ mark, number, showing }: ItemProps) => {
  const { findings, chosen, chosenFinding, steps, actions } = showing
  const own = findings.get(mark.id) ?? NONE
  const isChosen = mark.id === chosen
  return (
    <SheetItem
      mark={mark}
      {...(number === undefined ? {} : { number })}
      isChosen={isChosen}
      findings={own}
      chosenFinding={chosenFinding !== undefined && own.includes(chosenFinding) ? chosenFinding : undefined}
      steps={isChosen ? steps : NO_STEPS}
      actions={actions}
    />
  )
}

export const Items = ({ marks, showing }: { readonly marks: readonly Mark[]; readonly showing: Showing }) => (
  <>
    {marks.map(mark => (
      <Item key={mark.id} mark={mark} showing={showing} />
    ))}
  </>
)

/** The marks shown at a step. */
const marksAt = (step: SheetStep): readonly Mark[] => [
  step.mark,
  ...step.cautions,
  ...step.specs,
  ...step.checks,
  ...step.reasons,
]

const sameMarks = (a: readonly Mark[], b: readonly Mark[]): boolean =>
  a === b || (a.length === b.length && a.every((mark, i) => mark === b[i]))

const sameStep = (a: SheetStep, b: SheetStep): boolean =>
  a === b ||
  (a.number === b.number &&
    a.mark === b.mark &&
    sameMarks(a.cautions, b.cautions) &&
    sameMarks(a.specs, b.specs) &&
    sameMarks(a.checks, b.checks) &&
    sameMarks(a.reasons, b.reasons))

/** What of the showing is no matter of a step's own marks. */
const sameChoice = (a: Showing, b: Showing): boolean =>
  a.chosen === b.chosen && a.chosenFinding === b.chosenFinding && a.steps === b.steps && a.actions === b.actions

const sameFindings = (step: SheetStep, a: Showing['findings'], b: Showing['findings']): boolean =>
  a === b || marksAt(step).every(({ id }) => a.get(id) === b.get(id))

type StepProps = { readonly step: SheetStep } & Showing

/** A step: its cautions stand before it, what belongs to it below. */
const Step = memo(
  ({ step, ...showing }: StepProps) => (
    <li className={styles.step}>
      <Items marks={step.cautions} showing={showing} />
      <Item mark={step.mark} number={step.number} showing={showing} />
      <div className={styles.below}>
        <Items marks={step.specs} showing={showing} />
        <Items marks={step.checks} showing={showing} />
        <Items marks={step.reasons} showing={showing} />
      </div>
    </li>
  ),
  (a, b) => sameStep(a.step, b.step) && sameChoice(a, b) && sameFindings(a.step, a.findings, b.findings),
)

/** The showing of some marks: what is chosen elsewhere is no matter to them. */
const showingOf = (has: (id: string) => boolean, showing: Showing): Showing => {
  const { chosen, chosenFinding, steps } = showing
  const place = chosenFinding?.place
  const holdsChosen = chosen !== undefined && has(chosen)
  return {
    ...showing,
    chosen: holdsChosen ? chosen : undefined,
    chosenFinding: place?.at === 'mark' && has(place.mark) ? chosenFinding : undefined,
    steps: holdsChosen ? steps : NO_STEPS,
  }
}

type PortionProps = { readonly steps: readonly SheetStep[]; readonly showing: Showing }

/** Some steps on end, passed over as one where nothing in them changed. */
const Portion = memo(
  ({ steps, showing }: PortionProps) => (
    <>
      {steps.map(step => {
        const at = marksAt(step)
        return <Step key={step.mark.id} {...showingOf(id => at.some(mark => mark.id === id), showing)} step={step} />
      })}
    </>
  ),
  (a, b) =>
    sameChoice(a.showing, b.showing) &&
    (a.steps === b.steps ||
      (a.steps.length === b.steps.length &&
        a.steps.every((step, i) => {
          const other = b.steps[i]
          return other !== undefined && sameStep(step, other)
        }))) &&
    (a.showing.findings === b.showing.findings ||
      b.steps.every(step => sameFindings(step, a.showing.findings, b.showing.findings))),
)

/** Steps passed over as one, on average: few enough to draw at a key press, many enough that a talk of hours has few portions. */
const PORTION = 50

/** Whether a portion begins with a step: told by its id alone, so that a step more or less leaves all other portions as they are. */
const begins = ({ mark }: SheetStep): boolean => {
  let sum = 0
  for (const letter of mark.id) sum = (Math.imul(sum, 31) + letter.charCodeAt(0)) >>> 0
  return sum % PORTION === 0
}

const portionsOf = (steps: readonly SheetStep[]): readonly SheetStep[][] => {
  const portions: SheetStep[][] = []
  for (const step of steps) {
    const last = portions.at(-1)
    if (last === undefined || begins(step)) portions.push([step])
    else last.push(step)
  }
  return portions
}

/** Portions drawn at once. */
const AT_ONCE = 2

/** All steps. Drawn anew only where something at them changed: a talk of hours has thousands. */
export const Steps = ({ steps, showing }: PortionProps) => {
  const portions = useMemo(
    () => portionsOf(steps).map(own => ({ own, ids: new Set(own.flatMap(marksAt).map(({ id }) => id)) })),
    [steps],
  )
  const drawn = useGrowing(portions.length, AT_ONCE)
  return (
    <ol>
      {portions.slice(0, drawn).map(({ own, ids }, i) => (
        <Portion
          key={i === 0 ? 'first' : own[0]?.mark.id}
          steps={own}
          showing={showingOf(id => ids.has(id), showing)}
        />
      ))}
    </ol>
  )
}
