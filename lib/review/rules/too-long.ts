import { quote } from '../late'
import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'

const MOST = 20

const longest = (text: string): number =>
  Math.max(
    0,
    ...text
      .split(/[.;!?](?:\s|$)/)
      .map(sentence => sentence.split(/\s+/).filter(word => /[\p{L}\p{N}]/u.test(word)).length),
  )

/** Twenty words fit into one look. */
export const tooLong: Rule = {
  id: 'too-long',
  level: 'consider',
  about: 'A sentence of a step has more than 20 words.',
  why: 'With both hands full nobody reads a sentence twice.',
  source: 'ASD-STE100 rule 5.1, issue 8 (from memory): at most 20 words in a procedural sentence',
  trips: sample([
    [
      'step',
      'Remove the four screws that hold the lower cover to the frame of the machine so that you can get at the belt and the two pulleys behind it',
    ],
  ]),
  passes: sample([['step', 'Remove the four screws that hold the lower cover to the frame']]),
  ...eachMark(['step', 'check'], mark => {
    const words = longest(mark.text)
    return words > MOST
      ? [
          {
            place: atMark(mark),
            message: `${quote(mark)} has ${words} words in one sentence; 20 can be taken in at once. Split or shorten it.`,
          },
        ]
      : []
  }),
}
