import type { Cue } from '@/lib/procedure/recording'
import { type Reading, toLines } from './reading'

/** Reads text without times: each line that is not empty is a cue with start = end = 0 until it is aligned. */
export const parseUntimed = (text: string): Reading => {
  const cues: Cue[] = []
  for (const line of toLines(text)) if (line.trim() !== '') cues.push({ start: 0, end: 0, text: line.trim() })
  return { cues, problems: [] }
}
