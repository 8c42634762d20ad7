'use client'

import { useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { Dialog } from '@/components/ui/Dialog'
import { FileInput } from '@/components/ui/FileInput'
import { countOf } from '@/lib/procedure/count'
import type { Edit } from '@/lib/procedure/edit'
import { formatProblem } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import type { Comparison } from '@/lib/publish/compare'
import styles from './bench.module.css'

type Props = { readonly project: Project; readonly onPerform: (...edits: Edit[]) => void; readonly onClose: () => void }

/** A sheet that was edited by hand: what changed, each to be kept or left. */
export const ReadBackDialog = ({ project, onPerform, onClose }: Props) => {
  const input = useRef<HTMLInputElement>(null)
  const [comparison, setComparison] = useState<Comparison>()
  const [left, setLeft] = useState<ReadonlySet<number>>(new Set())
  const [problem, setProblem] = useState<string>()
  const take = async (file: File | undefined) => {
    if (file === undefined) return
    setProblem(undefined)
    const [{ parseSheetMarkdown }, { compareSheet }] = await Promise.all([
      import('@/lib/publish/read-markdown'),
      import('@/lib/publish/compare'),
    ])
    const read = parseSheetMarkdown(await file.text())
    if (!read.ok) return setProblem(`${file.name}: ${read.problems.map(formatProblem).join(' ')}`)
    setComparison(compareSheet(project, read.value))
    setLeft(new Set())
  }
  const toggle = (index: number) => {
    const next = new Set(left)
    if (!next.delete(index)) next.add(index)
    setLeft(next)
  }
  const kept = comparison?.changes.filter((_, i) => !left.has(i)) ?? []
  return (
    <Dialog title="Read an edited sheet back" onClose={onClose} wide>
      <p>Choose a sheet (Markdown) that was published from this recording and then edited by hand.</p>
      <p>
        <Button look={comparison === undefined ? 'main' : 'plain'} onClick={() => input.current?.click()}>
          Choose the edited sheet
        </Button>
        <FileInput ref={input} label="File of the edited sheet" onFiles={([file]) => void take(file)} />
      </p>
      {problem !== undefined && <p role="alert">{problem}</p>}
      {comparison !== undefined && (
        <>
          {comparison.changes.length === 0 && <p>Nothing in it differs from this recording.</p>}
          <ul className={styles.changes}>
            {comparison.changes.map((change, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: changes have no other identity than their place
              <li key={i}>
                <label className={styles.tick}>
                  <input type="checkbox" checked={!left.has(i)} onChange={() => toggle(i)} />
                  <span>
                    {change.about} <small>line {change.line}</small>
                  </span>
                </label>
              </li>
            ))}
          </ul>
          {comparison.unread.length > 0 && (
            <section>
              <h3>Not understood, left out of the recording</h3>
              <ul className={styles.changes}>
                {comparison.unread.map(({ line, text }) => (
                  <li key={`${line} ${text}`}>
                    <small>line {line}</small> <q>{text}</q>
                  </li>
                ))}
              </ul>
            </section>
          )}
          {comparison.changes.length > 0 && (
            <Button
              look="main"
              disabled={kept.length === 0}
              onClick={() => {
                onPerform(...kept.map(change => change.edit))
                onClose()
              }}
            >
              Take over {kept.length} of {countOf(comparison.changes.length, 'change')}
            </Button>
          )}
        </>
      )}
    </Dialog>
  )
}
