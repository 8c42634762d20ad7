import type { Sentence } from '@/lib/procedure/recording'
import { sayingThat } from '@/lib/procedure/shorten'
import { leftByMarks } from '../coverage'
import { isOrder } from '../instructing'
import type { Found, Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { contentStems, stemSet } from '../words'

/** Says what the job is, before it begins: "Drain pump and hose." */
const announces = ({ project, sheet }: Subject): ((sentence: Sentence) => boolean) => {
  const first = Math.min(...project.marks.map(({ start }) => start))
  const job = stemSet(`${sheet.heading.title} ${sheet.heading.equipment} ${sheet.heading.scope}`)
  return ({ end, text }) => {
    const stems = contentStems(text)
    return end <= first && (TODAY.test(text) || 2 * stems.filter(stem => job.has(stem)).length >= stems.length)
  }
}
const TODAY =
  /\b(?:today|this (?:morning|afternoon|time|video|one)|we're (?:going to|gonna)|we (?:are|will))\b|^(?:[a-z-]+ ){1,4}(?:routine|service|job|procedure|overhaul|inspection)\W*$/i

const check = (subject: Subject): readonly Found[] => {
  const isTitle = announces(subject)
  return leftByMarks(subject)
    .filter(sentence => isOrder(sentence.text) && !isTitle(sentence))
    .map(({ start, end, text }) => ({
      place: { at: 'talk', start, end },
      message: `The talk tells to do something that no mark holds: ${sayingThat(text)} Mark it, or leave it out on purpose.`,
    }))
}

/** Told and not marked. */
export const orderNotMarked: Rule = {
  id: 'order-not-marked',
  level: 'consider',
  about: 'An instruction in the talk is covered by no mark.',
  why: 'What is not marked is not on the sheet.',
  source: 'common practice, no source',
  trips: sample([['step', 'Remove the cover']], { talk: ['Take the cover off.', 'Now disconnect the fan lead.'] }),
  passes: sample(
    [
      ['step', 'Remove the cover'],
      ['step', 'Disconnect the fan lead'],
    ],
    { talk: ['Take the cover off.', 'Now disconnect the fan lead.'] },
  ),
  check,
}
