import { wordSet } from '@/lib/trade/list'
/** The small words of instructions, as far as reading them needs. English, no source. */

export const DETERMINERS = wordSet(
  'the a an this that these those your its his her their both all each every any another it them some old new used one',
)

export const PREPOSITIONS = wordSet(`
  from of to with into onto in on at under underneath by for using through across over against between behind beneath below above around towards toward until till without
  before after when while if once so because which that where as than along past near beside off inside outside within per unless during and or but who whose via upon
  beyond facing clear whenever wherever rather ready round opposite`)

/** Words that open a condition rather than an instruction. */
export const LEADS = wordSet(`
  with when once after before if while using for on at in by as so because since to without from until till unless during where which that who whose under
  behind inside wherever whenever having being`)

/** Words before the verb that change nothing. */
export const SKIPPED = wordSet(`
  now then next first again finally also always just please you must should need have to will we i i'll we'll you'll let's gonna want wanna go ahead okay right so
  well still only simply secondly lastly meanwhile afterwards thirdly or`)

export const NEGATIONS = wordSet("not never don't no cannot can't avoid")

/** Particles that are never prepositions after an object. */
export const FIRM = wordSet('off out away apart loose free shut back aside home closed wide')

/** Verbs that nobody takes for nouns. */
export const SURE_VERBS = wordSet(`
  remove refit reinstall install tighten loosen disconnect reconnect connect unplug unscrew undo open close fill refill check inspect measure torque take put fit insert
  reassemble replace restore pour add dispose apply keep wear wipe`)

/** Verbs that are nouns too: after "and" they count as verbs only before an article, a number or a particle. */
export const NOUNS_TOO = wordSet(`
  drain seal clip screw bolt oil grease plug cap cover lock tag switch pin clamp hook file drill brush filter spring washer key rest tap hose paint check lever press pump nail
  rivet tape tie wedge block prop support strap lash latch shim load fold thread feed route string lace nest stack place position slide slip slot snap hang seat push hitch power
  fire trip reset ground earth charge jump bridge choke prime vent heat cut zero coat spray dab fill top dip wet work butter wax dress mist mix dose test look feel try probe sight
  scan meter mark label note record log sketch stamp date punch film set soak form solder weld glue face part score notch bag bin scrap shield mask glove use lap pick
  level square blade turn roll wind tilt tip lift jack drop wheel park back bump nudge stretch grip bend crank throttle run start stop screen trap strip release lead ring centre
  link button buckle zip lace catch mate chain stopper dose spill discharge boost split break swing dump plug-in let
  center stand clutch brake saw nut housing body boot frame plane gauge mount cable hold time second hand lower drive handle hinge shroud bed box trim bottom arm rod chuck
  pad peg hammer line float exhaust wire contact supply display trigger mill watch die brace drift guide step dial tension balance vacuum bore hoist ramp sling crane chock
  funnel syringe staple padlock toggle thumb loop pack shear bead pit pivot index batten anchor taper`)

/** @returns whether a word is an adverb of manner by its ending. */
export const isAdverb = (token: string): boolean =>
  /(?:[a-z]{2}wards?|lengthwise|sideways|upright)$/.test(token) ||
  (token.endsWith('ly') &&
    token.length > 4 &&
    !/^(?:assembly|supply|apply|reassembly|poly|family|fly|butterfly|dragonfly|gully|belly|anomaly|jelly|tally|reply|multiply|trilby)$/.test(
      token,
    ))
