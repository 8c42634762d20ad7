'use client'

import { useState } from 'react'
import { Button } from '@/components/ui/Button'
import { countOf } from '@/lib/procedure/count'
import { applyEdit, type Edit } from '@/lib/procedure/edit'
import type { Project } from '@/lib/procedure/project'
import { nextRevision } from '@/lib/procedure/revision'
import type { PublishOptions } from '@/lib/publish/publication'
import { PUBLICATIONS } from '@/lib/publish/publications'
import styles from './bench.module.css'
import { saveFile } from './saving'

type Props = {
  readonly project: Project
  readonly options: PublishOptions
  /** How many stop findings are open: they prevent a release. */
  readonly stops: number
  /** Whether the clips that go into it are still being cut. */
  readonly isCutting: boolean
  readonly onPerform: (...edits: Edit[]) => void
  /** Goes to the first of the stop findings. */
  readonly onStop: () => void
}

/** Gives the sheet its next revision letter and saves it frozen: a packet whose manifest tells any later change. */
export const Release = ({ project, options, stops, isCutting, onPerform, onStop }: Props) => {
  const [problem, setProblem] = useState<string>()
  const [released, setReleased] = useState<string>()
  const revision = nextRevision(project.procedure.revision)
  const pencilled = project.marks.filter(mark => mark.pencilled !== undefined).length
  const why =
    stops > 0
      ? `${countOf(stops, 'stop finding prevents', 'stop findings prevent')} a release.`
      : pencilled > 0
        ? `${countOf(pencilled, 'mark is', 'marks are')} still pencilled: keep or drop ${pencilled === 1 ? 'it' : 'them'} first.`
        : isCutting
          ? 'The clips are being cut.'
          : undefined
  const release = async () => {
    const edit: Edit = { do: 'change-heading', to: { revision } }
    try {
      const packet = PUBLICATIONS.find(publication => publication.name === 'packet')
      const files = (await packet?.files(applyEdit(project, edit), options)) ?? []
      const [file] = files
      if (file === undefined) throw new Error('the packet is empty')
      const name = file.path.replace(/\.zip$/, `-${revision}.zip`)
      if (!(await saveFile(name, file.content as BlobPart, file.type))) return
      onPerform(edit)
      setProblem(undefined)
      setReleased(`Released as revision ${revision}: saved as ${name}.`)
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error))
    }
  }
  return (
    <div className={styles.release}>
      <Button disabled={why !== undefined || project.marks.length === 0} onClick={() => void release()}>
        Release as revision {revision}
      </Button>
      {released !== undefined && <p role="status">{released}</p>}
      <small>{problem ?? why ?? 'A packet with everything, frozen under its revision letter.'}</small>
      {stops > 0 && (
        <Button look="quiet" onClick={onStop}>
          {stops === 1 ? 'Go to it' : 'Go to the first'}
        </Button>
      )}
    </div>
  )
}
