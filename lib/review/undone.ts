import { wordSet } from '@/lib/trade/list'
import { AID_KINDS, AIDS, NOT_PUT_BACK } from '@/lib/trade/pairs'
import type { Action } from './action'
import { onceFor } from './memo'
import { isNoUndoing } from './no-undoing'
import type { Thing } from './thing'

/** What was done that calls for its opposite. */
export type Undone =
  | 'removed'
  | 'opened'
  | 'closed'
  | 'drained'
  | 'disconnected'
  | 'loosened'
  | 'switched-off'
  | 'locked'
  | 'raised'
  | 'added'

const FLOWS = wordSet(
  'valve tap cock faucet spigot hydrant stopcock petcock supply gas water fuel air steam main mains',
)
const SUPPLY = wordSet(
  'supply mains main inlet outlet isolation isolating shutoff shut-off stop gas water fuel feed service stopcock petcock suction discharge air steam',
)
const POWER = wordSet(
  'isolator breaker power supply mains electricity disconnect switch fuse circuit plug battery current socket machine unit controller main charger inverter control printer appliance saw lathe mower tool',
)
const NOT_POWER = wordSet(
  'engine ignition heater burner light lamp valve tap cock stopcock petcock water gas plate bracket',
)
const LIFTED = wordSet(
  'car vehicle machine bike bicycle motorcycle tractor truck mower trailer front rear axle beam tower wheel corner side van deck load table platform engine header implement bucket boom frame chair wheelchair cart rear-end chassis cage basket',
)
/** Raised, these are set: the table of a planer, the low side of a pad. */
const SET_LEVEL = wordSet('infeed outfeed feed low high planer router cutting blade')
const FILLED = wordSet(
  'oil coolant fluid gearbox crankcase sump radiator system reservoir transmission antifreeze tank boiler cylinder circuit electrolyte engine case differential hub loop heater bowl housing trap gearcase chaincase',
)
const SHUTS = wordSet(
  `valve tap cock faucet spigot hydrant stopper stopcock petcock door lid cover panel drain hatch cap port screw nipple bleeder gate bonnet hood guard case lock latch clamp clip chamber vent plug flap
  access damper drawer enclosure box cabinet head spigot bleed hasp housing isolator breaker circuit shutter caliper release clasp buckle filler gas water curtain canopy tailgate trunk body compartment catch`,
)
const NOT_SHUT = wordSet(
  'window garage room shop workshop app file menu throttle package packet bag program software page',
)
const PULLED = wordSet(
  'plug fuse connector boot cap pin lead wire cable hose cartridge disconnect cord stopper bung cork dipstick filter strainer knob tube split-pin cotter card board module drawer basket tray',
)
/** Solid things that are drawn, not drained. */
const DRAWN = wordSet('pin cotter nail wedge peg dowel key split-pin spike')
const LOCKS = wordSet('lock padlock tag lockout hasp')
/** What has a cover of its own and is no cover: laid open, it is covered again. */
const COVERED = wordSet('pit well tank pool hole opening chamber trench sump gully machine engine shaft tub vat')
const LATCHES = wordSet('latch catch hook clip clasp seat belt lead connector')
/** Locks of a chair or a door, which hold it and not the power. */
const PARKS = wordSet('wheel castor caster door window seat steering transport')
const HANGS = wordSet('hang fit fix put apply attach place fasten clip snap add set')
/** What cuts the power when a machine is switched off at it. */
const MAINS = wordSet('isolator breaker mains wall switch')
/** A mains plug is unplugged, not taken off. */
const CORDS = wordSet('mains power machine wall battery supply charger charging')
const BUNGS = wordSet('drain filler fill level bung vent sump rubber expansion')
/** Pulled, these cut the power; a plug is disconnected. */
const PULLED_OFF = wordSet('isolator breaker disconnect switch fuse')
/** Tripped, these cut the power; any other switch is tripped to see it act. */
const TRIPPED = wordSet('breaker isolator disconnect mains supply')
/** What a machine is tried on is no part of it: a log is split, a board parted. English, no source. */
const DIVIDES = wordSet('split part separate')
const WORKPIECES = wordSet(
  'log wood board plank timber block stone slab slate tile brick offcut sample specimen workpiece stick kindling round billet bale loaf dough card paper',
)
/** @returns whether a way is shut: closed, or turned or pushed shut. */
export const isShut = ({ verb, particle }: Action): boolean =>
  verb === 'close' || verb === 'shut' || particle === 'shut' || particle === 'closed'
/** "Jack the wheel off the shaft" with a screw raises nothing. */
const isForcedOff = (particle: string | undefined): boolean =>
  particle === 'off' || particle === 'out' || particle === 'apart'
const SOCKETS = wordSet('socket outlet wall receptacle')
/** "Open the tap to let the pressure out" leaves nothing to close: its supply is shut. */
const LETS_OUT = wordSet('let release relieve vent bleed drain')
const TIPS = wordSet('tip pour empty run')
const CATCHES = wordSet('pan bucket container jug drum bowl tub can')
const PIPED = wordSet('hose line pipe lead cable wire connector')
/** What is loosened by being wound or eased back; a motor or a table moved so only changes its place. */
const WOUND = wordSet(
  'screw bolt nut nipple union gland fitting cap clamp strap collar fastener setscrew grubscrew locknut cable belt chain tensioner adjuster hose connector valve clip knob fixing stud capscrew jack',
)
const LOOSENS = wordSet('loosen slacken slack undo unclamp release crack unscrew untighten unbolt unlock untie')
/** What is unlocked to be used again. */
const UNDER_LOCK = wordSet('machine motor engine rcd rectifier drive supply pump compressor conveyor hoist crane')
const LET_GO = wordSet('brake handbrake parking-brake footbrake clutch pressure tension grip hand button trigger lever')
const FIXED_TO = wordSet('stand vice vise bench jig lift hoist mould mold packaging oven chuck')

/** Whether a thing stands for the power supply. */
export const isCut = (thing: Thing): boolean => thing.words.some(word => POWER.has(word)) && !NOT_POWER.has(thing.head)

/** What only helped with the work: a tray, a drain pan. */
const isAid = (words: readonly string[]): boolean =>
  AIDS.has(words.at(-1) ?? '') && words.slice(0, -1).every(word => AID_KINDS.has(word))

/** Came with a new part and stays off. */
const SHIPPED = wordSet('transport shipping transit packing packaging backing')

const isTakenOff = ({ words, head, isPlural }: Thing, rest: readonly string[]): boolean =>
  (!NOT_PUT_BACK.has(head) || (head === 'foam' && isPlural) || (head === 'tail' && words.includes('flexible'))) &&
  !words.some(word => SHIPPED.has(word)) &&
  !(head === 'stop' && words.includes('emergency')) &&
  !isAid(words) &&
  !rest.some(word => FIXED_TO.has(word))

/** "Tip the truck onto the stands" raises it. */
const SET_UP = wordSet('tip set place put stand lay roll drive lift raise jack push')
const PROPS = /^(?:stands?|trestles?|blocks|ramps?)$/
const CARRIED = wordSet('bike bicycle motorcycle frame load table chair')

const isSetUp = (verb: string, rest: readonly string[], head: string): boolean =>
  SET_UP.has(verb) &&
  LIFTED.has(head) &&
  !CARRIED.has(head) &&
  /^on(?:to)?$/.test(rest[0] ?? '') &&
  rest.some(word => PROPS.test(word))

/** Whether a thing is the plug of a power lead, pulled rather than switched. */
export const isCord = ({ head, words }: Thing): boolean =>
  (head === 'plug' || head === 'lead' || head === 'cord') && words.some(word => CORDS.has(word))

/** A valve that is shut for the job, unless it is one that lets something out. */
const LETS_GO = wordSet('drain bleed bleeder vent relief safety sample filler fill test check float expansion')
/** Opened and shut by whoever uses the thing; shut, it stays as it is found. */
const OF_USE = wordSet(
  'torch burner gun nozzle lance sink basin bath shower hose garden hob ring handpiece dispensing pilot',
)
const isShutOff = ({ head, words }: Thing): boolean =>
  (head === 'valve' || head === 'tap' || head === 'cock') &&
  words.length > 1 &&
  !words.some(word => LETS_GO.has(word) || OF_USE.has(word))

/** "Take the lift out of service", "loosen it if it binds": nothing is apart, or only some day. */
const isNoTaking = (rest: readonly string[]): boolean =>
  ((rest[0] === 'of' || rest[0] === 'from') &&
    /^(?:service|order|use|gear|action|sight|reach|way)$/.test(
      rest.find(word => word !== 'of' && word !== 'from' && word !== 'the') ?? '',
    )) ||
  rest.includes('if')

/** Rings, watch and chains come off the hands. */
const WORN = wordSet('watch jewellery jewelry necklace bracelet wristwatch scarf lanyard')
const FLUID = wordSet('oil coolant fluid antifreeze electrolyte water fuel')

/** Pushed in and left so, a stop button holds the machine still; pressed while it runs, it is only tried. */
const isStopPressed = ({ verb, particle, rest }: Action, { head, words }: Thing): boolean =>
  (verb === 'push' || verb === 'press' || verb === 'knock' || verb === 'hit') &&
  (particle === 'in' || particle === 'down') &&
  (head === 'button' || head === 'stop' || head === 'e-stop') &&
  words.some(word => word === 'stop' || word === 'emergency' || word === 'e-stop') &&
  !rest.includes('while')

const undoing = (action: Action, thing: Thing): Undone | undefined => {
  const { acts, rest, verb, along, particle } = action
  const { head, words } = thing
  if (isStopPressed(action, thing)) return 'locked'
  if (LOCKS.has(head) && HANGS.has(verb) && !words.some(word => PARKS.has(word))) return 'locked'
  if (acts.has('lock') && (verb !== 'lock' || head === '')) return 'locked'
  if (acts.has('lock') && (isCut(thing) || FLOWS.has(head) || along.some(own => LOCKS.has(own.head)))) return 'locked'
  // Pulled with a scale, it is measured.
  if (verb === 'pull' && rest.some(word => /^(?:scale|balance|gauge|dynamometer|newtonmeter)$/.test(word)))
    return undefined
  if (head === '' || isNoTaking(rest) || action.things.some(own => WORN.has(own.head))) return undefined
  if (head === 'plug' && verb === 'pull' && words.some(word => BUNGS.has(word))) return 'removed'
  if (isCord(thing) && (acts.has('disconnect') || acts.has('remove'))) return 'disconnected'
  if (isSetUp(verb, rest, head)) return 'raised'
  if (
    acts.has('off') &&
    verb !== 'unplug' &&
    (verb !== 'pull' || PULLED_OFF.has(head)) &&
    (verb !== 'trip' || TRIPPED.has(head)) &&
    (isCut(thing) || (!NOT_POWER.has(head) && rest.some(word => MAINS.has(word))))
  )
    return 'switched-off'
  if (isShut(action) || (acts.has('off') && FLOWS.has(head)))
    return FLOWS.has(head) && (words.some(word => SUPPLY.has(word)) || isShutOff(thing)) ? 'closed' : undefined
  if (TIPS.has(verb) && rest.some(word => CATCHES.has(word)) && (FILLED.has(head) || head === 'water')) return 'drained'
  if (verb === 'undo' && PIPED.has(head)) return 'disconnected'
  if (isPutOn(action)) return undefined
  if (
    acts.has('drain') &&
    FILLED.has(head) &&
    !words.includes('condensate') &&
    !(acts.has('remove') && !FLUID.has(head))
  )
    return 'drained'
  if (
    acts.has('raise') &&
    (LIFTED.has(head) || (verb === 'jack' && head === 'end')) &&
    !words.some(word => SET_LEVEL.has(word)) &&
    !rest.includes('down') &&
    !isForcedOff(particle)
  )
    return 'raised'
  if (acts.has('open') && rest.some(word => LETS_OUT.has(word)) && FLOWS.has(head)) return undefined
  if (verb === 'uncover') return SHUTS.has(head) || !COVERED.has(head) ? 'removed' : 'opened'
  // Whatever hangs on a latch is open then.
  if (verb === 'unlatch' && !LATCHES.has(head)) return 'opened'
  if (
    acts.has('open') &&
    SHUTS.has(head) &&
    !(acts.has('on') && isCut(thing)) &&
    !words.some(word => NOT_SHUT.has(word))
  )
    return 'opened'
  if (head === 'plug' && (words.some(word => CORDS.has(word)) || rest.some(word => SOCKETS.has(word))))
    return acts.has('remove') ? 'disconnected' : undefined
  if (acts.has('remove') && (isTravel(action) || isAdjusting(action, thing))) return undefined
  if (acts.has('remove') && isTurnedOut(action)) return 'loosened'
  if (verb === 'draw' && particle === undefined && DRAWN.has(head)) return 'removed'
  if (acts.has('remove')) return isTakenOff(thing, rest) ? 'removed' : undefined
  if ((verb === 'cut' || verb === 'snip' || verb === 'break') && !PIPED.has(head)) return undefined
  if (DIVIDES.has(verb) && WORKPIECES.has(head)) return undefined
  if (acts.has('disconnect') && verb !== 'undo') return verb !== 'pull' || PULLED.has(head) ? 'disconnected' : undefined
  if (verb === 'unlock' && (isCut(thing) || UNDER_LOCK.has(head))) return undefined
  if (acts.has('loosen') && isEasedUntil(action)) return undefined
  if (acts.has('loosen') && !rest.includes('if') && !LET_GO.has(head))
    return LOOSENS.has(verb) || WOUND.has(head) ? 'loosened' : undefined
  return undefined
}

/** "Drip oil along the chain", "run oil over the gears": what is let onto a part drains nothing. English, no source. */
const isPutOn = ({ verb, particle, rest }: Action): boolean =>
  LETS_ON.has(verb) && (particle === undefined || particle === 'on' || particle === 'over') && ONTO.has(rest[0] ?? '')
const LETS_ON = wordSet('drip drop dribble run squirt let spill squeeze trickle')
const ONTO = wordSet('along on onto over across between around')

/** "Run the backrest from flat to upright", "turn the wheel from lock to lock": it only travels. */
const TRAVELS = wordSet('run drive move cycle swing turn travel slide operate jog sweep take rotate crank')
const isTravel = ({ verb, rest }: Action): boolean =>
  rest[0] === 'from' && rest.includes('to') && (TRAVELS.has(verb) || isState(rest[1] ?? ''))
/** "From hot to cold", "from lock to lock": no place, which would have an article. */
const isState = (word: string): boolean => !/^(?:the|a|an|its|their|your|each|both|this|that|all|every)$/.test(word)

/** "Unwind the regulator until the gauge reads zero", "back the screws out until they turn free": turned, not taken off. */
const WINDS = wordSet('unwind back wind screw unscrew turn spin run ease')
const ADJUSTS = wordSet(
  'regulator adjuster handwheel knob dial control spindle stem spring preload handle lever throttle choke',
)
const isWound = ({ verb, rest }: Action): boolean =>
  WINDS.has(verb) && rest.some(word => word === 'until' || word === 'till')
const isAdjusting = (action: Action, { words }: Thing): boolean =>
  isWound(action) && words.some(word => ADJUSTS.has(word))
const isTurnedOut = (action: Action): boolean => isWound(action) && action.rest.some(word => LOOSE.has(word))
/** "Ease the nuts until the gland drips": set, not left loose. */
const isEasedUntil = (action: Action): boolean =>
  isWound(action) && !action.rest.some(word => LOOSE.has(word) || AWAY.has(word))
const AWAY = wordSet('off out away apart clear lift turn move')
const LOOSE = wordSet('free loose slack freely')

const ofAction = onceFor((_: Action) => new Map<Thing, Undone | undefined>())

/** @returns which undoing an action is for one of its things; undefined where nothing needs to be made good. */
export const undoneBy = (action: Action, thing: Thing): Undone | undefined => {
  const known = ofAction(action)
  if (known.has(thing)) return known.get(thing)
  const worded = undoing(action, thing)
  const undone = worded === undefined || isNoUndoing(action, thing, worded) ? undefined : worded
  known.set(thing, undone)
  return undone
}
