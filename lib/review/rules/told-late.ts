import { shorten } from '@/lib/procedure/shorten'
import { sharedTime } from '@/lib/procedure/time'
import { quote } from '../late'
import { onceFor } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

/** How people own up to having forgotten something. Common speech, no source. */
const TOLD_LATE =
  /\b(?:(?:should|ought to|could) (?:have|'ve|of) (?:said|told|mentioned|done|put|shown|started)|forgot to (?:say|mention|tell|show)|meant to (?:say|mention|tell)|before (?:you do )?any of (?:that|this)|that (?:comes|goes|should come|has to come|must come) (?:first|before)|go(?:ing)? back(?:wards)? (?:a (?:bit|step)|one)|back up a (?:bit|step|second)|(?:you|we) (?:want|need|have) to do that (?:first|before)|(?:do|did) (?:that|this) (?:first|before)|(?:i|we) (?:did|do) (?:it|this|that) (?:before|earlier|first)|first of all before|beforehand|i skipped|i left out|(?:should|must) (?:be|have been) (?:on|in place|done) (?:first|before|already|by now)|earlier than (?:this|that)|(?:i|we) (?:only|just) (?:put|took|take|got|did|do|said|remember\w*|thought)\b[^.;]{0,24}\bnow|(?:took|put|got|said) (?:it |them |that |these )?only now|i (?:clean |plain |nearly |almost |totally )?forgot (?:the|my|about|all about|one|something)|(?:went|going|got) (?:too fast|ahead of (?:myself|ourselves))|jumped (?:ahead|the gun)|better late than never|(?:have|had|did|took|put) (?:it|them|that|mine) (?:already )?(?:off|on|out|done|in)? ?(?:since yesterday|last night|off camera|before we (?:started|came on|went live))|never (?:said|told you|mentioned)|before you (?:so much as|even think|ever) \w+|(?:can't|cannot|don't) believe i (?:forgot|skipped|missed))\b/i

/** What has to be so before something else: told late only by whoever owns up to it. */
const BEFORE =
  /\b(?:(?:must|should|has to|have to|ought to|needs? to|wants? to) be|that's|that is|they're|they are|it's|it is|goes|go|comes?) (?:all )?(?:on|off|out|in|first|shut|closed|open|done|dry|cold|cool|empty|locked|up|down)\b[^.;]{0,24}\bbefore\b/i
const OWNS_UP =
  /\b(?:sorry|stupid|silly|daft|dumb|oops|whoops|forgot\w*|only now|too fast|already|good catch|reminds me|my (?:bad|mistake|fault)|apolog\w*|pardon|missed|skipped|oh|ah)\b/i

const isToldLate = (text: string): boolean => TOLD_LATE.test(text) || (BEFORE.test(text) && OWNS_UP.test(text))
/** @returns sentences of a talk that own up to telling something late; computed once a talk. */
export const lateIn = onceFor((sentences: Subject['sentences']) => sentences.filter(({ text }) => isToldLate(text)))

const check = ({ sheet, sentences }: Subject): readonly Found[] => {
  const late = lateIn(sentences)
  if (late.length === 0) return []
  const told = sheet.steps.flatMap(({ mark, checks, number }) => [mark, ...checks].map(own => ({ mark: own, number })))
  return told.flatMap(({ mark, number }) => {
    if (number === 1 && mark.kind === 'step') return []
    const said = late.find(sentence => sharedTime(sentence, mark) > 0)
    const isAlone =
      said !== undefined &&
      !sheet.steps.some(other => other.number < number && sharedTime(said, other.mark) > 0.5 * (said.end - said.start))
    if (!isAlone) return []
    return [
      {
        place: atMark(mark),
        message: `${mark.kind === 'step' ? 'Step' : 'The check of step'} ${number}, ${quote(mark)}, was told late in the talk ("${shorten(said.text, 60)}"). Move it to where it is done.`,
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
