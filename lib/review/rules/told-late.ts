import { shorten } from '@/lib/procedure/shorten'
import { sharedTime } from '@/lib/procedure/time'
import { quote } from '../late'
import { onceFor } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

/** How people own up to having forgotten something. Common speech, no source. */
const TOLD_LATE =
  /\b(?:(?:should|ought to|could) (?:have|'ve|of) (?:said|told|mentioned|done|put|shown|started)|forgot to (?:say|mention|tell|show)|meant to (?:say|mention|tell)|before (?:you do )?any of (?:that|this)|that (?:comes|goes|should come|has to come|must come) (?:first|before)|go(?:ing)? back(?:wards)? (?:a (?:bit|step)|one)|back up a (?:bit|step|second)|(?:you|we) (?:want|need|have) to do that (?:first|before)|(?:do|did) (?:that|this) (?:first|before)|(?:i|we) (?:did|do) (?:it|this|that) (?:before|earlier|first)|first of all before|beforehand|i skipped|i left out|(?:should|must) (?:be|have been) (?:on|in place|done) (?:first|before|already|by now)|earlier than (?:this|that))\b/i

const lateIn = onceFor((sentences: Subject['sentences']) => sentences.filter(({ text }) => TOLD_LATE.test(text)))

const check = ({ sheet, sentences }: Subject): readonly Found[] => {
  const late = lateIn(sentences)
  if (late.length === 0) return []
  return sheet.steps.flatMap(({ mark, number }) => {
    if (number === 1) return []
    const said = late.find(sentence => sharedTime(sentence, mark) > 0)
    const isAlone =
      said !== undefined &&
      !sheet.steps.some(other => other.number < number && sharedTime(said, other.mark) > 0.5 * (said.end - said.start))
    if (!isAlone) return []
    return [
      {
        place: atMark(mark),
        message: `Step ${number}, ${quote(mark)}, was told late in the talk ("${shorten(said.text, 60)}"). Move it to where it is done.`,
      },
    ]
  })
}

/** The talk says that it should have said so before. */
export const toldLate: Rule = {
  id: 'told-late',
  level: 'consider',
  about: 'The speaker says that this should have been said earlier.',
  why: 'The sheet keeps the order of the talk until someone puts the step where it belongs.',
  source: 'IEC/IEEE 82079-1:2019: steps in the order of doing (from memory)',
  trips: sample(
    [
      ['step', 'Remove the cover'],
      ['step', 'Photograph the wiring'],
    ],
    { talk: ['Take the cover off.', 'Oh, I should have said, photograph the wiring.'] },
  ),
  passes: sample(
    [
      ['step', 'Remove the cover'],
      ['step', 'Photograph the wiring'],
    ],
    { talk: ['Take the cover off.', 'Then photograph the wiring.'] },
  ),
  check,
}
