import { atSteps } from './chunks'
import { isDisposing } from './disposing'
import { contextHazards, hazardsIn, hintsIn } from './hazard-signs'
import { bringsPower, cutsPower, unlocks, unplugs } from './power'

/** Waiting exposes nobody: a caution against what is waited for is in time after it. */
const WAITS =
  /^(?:then |now )?(?:wait|(?:let|leave|allow|give)\b[^.;]*\b(?:cool|settle|rest|stop|drain|bleed|run down|spin down|come to|stand)\w*|stand by)\b/i

/** Nor does shutting a valve let anything out. */
const SHUTS =
  /^(?:then |now )?(?:(?:shut|close)\b(?! the (?:lid|door|cover|guard|press|platen|clamp|jaws?|mould|gate))|turn\b[^.;]*\b(?:off|shut)\b)[^.;]*\b(?:valves?|cocks?|taps?|gas|water|supply)\b(?![^.;]*\b(?:and|then)\b)/i

/** @returns whether a step only waits, or only shuts something off. */
export const waits = (text: string): boolean => WAITS.test(text) || SHUTS.test(text)

/** Letting the pressure out is the care against it. */
const RELIEVES =
  /\b(?:to (?:release|relieve|let out) the pressure|until the gauge reads (?:zero|nothing|0)|has bled down)\b/i
/** "Switch the grinder on at the wall" runs it for nobody's hands. */
const ONLY_SWITCHED =
  /^(?:(?:switch|turn|power|flip|throw)\b[^.;]*\bon(?: at the (?:wall|socket|isolator|main switch|panel))?|(?:start|run)\b[^.;]*\b(?:at|from) the (?:(?:control|operator) )?(?:panel|desk|console|cab))$/i
/** Plugged in or its supply open again, a machine does nothing yet; a door opened for fresh air is a care taken. */
const IDLE =
  /^(?:then |now )?(?:(?:stop|halt) the [a-z -]+|plug\b[^.;]*\bin\b|(?:push|put|press)\b[^.;]*\bplug\b[^.;]*\b(?:in|into|home)\b|(?:re-?open|open|turn on)\b[^.;]*\b(?:(?:air|water) supply(?: (?:valve|tap|cock))?|air (?:valve|tap|cock|isolator))(?: (?:of|to|on|at) (?:the )?[a-z -]+)?(?: slowly)?$|open\b[^.;]*\b(?:door|window|hatch|shutter)s?\b[^.;]*\b(?:to (?:ventilate|air)|for (?:fresh )?air)\b)(?![^.;]*\b(?:and|then|when|while)\b)/i
/** @returns whether a step brings no hazard of its own, whatever its words: it gets rid of what is left, plugs in, airs. */
const isIdle = (text: string): boolean => IDLE.test(text) || (isDisposing(text) && !POURS.test(text))
/** What eats or burns splashes and fumes when it is poured away too. */
const POURS =
  /^(?:[a-z]+ly,? )?(?:pour|tip|empty|decant|drain|siphon|pump)\b[^.;]*\b(?:acids?|alkali|lye|caustic|bleach|electrolyte|petrol|gasoline|fuel|solvents?|thinners?|acetone|stripper)\b(?! (?:waste )?(?:drum|bin|can|tin|container)\b)/i
const NOTHING: readonly never[] = []
/** @returns what a step says of power and of hazards, what is only its lists' apart. */
export const signsIn = atSteps(step => {
  const { mark, checks, tools, materials } = step
  const texts = [mark.text, ...checks.map(({ text }) => text)]
  const [isCut, isPowered] = [cutsPower(mark.text) || unlocks(mark.text), bringsPower(mark.text)]
  const idle = isIdle(mark.text)
  const [plain, hinted] = idle ? [NOTHING, NOTHING] : [texts.flatMap(hazardsIn), texts.flatMap(hintsIn)]
  const listed = [...tools, ...materials]
    .map(({ text }) => ({ text, plain: hazardsIn(text), hinted: hintsIn(text) }))
    .filter(own => own.plain.length + own.hinted.length > 0)
  const inContext = idle ? NOTHING : texts.flatMap(contextHazards)
  const isWaiting = waits(mark.text)
  const isRelieving = RELIEVES.test(mark.text)
  const isOnlySwitched = ONLY_SWITCHED.test(mark.text)
  return [
    {
      isCut,
      isIdle: idle,
      isPowered,
      isWaiting,
      isRelieving,
      isOnlySwitched,
      isUnplugging: unplugs(mark.text),
      plain,
      hinted,
      listed,
      inContext,
    },
  ]
})
