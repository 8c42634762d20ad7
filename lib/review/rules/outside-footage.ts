import { formatTime } from '@/lib/procedure/time'
import { quote } from '../late'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

/** Slack for rounding, seconds. */
const SLACK = 0.5

const check = ({ project }: Subject): readonly Found[] => {
  const seconds = project.recording.footage?.seconds
  if (seconds === undefined || seconds === 0) return []
  return project.marks.flatMap((mark): Found[] => {
    if (mark.end <= seconds + SLACK) return []
    const end = Math.min(mark.end, seconds)
    const message = `${quote(mark)} runs to ${formatTime(mark.end)}, but the footage ends at ${formatTime(seconds)}. Move it, or open the footage it belongs to.`
    if (mark.start >= seconds) return [{ place: atMark(mark), message }]
    return [
      {
        place: atMark(mark),
        message,
        remedy: { label: 'End it with the footage', edits: [{ do: 'change-mark', id: mark.id, to: { end } }] },
      },
    ]
  })
}

/** A mark where there is no picture. */
export const outsideFootage: Rule = {
  id: 'outside-footage',
  level: 'fix',
  about: 'A mark lies outside the footage.',
  why: 'Its link leads nowhere; likely the footage was cut or swapped.',
  source: 'W3C Media Fragments URI 1.0 on times past the end',
  trips: sample(
    [
      ['step', 'Remove the cover'],
      ['step', 'Remove the fan'],
    ],
    { footage: 6 },
  ),
  passes: sample(
    [
      ['step', 'Remove the cover'],
      ['step', 'Remove the fan'],
    ],
    { footage: 12 },
  ),
  check,
}
