'use client'

import { memo, type ReactNode, useMemo, useRef } from 'react'
import { FindingNote } from '@/components/findings/FindingNote'
import { Signal } from '@/components/ui/Signal'
import type { Sheet as SheetData } from '@/lib/procedure/sheet'
import type { Finding } from '@/lib/review/rule'
import type { SheetActions } from './actions'
import { SheetHead } from './SheetHead'
import { Items, type Showing, Steps } from './SheetSteps'
import styles from './sheet.module.css'
import { Things } from './Things'
import { thingsOf } from './thing'

type Props = {
  readonly sheet: SheetData
  readonly findings: readonly Finding[]
  readonly chosen: string | undefined
  readonly chosenFinding: Finding | undefined
  readonly actions: SheetActions
}

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

/** Findings by mark; the list of a mark stays the same one while a new review finds the same there. */
const useByMark = (findings: readonly Finding[]): ReadonlyMap<string, readonly Finding[]> => {
  const last = useRef<ReadonlyMap<string, readonly Finding[]>>(new Map())
  return useMemo(() => {
    const now = [...byMark(findings)].map(([mark, list]): [string, readonly Finding[]] => {
      const before = last.current.get(mark)
      const isSame = before?.length === list.length && list.every((finding, i) => finding === before[i])
      return [mark, isSame ? before : list]
    })
    last.current = new Map(now)
    return last.current
  }, [findings])
}

/** Findings about the talk that the sheet's head shows; the others stand in the talk's margin, where they are about. */
const FROM_TALK = 3

const headFindings = (findings: readonly Finding[], chosen: Finding | undefined) => {
  const ofTalk = findings.filter(finding => finding.place.at === 'talk')
  const shown = new Set([...ofTalk.slice(0, FROM_TALK), ...(chosen === undefined ? [] : [chosen])])
  const rest = findings.filter(
    finding => finding.place.at !== 'mark' && (finding.place.at !== 'talk' || shown.has(finding)),
  )
  return { rest, more: ofTalk.filter(finding => !shown.has(finding)).length }
}

const Section = ({ title, children }: { readonly title: string; readonly children: ReactNode }) => (
  <section className={styles.section}>
    <h3>{title}</h3>
    {children}
  </section>
)

/** The procedure as it will be printed, live, with its findings in the margin. */
export const Sheet = memo(({ sheet, findings, chosen, chosenFinding, actions }: Props) => {
  const marked = useByMark(findings)
  const tools = useMemo(() => thingsOf(sheet, 'tool'), [sheet])
  const materials = useMemo(() => thingsOf(sheet, 'material'), [sheet])
  const steps = useMemo(() => sheet.steps.map(step => step.mark), [sheet])
  const { rest, more } = useMemo(() => headFindings(findings, chosenFinding), [findings, chosenFinding])
  const showing: Showing = { findings: marked, chosen, chosenFinding, steps, actions }
  const isEmpty = sheet.steps.length === 0 && sheet.loose.length === 0
  const loose = sheet.loose.filter(mark => mark.kind !== 'tool' && mark.kind !== 'material')
  return (
    <article className={styles.sheet} data-findings={marked.size > 0} aria-label="The sheet">
      <SheetHead heading={sheet.heading} actions={actions} />
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
          {more > 0 && (
            <p className={styles.said}>
              {more} more about the talk stand in its margin, each with a question mark; F walks through them.
            </p>
          )}
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
                <Signal level={mark.level ?? 'caution'} /> <bdi>{mark.text}</bdi>
                {mark.pencilled !== undefined && <i className={styles.flag}> pencilled</i>}
              </li>
            ))}
          </ul>
        </Section>
      )}
      {sheet.tools.length > 0 && (
        <Section title="Tools">
          <Things things={tools} showing={showing} />
        </Section>
      )}
      {sheet.materials.length > 0 && (
        <Section title="Materials">
          <Things things={materials} showing={showing} />
        </Section>
      )}
      {loose.length > 0 && (
        <Section title="Not yet at a step">
          <Items marks={loose} showing={showing} />
        </Section>
      )}
      {sheet.steps.length > 0 && (
        <Section title="Steps">
          <Steps steps={sheet.steps} showing={showing} />
        </Section>
      )}
      {sheet.steps.length > 0 && sheet.symptoms.length > 0 && (
        <Section title="Signs and what they mean">
          <Items marks={sheet.symptoms} showing={showing} />
        </Section>
      )}
      {sheet.heading.references.length > 0 && (
        <Section title="References">
          <ul className={styles.plain}>
            {sheet.heading.references.map(({ title, part }) => (
              <li key={title + part} dir="auto">
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
})
