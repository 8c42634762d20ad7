'use client'

import { useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { Dialog } from '@/components/ui/Dialog'
import { FileInput } from '@/components/ui/FileInput'
import type { Project } from '@/lib/procedure/project'
import type { Since } from '@/lib/publish/since'
import styles from './bench.module.css'
import { fileNameOf, saveFile } from './saving'
import { readSheetFile } from './sheet-file'

type Told = Since & { readonly words: string; readonly markdown: string }

type Props = { readonly project: Project; readonly onClose: () => void }

/** What changed since a sheet of an earlier revision: told as a list, to be handed on with the new one. */
export const SinceDialog = ({ project, onClose }: Props) => {
  const input = useRef<HTMLInputElement>(null)
  const [told, setTold] = useState<Told>()
  const [problem, setProblem] = useState<string>()
  const take = async (file: File | undefined) => {
    if (file === undefined) return
    setProblem(undefined)
    setTold(undefined)
    const sheet = await readSheetFile(file, async (read): Promise<Told> => {
      const { changesSince, sinceWords, toSinceMarkdown } = await import('@/lib/publish/since')
      const since = changesSince(project, read)
      return { ...since, words: sinceWords(since.revision), markdown: toSinceMarkdown(project, since) }
    })
    if (!sheet.ok) return setProblem(sheet.why)
    setTold(sheet.value)
  }
  const name = `${fileNameOf(project.procedure.title)}.changes.md`
  return (
    <Dialog title="What changed since an earlier sheet" onClose={onClose} wide>
      <p>Choose the sheet (Markdown) of an earlier revision, such as the one in its packet.</p>
      <p>
        <Button look={told === undefined ? 'main' : 'plain'} onClick={() => input.current?.click()}>
          Choose the earlier sheet
        </Button>
        <FileInput ref={input} label="File of the earlier sheet" onFiles={([file]) => void take(file)} />
      </p>
      {problem !== undefined && <p role="alert">{problem}</p>}
      {told !== undefined && (
        <>
          {told.doubt !== undefined && (
            <p role="note" className={styles.stops}>
              {told.doubt}
            </p>
          )}
          <p role="status">
            {told.changes.length === 0 ? `Nothing changed ${told.words}.` : `What changed ${told.words}:`}
          </p>
          <ul className={styles.changes}>
            {told.changes.map((change, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two changes may read alike; the list never changes in place
              <li key={i}>{change}</li>
            ))}
          </ul>
          {told.unread.length > 0 && (
            <p role="note" className={styles.stops}>
              Lines of that sheet were not understood and are not compared:{' '}
              {told.unread.map(({ line }) => line).join(', ')}.
            </p>
          )}
          {told.changes.length > 0 && (
            <Button look="main" onClick={() => void saveFile(name, told.markdown, 'text/markdown')}>
              Save this list
            </Button>
          )}
        </>
      )}
    </Dialog>
  )
}
