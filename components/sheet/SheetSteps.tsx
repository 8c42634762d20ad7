'use client'

import { memo } from 'react'
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

type ItemProps = { readonly mark: Mark; readonly number?: number; readonly showing: Showing }

/** One mark on the sheet, with what concerns it alone: so that others stay undrawn when it changes. */
export const Item = ({ mark, number, showing }: ItemProps) => {
  const { findings, chosen, chosenFinding, steps, actions } = showing
  const own = findings.get(mark.id) ?? NONE
  return (
    <SheetItem
      mark={mark}
      {...(number === undefined ? {} : { number })}
      isChosen={mark.id === chosen}
      findings={own}
      chosenFinding={chosenFinding !== undefined && own.includes(chosenFinding) ? chosenFinding : undefined}
      steps={steps}
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

/** @returns whether a mark stands at a step. */
const isAt = (step: SheetStep, id: string | undefined): boolean =>
  id !== undefined &&
  [[step.mark], step.cautions, step.specs, step.checks, step.reasons].some(marks => marks.some(mark => mark.id === id))

type StepProps = { readonly step: SheetStep } & Showing

/** Drawn anew only when what is chosen comes to it or leaves it: a talk of hours has thousands. */
const PlainStep = memo(({ step, ...showing }: StepProps) => (
  <li className={styles.step}>
    <Items marks={step.cautions} showing={showing} />
    <Item mark={step.mark} number={step.number} showing={showing} />
    <div className={styles.below}>
      <Items marks={step.specs} showing={showing} />
      <Items marks={step.checks} showing={showing} />
      <Items marks={step.reasons} showing={showing} />
    </div>
  </li>
))

/** A step: its cautions stand before it, what belongs to it below. */
export const Step = ({ step, showing }: { readonly step: SheetStep; readonly showing: Showing }) => {
  const { chosen, chosenFinding } = showing
  const place = chosenFinding?.place
  return (
    <PlainStep
      {...showing}
      step={step}
      chosen={isAt(step, chosen) ? chosen : undefined}
      chosenFinding={place?.at === 'mark' && isAt(step, place.mark) ? chosenFinding : undefined}
    />
  )
}
