import { leadingVerb } from '../action'
import { quote } from '../late'
import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'
import { tokensOf, verbOf } from '../words'

/** Steps that name a state as an order: "Safety glasses on". */
const STATE = /\b(?:on|off|in|out|down|up|back|shut|open|tight|loose)[.]?$/i

/** An article or pronoun first is a statement: "The cover is then put back". */
const NO_ORDER = /^(?:the|an?|this|that|these|those|it|they|its|there)\b(?![^.;]*[:,])/i

/** "Rope off the stage": whatever the word, its particle makes it a verb. */
const PHRASAL = /^[a-z]{3,} (?:off|out|up|down|away) (?:the|a|an|both|all|each|every|your|its|any|two|three|four)\b/i

/** "Have the electrician test the supply" tells somebody else to do it. */
const BY_ANOTHER = /^(?:have|let|get|ask)\s+(?:the|an?|your|another|somebody|someone|two)\b/i

/** An instruction begins with what to do. */
export const noVerbFirst: Rule = {
  id: 'no-verb-first',
  level: 'consider',
  about: 'A step does not begin with a verb in the imperative.',
  why: 'The hands wait for the verb; a step without one is a remark.',
  source: 'ASD-STE100 rule 5.3, issue 8 (from memory)',
  trips: sample([['step', 'The cover is then taken off by the operator']]),
  passes: sample([['step', 'Once the pump has stopped, take the cover off']]),
  ...eachMark(['step'], mark => {
    const text = mark.text.trim()
    if (text === '' || BY_ANOTHER.test(text) || (STATE.test(text) && text.split(/\s+/).length <= 4)) return []
    const [first = ''] = tokensOf(text)
    const isTold = /(?:ing|ed)$/.test(first) && verbOf(first) !== undefined && verbOf(first) !== first
    if (!isTold && !NO_ORDER.test(text) && (leadingVerb(text) !== undefined || PHRASAL.test(text))) return []
    return [
      {
        place: atMark(mark),
        message: `Step ${quote(mark)} does not begin with what to do. Start with the verb: remove, turn, check.`,
      },
    ]
  }),
}
