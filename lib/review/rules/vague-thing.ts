import type { Mark } from '@/lib/procedure/mark'
import { sharedTime } from '@/lib/procedure/time'
import { cutMarks, joining } from '../chunks'
import { isInstructing } from '../instructing'
import { quote } from '../late'
import { onceFor, onceForText } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { toThing } from '../thing'
import { tokensOf } from '../words'

/** Pointing words that need the picture. Common speech, no source. */
const VAGUE =
  /\b(?:(?:this|that|these|those|the) (?:(?:little|lil|big|small|black|brass|metal|round|other|wee|red|blue|white|long|short|square|old|plastic|rubber|shiny|silver) )*(?:guys?|fell(?:a|as|ow|ows|er|ers)|things?|thingy|thingies|bits?|bad boy|doohickey|doodad|gizmo|whatsit|jobb(?:y|ie)|dude|sucker|puppy|contraption|thingamajig|thingummy|chap|bugger|beast|gubbins|doings|bloke|one (?:here|there)|metal box|box (?:here|there|down here))|thingamajig|thingummy|doohickey|whatchamacallit|whatsit|gizmo|doodad|thingy|some (?:stuff|thing)|this here|(?:this|that) (?:over|down|up|in) (?:here|there))\b/i

const vagueIn = onceForText((text: string): string | undefined => VAGUE.exec(text)?.[0])
const NOT_VAGUE =
  /\b(?:the (?:first|last|same|main|important|other|only) thing|(?:the|that) bits? (?:holder|set)|drill bits?|(?:this|that|the|these|those) (?:[\w-]+ )?bits? of|the right thing)\b/i

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
    if (mark === undefined || seen.has(mark.id) || vagueIn(mark.text) !== undefined || isNamed(mark, sentence.text))
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
