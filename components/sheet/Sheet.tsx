'use client'

import { memo, type ReactNode, useMemo, useState } from 'react'
import { FindingNote } from '@/components/findings/FindingNote'
import { Button } from '@/components/ui/Button'
import { Signal } from '@/components/ui/Signal'
import type { Mark } from '@/lib/procedure/mark'
import type { Sheet as SheetData, SheetStep } from '@/lib/procedure/sheet'
import type { Finding } from '@/lib/review/rule'
import type { SheetActions } from './actions'
import { HeadingFields } from './HeadingFields'
import { SheetItem } from './SheetItem'
import styles from './sheet.module.css'

type Props = {
  readonly sheet: SheetData
  readonly findings: readonly Finding[]
  readonly chosen: string | undefined
  readonly chosenFinding: Finding | undefined
  readonly actions: SheetActions
}

const NONE: readonly Finding[] = []

/** Findings by the mark they are about. */
const byMark = (findings: readonly Finding[]): ReadonlyMap<string, readonly Finding[]> => {
  const map = new Map<string, Finding[]>()
  for (const finding of findings) {
    if (finding.place.at !== 'mark') continue
    const list = map.get(finding.place.mark)
    if (list === undefined) map.set(finding.place.mark, [finding])
    else list.push(finding)
  }
  return map
}

const intervalWords = ({ interval }: SheetData['heading']): string => {
  const parts = [
    interval?.hours === undefined ? undefined : `every ${interval.hours} hours`,
    interval?.months === undefined ? undefined : `every ${interval.months} months`,
  ].filter(part => part !== undefined)
  return parts.length === 2 ? `${parts.join(' or ')}, whichever comes first` : parts.join('')
}

const Head = memo(
  ({ heading, actions }: { readonly heading: SheetData['heading']; readonly actions: SheetActions }) => {
    const [isOpen, setOpen] = useState(false)
    const rows = [
      ['Equipment', heading.equipment],
      ['Due', intervalWords(heading)],
      ['Revision', heading.revision],
      ['Author', heading.author],
      ['Scope', heading.scope],
    ].filter(([, value]) => value !== '')
    return (
      <header className={styles.head}>
        <div className={styles.headRow}>
          <h2>{heading.title === '' ? 'Sheet without a title' : heading.title}</h2>
          <Button look="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            {isOpen ? 'Close the head' : 'Write the head'}
          </Button>
        </div>
        {rows.length > 0 && (
          <dl className={styles.facts}>
            {rows.map(([name, value]) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        )}
        {isOpen && <HeadingFields heading={heading} actions={actions} onDone={() => setOpen(false)} />}
      </header>
    )
  },
)

type ItemsProps = Pick<Props, 'chosen' | 'chosenFinding' | 'actions'> & {
  readonly findings: ReadonlyMap<string, readonly Finding[]>
  readonly steps: readonly Mark[]
}

const Items = ({
  marks,
  findings,
  chosen,
  chosenFinding,
  ...rest
}: ItemsProps & { readonly marks: readonly Mark[] }) => (
  <>
    {marks.map(mark => {
      const own = findings.get(mark.id) ?? NONE
      return (
        <SheetItem
          key={mark.id}
          mark={mark}
          isChosen={mark.id === chosen}
          findings={own}
          chosenFinding={chosenFinding !== undefined && own.includes(chosenFinding) ? chosenFinding : undefined}
          {...rest}
        />
      )
    })}
  </>
)

const Step = ({ step, ...rest }: ItemsProps & { readonly step: SheetStep }) => {
  const { findings, chosen, chosenFinding, steps, actions } = rest
  const own = findings.get(step.mark.id) ?? NONE
  return (
    <li className={styles.step}>
      <Items marks={step.cautions} {...rest} />
      <SheetItem
        mark={step.mark}
        number={step.number}
        isChosen={step.mark.id === chosen}
        findings={own}
        chosenFinding={chosenFinding !== undefined && own.includes(chosenFinding) ? chosenFinding : undefined}
        steps={steps}
        actions={actions}
      />
      <div className={styles.below}>
        <Items marks={step.specs} {...rest} />
        <Items marks={step.checks} {...rest} />
        <Items marks={step.reasons} {...rest} />
      </div>
    </li>
  )
}

const Section = ({ title, children }: { readonly title: string; readonly children: ReactNode }) => (
  <section className={styles.section}>
    <h3>{title}</h3>
    {children}
  </section>
)

/** The procedure as it will be printed, live, with its findings in the margin. */
export const Sheet = ({ sheet, findings, chosen, chosenFinding, actions }: Props) => {
  const marked = useMemo(() => byMark(findings), [findings])
  const steps = useMemo(() => sheet.steps.map(step => step.mark), [sheet])
  const rest = findings.filter(finding => finding.place.at !== 'mark')
  const shared: ItemsProps = { findings: marked, chosen, chosenFinding, steps, actions }
  const isEmpty = sheet.steps.length === 0 && sheet.loose.length === 0
  const loose = sheet.loose.filter(mark => mark.kind !== 'tool' && mark.kind !== 'material')
  return (
    <article className={styles.sheet} aria-label="The sheet">
      <Head heading={sheet.heading} actions={actions} />
      {rest.length > 0 && !isEmpty && (
        <section className={styles.whole} aria-label="Findings about the whole">
          {rest.map(finding => (
            <FindingNote
              key={finding.rule + finding.message}
              finding={finding}
              isChosen={finding === chosenFinding}
              onPerform={actions.perform}
            />
          ))}
        </section>
      )}
      {isEmpty && (
        <p className={styles.empty}>
          Nothing is marked yet. Hold on to words in the talk and press a kind's key: <kbd>S</kbd> step, <kbd>C</kbd>{' '}
          caution, <kbd>Q</kbd> spec, <kbd>T</kbd> tool, <kbd>M</kbd> material, <kbd>E</kbd> check, <kbd>R</kbd> reason,{' '}
          <kbd>Y</kbd> symptom.
        </p>
      )}
      {sheet.safety.length > 0 && (
        <Section title="Safety first">
          <ul className={styles.summary}>
            {sheet.safety.map(mark => (
              <li key={mark.id}>
                <Signal level={mark.level ?? 'caution'} /> {mark.text}
              </li>
            ))}
          </ul>
        </Section>
      )}
      {sheet.tools.length > 0 && (
        <Section title="Tools">
          <Items marks={sheet.tools} {...shared} />
        </Section>
      )}
      {sheet.materials.length > 0 && (
        <Section title="Materials">
          <Items marks={sheet.materials} {...shared} />
        </Section>
      )}
      {loose.length > 0 && (
        <Section title="Not yet at a step">
          <Items marks={loose} {...shared} />
        </Section>
      )}
      {sheet.steps.length > 0 && (
        <Section title="Steps">
          <ol className={styles.steps}>
            {sheet.steps.map(step => (
              <Step key={step.mark.id} step={step} {...shared} />
            ))}
          </ol>
        </Section>
      )}
      {sheet.steps.length > 0 && sheet.symptoms.length > 0 && (
        <Section title="Signs and what they mean">
          <Items marks={sheet.symptoms} {...shared} />
        </Section>
      )}
      {sheet.heading.references.length > 0 && (
        <Section title="References">
          <ul className={styles.plain}>
            {sheet.heading.references.map(({ title, part }) => (
              <li key={title + part}>
                {title}
                {part === '' ? '' : `, ${part}`}
              </li>
            ))}
          </ul>
        </Section>
      )}
      <p className={styles.closing}>
        The maker's service manual, local codes and licensed practice come before this sheet. Stop where they say
        otherwise.
      </p>
    </article>
  )
}
