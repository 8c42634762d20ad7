import type { SheetStep } from '@/lib/procedure/sheet'
import { actionsOf } from '../action'
import { inSteps } from '../chunks'
import { isDisposing } from '../disposing'
import { quote } from '../late'
import { actsOn, lastStep, linesOf, REDO } from '../proof'
import { addStep } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const BRAKE = /^(?:brake|caliper|pad|rotor|disc|shoe|drum)$/
const ABOUT = /\b(?:brakes?|calipers?|brake (?:pads?|shoes?|discs?|hose|fluid)|chain brake)\b/i
const CONTEXT = /\b(?:brak\w*|calipers?)\b/i
/** Parts of a brake by their full name, wherever a mark names them; a caliper alone may be the one that measures. */
const PART =
  /\bbrake (?:pads?|shoes?|linings?|calipers?|hoses?|lines?|pipes?|fluid|cables?|rods?|linkages?|levers?|pedals?|dis[ck]s?|drums?|rotors?|cylinders?|bands?)\b|\bcaliper (?:bolts?|pins?|pistons?|bracket|mount\w*)\b|\b(?:pads?|bolts?|pins?|pistons?)\b (?:\w+ )?(?:on|of|from|in|into|to) the calipers?\b/i
/** Pumped up, and seen to hold before anyone moves off. */
const HOLDS =
  /\b(?:(?:brakes?|lever|pedal)\b[^.;]*\b(?:hold\w*|stops?|stopped|bites?|grips?|keeps?)|brakes? held|(?:squeeze|press|pull)\b[^.;]*\bbrak\w*[^.;]*\b(?:while|as you|and)\b[^.;]*\b(?:push|roll|rock|move|walk|ride|drive)|(?:hold|holds|push|roll|rock|stop\w*|walking pace|spin)\b[^.;]*\bbrak\w*|brake test|test\w*[^.;]*\bbrak\w*|brakes? (?:work|function)\w*|slow speed|low speed[^.;]*brak\w*|wheels? lock|(?:ten|twelve|fifteen|\w+ty|two|three|four|five|six|several|a few|some|\d+) (?:\w+ ){0,2}stops\b)/i

/** Putting a brake on holds the machine; it is no work on the brake. */
const applies = (text: string): boolean =>
  actionsOf(text).some(
    ({ verb, particle, things }) =>
      (verb === 'apply' ||
        verb === 'engage' ||
        verb === 'set' ||
        verb === 'squeeze' ||
        verb === 'pump' ||
        verb === 'hold' ||
        (/^(?:put|pull|switch|lock|push|press)$/.test(verb) &&
          (particle === 'on' || particle === 'down' || particle === 'home' || particle === undefined))) &&
      things.some(
        ({ head, words }) => head === 'brake' || (/^(?:lever|pedal|handle)$/.test(head) && words.includes('brake')),
      ),
  )

/** What shows that a brake that was put on holds. */
const STILL =
  /\b(?:stands? (?:still|fast)|stays? (?:put|still|where)|stops?|holds?|does not (?:roll|move|creep|turn)|will not (?:roll|move|turn)|no (?:roll|creep|movement))\b/i
const TRIED = /\b(?:trial|test|try)\b/i
/** Put on to see it hold: "set it on the slope" with a check that nothing rolls, "pull it on as a trial". */
const isTrial = ({ mark, checks }: SheetStep): boolean =>
  applies(mark.text) && (TRIED.test(mark.text) || checks.some(({ text }) => STILL.test(text)))

/** Marks that name a part of a brake: whatever the sheet is called, that is a job on a brake. */
const partsIn = inSteps(({ mark, cautions, specs, checks, materials }) =>
  [mark, ...cautions, ...specs, ...checks, ...materials].filter(({ text }) => PART.test(text)),
)

/** "Screw the clevis along the brake rod": its travel is set. */
const sets = (text: string): boolean =>
  PART.test(text) && actionsOf(text).some(({ acts, verb }) => acts.has('tighten') || SETS.has(verb))
const SETS = new Set(['screw', 'adjust', 'set', 'turn', 'shorten', 'lengthen'])

const check = ({ sheet }: Subject): readonly Found[] => {
  const isNamed = partsIn(sheet).length > 0
  const isBrakeJob = isNamed || CONTEXT.test(`${sheet.heading.title} ${sheet.heading.equipment} ${sheet.heading.scope}`)
  if (!isBrakeJob) return []
  const worked = (step: SheetStep) =>
    (isNamed || ABOUT.test(step.mark.text) || CONTEXT.test(sheet.heading.title)) &&
    !isDisposing(step.mark.text) &&
    (actsOn(step.mark.text, REDO, BRAKE) || sets(step.mark.text)) &&
    !applies(step.mark.text)
  const last =
    lastStep(sheet, worked) ??
    (CONTEXT.test(`${sheet.heading.title} ${sheet.heading.scope}`)
      ? sheet.steps.find(({ mark }) => applies(mark.text))
      : undefined)
  if (last === undefined) return []
  const isApplied = !worked(last)
  if (linesOf(sheet).some(({ text, step }) => (isApplied || step.number >= last.number) && HOLDS.test(text))) return []
  if (sheet.steps.some(step => (isApplied || step.number > last.number) && isTrial(step))) return []
  const message = `The brake was worked on in step ${last.number}, ${quote(last.mark)}, and nothing shows that it holds before anyone moves off. Add a test standing still, then at walking pace.`
  return [
    {
      place: atMark(last.mark),
      message,
      remedy: addStep(
        'brake-test',
        'Press the brake until it is firm and check that it holds, first standing still, then at walking pace',
        sheet.steps.length,
        last.mark,
      ),
    },
  ]
}

/** A brake is tried before it is trusted. */
export const brakesNotTested: Rule = {
  id: 'brakes-not-tested',
  level: 'stop',
  about: 'A brake was worked on, and nothing shows that it holds before the machine moves.',
  why: 'The first press after the job moves the pads, not the machine; found out on the road, that is a crash.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Take the brake pads out'],
    ['step', 'Fit the new brake pads'],
    ['step', 'Refit the wheel'],
    ['step', 'Ride to bed the pads in'],
  ]),
  passes: sample([
    ['step', 'Take the brake pads out'],
    ['step', 'Fit the new brake pads'],
    ['step', 'Refit the wheel'],
    ['step', 'Pump the lever until it is firm'],
    ['check', 'Brake holds the bike when it is pushed'],
    ['step', 'Ride to bed the pads in'],
  ]),
  check,
}
