import type { Word } from '@/lib/procedure/recording'
import { firstIndex } from '@/lib/procedure/search'
import { quote } from '../late'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

/** How far inside a word an edge has to be, seconds: half of a short syllable. From memory. */
const SLACK = 0.08

const wordAt = (words: readonly Word[], at: number): Word | undefined => {
  const word = words[firstIndex(words.length, i => (words[i]?.end ?? 0) > at)]
  return word !== undefined && word.start + SLACK < at && at < word.end - SLACK ? word : undefined
}

const check = ({ project }: Subject): readonly Found[] => {
  const words = project.recording.transcript?.words
  if (words === undefined || words.length === 0) return []
  return project.marks.flatMap((mark): Found[] => {
    const cut = wordAt(words, mark.start) ?? wordAt(words, mark.end)
    if (cut === undefined) return []
    const to = cut.start < mark.start && mark.start < cut.end ? { start: cut.start } : { end: cut.end }
    return [
      {
        place: atMark(mark),
        message: `An edge of ${quote(mark)} cuts the word "${cut.text}". Move it to the pause.`,
        remedy: { label: 'Take the whole word', edits: [{ do: 'change-mark', id: mark.id, to }] },
      },
    ]
  })
}

/** The clip begins with half a word. */
export const edgeInWord: Rule = {
  id: 'edge-in-word',
  level: 'consider',
  about: 'An edge of a mark cuts a word.',
  why: 'The clip starts with half a word, and half a "not" is no warning.',
  source: 'common practice, no source',
  trips: withWords(2.5),
  passes: withWords(2),
  check,
}

function withWords(start: number) {
  const project = sample([['step', 'Remove the cover', { start }]], { talk: ['Now remove the cover.'] })
  const { transcript } = project.recording
  const words = [{ start: 2, end: 3, text: 'remove' }]
  return transcript === null
    ? project
    : { ...project, recording: { ...project.recording, transcript: { ...transcript, words } } }
}
