import type { SheetStep } from '@/lib/procedure/sheet'
import { sayingThat } from '@/lib/procedure/shorten'
import type { Act } from '@/lib/trade/pairs'
import { actionsOf } from '../action'
import { isDisposing } from '../disposing'
import { withoutLeadIn } from '../instructing'
import { quote } from '../late'
import { lastStep, linesOf } from '../proof'
import { addStep } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { leftOfTalk } from '../told'
import { isCut } from '../undone'

const DISTURBS: ReadonlySet<Act> = new Set<Act>(['refit', 'tighten', 'connect'])
const TAKES: ReadonlySet<Act> = new Set<Act>(['remove', 'disconnect', 'loosen', 'drain', 'open'])
const PROVES =
  /\b(?:test\w*|try|trial|run(?:s|ning)?|start\w*|operat\w*|cycle|function\w*|works?|working|switch(?:es)? on|power up|drive|ride|rides|print|sew|spin|spins|turns? (?:freely|by hand|without)|verify|confirm\w*|heats?|cools?|flow\w*|fires?|lights?|reads?|holds?|moves?|moving|smooth\w*|slides?|clicks?|locks?|stops?|closes?|rises?|settles?|cool(?:s|ing)?|plays?|flush(?:es)?|charges?|cuts? (?:a|the)|pump (?:the )?(?:lever|pedal)|check that|recheck|measure\w*|weigh|observe|listen)\b/i

/** Checks that only look at how it is put together. */
const FITTED =
  /\b(?:leak\w*|drips?|weep\w*|seep\w*|bubbles?|torque|tight|seated|seats|secure|dry|in place|clip|behind|level|gap|clearance|mark|hose|thread)\b/i
const RESTART = /\b(?:start|run|test|power|switch(?:es)?|restore)\b/i
/** Steps that try it out: switching on alone does not. */
const TRIES =
  /\b(?:test\w*|try|trial|run(?:s|ning)?|start\w*|operat\w*|cycle|verify|confirm|measure|weigh|watch|observe|listen|check|recheck|jog|bring [^.;]* up to|pump the|pump [^.;]* up|move the [^.;]*\b(?:out|back|through|up)|turn the [^.;]*\bby hand|press the|take a picture|cut a|sound the|(?:scrap|trial|test|sample|first) (?:piece|part|cut|weight|load|lift|print|weld|batch)|make (?:a|one|two|some)|lift the (?:test )?(?:load|weight)|at (?:every|each|all) speeds?|through (?:every|each|all|its)|round the block|use it|dispense|blow|sweep|vacuum a|light the)\b/i
/** Verbs that try it out and are nouns too: a saw, the print, the load. */
const TRY_VERBS = new Set(
  'drive ride print sew play flush spin heat fire blast weld saw mow mix knead brew bake roll load lift steer slice fry boil plough light drill shoot copy scan weigh type call ring ignite'.split(
    ' ',
  ),
)
/** Moved to and fro. */
const TRAVELS =
  /\bfrom (?!the|a|its)[\w-]+ to [\w-]+\b|\bback and forth\b|\bto and fro\b|\bup and down\b|\bopen and (?:shut|closed?)\b|\bstop to stop\b|\bend to end\b|\block to lock\b/i
const isTried = (text: string): boolean =>
  TRIES.test(text) || TRAVELS.test(text) || actionsOf(text).some(({ verb }) => TRY_VERBS.has(verb))
/** "Run the bolts in" runs nothing. */
const IS_FITTING =
  /\b(?:run|drive|spin|fire)\b[^.;]*\b(?:bolts?|screws?|nuts?|studs?)\b|\b(?:enter|record|write|sign|log)\b/i
const NOT_ASSEMBLY = new Set(
  'plug switch put wear don clamp mount set adjust return engage close start restore position place load lay locate use secure tension seal reset clear bring restack gather fold'.split(
    ' ',
  ),
)

/** Done when the machine has long been at work again. */
const LATER =
  /\bafter (?:a|an|one|the first|some|\d+|two|three) (?:days?|weeks?|months?|hours?|shifts?|kilomet\w*|km|miles?|rides?|washes|cycles|runs?)\b|\bagain after\b|\b(?:next|the following) (?:day|week|month|morning|shift)\b/i

const isTight = ({ mark }: SheetStep): boolean =>
  !isDisposing(mark.text) &&
  !LATER.test(mark.text) &&
  actionsOf(mark.text).some(({ acts, verb }) => !NOT_ASSEMBLY.has(verb) && [...acts].some(act => DISTURBS.has(act)))

/** Covers and clips that go on when the trial is over. */
const COVERS =
  /^(?:cover|guard|panel|hood|lid|clip|cap|cord|plug|cushion|shroud|skirt|trim|cowl|canopy|door|hatch|grille|grill|screen|rail|mat|strap|lock|tag|key|padlock|sign|barrier|cone|vest|mat|trestle|ladder|chock|wedge|stand|jack|tray|post|light|drum|rag|cloth|tool|scabbard|sheath|tarpaulin|bonnet)$/
/** What only holds it while it stands or travels. */
const PARKED = /^(?:transport|travel|storage|parking|transit|shipping)$/
const isCovering = ({ mark }: SheetStep): boolean => {
  const things = actionsOf(mark.text).flatMap(({ things: own }) => own)
  return (
    things.length > 0 && things.every(({ head, words }) => COVERS.test(head) || words.some(word => PARKED.test(word)))
  )
}

const isOn = ({ mark }: SheetStep): boolean =>
  !LATER.test(mark.text) &&
  !isDisposing(mark.text) &&
  actionsOf(mark.text).some(
    ({ acts, things, verb, particle }) =>
      acts.has('on') &&
      (things.some(thing => isCut(thing) || thing.head === 'key' || thing.head === 'button') ||
        (PLUGS.has(verb) && particle !== undefined && !things.some(({ head }) => FLOWING.test(head)))),
  )
const PLUGS = new Set('plug switch power flip throw flick'.split(' '))
const FLOWING = /^(?:water|gas|tap|valve|cock|supply|sensor|connector|lead|cable|wire|hose)$/

/** A trial that the talk orders: set going, or a device pressed to see it act. */
const TELLS =
  /\b(?:self-?test|test (?:run|cycle|piece|cut|print|lift|load|weight|weld)|trial (?:run|lift|cut)|dry run)\b|^(?:run|start|fire|test|try|cycle|jog|bump|ride|drive|press|push|switch|let|heat|spin|rev)\b[^.;]*|\b(?:must|has to|have to|should|needs to|may|ought to|want(?:s)? to)\b[^.;]*\b(?:stop|stand|hold|start|turn|run|move|shut|open|trip|drop|lock|light|beep|sound|reach|reverse|cut out|cut in|come (?:on|back|up)|go (?:out|back|off|up))\b/i
const ASIDE = /\b(?:ignore|never mind|instead|used to|i'd|i would|years? ago|another|other (?:one|machine))\b/i
const isTold = (text: string): boolean =>
  !ASIDE.test(text) && TELLS.test(withoutLeadIn(text)) && !IS_FITTING.test(text) && !FITTED.test(text)

/** Whatever else is tried, this trial is on no mark. */
const told = (subject: Subject, { mark, number }: SheetStep): readonly Found[] => {
  const sentence = leftOfTalk(subject).find(({ start, text }) => start > mark.start && isTold(text))
  if (sentence === undefined) return []
  const message = `After step ${number}, ${quote(mark)}, the talk tries it out and no mark does: ${sayingThat(sentence.text)} Mark it.`
  return [{ place: atMark(mark), level: 'consider', message }]
}

const check = (subject: Subject): readonly Found[] => {
  const { sheet } = subject
  if (!sheet.steps.some(({ mark }) => actionsOf(mark.text).some(({ acts }) => [...acts].some(act => TAKES.has(act)))))
    return []
  const tight = lastStep(sheet, step => isTight(step) && !isCovering(step)) ?? lastStep(sheet, isTight)
  if (tight === undefined) return []
  // Switched on and left at that: the test is missing there.
  const last = sheet.steps.findLast(step => step.number > tight.number && isOn(step)) ?? tight
  const isProved = linesOf(sheet).some(({ text, step, isCheck }) => {
    if (step.number < tight.number) return false
    if (isCheck) return text.split(/\band\b|[,;]/).some(part => PROVES.test(part) || !FITTED.test(part))
    return isTried(text) && !IS_FITTING.test(text) && (step.number > tight.number || RESTART.test(text))
  })
  if (isProved) return told(subject, last)
  const message = `After step ${last.number}, ${quote(last.mark)}, nothing tries out whether it works. Add a run or a test with what to look for.`
  return [
    {
      place: atMark(last.mark),
      message,
      remedy: addStep('function-test', 'Run it and check that it works as it should', sheet.steps.length, last.mark),
    },
  ]
}

/** The job is done when it was tried. */
export const noFunctionTest: Rule = {
  id: 'no-function-test',
  level: 'fix',
  about: 'Parts were disturbed, and nothing at the end tries out whether the thing works.',
  why: 'The customer finds what a two-minute test would have found.',
  source: 'IEC/IEEE 82079-1:2019 on verifying the result (from memory); common practice, no source',
  trips: sample([
    ['step', 'Remove the switch'],
    ['step', 'Fit the new switch'],
  ]),
  passes: sample([
    ['step', 'Remove the switch'],
    ['step', 'Fit the new switch'],
    ['check', 'The lamp switches on and off'],
  ]),
  check,
}
