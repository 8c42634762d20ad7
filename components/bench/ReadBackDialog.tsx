'use client'

import { useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { Dialog } from '@/components/ui/Dialog'
import { FileInput } from '@/components/ui/FileInput'
import { countOf } from '@/lib/procedure/count'
import type { Edit } from '@/lib/procedure/edit'
import type { Project } from '@/lib/procedure/project'
import { shorten } from '@/lib/procedure/shorten'
import type { Comparison } from '@/lib/publish/compare'
import styles from './bench.module.css'
import { readSheetFile } from './sheet-file'

/** Longest piece shown of what was not understood, characters: to find the place. */
const LONGEST_QUOTE = 160

type Props = { readonly project: Project; readonly onPerform: (...edits: Edit[]) => void; readonly onClose: () => void }

/** A sheet that was edited by hand: what changed, each to be kept or left. */
export const ReadBackDialog = ({ project, onPerform, onClose }: Props) => {
  const input = useRef<HTMLInputElement>(null)
  const [comparison, setComparison] = useState<Comparison>()
  const [left, setLeft] = useState<ReadonlySet<number>>(new Set())
  const [problem, setProblem] = useState<string>()
  const [notices, setNotices] = useState<readonly string[]>([])
  const take = async (file: File | undefined) => {
    if (file === undefined) return
    setProblem(undefined)
    setComparison(undefined)
    const sheet = await readSheetFile(file, async read => {
      const { compareSheet } = await import('@/lib/publish/compare')
      return compareSheet(project, read)
    })
    if (!sheet.ok) return setProblem(sheet.why)
    setNotices(sheet.notices)
    setComparison(sheet.value)
    setLeft(new Set(sheet.value.changes.flatMap(({ doubt }, i) => (doubt === undefined ? [] : [i]))))
  }
  const toggle = (index: number) => {
    const next = new Set(left)
    if (!next.delete(index)) next.add(index)
    setLeft(next)
  }
  const doubts = [...new Set(comparison?.changes.flatMap(({ doubt }) => doubt ?? []))]
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
          {notices.map(notice => (
            <p key={notice} role="note" className={styles.stops}>
              {notice}
            </p>
          ))}
          {comparison.changes.length === 0 && (
            <p role="status">
              {comparison.unread.length === 0
                ? 'Nothing in it differs from this recording.'
                : 'Nothing that was understood differs from this recording.'}
            </p>
          )}
          {doubts.map(doubt => (
            <p key={doubt} role="note" className={styles.stops}>
              {doubt} Such changes are taken over only where you tick them.
            </p>
          ))}
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
              <h3>Not understood, left as it is in the recording</h3>
              <ul className={styles.changes}>
                {comparison.unread.map(({ line, text, why }) => (
                  <li key={`${line} ${text} ${why}`}>
                    <small>line {line}</small> <q>{shorten(text.replace(/\s+/g, ' '), LONGEST_QUOTE)}</q>: {why}.
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
