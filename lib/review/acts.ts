import { wordSet } from '@/lib/trade/list'
import { ACTS, type Act } from '@/lib/trade/pairs'
import type { Thing } from './thing'
import { unprefixed } from './words'

const BY_WORDING = new Map<string, Set<Act>>()
for (const [act, entries] of Object.entries(ACTS) as [Act, readonly string[]][])
  for (const entry of entries) BY_WORDING.set(entry, (BY_WORDING.get(entry) ?? new Set()).add(act))

export const NO_ACTS: ReadonlySet<Act> = new Set()

/** @returns whether the lists have a verb with this particle. */
export const isWording = (verb: string, particle: string): boolean => BY_WORDING.has(`${verb} ${particle}`)

/** Verbs that put a thing somewhere, with the particles that make them fit it there. English, no source. */
const PLACES = wordSet(
  `lay put place set slide slip push press drop lower hang hook thread feed wrap guide ease tap roll stretch position pull draw lift work clip screw snap pop wind route loop lead stand knock hammer
  drive drift bend force squeeze twist tuck stick clamp seat swing fold bring click rest walk rock wiggle turn spin shove bump nudge coax settle nestle sit hoist winch raise tie lash strap button zip lace
  braze weld solder lever bolt rivet nail peg pin latch fasten glue tape run crank stuff pack load fit get take slot join plug marry offer move wheel rotate`,
)
const INTO = wordSet('on in over back home around through together')
/** "Stand the truck on its wheels" lowers it as well. */
const PUTS: ReadonlySet<Act> = new Set<Act>(['refit', 'connect', 'lower'])
const REFIT: ReadonlySet<Act> = new Set<Act>(['refit', 'connect'])

/** Verbs of moving a thing by hand: with "off" or "out" they take it off. English, no source. */
const MOVES = wordSet(
  `pull push slide slip lift take tap knock drive ease work wiggle twist turn screw wind spin roll rock walk tug yank pluck pick hook lever pry prise prize tease draw swing whip pop snap tear rip cut
  break strip peel hammer punch press drift fish wriggle jiggle rotate guide raise hoist winch thread feed crank pinch squeeze jerk heave haul drag scoop dig chisel saw split bend bump nudge get
  coax shove whack bash pinch unscrew unbolt wheel force fold unhook hinge pivot lower`,
)
const REMOVE: ReadonlySet<Act> = new Set<Act>(['remove'])
const LOOSEN: ReadonlySet<Act> = new Set<Act>(['loosen'])
const OUT_OF: Readonly<Record<string, ReadonlySet<Act>>> = Object.setPrototypeOf(
  { off: REMOVE, out: REMOVE, free: REMOVE, clear: REMOVE, apart: REMOVE, loose: LOOSEN },
  null,
)

/** However it is moved: flipped shut, swung wide. */
const BY_STATE: Readonly<Record<string, ReadonlySet<Act>>> = Object.setPrototypeOf(
  {
    shut: new Set<Act>(['close', 'refit', 'tighten']),
    closed: new Set<Act>(['close', 'refit', 'tighten']),
    open: new Set<Act>(['open']),
    wide: new Set<Act>(['open']),
    tight: new Set<Act>(['tighten', 'close', 'refit', 'connect']),
  },
  null,
)

/** Verbs of fastening: with "un" before them they undo it. English, no source. */
const FASTENS = wordSet(
  'buckle zip lace tape strap hook clip pin peg latch bolt screw button hitch couple clamp fasten tie lash thread chain staple nail rivet solder glue plug seal cap cork stopper crimp clasp link rope band key dog',
)
const MADE_FAST: ReadonlySet<Act> = new Set<Act>(['refit', 'tighten', 'connect', 'close'])
const UNDONE: ReadonlySet<Act> = new Set<Act>(['remove', 'disconnect', 'loosen', 'open'])
const MAKES_GOOD: readonly Act[] = ['refit', 'tighten', 'connect', 'close', 'fill', 'on', 'lock']

/** "Rebolt" bolts again, "unbuckle" undoes a buckle, "hand-tighten" tightens. */
const byPrefix = (verb: string): ReadonlySet<Act> | undefined => {
  const parts = unprefixed(verb)
  if (parts === undefined) return undefined
  const own = BY_WORDING.get(parts.verb)
  if (parts.prefix === 'un' || parts.prefix === 'dis' || parts.prefix === 'de') return UNDONE
  if (parts.prefix !== 're') return own
  if (own !== undefined && MAKES_GOOD.some(act => own.has(act))) return new Set([...own, 'refit'])
  return FASTENS.has(parts.verb) || PLACES.has(parts.verb) || own?.has('remove') === true ? MADE_FAST : undefined
}

/** What the lists say; put into its place, a thing is connected as well as fitted. */
const byWording = (verb: string, particle: string | undefined): ReadonlySet<Act> | undefined => {
  const own = BY_WORDING.get(`${verb} ${particle}`)
  if (verb === 'lower' && particle !== undefined) own?.add('lower')
  const isPlaced = own?.has('refit') === true && PLACES.has(verb) && INTO.has(particle ?? '')
  if (own === undefined || !isPlaced || own.has('connect')) return own
  return own.add('connect')
}

/** @returns what a verb does with its particle: by the lists, else by the kind of verb and particle, else by its prefix. */
export const actsFor = (verb: string, particle: string | undefined): ReadonlySet<Act> =>
  byWording(verb, particle) ??
  BY_STATE[particle ?? ''] ??
  (MOVES.has(verb) ? OUT_OF[particle ?? ''] : undefined) ??
  (PLACES.has(verb) && INTO.has(particle ?? '') ? (BY_WORDING.get(verb)?.has('lower') ? PUTS : REFIT) : undefined) ??
  BY_WORDING.get(verb) ??
  byPrefix(verb) ??
  (FASTENS.has(verb) ? MADE_FAST : NO_ACTS)

/** What goes along is the thing's own, or the hands'. */
const OWN = wordSet('its their your both two one a all care')
const FAR = wordSet('off out away apart together loose free back home shut open closed')
const AT_END = wordSet('on in up down')
/** Little words that show that a particle belongs to what stands before it: "next to the off switch", "to shut off". */
/** Where a thing goes that something goes along with: "drop the tap with its seal through the hole". */
const ONTO: Readonly<Record<string, string>> = Object.setPrototypeOf(
  { into: 'in', onto: 'on', over: 'over', through: 'through' },
  null,
)
const BINDS = wordSet('the a an to of from in on at by for and is')

/**
 * The particle that stands after words set between: "take your lock with its tag off the disconnect", "turn the main switch of
 * the machine off".
 *
 * @param rest from the first preposition on
 */
export const distantParticle = (verb: string, rest: readonly string[]): string | undefined => {
  if (rest[0] === 'with' && !OWN.has(rest[1] ?? '')) return undefined
  if (rest[0] !== 'with' && rest[0] !== 'of' && rest[0] !== 'and' && rest[0] !== 'for' && rest[0] !== 'at')
    return undefined
  for (let i = 2; i < rest.length; i++) {
    const [before = '', token = '', next] = [rest[i - 1], rest[i], rest[i + 1]]
    if (token === 'to' || token === 'until' || token === 'while' || token === 'by') return undefined
    const onto = rest[0] === 'with' ? ONTO[token] : undefined
    if (onto !== undefined && PLACES.has(verb)) return onto
    const isParticle = FAR.has(token) || (AT_END.has(token) && next === undefined)
    if (!isParticle || BINDS.has(before)) continue
    const particle = token === 'back' && next !== undefined && (AT_END.has(next) || next === 'off') ? next : token
    if (actsFor(verb, particle) !== actsFor(verb, undefined)) return particle
  }
  return undefined
}

/** Covers on a hinge or slide: up and aside is open, down and to is closed. */
const HINGED = wordSet('grate guard lid hood cover flap bonnet shield door hatch visor canopy screen gate shutter seat')
/** Those that hang below or in front: down is open, up is closed. */
const HUNG = wordSet('panel tray grille grill diffuser ramp tailgate flap tailboard drawbridge ladder louvre louver')
const SWINGS = wordSet(
  'swing fold flip lift tilt hinge raise pivot slide push pull roll prop turn bring lower move let drop put',
)
const APART = wordSet('up open aside away clear out')
const TOGETHER = wordSet('down shut closed over home back to in')
const OPENS: ReadonlySet<Act> = new Set<Act>(['open'])
const CLOSES: ReadonlySet<Act> = new Set<Act>(['close', 'refit'])
const HUNG_VERBS = wordSet('swing hinge fold pivot tilt let flip')

/** Turned on, these are threaded on; a lamp or a heater is set going. English, no source. */
const THREADED = wordSet(
  'cap lid nut ring locknut collar bowl filter cartridge element canister jar bottle chuck knob nozzle nose union gland head hub socket coupling adapter bulb cover plug flange basket cup can tip',
)
const TURNED = wordSet('turn twist spin wind thread rotate')
const MADE_ON: ReadonlySet<Act> = new Set<Act>(['refit', 'connect', 'close', 'tighten'])
/** @returns what turning a threaded thing on does; undefined for every other thing. */
export const threadedActs = (
  verb: string,
  particle: string | undefined,
  things: readonly Thing[],
): ReadonlySet<Act> | undefined =>
  TURNED.has(verb) && particle === 'on' && things.length > 0 && things.every(({ head }) => THREADED.has(head))
    ? MADE_ON
    : undefined

/** @returns what moving a hinged thing does; undefined for every other thing. */
export const hingedActs = (
  verb: string,
  particle: string | undefined,
  things: readonly Thing[],
): ReadonlySet<Act> | undefined => {
  if (!SWINGS.has(verb)) return undefined
  if (HUNG_VERBS.has(verb) && things.some(({ head }) => HUNG.has(head))) {
    if (particle === 'down' || particle === 'out' || particle === 'open') return OPENS
    return particle === 'up' || (particle !== undefined && TOGETHER.has(particle)) ? CLOSES : undefined
  }
  if (verb === 'put' || verb === 'drop' || !things.some(({ head }) => HINGED.has(head))) return undefined
  if (
    verb === 'raise' ||
    (verb === 'lift' && particle === undefined) ||
    (particle !== undefined && APART.has(particle))
  )
    return OPENS
  return verb === 'lower' || (particle !== undefined && TOGETHER.has(particle)) ? CLOSES : undefined
}
