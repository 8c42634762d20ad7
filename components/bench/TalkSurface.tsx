'use client'

import { useCallback, useMemo, useRef } from 'react'
import { correctionEdits, correctionWords } from '@/components/talk/correction'
import { Talk } from '@/components/talk/Talk'
import type { Edit } from '@/lib/procedure/edit'
import type { Kind } from '@/lib/procedure/kinds'
import type { Project } from '@/lib/procedure/project'
import type { Transcript } from '@/lib/procedure/recording'
import type { Finding } from '@/lib/review/rule'
import { type Talk as TalkText, type WordRange, wordsOfSpan } from '@/lib/transcript/talk'
import styles from './bench.module.css'
import { KindBar } from './KindBar'
import { PencilStrip } from './PencilStrip'
import type { Playhead } from './playhead'
import type { Reviewed } from './reviewing'
import { TranscriptPlace } from './TranscriptPlace'
import type { Drafting } from './useDrafting'

type Props = {
  readonly project: Project
  readonly talk: TalkText
  /** Whether the talk is set yet. */
  readonly isSet: boolean
  readonly reviewed: Reviewed
  readonly chosen: string | undefined
  readonly words: WordRange | undefined
  readonly playhead: Playhead
  readonly drafting: Drafting
  readonly onPerform: (...edits: Edit[]) => void
  readonly onChoose: (id: string | undefined) => void
  readonly onFinding: (finding: Finding) => void
  readonly onWords: (words: WordRange | undefined) => void
  readonly onKind: (kind: Kind) => void
  readonly onSeek: (seconds: number) => void
  readonly onNotice: (text: string) => void
  readonly onTimes: () => void
  readonly onTranscript: (transcript: Transcript, ...words: readonly string[]) => void
}

/** Ids of findings among those of marks in the talk's margin. */
const FINDING = 'finding:'

/** The talk with what is done to it: drafting, kinds, and what the marks leave over. */
export const TalkSurface = (props: Props) => {
  const { project, talk, reviewed, chosen, words, playhead, drafting, onPerform, onChoose, onFinding, onWords } = props
  const { transcript } = project.recording
  const { findings, coverage } = reviewed
  const doubts = useMemo(
    () =>
      findings.flatMap(({ place, level, message, waived }, i) =>
        place.at === 'talk' && waived === undefined
          ? [{ start: place.start, end: place.end, id: `${FINDING}${i}`, label: `${level}: ${message}` }]
          : [],
      ),
    [findings],
  )
  const now = useRef({ findings, onChoose, onFinding })
  now.current = { findings, onChoose, onFinding }
  // The same all the time, and of the newest review: paragraphs keep it while nothing in them changes.
  const pick = useCallback((id: string | undefined) => {
    const { findings, onChoose, onFinding } = now.current
    const finding = id?.startsWith(FINDING) ? findings[Number(id.slice(FINDING.length))] : undefined
    if (finding === undefined) onChoose(id)
    else onFinding(finding)
  }, [])
  const nextLeft = () => {
    const next = coverage.left.find(span => span.start > playhead.get() + 0.05) ?? coverage.left[0]
    if (next === undefined) return
    onChoose(undefined)
    props.onSeek(next.start)
    onWords(wordsOfSpan(talk, next))
    props.onNotice('Instructing talk that no mark covers: mark it, or go on.')
  }
  // A project made elsewhere may hold a transcript without a cue: there is nothing to show, but another to choose.
  if (transcript === null || transcript.cues.length === 0) return <TranscriptPlace onTranscript={props.onTranscript} />
  if (!props.isSet)
    return (
      <p className={styles.place} role="status">
        Setting the talk
      </p>
    )
  return (
    <>
      <PencilStrip
        marks={project.marks}
        hasTalk={talk.words.length > 0}
        isUntimed={transcript.form === 'untimed'}
        drafting={drafting}
        coverage={coverage}
        onPerform={onPerform}
        onNextLeft={nextLeft}
        onTimes={props.onTimes}
      />
      <KindBar talk={talk} words={words} hasChosen={chosen !== undefined} onKind={props.onKind} />
      <Talk
        // Of another transcript, no line is being corrected.
        key={`${transcript.cues.length} ${transcript.name}`}
        talk={talk}
        cues={transcript.cues}
        marks={project.marks}
        doubts={doubts}
        chosen={chosen}
        words={words}
        playhead={playhead}
        onWords={onWords}
        onChoose={pick}
        onSeek={props.onSeek}
        onEdge={(mark, side, seconds) => onPerform({ do: 'change-mark', id: mark, to: { [side]: seconds } })}
        onCorrect={(cue, text, isEverywhere) => {
          const edits = correctionEdits(project, cue, text, isEverywhere)
          onPerform(...edits)
          if (edits.length > 1) props.onNotice(correctionWords(edits))
        }}
        onNameSpeaker={(cues, speaker) => onPerform({ do: 'name-speaker', cues, speaker })}
      />
    </>
  )
}
