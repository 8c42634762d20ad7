import type { Mark } from '@/lib/procedure/mark'
import { sharedTime } from '@/lib/procedure/time'
import { cutMarks, joining } from '../chunks'
import { isInstructing } from '../instructing'
import { quote } from '../late'
import { onceFor } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { toThing } from '../thing'
import { NOT_VAGUE, vagueIn } from '../vague'
import { tokensOf } from '../words'

/** A part is named in the words that follow, seconds. */
const SOON = 6

const onSheet = onceFor((mark: Mark): readonly Found[] => {
  const vague = NOT_VAGUE.test(mark.text) ? undefined : vagueIn(mark.text)
  if (vague === undefined) return []
  return [
    {
      place: atMark(mark),
      message: `"${vague}" in ${quote(mark)} names nothing. Write what it is called on the machine or in the manual.`,
    },
  ]
})

const writtenIn = joining((marks: readonly Mark[]) => marks.flatMap(onSheet))

const vagueTalk = onceFor((sentences: Subject['sentences']) =>
  sentences.filter(({ text }) => vagueIn(text) !== undefined && !NOT_VAGUE.test(text)),
)

/** Whether the words said name the part themselves: "the torque wrench, the small fella". */
const isNamed = (mark: Mark, words: string): boolean => {
  const name = toThing(tokensOf(mark.text)).head
  const at = words.toLowerCase().indexOf(`${name}, the `)
  return name !== '' && at >= 0 && vagueIn(words.slice(at)) !== undefined
}

const OF_PARTS = new Set(['step', 'check', 'spec', 'tool', 'material'])
/** "That thing is loud" says what it does, not which part is meant. */
const TELLS_OF = /\b(?:that|this) (?:[a-z]+ )?(?:thing|guy|bit|one|fella) (?:is|will|can|makes|gets)\b/i

const check = ({ project, sentences }: Subject): readonly Found[] => {
  const written = writtenIn(cutMarks(project.marks))
  const told = vagueTalk(sentences)
  const marks = project.marks.filter(({ kind }) => kind !== 'reason')
  const seen = new Set<string>()
  const spoken = told.flatMap((sentence): Found[] => {
    const vague = vagueIn(sentence.text) ?? ''
    const mark =
      marks.find(other => sharedTime(other, sentence) > 0.3 * (other.end - other.start)) ??
      marks.find(({ start }) => start >= sentence.end && start < sentence.end + SOON)
    if (mark === undefined && isInstructing(sentence.text))
      return [
        {
          place: { at: 'talk', start: sentence.start, end: sentence.end },
          level: 'consider',
          message: `The talk says "${vague}". If it matters, mark it and name the part.`,
        },
      ]
    // A caution's "that thing" points at what it warns of; the parts are in what is done.
    if (
      mark === undefined ||
      !OF_PARTS.has(mark.kind) ||
      (mark.kind === 'tool' && TELLS_OF.test(sentence.text)) ||
      seen.has(mark.id) ||
      vagueIn(mark.text) !== undefined ||
      isNamed(mark, sentence.text)
    )
      return []
    seen.add(mark.id)
    return [
      {
        place: atMark(mark),
        level: 'consider',
        message: `The talk says "${vague}" where the sheet says ${quote(mark)}. Check in the picture that this is the part meant.`,
      },
    ]
  })
  return [...written, ...spoken]
}

/** "This guy" needs a name. */
export const vagueThing: Rule = {
  id: 'vague-thing',
  level: 'fix',
  about: 'A part is only pointed at: "this guy", "that thing".',
  why: 'The reader has no finger to follow.',
  source: 'ASD-STE100, approved technical names (from memory)',
  trips: sample([['step', 'Push this guy in until it clicks']]),
  passes: sample([['step', 'Push the retaining clip in until it clicks']]),
  check,
}
