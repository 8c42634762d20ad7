import { linesOf } from '../proof'
import { type Found, type Rule, WHOLE } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const MAINTENANCE =
  /\b(?:servic(?:e|ing)|maintenance|oil change|lubricat\w*|greasing|filter change|chang\w+ [^.]*\b(?:oil|filters?|fluid|coolant)\b|inspection|descal\w*|cleaning|flushing|calibrati\w*|greas\w*|sharpening|tune-?up)\b/i
const WHEN =
  /\b(?:interval|every\s+(?:\d|one|two|three|four|five|six|other|week|month|year|season|spring|autumn|fall|day|shift|hundred|winter|summer)|(?:once|twice) (?:a|per)|each (?:year|season|month|week|spring|autumn)|monthly|weekly|daily|yearly|annual\w*|whichever comes first|due (?:again|in|at)|next (?:service|change|due)|again (?:after|in)|when it is due|hours on)\b/i

const check = ({ sheet, project }: Subject): readonly Found[] => {
  const { heading } = sheet
  if (heading.interval !== undefined || sheet.steps.length === 0 || !MAINTENANCE.test(heading.title)) return []
  const texts = [
    heading.scope,
    heading.title,
    ...linesOf(sheet).map(({ text }) => text),
    ...project.marks
      .filter(({ kind }) => kind === 'spec' || kind === 'reason')
      .map(({ text, reference }) => `${text} ${reference ?? ''}`),
  ]
  if (texts.some(text => WHEN.test(text))) return []
  return [
    {
      place: WHOLE,
      message: `"${heading.title}" is maintenance, and nothing says when it is due again. Add the interval in hours or months from the maker’s manual.`,
    },
  ]
}

/** Maintenance is done again. */
export const noInterval: Rule = {
  id: 'no-interval',
  level: 'consider',
  about: 'Maintenance with no word on when it is due again.',
  why: 'A job without a next time is done when something breaks.',
  source: 'IEC/IEEE 82079-1:2019 on maintenance (from memory)',
  trips: sample([['step', 'Grease the bearings']], { heading: { title: 'Servicing the band saw' } }),
  passes: sample([['step', 'Grease the bearings']], {
    heading: { title: 'Servicing the band saw', interval: { months: 6 } },
  }),
  check,
}
