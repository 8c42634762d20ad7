'use client'

import { useEffect, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { Dialog } from '@/components/ui/Dialog'
import type { OpenFootage } from '@/lib/footage/open'
import { countOf } from '@/lib/procedure/count'
import { formatProblem } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import type { Sheet } from '@/lib/procedure/sheet'
import { formatTime } from '@/lib/procedure/time'
import styles from './bench.module.css'
import { ClipsSection } from './ClipsSection'
import { CopySection } from './CopySection'

type Props = {
  readonly opened: OpenFootage
  readonly project: Project
  readonly sheet: Sheet
  readonly chosen: string | undefined
  readonly changes: readonly number[]
  readonly onChanges: (changes: readonly number[]) => void
  readonly onClose: () => void
}

const Changes = ({ opened, changes, onChanges }: Pick<Props, 'opened' | 'changes' | 'onChanges'>) => {
  const [done, setDone] = useState<number>()
  const [said, setSaid] = useState<string>()
  const control = useRef<AbortController>(undefined)
  useEffect(() => () => control.current?.abort(), [])
  const look = async () => {
    const abort = new AbortController()
    control.current = abort
    setDone(0)
    setSaid(undefined)
    try {
      const { findPictureChanges } = await import('@/lib/footage/small-frames')
      const found = await findPictureChanges(opened, { signal: abort.signal, onProgress: setDone })
      if (found.ok) onChanges(found.value.map(change => change.time))
      setSaid(
        found.ok
          ? `${countOf(found.value.length, 'change was', 'changes were')} found.`
          : found.problems.map(formatProblem).join(' '),
      )
    } catch (error) {
      setSaid(abort.signal.aborted ? 'Stopped.' : error instanceof Error ? error.message : String(error))
    } finally {
      setDone(undefined)
    }
  }
  return (
    <section className={styles.times}>
      <h3>Changes of the picture</h3>
      <p>Found by measuring, shown on the sound strip, and edges of marks snap to them.</p>
      {changes.length > 0 && <p>{changes.map(formatTime).join(', ')}</p>}
      {done === undefined ? (
        <Button onClick={() => void look()}>Look for changes</Button>
      ) : (
        <p className={styles.progress}>
          <progress value={done} max={opened.seconds} aria-label="Looking for changes" />
          {formatTime(done)} of {formatTime(opened.seconds)}
          <Button onClick={() => control.current?.abort(new DOMException('stopped', 'AbortError'))}>Stop</Button>
        </p>
      )}
      {said !== undefined && <p role="status">{said}</p>}
    </section>
  )
}

const factsOf = ({ container, picture, sound, bytes, seconds, ways }: OpenFootage): readonly string[] => [
  `${container}, ${formatTime(seconds)}, ${(bytes / 1e6).toFixed(1)} MB`,
  picture === null
    ? 'no picture'
    : `picture ${picture.codec}, ${picture.width} × ${picture.height}, ${picture.frameRate} frames a second, decoded by ${ways.picture === 'none' ? 'nothing here' : ways.picture}`,
  sound === null
    ? 'no sound'
    : `sound ${sound.codec}, ${countOf(sound.channels, 'channel')}, decoded by ${ways.sound === 'none' ? 'nothing here' : ways.sound}`,
]

/** What can be made from the footage: clips, a copy with texts inside; and what is known of it. */
export const FootageDialog = ({ opened, project, sheet, chosen, changes, onChanges, onClose }: Props) => (
  <Dialog title="From the footage" onClose={onClose}>
    <p className={styles.quiet}>{factsOf(opened).join('; ')}</p>
    <ClipsSection opened={opened} sheet={sheet} chosen={chosen} />
    <CopySection opened={opened} project={project} sheet={sheet} />
    {opened.hasVideo && <Changes opened={opened} changes={changes} onChanges={onChanges} />}
  </Dialog>
)
