import type { MadeClip, WantedClip } from '@/lib/footage/clip-set'
import { formatProblem } from '@/lib/procedure/problem'
import type { SheetStep } from '@/lib/procedure/sheet'

/** @returns the clip of a step, under a name */
export const wantedClip = ({ number, mark }: SheetStep, name: string): WantedClip => ({
  start: mark.start,
  end: mark.end,
  title: `${number}. ${mark.text}`,
  name,
})

/** @returns what the user should know of a clip: why it could not be cut, or how it differs from the step */
export const clipLines = (clip: MadeClip): readonly string[] =>
  (clip.ok ? clip.notices : clip.problems).map(problem => `${clip.name}: ${formatProblem(problem)}`)
