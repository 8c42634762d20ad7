import { cautionParts, namesCause, tellsHow } from '../caution-parts'
import { quote } from '../late'
import { eachMark } from '../memo'
import { atMark, type Rule } from '../rule'
import { sample } from '../sample'

/** Work kept for others by law: what it does is told to them. Common practice, no source. */
const leavesToOthers = (text: string): boolean =>
  /\b(?:licen[cs]ed|regulated|registered|certified|authori[sz]ed|pressure part|by law)\b/i.test(text) &&
  /\bleave\b[^.;]*\bto\b/i.test(text)

/** What, what it does to you, how not to. */
export const cautionIncomplete: Rule = {
  id: 'caution-incomplete',
  level: 'consider',
  about: 'A caution lacks the hazard, what it does, or how to avoid it.',
  why: '"Be careful here" changes nothing; people take care when they know of what, and why.',
  source: 'ANSI Z535.6 (from memory): a safety message says hazard, consequence and avoidance',
  trips: sample([
    ['step', 'Drain the boiler'],
    ['caution', 'Be careful here', { level: 'warning' }],
  ]),
  passes: sample([
    ['step', 'Drain the boiler'],
    ['caution', 'Hot water scalds skin; let the boiler cool first', { level: 'warning' }],
  ]),
  ...eachMark(['caution'], mark => {
    const { hasHazard, consequence, hasAvoidance } = cautionParts(mark.text)
    const missing = [
      ...(hasHazard || mark.hazard !== undefined || namesCause(mark.text) ? [] : ['what the danger is']),
      ...(consequence === undefined && !leavesToOthers(mark.text) ? ['what it does'] : []),
      ...(hasAvoidance || tellsHow(mark.text) ? [] : ['how to avoid it']),
    ]
    if (missing.length === 0) return []
    return [
      {
        place: atMark(mark),
        message: `The caution ${quote(mark)} does not say ${missing.join(', nor ')}. Add it, as the maker’s manual puts it.`,
      },
    ]
  }),
}
