import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'

/** A mark without words or without time. */
export const emptyMark: Rule = {
  id: 'empty-mark',
  level: 'fix',
  about: 'A mark has no words, lasts no time, or ends before it starts.',
  why: 'It prints as an empty line, or as a number with nothing to do.',
  source: 'common practice, no source',
  trips: sample([['step', '']]),
  passes: sample([['step', 'Remove the cover']]),
  ...eachMark(['step', 'caution', 'spec', 'tool', 'material', 'check', 'reason', 'symptom'], mark => {
    if (mark.text.trim() === '')
      return [
        {
          place: atMark(mark),
          message: `This ${mark.kind} has no words. Write what it says, or drop it.`,
          remedy: { label: 'Drop it', edits: [{ do: 'drop-marks', ids: [mark.id] }] },
        },
      ]
    if (mark.end < mark.start)
      return [
        {
          place: atMark(mark),
          message: `"${mark.text}" ends before it starts. Set its edges again.`,
          remedy: {
            label: 'Swap its edges',
            edits: [{ do: 'change-mark', id: mark.id, to: { start: mark.end, end: mark.start } }],
          },
        },
      ]
    if (mark.end === mark.start && mark.start > 0 && mark.still === undefined)
      return [
        {
          place: atMark(mark),
          message: `"${mark.text}" lasts no time: it starts and ends at the same moment. Set its edges to what is said or shown.`,
        },
      ]
    return []
  }),
}
