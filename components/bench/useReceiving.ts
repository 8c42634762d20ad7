import { countOf } from '@/lib/procedure/count'
import { formatProblem, type Result } from '@/lib/procedure/problem'
import type { Transcript } from '@/lib/procedure/recording'
import type { GivenFile } from './given'
import { lengthsDoubt } from './lengths'
import type { Session } from './session'
import type { Sorted } from './sorting'
import { useDropped } from './useDropped'
import type { useFootage } from './useFootage'

type Options = {
  readonly session: Session
  readonly found: Pick<ReturnType<typeof useFootage>, 'state' | 'take'>
  readonly tell: (text: string) => void
}

/** Takes transcripts, and whatever is dropped on the bench, to where they belong. */
export const useReceiving = ({ session, found, tell }: Options) => {
  const say = (...words: readonly (string | undefined)[]) => {
    const all = words.filter(word => word !== undefined && word !== '')
    if (all.length > 0) tell(all.join(' '))
  }
  const takeTranscript = (transcript: Transcript, ...words: readonly string[]) => {
    const old = session.get().history.present.recording.transcript
    const corrected = old?.cues.filter(cue => cue.corrected !== undefined).length ?? 0
    session.perform({ do: 'set-transcript', transcript })
    say(
      `The talk is “${transcript.name}” now; Ctrl + Z takes it back.`,
      corrected === 0 ? undefined : `The ${countOf(corrected, 'line')} corrected went with the talk before.`,
      lengthsDoubt(session.get().history.present.recording),
      ...words,
    )
  }
  useDropped(given => {
    const take = async (files: readonly GivenFile[]) => {
      const [{ sortFile }, { receive }] = await Promise.all([import('./sorting'), import('./receive')])
      const sorted: readonly Result<Sorted>[] = await Promise.all(files.map(sortFile))
      const refused = sorted.flatMap(result => (result.ok ? [] : result.problems.map(formatProblem)))
      const parts = sorted.flatMap(result => (result.ok ? [result.value] : []))
      const received = receive(parts, session.get().history.present, found.state.is === 'open')
      if (received.footage !== undefined) await found.take(received.footage)
      const words = [...received.words, ...refused]
      if (received.transcript !== undefined) return takeTranscript(received.transcript, ...words)
      // Words on other files must not hide what there is to say of the footage.
      const doubt = received.footage && lengthsDoubt(session.get().history.present.recording)
      say(doubt, ...words)
    }
    take(given).catch((error: unknown) => tell(error instanceof Error ? error.message : String(error)))
  })
  return { takeTranscript }
}
