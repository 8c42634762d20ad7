import type { Sentence } from '@/lib/procedure/recording'
import type { SheetStep } from '@/lib/procedure/sheet'
import { sayingThat } from '@/lib/procedure/shorten'
import { type Act, FASTENERS } from '@/lib/trade/pairs'
import { actionsOf } from '../action'
import { isDisposing } from '../disposing'
import { quote } from '../late'
import { onceForText } from '../memo'
import { actsOn, lastStep, linesOf, REDO } from '../proof'
import { addStep } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import { stemIndex } from '../stem-index'
import type { Subject } from '../subject'
import { leftOfTalk } from '../told'
import { contentStems } from '../words'

/** Parts that hold something in, once disturbed. */
const JOINT =
  /^(?:drain|gasket|seal|o-ring|oring|union|hose|pipe|line|bonnet|sump|radiator|carburettor|carburetor|filter|manifold|banjo|gland|standpipe|injector|flange|diaphragm|impeller|bowl|trap|boiler|fitting|coupling|swivel|flare|ferrule|tail|adaptor|adapter|film|membrane|bladder)$/
const DRY =
  /\b(?:vent hose|wind hose|air duct|duct|flex|cable gland|cord seal|cord|bearings?|air filter|air hose|vacuum hose|dust|cabin filter|air line|bracket|clip|lint|hose reel|blower|exhaust manifold|light|spotlight|belt)\b/i
const FLUIDS =
  /\b(?:oil|water|coolant|fuel|gas|fluid|petrol|gasoline|diesel|hydraulic|refrigerant|plumbing|boiler|pump|tap|drain|radiator|dishwasher|washing machine|compressor|steam|brake (?:fluid|lines?|hoses?|pipes?|calipers?|cylinders?)|hydraulic brakes?|heating|pipe|resin|beer|milk|wine|ink|paint|sewage|juice|syrup|slurry|lubricant)\b/i
const PROVES =
  /\bno\b(?! (?:longer|more)\b)[^.;]*\b(?:water|oil|fluid|fuel|coolant|gas|drops?|moisture|wetness|film|traces?|steam)\b|\b(?:is|are|stays?|remains?|keeps?|everything|all)\b[^.;]*\bdry\b|\b(?:look|check|watch|inspect|feel)\b[^.;]*\b(?:for|any) (?:oil|water|fluid|fuel|coolant|moisture|wetness|drops?)\b|\b(?:ph|litmus|indicator|test) paper\b|\b(?:leak\w*|drips?\b|dripping|weep\w*|seep\w*|bubbles?|soapy|pressure[- ]test|tightness test|vacuum test|holds? (?:pressure|vacuum)|pressure holds|stays? dry|bone dry|dry around|wet patch|no (?:oil|water|fluid|fuel|coolant|gas) (?:at|around|under)|look for (?:fluid|oil|water|fuel)|look underneath)/i

const FILLS: ReadonlySet<Act> = new Set<Act>(['fill'])
const FILLED = /^(?:oil|coolant|antifreeze|fluid)$/

const isFluid = onceForText((text: string): boolean => FLUIDS.test(text))
const proves = onceForText((text: string): boolean => PROVES.test(text))

/** A joint by its name; what only holds it, such as a bowl's bolt, follows it. */
const isJoined = (text: string): boolean =>
  actionsOf(text).some(
    ({ acts, things }) =>
      [...acts].some(act => REDO.has(act)) &&
      things.some(
        ({ words, head }) =>
          words.some(
            word =>
              JOINT.test(word) && (word !== 'bowl' || BOWL.test(text)) && (head !== 'filter' || FILTER.test(text)),
          ) &&
          !NO_JOINT.test(head) &&
          (!FASTENERS.has(head) || JOINT.test(head) || words.some(word => OF_PIPES.test(word))),
      ),
  )
/** Nuts and bolts that make a joint tight themselves. */
const OF_PIPES = /^(?:sump|boiler|oil|filler|core|drain|union|swivel|flare|banjo|gland|ferrule)$/
const NO_JOINT =
  /^(?:cap|lid|cover|guard|bracket|panel|door|switch|connector|lead|cable|sensor|hood|shroud|fan|thermostat|mount|support|insulation|lagging)$/
/** A sieve that is dropped in seals nothing. */
const FILTER =
  /\b(?:oil|fuel|hydraulic|canister|cartridge|spin-on|new|water|inline|in-line|air-?tight|tighten|screw|gasket|o-ring|seal)\b/i
const BOWL =
  /\b(?:carb\w*|float|fuel|filter|sediment|strainer|separator|bowl (?:gasket|seal)|refit the bowl|bowl back)\b/i

/** A joint put together again, or a case filled anew; a drop of oil on a part is neither. */
const disturbing = onceForText(
  (text: string): boolean =>
    !isDisposing(text) &&
    !DRY.test(text) &&
    (isJoined(text) ||
      (/^(?:pour|fill|refill)\b/i.test(text) &&
        !/\b(?:chain|antifreeze)\b/i.test(text) &&
        actsOn(text, FILLS, FILLED))),
)
const disturbs = ({ mark }: SheetStep): boolean => disturbing(mark.text)

/** Words of a look for leaks that name no place. */
const PLACELESS = new Set(
  'leak leakage drip drop weep seep bubble look check inspect watch see show sign water oil fluid fuel gas coolant pressure under underneath below while run engine machine anywhere joint connection fitting union unit system appear come stay dry spray soapy brush test hold minute spot wet floor after before full whole work hot cold start drain machine card bottom side tank pump card cardboard paper tissue hand torch mirror either both disturb disturbed place part area outside inside body housing case time first second cycle round mark trace damp minute use lamp clean rag wipe drum motor appliance'.split(
    ' ',
  ),
)

/** A part that the job put together, filled or shut, whether or not it holds something in. */
const WORK: ReadonlySet<Act> = new Set<Act>(['refit', 'tighten', 'connect', 'fill', 'close', 'remove', 'open'])
const isWorkedOn = (step: SheetStep | undefined): boolean =>
  step !== undefined && actionsOf(step.mark.text).some(({ acts }) => [...acts].some(act => WORK.has(act)))

/** Whether a look for leaks is at what was disturbed, or at no one place. */
const isThere = (text: string, steps: readonly SheetStep[]): boolean => {
  const named = contentStems(text).filter(stem => !PLACELESS.has(stem) && !/^(?:leak|drip|weep|seep|bubbl)/.test(stem))
  return (
    named.length === 0 ||
    named.some(
      stem =>
        stemIndex(steps)
          .get(stem)
          ?.some(number => isWorkedOn(steps[number - 1])) === true,
    )
  )
}

/** "No drops under the pump and the fan turns": only what speaks of leaks says where. */
const isThereIn = (text: string, steps: readonly SheetStep[]): boolean => {
  const parts = text.split(/\band\b|[,;]/).filter(proves)
  return isThere(text, steps) || parts.some(part => isThere(part, steps))
}

/** A gas joint put together again. */
const GAS_JOINT =
  /\b(?:(?:gas|propane|lpg|butane|oxygen|acetylene|hydrogen|nitrogen|argon|helium|carbon dioxide|co2|refrigerant|ammonia|natural gas|biogas) (?:(?:supply|flex(?:ible)?|service|inlet|main|control) )?(?:unions?|lines?|pipes?|hoses?|joints?|connections?|connectors?|fittings?|valves?|regulators?|meters?|manifolds?|jets?|tubes?|bottles?|cylinders?|nuts?|cocks?|injectors?|arrestors?)|flash ?back arrestors?|(?:union|hose|pipe|connector|regulator|nut)s? (?:of|to|at|on) the (?:gas|oxygen|acetylene|propane|refrigerant))\b/i
/** No look for water or oil: gas shows by bubbles, a gauge, a detector or its smell. */
const GAS_PROOF =
  /\b(?:bubbl\w*|soap\w*|leak[- ](?:detect\w*|test\w*|spray|fluid|search|check)|tightness|gas (?:detector|sniffer|tester|leak)|sniff\w*|smell\w*|manometer|pressure[- ](?:test|drop)|(?:leak\w*|tight)\b[^.;]*\bgas|gas[- ]?tight|electronic nose|no gas)\b/i

/** On what burns or bottles gas, its joints need not say so each time. */
const GAS_FED =
  /\b(?:(?:carbon dioxide|co2|argon|nitrogen|oxygen|helium|hydrogen|shielding gas) (?:bottles?|cylinders?|tanks?)|lpg|propane|butane|natural gas|biogas|gas[- ](?:fired|grill|barbecue|bottle|cooker|hob|oven|boiler|heater|burner|fire|stove|range|cylinder|lamp|fridge)|acetylene)\b/i
const FED =
  /\b(?:regulator(?: nut)?|gas hose|union|injector|(?:burner|pilot) (?:jet|pipe)|flexible hose|hose nut|cylinder valve)\b/i

const gasJoined = ({ mark }: SheetStep, isFed: boolean): boolean =>
  (GAS_JOINT.test(mark.text) || (isFed && FED.test(mark.text))) &&
  !isDisposing(mark.text) &&
  actionsOf(mark.text).some(
    ({ acts, verb }) => verb !== 'open' && verb !== 'turn' && [...acts].some(act => REDO.has(act)),
  )

/** Gas is searched for by its own means, whatever is said of drips elsewhere. */
const gasCheck = (sheet: Subject['sheet']): readonly Found[] => {
  const isFed = GAS_FED.test(`${sheet.heading.title} ${sheet.heading.equipment}`)
  const last = lastStep(sheet, step => gasJoined(step, isFed))
  if (last === undefined || linesOf(sheet).some(({ text, step }) => step.number >= last.number && GAS_PROOF.test(text)))
    return []
  return [
    {
      place: atMark(last.mark),
      message: `After step ${last.number}, ${quote(last.mark)}, nobody looks for escaping gas. Add a test with leak fluid or a gauge, by whoever local law licenses for it.`,
      remedy: addStep(
        'gas-check',
        'Test every gas joint that was disturbed with leak detection fluid: no bubbles',
        last.number,
        last.mark,
      ),
    },
  ]
}

/** Leak fluid, a card run along the ends, a look for drops: told in the talk and on no mark. */
const TELLS =
  /\bleak (?:fluid|spray|detect\w*)|\b(?:card|cardboard|paper|tissue)\b[^.;]*\b(?:along|around|round|under|over|at)\b[^.;]*\b(?:ends?|joints?|hoses?|unions?|fittings?|lines?|pipes?)\b/i
const toldOf = (subject: Subject, after: number): Sentence | undefined =>
  leftOfTalk(subject).find(
    ({ text, start }) => start > after && (proves(text) || TELLS.test(text) || GAS_PROOF.test(text)),
  )

/** Whatever else is looked at, the look for leaks that the talk orders is on no mark. */
const told = (subject: Subject): readonly Found[] => {
  const { sheet } = subject
  const joined = lastStep(sheet, step => disturbs(step) || gasJoined(step, false) || isPiped(step))
  const sentence = joined === undefined ? undefined : toldOf(subject, joined.mark.start)
  if (joined === undefined || sentence === undefined) return []
  const message = `After step ${joined.number}, ${quote(joined.mark)}, the talk looks for leaks and no mark does: ${sayingThat(sentence.text)} Mark it as a check.`
  return [{ place: atMark(joined.mark), level: 'consider', message }]
}

/** What fastens a pipe or a hose, by its own name. */
const PIPE_NUT = /^(?:swivel|union|banjo|ferrule|coupler|coupling|seal|gasket|valve|regulator|hose|pipe|lid)$/
const isPiped = ({ mark }: SheetStep): boolean => !isDisposing(mark.text) && actsOn(mark.text, REDO, PIPE_NUT)

const check = (subject: Subject): readonly Found[] => {
  const found = untested(subject)
  return found.length > 0 ? found : told(subject)
}

/** It works under water, where nobody can look. */
const SUNK = /\b(?:submersible|submerged|borehole|downhole)\b/i

const untested = ({ sheet }: Subject): readonly Found[] => {
  const gas = gasCheck(sheet)
  if (gas.length > 0) return gas
  if (SUNK.test(`${sheet.heading.title} ${sheet.heading.equipment}`)) return []
  const isWet = [
    sheet.heading.title,
    sheet.heading.equipment,
    ...sheet.steps.map(({ mark }) => mark.text),
    ...sheet.materials.map(({ text }) => text),
  ].some(isFluid)
  const last = isWet ? lastStep(sheet, disturbs) : undefined
  if (last === undefined) return []
  const isProved = linesOf(sheet).some(
    ({ text, step }) => step.number >= last.number - 1 && proves(text) && isThereIn(text, sheet.steps),
  )
  if (isProved) return []
  const message = `After step ${last.number}, ${quote(last.mark)}, nothing looks for leaks at what was disturbed. Add a check under working pressure.`
  return [
    {
      place: atMark(last.mark),
      message,
      remedy: addStep('leak-check', 'Look for leaks at every joint that was disturbed', sheet.steps.length, last.mark),
    },
  ]
}

/** A joint that was opened is looked at once it is under pressure. */
export const noLeakTest: Rule = {
  id: 'no-leak-test',
  level: 'fix',
  about: 'A joint that holds fluid or gas was disturbed, and nothing looks for leaks afterwards.',
  why: 'A seal that was pinched shows only under pressure, and by then nobody is looking.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Drain the oil'],
    ['step', 'Fit a new gasket to the oil pump cover'],
    ['step', 'Start the engine'],
  ]),
  passes: sample([
    ['step', 'Drain the oil'],
    ['step', 'Fit a new gasket to the oil pump cover'],
    ['step', 'Start the engine'],
    ['check', 'No oil weeps from the pump cover'],
  ]),
  check,
}
