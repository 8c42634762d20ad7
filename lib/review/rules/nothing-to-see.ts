import { quote } from '../late'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

/** Shorter than this nobody sees what is done, seconds. Common practice, no source. */
const LEAST = 0.4

const check = ({ project, sheet }: Subject): readonly Found[] => {
  if (project.recording.footage === null) return []
  return sheet.steps.flatMap(({ mark, number }): Found[] =>
    mark.still === undefined && mark.end > mark.start && mark.end - mark.start < LEAST
      ? [
          {
            place: atMark(mark),
            message: `Step ${number}, ${quote(mark)}, has nothing to see: its span is ${(mark.end - mark.start).toFixed(1)} s. Widen it to what the hands do, or add a still.`,
          },
        ]
      : [],
  )
}

/** A step without a picture. */
export const nothingToSee: Rule = {
  id: 'nothing-to-see',
  level: 'consider',
  about: 'A step has footage too short to see anything, and no still.',
  why: 'The picture is what the sheet has over a list.',
  source: 'common practice, no source',
  trips: sample([['step', 'Remove the cover', { start: 3, end: 3.2 }]], { footage: 20 }),
  passes: sample([['step', 'Remove the cover']], { footage: 20 }),
  check,
}
