'use client'

import { useEffect, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import type { Alignment } from '@/lib/footage/align'
import { alignFootage } from '@/lib/footage/align-footage'
import { hintsOf } from '@/lib/footage/hints'
import type { OpenFootage } from '@/lib/footage/open'
import type { Edit } from '@/lib/procedure/edit'
import { formatProblem } from '@/lib/procedure/problem'
import type { Sentence, Transcript } from '@/lib/procedure/recording'
import { formatTime, type Span } from '@/lib/procedure/time'
import { withFoundTimes } from '@/lib/transcript/aligned'
import { withRoughTimes } from '@/lib/transcript/rough'
import { toSentences } from '@/lib/transcript/sentence'
import styles from './bench.module.css'

type Props = {
  readonly transcript: Transcript
  readonly opened: OpenFootage | undefined
  readonly speech: readonly Span[]
  /** Listening to the sound is not done yet. */
  readonly isListening: boolean
  readonly hasMarks: boolean
  readonly onPerform: (...edits: Edit[]) => void
}

type State =
  | { readonly is: 'idle' }
  | { readonly is: 'running'; readonly share: number; readonly left: number | undefined }
  | { readonly is: 'done'; readonly alignment: Alignment; readonly sentences: readonly Sentence[] }
  | { readonly is: 'failed'; readonly why: string }

const whyNot = ({ opened, speech, isListening }: Props): string | undefined => {
  if (opened === undefined) return 'Open the footage first: the text is timed against its sound.'
  if (!opened.hasSound) return 'This footage has no sound, so the text can’t be timed against it.'
  if (isListening) return 'The sound is still being listened to; this can start when that is done.'
  return speech.length === 0 ? 'No speech was heard in this footage.' : undefined
}

const Parting = ({
  alignment,
  sentences,
}: {
  readonly alignment: Alignment
  readonly sentences: readonly Sentence[]
}) => {
  const missed = alignment.lines.filter(line => !line.isHeard)
  if (missed.length === 0 && alignment.unwritten.length === 0) return <p>Every sentence of the text was heard.</p>
  return (
    <ul className={styles.changes}>
      {missed.map(({ line, start }) => (
        <li key={`m${line}`}>
          not heard, about {formatTime(start)}: <q>{sentences[line]?.text}</q>
        </li>
      ))}
      {alignment.unwritten.map(({ start, end }) => (
        <li key={`u${start}`}>
          said from {formatTime(start)} to {formatTime(end)}, but not in the text
        </li>
      ))}
    </ul>
  )
}

/** Timing the text against the sound: a word at a time, with what parts text and talk; taken over by the user's hand. */
export const AlignSection = (props: Props) => {
  const { transcript, opened, speech, hasMarks, onPerform } = props
  const [state, setState] = useState<State>({ is: 'idle' })
  const control = useRef<AbortController>(undefined)
  useEffect(() => () => control.current?.abort(), [])
  const isUntimed = transcript.form === 'untimed'
  const why = whyNot(props)

  const start = async () => {
    if (opened === undefined) return
    const abort = new AbortController()
    control.current = abort
    setState({ is: 'running', share: 0, left: undefined })
    const sentences = toSentences(transcript)
    try {
      const texts = sentences.map(sentence => sentence.text)
      const onProgress = (share: number, left: number | undefined) => setState({ is: 'running', share, left })
      const found = await alignFootage(opened, texts, speech, {
        signal: abort.signal,
        hints: hintsOf(transcript, sentences),
        onProgress,
      })
      if (found.ok) setState({ is: 'done', alignment: found.value, sentences })
      else setState({ is: 'failed', why: found.problems.map(formatProblem).join(' ') })
    } catch (error) {
      if (!abort.signal.aborted) setState({ is: 'failed', why: error instanceof Error ? error.message : String(error) })
    }
  }
  const stop = () => {
    control.current?.abort(new DOMException('stopped', 'AbortError'))
    setState({ is: 'idle' })
  }

  return (
    <section className={styles.times}>
      <h3>Time the text against the sound</h3>
      <p>
        {isUntimed ? 'This text has no times yet. ' : ''}English speech is recognised on this machine and matched with
        the text, word by word.
        {hasMarks ? ' Marks keep their times.' : ''}
      </p>
      {why !== undefined && <p>{why}</p>}
      {state.is === 'running' && (
        <p className={styles.progress}>
          <progress value={state.share} max={1} aria-label="Timing the text" />
          {Math.round(state.share * 100)} %{state.left === undefined ? '' : `, about ${formatTime(state.left)} left`}
          <Button onClick={stop}>Stop</Button>
        </p>
      )}
      {state.is === 'failed' && <p role="alert">{state.why}</p>}
      {(state.is === 'idle' || state.is === 'failed') && (
        <div className={styles.dropRow}>
          <Button look="main" disabled={why !== undefined} onClick={() => void start()}>
            Time the text
          </Button>
          {isUntimed && (
            <Button onClick={() => onPerform({ do: 'set-transcript', transcript: withRoughTimes(transcript) })}>
              Give it rough times (150 words a minute)
            </Button>
          )}
        </div>
      )}
      {state.is === 'done' && (
        <>
          <Parting alignment={state.alignment} sentences={state.sentences} />
          <div className={styles.dropRow}>
            <Button
              look="main"
              onClick={() => {
                const timed = withFoundTimes(transcript, state.sentences, state.alignment)
                onPerform({ do: 'set-transcript', transcript: timed })
                setState({ is: 'idle' })
              }}
            >
              Take these times over
            </Button>
            <Button look="quiet" onClick={() => setState({ is: 'idle' })}>
              Leave the times as they were
            </Button>
          </div>
        </>
      )}
    </section>
  )
}
