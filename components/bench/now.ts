import type { RefObject } from 'react'
import type { FootageController } from '@/components/footage/types'
import type { Project } from '@/lib/procedure/project'
import type { Finding } from '@/lib/review/rule'
import type { Talk, WordRange } from '@/lib/transcript/talk'
import type { Playhead } from './playhead'
import type { Session } from './session'
import type { Surface } from './ThumbBar'

/** Everything a key may act on, as it stands now. */
export type BenchNow = {
  readonly session: Session
  readonly project: Project
  readonly talk: Talk
  readonly findings: readonly Finding[]
  /** False until the first review is done: that there are no findings says nothing yet. */
  readonly isReviewed: boolean
  /** Id of the chosen mark; a mark that is there. */
  readonly chosen: string | undefined
  readonly chosenFinding: Finding | undefined
  /** Where among the open findings the chosen one stood last, so that the walk goes on when it is mended. */
  readonly findingAt: number | undefined
  readonly words: WordRange | undefined
  readonly playhead: Playhead
  readonly controller: RefObject<FootageController | null>
  readonly choose: (id: string | undefined) => void
  readonly chooseFinding: (finding: Finding | undefined) => void
  readonly setWords: (words: WordRange | undefined) => void
  /** @param aside stands in sight already: announced with the notice, not shown in it */
  readonly tell: (notice: string, aside?: string) => void
  readonly saveFile: () => void
  /** Brings a surface to the front where only one is shown. */
  readonly show: (surface: Surface) => void
  readonly nextSurface: (by: 1 | -1) => void
  readonly showKeys: () => void
}
