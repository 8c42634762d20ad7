import { formatProblem } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import type { Transcript } from '@/lib/procedure/recording'
import type { GivenFile } from './given'
import type { Sorted } from './sorting'

/** What files given to an open bench come to: at most one footage and one transcript it has room for, and words on all others. */
export type Received = {
  readonly footage?: GivenFile
  readonly transcript?: Transcript
  readonly words: readonly string[]
}

/**
 * Sorts files given to a bench where a recording lies open.
 *
 * @param isFootageOpen whether its footage is at hand: another is left aside then
 */
export const receive = (parts: readonly Sorted[], { recording }: Project, isFootageOpen: boolean): Received => {
  const words: string[] = []
  let footage: GivenFile | undefined
  let transcript: Transcript | undefined
  for (const part of parts)
    if (part.is === 'project')
      words.push(
        `The project “${part.project.procedure.title}” was left aside: lay it on the bench from the start page.`,
      )
    else if (part.is === 'footage') {
      if (isFootageOpen || footage !== undefined)
        words.push(
          `“${part.footage.name}” was left aside: this recording's footage is “${footage?.file.name ?? recording.footage?.name}”.`,
        )
      else footage = part.given
    } else if (recording.transcript !== null && recording.transcript.cues.length > 0)
      words.push(
        `“${part.transcript.name}” was left aside: this recording's transcript is “${recording.transcript.name}”. Times, over the talk, takes another in its place.`,
      )
    else if (transcript !== undefined)
      words.push(`“${part.transcript.name}” was left aside: “${transcript.name}” is the transcript now.`)
    else {
      transcript = part.transcript
      words.push(...part.problems.map(formatProblem))
    }
  return {
    ...(footage === undefined ? {} : { footage }),
    ...(transcript === undefined ? {} : { transcript }),
    words,
  }
}
