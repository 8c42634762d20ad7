'use client'

import dynamic from 'next/dynamic'
import { type RefObject, useCallback, useMemo, useState } from 'react'
import type { FootageController, StripMark } from '@/components/footage/types'
import { Button } from '@/components/ui/Button'
import { snapToPause } from '@/lib/footage/pauses'
import type { Edit } from '@/lib/procedure/edit'
import { formatProblem } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import type { Sheet } from '@/lib/procedure/sheet'
import { toMilliseconds } from '@/lib/procedure/time'
import styles from './bench.module.css'
import { FootagePlace } from './FootagePlace'
import type { Playhead } from './playhead'
import type { useFootage } from './useFootage'
import type { Listening } from './useListening'

const FootagePlayer = dynamic(() => import('@/components/footage/FootagePlayer').then(module => module.FootagePlayer))
const SoundStrip = dynamic(() => import('@/components/footage/SoundStrip').then(module => module.SoundStrip))

/** Seconds within which an edge goes to a change of the picture. */
const NEAR = 0.4

const FootageDialog = dynamic(() => import('./FootageDialog').then(module => module.FootageDialog))

type Props = {
  readonly found: ReturnType<typeof useFootage>
  readonly listening: Listening
  readonly project: Project
  readonly sheet: Sheet
  readonly chosen: string | undefined
  readonly playhead: Playhead
  readonly controller: RefObject<FootageController | null>
  readonly onPerform: (...edits: Edit[]) => void
  readonly onChoose: (id: string | undefined) => void
}

const stripMarks = (marks: Project['marks'], steps: Sheet['steps']): readonly StripMark[] => {
  const numbers = new Map(steps.map(step => [step.mark.id, step.number]))
  return marks.map(({ id, kind, start, end, text, pencilled }) => {
    const number = numbers.get(id)
    const label = `${kind}${number === undefined ? '' : ` ${number}`}: ${text}`
    return { id, kind, start, end, label, isPencilled: pencilled !== undefined }
  })
}

/** The footage: picture, transport and sound strip; or the place to put it. */
export const FootagePane = ({
  found,
  listening,
  project,
  sheet,
  chosen,
  playhead,
  controller,
  onPerform,
  onChoose,
}: Props) => {
  const { footage } = project.recording
  const { state } = found
  const [media, setMedia] = useState<HTMLMediaElement | null>(null)
  const [problem, setProblem] = useState<string>()
  const [isMaking, setMaking] = useState(false)
  const [changes, setChanges] = useState<readonly number[]>([])
  const isOpen = state.is === 'open'
  const marks = useMemo(
    () => (isOpen ? stripMarks(project.marks, sheet.steps) : []),
    [isOpen, project.marks, sheet.steps],
  )
  const { speech } = listening
  const snap = useCallback(
    (seconds: number) => {
      const change = changes.find(at => Math.abs(at - seconds) < NEAR)
      return change ?? snapToPause(seconds, speech)
    },
    [speech, changes],
  )

  if (state.is !== 'open') return <FootagePlace footage={footage} found={found} />
  const { file } = state
  return (
    <div className={styles.footage}>
      <FootagePlayer
        file={file}
        name={file.name}
        hasPicture={state.opened.hasVideo}
        {...(state.opened.picture === null ? {} : { frameRate: state.opened.picture.frameRate })}
        controller={controller}
        onTime={playhead.set}
        onReady={ready => setMedia(ready.media)}
        onProblem={said => setProblem(formatProblem(said))}
      >
        <Button onClick={() => setMaking(true)}>Clips…</Button>
      </FootagePlayer>
      <SoundStrip
        media={media}
        peaks={listening.peaks}
        seconds={state.opened.seconds}
        speech={listening.speech}
        shots={changes}
        marks={marks}
        {...(chosen === undefined ? {} : { chosen })}
        onChoose={onChoose}
        onEdge={(mark, side, seconds) =>
          onPerform({ do: 'change-mark', id: mark, to: { [side]: toMilliseconds(seconds) } })
        }
        onSeek={seconds => controller.current?.seek(seconds)}
        snap={snap}
      />
      {listening.running !== undefined && (
        <p className={styles.progress}>
          {listening.running} <Button onClick={listening.stop}>Stop listening</Button>
        </p>
      )}
      {listening.problem !== undefined && (
        <p role="alert" className={styles.progress}>
          {listening.problem} <Button onClick={listening.again}>Listen again</Button>
        </p>
      )}
      {isMaking && (
        <FootageDialog
          opened={state.opened}
          project={project}
          sheet={sheet}
          chosen={chosen}
          changes={changes}
          onChanges={setChanges}
          onClose={() => setMaking(false)}
        />
      )}
      {problem !== undefined && (
        <p role="alert" className={styles.progress}>
          {problem}
        </p>
      )}
      {state.opened.notices.length > 0 && (
        <p className={styles.progress}>{state.opened.notices.map(formatProblem).join(' ')}</p>
      )}
    </div>
  )
}
