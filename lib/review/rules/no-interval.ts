import { sayingThat } from '@/lib/procedure/shorten'
import { leftByMarks } from '../coverage'
import { linesOf } from '../proof'
import { type Found, type Rule, WHOLE } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const MAINTENANCE =
  /\b(?:servic(?:e|ing)|maintenance|oil change|lubricat\w*|greasing|filter change|chang\w+ [^.]*\b(?:oil|filters?|fluid|coolant)\b|inspection|descal\w*|cleaning|flushing|calibrati\w*|greas\w*|sharpening|tune-?up|overhaul|(?:acid |water |oil )?flush|care|(?:daily|weekly|monthly|quarterly|yearly|annual|seasonal|(?:three|six)-monthly|half-yearly) (?:\w+ )?(?:check|round|clean|test))\b/i
const WHEN =
  /\b(?:interval|every\s+(?:\d|one|two|three|four|five|six|other|week|month|year|season|spring|autumn|fall|day|shift|hundred|winter|summer)|(?:once|twice) (?:a|per)|each (?:year|season|month|week|spring|autumn)|monthly|weekly|daily|yearly|annual\w*|whichever comes first|due (?:again|in|at)|next (?:service|change|due)|again (?:after|in)|when it is due|hours on)\b/i

/** How the talk says when the job comes round again. Common speech, no source. */
const COMES_ROUND =
  /\b(?:every|each|once in|after) (?:other |about |(?:[\d.,]+|two|three|four|five|six|eight|nine|ten|twelve|fifty|a hundred|hundred|few)[ -](?:hundred |thousand )?(?:or so )?)?(?:(?:running |working |operating |engine )?hours?|days?|weeks?|months?|years?|seasons?|shifts|miles|kilomet\w+|spring|autumn|fall|winter|summer)\b|\b(?:once|twice|(?:two|three|four) times) (?:a|per|each|every|in (?:a|the)) (?:day|week|month|year|season)\b|\b(?:daily|weekly|monthly|quarterly|yearly|annual|half-yearly|(?:two|three|six)-monthly|biennial)\b|\b(?:see you|again|good for|due|back) (?:again )?in (?:[\d.,]+|a|two|three|four|six|twelve) (?:hours?|weeks?|months?|years?)\b|\b(?:hours|months|years)\b[^.;]*\b(?:is|are|falls?|comes?) due\b|\b(?:\d+|six|twelve|three|two|four)[- ](?:month|monthly|hour|week|weekly|year|yearly)(?:ly)? (?:inspection|service|check|job|test|round|visit)\b|\b(?:regular|routine|scheduled|periodic) (?:round|service|check|visit|maintenance|clean|care)\b/i
/** Something else that is done at its times, or a story. */
const OTHER_TIMES = /\b(?:salary|rent|paid|wages|coffee|bus|train|phone|newsletter|seen|saw|last|ago)\b/i

/** A sentence outside every mark that says how often the job is done. */
const toldIn = (subject: Subject): string | undefined =>
  leftByMarks(subject).find(({ text }) => COMES_ROUND.test(text) && !OTHER_TIMES.test(text))?.text

const check = (subject: Subject): readonly Found[] => {
  const { sheet, project } = subject
  const { heading } = sheet
  if (heading.interval !== undefined || sheet.steps.length === 0) return []
  const told = toldIn(subject)
  if (told === undefined && !MAINTENANCE.test(heading.title)) return []
  // "Yearly check" in the title is no interval where the talk has one to set down.
  const texts = [
    ...(told === undefined ? [heading.scope, heading.title] : []),
    ...linesOf(sheet).map(({ text }) => text),
    ...project.marks
      .filter(({ kind }) => kind === 'spec' || kind === 'reason')
      .map(({ text, reference }) => `${text} ${reference ?? ''}`),
  ]
  if (texts.some(text => WHEN.test(text))) return []
  if (told !== undefined)
    return [
      {
        place: WHOLE,
        message: `The talk says how often the job is done and the sheet does not: ${sayingThat(told)} Add the interval.`,
      },
    ]
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
  about: 'Maintenance, or a job whose talk says how often it is done, with no word on when it is due again.',
  why: 'A job without a next time is done when something breaks.',
  source: 'IEC/IEEE 82079-1:2019 on maintenance (from memory)',
  trips: sample([['step', 'Grease the bearings']], { heading: { title: 'Servicing the band saw' } }),
  passes: sample([['step', 'Grease the bearings']], {
    heading: { title: 'Servicing the band saw', interval: { months: 6 } },
  }),
  check,
}
