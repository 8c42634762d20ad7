import type { Hazard } from '@/lib/trade/hazard'
import { HAZARDS as SHARED } from '@/lib/trade/hazards'
import { HAZARD_CLASSES } from '@/lib/trade/hazards-classes'
import { HAZARD_CONTEXTS, type HazardContext } from '@/lib/trade/hazards-context'
import { DEED_HAZARDS } from '@/lib/trade/hazards-deeds'
import { HAZARD_KINDS } from '@/lib/trade/hazards-kinds'
import { MORE_HAZARDS } from '@/lib/trade/hazards-more'
import { onceForText } from './memo'

/** Hazards with weights fitted to them, which a caution may be against by field, by words or by those weights. */
export const LEXICON: readonly Hazard[] = [...SHARED, ...MORE_HAZARDS]
/** Every hazard the review looks for. */
export const HAZARDS: readonly Hazard[] = [...LEXICON, ...DEED_HAZARDS]
/** Hazards of a single deed by id: each has words of its own that answer just that, and no weights are fitted to it. */
export const DEEDS: ReadonlyMap<string, Hazard> = new Map(DEED_HAZARDS.map(hazard => [hazard.id, hazard]))

/** @returns whether a hazard is one of a single deed, answered by any caution of it wherever it stands. */
export const isOfDeed = (hazard: Hazard): boolean => DEEDS.has(hazard.id)
const CONTEXTS: readonly HazardContext[] = [...HAZARD_CONTEXTS, ...HAZARD_CLASSES, ...HAZARD_KINDS]
const BY_ID = new Map(HAZARDS.map(hazard => [hazard.id, hazard]))

/** What the review reads beyond the lexicon's own signs. */
type Signs = {
  readonly signals?: RegExp
  readonly known?: RegExp
  readonly hints?: RegExp
  /** What in the same text shows that it is something else. */
  readonly not?: RegExp
  /** Replaces the lexicon's `known` where that takes too much for a word about it. */
  readonly knownOnly?: RegExp
  /** What shows that a mere hint is something else. */
  readonly noHint?: RegExp
}

/** Wider signs by hazard: whole classes of machines and wordings. General knowledge, no source. */
const MORE: Readonly<Record<string, Signs>> = {
  'electric-shock': {
    known:
      /\b(?:pull\w*|take|draw) (?:out )?(?:the|its) (?:[\w-]+ )*plug\b|\bswitch(?:ed)? off\b|\bpower(?:ed)? (?:off|down)\b/i,
    knownOnly:
      /\b(?:shock\w*|electr(?!ician)\w*|live|isolat\w*|prove[ds]? (?:it |them |the \w+ )?dead|dead|lock(?:ed)? ?out|volt(?:s|age)?|\d+ ?v|mains|discharg\w*|unplug\w*|breaker|current)\b/i,
    noHint: /\b(?:bolt|chain|bead|nut|rivet|ice|concrete|rock|link|shear) breakers?\b/i,
  },
  fuel: { knownOnly: /\b(?:vapou?rs?|flammable|ignit\w*|sparks?|flames?|smok\w*|fire|explo\w*|burst into)\b/i },
  pressure: {
    not: /\blow[- ]pressure\b|\bboiler door\b/i,
    knownOnly:
      /\b(?:pressur\w*|burst\w*|whip\w*|eject\w*|jet|steam|scald\w*|compressed air|blow(?:s|n|ing)?|spray\w*|throw\w*|squirt\w*|hiss\w*|trapped air|bleed)\b/i,
    signals:
      /\b(?:open|undo|unscrew|remove|release|crack|loosen|slacken|take off|lift off|pull off|disconnect)\w*\b[^.;]*\b(?:(?:radiator|expansion tank|header tank|coolant (?:reservoir|tank|bottle)|cooling system|boiler|autoclave|steri[lz]i[sz]er|pressure (?:cooker|pot)|receiver|air (?:reservoir|receiver|cylinder|vessel)) (?:pressure )?(?:cap|lid|door|drain|valve|plug|tap|cock|hose)|receiver (?:condensate )?drain|condensate drain|steam (?:tap|valve|wand|trap|line)|air (?:coupling|fitting|chuck|bag|bellows))\b/i,
    known: /\bcompressed air\b|\bthrow\w*\b|\bsquirt\w*\b/i,
  },
  'hot-surface': {
    hints: /\b(?:wait|leave|allow)\w*\b[^.;]*\b(?:cold|cool(?:s|ed|ing)?)\b/i,
    signals:
      /\b(?:open|undo|unscrew|remove|take off|drain|touch|pull)\w*\b[^.;]*\b(?:expansion tank|header tank|radiator|steam|boiler|portafilter|fryer|hot ?plate|kettle|autoclave)\b/i,
    knownOnly: /\b(?:burn\w*|hot|scald\w*|cool\w*|heat\w*|steam|warm|boil\w*|blister\w*|sear\w*)\b/i,
    noHint: /^(?!.*\b(?:drain|empty|let|run)\b).*\bremaining water\b/i,
  },
  crush: {
    not: /\bjack\b[^.;]*\boff\b|^hoist\b(?![^.;]*\b(?:crane|blocks?|winch|tackle|slings?|chains?|straps?|eye|with (?:a|the) hoist)\b)/i,
    knownOnly:
      /\b(?:crush\w*|fall(?:s|ing)?|drop\w*|jack\w*|stands?\b(?! (?:clear|back|aside|to|out|away|well))|lift\w*|heavy|pinch\w*|trap\w*|collaps\w*|tip(?:s|ped|ping)?|support\w*|two people|second person|helper|raised|hoist|weigh\w*|slip(?:s|ped)?|loads?|strain\w*|under (?:a|the|it|any|what|that)\b(?! pressure))\b/i,
    signals:
      /\b(?:tip|tilt|lay|set|put|stand|roll|turn|drive|place)\w*\b[^.;]*\b(?:truck|vehicle|van|car|machine|tractor|mower|trailer|engine|press|lift)\b[^.;]*\b(?:on|onto)\b[^.;]*\b(?:stands?|blocks|trestles|ramps)\b|\b(?:tip|tilt|lay|turn|roll)\w*\b[^.;]*\b(?:truck|vehicle|tractor|trailer|cabinet|dryer|washer|fridge|freezer)\b[^.;]*\b(?:on|onto|over|to)\b[^.;]*\b(?:side|back)\b|\b(?:lift|carry|draw|slide|lower|pull|move|tip|hold)\w*\b[^.;]*\b(?:two people|a (?:helper|second person|colleague)|a hoist|a crane)\b|\btest load\b|\bcounterweights?\b/i,
  },
  'heavy-part': {
    knownOnly:
      /\b(?:heav\w*|lift\w*|strain\w*|weigh\w*|helper|two people|second person|hoist|\d+ ?(?:kg|kilos?|lbs?|pounds?)|carry|drop\w*|falls? on|topple\w*|tip\w*)\b/i,
  },
  height: {
    knownOnly:
      /\b(?:(?:a |you |to )fall|falls? (?:from|off|down)|fall(?:ing)? (?:from|off)|ladders?|height|roof|harness|slip off|climb\w*|platform|scaffold|rungs?)\b/i,
    signals:
      /\b(?:(?:work|access|lift|aerial|elevating) platforms?|mewp|cherry picker|scissor lift|man ?lift|bucket truck|climb\w* (?:up|onto|on|the|into|to)|(?:go|get) up (?:with|on|onto|to|the)|(?:on|onto) (?:the )?(?:roof|top of the (?:machine|tank|vehicle|silo|trailer|truck|container|unit|oven|boiler))|catwalk|(?:telegraph|light|lamp|utility) pole|trestles?)\b/i,
    not: /\b(?:lay|place|load|put|set|rest|support)\w*\b[^.;]*\bon(?:to)? (?:the |two )?trestles?\b|(?<=[a-z] )climb\w* (?:(?:up|over|on|onto|off|out of) )?(?:(?:the|a|its|no|any) )?(?:[a-z]+ )?(?:sprocket|rail|flange|teeth|guide)\b|\b(?:chain|tilt|lower|raise|rest|rock)\w*\b[^.;]*\bmast\b|^(?!.*\b(?:climb|ladder|steps|harness|(?:up|on) the mast)\b).*\bmast\b/i,
  },
  sharp: {
    not: /\briving knife\b|\b(?:bolts?|screws?|nuts?) (?:of|holding|on|in) (?:the |each |both |its )?(?:[\w-]+ ){0,2}(?:knife|knives|blades?|cutters?)\b/i,
    knownOnly:
      /\b(?:cuts?(?! off)\b|cutting|sharp|gloves?|lacerat\w*|edges?|slic\w*|teeth|barbs?|burrs?|splinters?|razor\w*|gash\w*)\b/i,
    signals:
      /\b(?:slide|pull|draw|press|push|put|hold|take|wipe|brush|grip|carry|unscrew|slip|insert|mount|set|swap|scrape|turn)\w*\b[^.;]*\b(?:(?<!(?:wiper|fan|rotor|turbine|switch|feeler) )blades?|(?<!\b(?:side|wire|cable|bolt|pipe|tube|diagonal|flush|tile) )cutters?|knife|knives|cutting (?:disc|wheel|chain)|scalpel|razor)\b/i,
    known: /\bpierc\w*\b|\bneedle\b|\bprick\w*\b|\bteeth\b|\bstab\w*\b/i,
  },
  'flying-particles': {
    not: /\b(?:without (?:a |any |the )?(?:board|workpiece|work|stock|load|material)|no[- ]load|idle)\b/i,
    known:
      /\bnails?\b|\bstaples?\b|\bthrow\w* (?:the |a |up |out )?(?:\w+ )?(?:chips?|debris|boards?|splinters?|swarf|work|grit|sparks?|wood)\b/i,
  },
  battery: {
    knownOnly:
      /\b(?:hydrogen|(?:battery|batteries|cells?|gas)\b[^.;]*\b(?:gas|explo\w*)|explo\w*\b[^.;]*\b(?:battery|gas)|sparks?|sparking|shorts?|shorted|shorting|bridg\w*|jewell?ery|rings?|arcs?|arcing)\b/i,
  },
  'rotating-parts': {
    known: /\bshear\w*\b|\brotors?\b|\bneedle\b|\btreadle\b|\bmoves?\b|\bcloth(?:es|ing)\b|\bcoasting\b/i,
    not: /\bspin\w*\b[^.;]*\b(?:lockrings?|nuts?|caps?|lids?|covers?|rings?|cassettes?|filters?|collars?)\b/i,
  },
  'engine-saw': {
    knownOnly:
      /\b(?:kick\w*|chips?|eyes?|glasses|goggles|visor|face shield|helmet|flying|moving chain|chain (?:can|could|will) \w*)\b/i,
  },
  capacitor: { known: /\bcapacitors\b|\b(?:holds?|keeps?) (?:its|a|their) charge\b|\bstored charge\b/i },
  'compressed-air': {
    // Opened or uncoupled, the line brings pressure; it blows nobody's eyes full.
    not: /\blet\b[^.;]*\bblow through\b|\b(?:open|close|shut|connect|disconnect|uncouple|unhook|unplug|pop|pull|plug|push|snap|click|couple|crack|turn|bleed|vent)\w*\b[^.;]*\bair (?:line|hose|supply|valve|tap|cock|coupling|isolator)\b/i,
    known: /\bair (?:line|hose|supply)\b|\bkeep (?:the )?air\b|\bno air\b/i,
  },
  radiation: { knownOnly: /\b(?:laser|uv|ultraviolet|beam|arc|welding(?! (?:fumes?|smoke|gas))|flash|radiation)\b/i },
  aerosol: {
    signals:
      /\bspray\w*\b[^.;]*\bwith (?:a |some |the |a little )?(?:[\w-]+ )?(?:silicone|lube|dye|penetrant|developer|wax|paint|primer|lacquer|release agent|zinc)\b/i,
  },
  sewage: { not: /\b(?:in(?:to)?|down|to) the (?:foul|waste ?water) (?:drain|pipe|gully)\b/i },
  chemical: {
    not: /\b(?:rope|fire|stove) cement\b/i,
    signals:
      /\b(?:chlorinated|chlorine|disinfectants?(?! wipes?)|sanitis\w+|sanitiz\w+|glycol|hardener|cleaning (?:powder|agent|fluid|solution|tablets?|acid)|limescale remover|muriatic|peroxide|hypochlorite|herbicide|insecticide|formaldehyde|(?:uncured |epoxy |polyester |liquid )?resin(?! (?:level|bed|bottle|beads?|tank|column|charge))|cement|quicklime|mercury|flux remover|contact cleaner|two-part)\b/i,
    knownOnly:
      /\b(?:acids?|acidic|caustic|chemicals?|fumes?|poison\w*|toxic|corrosi\w*|corrod\w*|splash\w*|cleaners?|descaler|bleach|chlor\w*|ammonia|coolant|antifreeze|glycol|brake fluid|degreaser|epoxy|data sheet|goggles|gloves?|irritat\w*|powder|alkali\w*|swallow\w*|sanitis\w+|sanitiz\w+|solvents?|lye|harms? (?:the )?skin)\b/i,
  },
  dust: {
    knownOnly:
      /\b(?:dust\w*|masks?|respirators?|fibres?|fibers?|soot|fly ash|asbestos|silica|inhal\w*|toner|powder)\b/i,
    signals:
      /\b(?:vacuum|sweep|blow|brush|knock|shake|clean|wipe)\w*\b[^.;]*\b(?:(?:carbon|brake|clutch|wood|grinding|cement|stone|toner|metal|lead) dust|dust\b[^.;]*\b(?:motor|commutator|armature|brush(?:es| holders?)?|brakes?|clutch))\b/i,
    noHint:
      /\b(?:safety|work|steel-toe\w*) shoes\b|\b(?:oil|waste|fluid|storage|cable) drum\b|\bdrum\b[^.;]*\b(?:waste|collection|disposal)\b/i,
  },
}

/** "The cap of the expansion tank" is the expansion tank cap: signs are written for the second form. */
const flattened = (text: string): string =>
  text.replaceAll(/\b([a-z-]+) of (?:the |a |an |its |this |each )([a-z-]+(?: [a-z-]+)?)(?=[ ,.;:]|$)/gi, '$2 $1')

/** Both forms of a text, for signs of either. */
const formsOf = (text: string): string => {
  const flat = flattened(text)
  return flat === text ? text : `${text}\n${flat}`
}

/** A pan put ready under a bowl brings no danger yet. */
const READIES =
  /^(?:then |now )?(?:put|place|set|slide|lay|position|hold|have|shove|slip|kick|push|stick|stand|get|shift)\b[^.;]*\b(?:trays?|pans?|buckets?|bowls?|basins?|containers?|jars?|jugs?|rags?|cloths?|towels?|cardboard|sheets?|tubs?|pads?)\b[^.;]*\b(?:under(?:neath)?|below|beneath|ready)\b(?![^.;]*\b(?:and|then) )/i
const NO_HAZARDS: readonly Hazard[] = []

/** @returns the hazards that a text signals. */
export const hazardsIn = onceForText((text: string): readonly Hazard[] => {
  if (READIES.test(text)) return NO_HAZARDS
  const forms = formsOf(text)
  return HAZARDS.filter(
    ({ id, signals, not }) =>
      (signals.test(forms) || MORE[id]?.signals?.test(forms) === true) &&
      not?.test(text) !== true &&
      MORE[id]?.not?.test(text) !== true,
  )
})

/** Rows of the table that a text matches, whatever the machine. */
const rowsFor = onceForText((text: string): readonly HazardContext[] => {
  if (READIES.test(text)) return []
  const forms = formsOf(text)
  return CONTEXTS.filter(({ signals, not }) => signals.test(forms) && not?.test(text) !== true)
})

/** A hazard that a text signals only on certain machines. */
export type InContext = { readonly row: HazardContext; readonly hazard: Hazard; readonly isHint: boolean }

/** @returns what a text may signal, each for its machine; computed once a text. */
export const contextHazards = onceForText((text: string): readonly InContext[] =>
  rowsFor(text).flatMap(row => {
    const hazard = BY_ID.get(row.hazard)
    return hazard === undefined ? [] : [{ row, hazard, isHint: row.isHint === true }]
  }),
)

/** @returns the rows of the table that hold on a machine, as title and equipment name it. */
export const rowsOn = onceForText(
  (machine: string): ReadonlySet<HazardContext> =>
    new Set(CONTEXTS.filter(row => row.machine.test(machine) && row.notMachine?.test(machine) !== true)),
)

/** @returns those it hints at. */
export const hintsIn = onceForText((text: string): readonly Hazard[] =>
  HAZARDS.filter(
    ({ id, hints }) =>
      (hints?.test(text) === true || MORE[id]?.hints?.test(text) === true) && MORE[id]?.noHint?.test(text) !== true,
  ),
)

/** @returns ids of the hazards that a caution's words speak of. */
export const knownIn = onceForText(
  (text: string): ReadonlySet<string> =>
    new Set(
      LEXICON.filter(
        ({ id, known }) => (MORE[id]?.knownOnly ?? known).test(text) || MORE[id]?.known?.test(text) === true,
      ).map(({ id }) => id),
    ),
)
