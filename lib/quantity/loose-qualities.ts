import { matchesOf } from './matches'

/** Marks and edges that a level or a part is brought to. */
const MARK =
  '(?:(?:\\w+ ){0,3}?(?:lines?|marks?|rings?|rim|brim|lip|seam|pip|neck|slot|notch(?:es)?|window|arrows?|dots?|threads|edge|face|surface|centre|center|middle|top|bottom|min|max|minimum|maximum|full|low|high)\\b)'
/** What contact and ends are told by. */
const CONTACT =
  '(?:touch|kiss|sit|close|light|drag|rub|grip|grab|bite|hold|seat|stop|move|begin|start|nip|bulge|clear|meet|bottom|lift|slide|slip|catch|pinch|resist|tighten|bind|brush|skim|contact)'

/**
 * Limits without a number as freer talk puts them: how far something is brought by a touch, a mark, a likeness.
 * Each row may match much that is no limit; who asks for them weighs them.
 *
 * @source common practice, no source
 */
const PATTERNS: readonly string[] = [
  // Until it just touches, till they stop.
  `(?:until|till|til|so|when|where) (?:it|they|(?:the|both) (?:two )?\\w+|that|you)(?:'s|'re)? (?:(?:just|only|barely|first|can|will|have|has|is|are|feel|to) ){0,3}(?:\\w+ to )?${CONTACT}(?:s|es|ed|ing|ped|ping|ged|ging)?\\b`,
  `(?:just|barely|only just|lightly|nearly) (?:about )?(?:${CONTACT})(?:s|es|ed|ing|ped|ping|ged|ging)?\\b`,
  // Between the two marks; up to the line; below the mark.
  '(?:in )?between (?:the |its |those |these )?(?:two |both |(?:min|max|black|red|white|little|small|painted|upper|lower|stamped|scribed) ){0,3}(?:lines?|marks?|rings?|notch(?:es)?|dots?|arrows?)\\b',
  '(?:over|under) the (?:black|red|white|upper|lower|top|bottom|min|max|minimum|maximum|full|low|high) (?:mark|line|ring|notch)\\b',
  // Dead centre in the window, the middle of the slot, the upper half, half way.
  '(?:dead |right |smack )?(?:in the )?(?:cent(?:re|er)|middle) (?:in|of) (?:the|its|that|this) (?:sight )?(?:window|glass|slot|hole|ring|tires?|tyres?|nozzle|wheel|belt|roller|tube|gauge|cup|bulb)\\b',
  '(?:in |anywhere in |somewhere in |to )?(?:the |its )?(?:upper|lower|top|bottom) (?:half|third|quarter|two[- ]thirds)\\b(?: of (?:the|its) (?:sight )?(?:glass|window|tube|gauge|scale))?',
  'half ?way\\b(?: (?:between|up|down|from|in|along)\\b)?',
  // Room for two fingers, a playing card, a sheet of paper.
  "(?:one|two|three|a) fingers?(?:'s?)?(?: width| wide| deep| thick)?\\b(?= |[,.;]|$)",
  'a (?:playing|business|visiting|credit|post) ?card\\b|(?:a |one )?(?:sheet|slip|thickness|piece) of (?:\\w+ )?paper\\b|(?:cigarette|fag|rolling) paper\\b',
  '(?:no|not|never) (?:wider|thicker|deeper|longer|higher|lower|tighter|looser|thinner|further|bigger|smaller) than (?:the|its|a|your) [a-z]+\\b(?: (?:itself|before))?',
  // As tight as a jam jar, only so strong as fingers can, just taut, stiff but turns.
  '(?:only |just )?(?:as|so) (?:tight|strong|hard|firm|slack|loose) as (?:a |the |your |my )?[a-z]+(?: [a-z]+)?\\b',
  '(?:just|only just|barely|nice and|good and|only) (?:taut|firm|damp|moist|stiff|slack|snug|tight)\\b',
  'stiff(?:ish)?,? but (?:it |they )?(?:still )?(?:turns?|turning|moves?|moving|free)\\b',
  '(?:fingers?|thumb|hand)(?:,| and)? (?:and )?(?:thumb|a (?:bit|little|touch|nip|grunt|hair)|plus a bit|nip)\\b',
  '(?:just )?(?:loose|slack|tight|firm|snug) enough (?:to|that|for)\\b(?: \\w+){1,3}',
  "a (?:hand|finger|thumb)'s (?:breadth|width)\\b",
  'dead in the (?:middle|cent(?:re|er))\\b',
  // Till you see the fresh stuff come.
  '(?:until|till) (?:you )?(?:see |get |have )?(?:some |the |all )?(?:fresh|clean|new|clear) (?:\\w+ )?(?:is |are |starts? )?(?:coming|comes?|running|runs|showing|shows|peeping|peeps)\\b(?: (?:out|through|past|from|of|back))*',
  "(?:until|till) the (?:gap|play|slack|light|wrinkles?|wobble)(?:'s| is| has)? (?:gone|closes|closed|vanished|vanishes)\\b",
  `between (?:the )?(?:\\w+ ){0,2}(?:min|max|minimum|maximum|low|high|middle|top|bottom|lower|upper|full|half)(?: \\w+)? and (?:the )?${MARK}`,
  `(?:up to|to|at|on|below|above|inside|within|level with|even with|flush with|in line with|lined up with|against|past|in the middle of) (?:the|its|that|this|both) ${MARK}`,
  // Half full, two thirds full, half the cup.
  '(?:half|halfway|half way|quarter|(?:a |one[- ]|two[- ])?thirds?|three[- ]quarters?) (?:full|up|of the way|the (?:tank|cup|glass|pot|way|jar|depth)|a (?:tank|cup|glass))\\b',
  // The same on both sides; equal to; level with each other.
  '(?:the )?(?:same|equal|even|alike) (?:reading |amount |gap |distance |height |length |figure |tension )?(?:on |at |from |to |as |all )?(?:both|each|either|all|every|the)\\b(?: \\w+)?',
  '(?:level|even|flat|parallel|square|flush|in line|centred|centered) (?:with|to|against) (?:it|the|each|its|that|this|both)\\b(?: \\w+)?',
  // No tighter than; as the hand does it.
  '(?:hand|finger|wrist|thumb)[- ]?tight(?:ened|en)?\\b',
  '(?:must|should|has to|have to|wants? to|needs? to|is to|are to) (?:be|sit|stand|lie|come|end up) (?:dead |perfectly |all )?(?:flush|level|flat|square|straight|parallel|even|snug|tight|in line)\\b',
  // Only by hand; with just your fingers; with fingers and no spanner.
  '(?:only|just|nothing but|no more than) (?:(?:by|with|your|the|my|two|a|bare) ){0,3}(?:fingers?|hands?|fingertips?|thumb|palm)(?: pressure| strength| force)?\\b',
  '(?:by|with|using) (?:(?:only|just|your|the|my|two|bare) ){0,3}(?:fingers?|hands?|fingertips?|thumb)(?: pressure| strength| force)?\\b(?=,? (?:and )?(?:leave|no|not|nothing|never|without|don.t|keep|put|hands off|only|alone|then (?:a|one|just)|pliers|spanners?|wrench(?:es)?|tools?|grips))',
  // Till it comes back at you; until fresh grease shows.
  '(?:until|till) (?:it|they|she|he|some|the \\w+|fresh \\w+|new \\w+|clean \\w+|oil|water|fluid|grease)(?:.s|.ll)? (?:just |only |starts? to |begins? to )?(?:runs?|comes?|dribbles?|drips?|weeps?|trickles?|flows?|spills?|oozes?|drools?|peeps?|pushes|squeezes|shows?)(?: (?:out|back|over|up|off|at|from|of|past|through|by))+(?: (?:the |its |that |my )?\\w+){0,2}',
  // A needle out of the red, a gauge in the green.
  '(?:out of|in|into|inside|within|off|clear of) the (?:red|green|yellow|white|orange)(?: (?:zone|band|part|field|area|arc|sector|bit|mark))?\\b',
  // Half of the glass; just above the coils.
  '(?:half|halfway|half way|middle|two[- ]thirds|three[- ]quarters) (?:of|up|down|in) (?:the|its) (?:sight )?(?:glass|window|tube|bowl|cup|hole|jar|gauge|reservoir|tank)\\b',
  '(?:just|right|barely) (?:above|below|over|under|past|short of|clear of|proud of) (?:the|its) \\w+',
  // Fingers only; by hand and no spanner.
  '(?:with |by )?(?:your |the |just )?(?:fingers?|hands?|thumb)(?:,? and nothing else| only| alone|,? no (?:tools?|wrench|wrenches|spanner|spanners|pliers|grips))\\b',
  // To the second click, to the first notch, to the upper half.
  '(?:to|at|till|until|past|on) (?:the |its |that )(?:(?:first|second|third|last|next) )?(?:click|detent|stop|shoulder|bead|step)\\b',
  'to the (?:upper|lower|top|bottom) (?:half|third|quarter)\\b',
  // Just weeping at the hole.
  '(?:just |only |barely )?(?:weeps?|weeping|dribbles?|dribbling|trickles?|runs?|spills?|comes?) (?:out )?(?:at|of|from|over) the (?:\\w+ )?(?:hole|plug|lip|edge|spout|weir|overflow)\\b',
  "(?:just |only )?(?:nip|nips|nipped|pinch|pinched) (?:it|them|up|him|her)\\b|(?:is|are|it's|be|just|only) nipped\\b",
  "(?:a|one) (?:thumb|finger|hand|pencil|card|coin|whisker|hair)(?:'s)?(?: |-)?(?:width|deep|wide|thick|thickness|breadth|over|under|clear)?\\b(?= (?:of|between|deep|gap|from|at)|[,.])",
  '(?:no|nothing|not any|without any|without) (?:play|slack|wobble|gap|looseness|movement|shake|rock|drag|bubbles?|leaks?|drips?)\\b',
  '(?:with|has|have|a|some|bit of|little|slight|light|gentle|firm) (?:slight |light |gentle |firm |faint |even |steady )(?:drag|resistance|rub|friction|pressure|pull|push|nudge|play|grip|squeeze)\\b',
]

const LOOSE = new RegExp(`\\b(?:${PATTERNS.join('|')})`, 'gi')
/** A word that any of them holds, so that most sentences are passed over at once. */
const ANY =
  /\b(?:rings?|lip|seam|pip|neck|slot|half ?way|cards?|paper|enough|dead|breadth|(?:wider|thicker|deeper|longer|higher|lower|tighter|looser|thinner|further|bigger|smaller) than|(?:as|so) (?:tight|strong|hard|firm|slack|loose)|taut|damp|moist|stiff|slack|firm|until|till?|so|when|where|just|barely|lightly|nearly|between|lines?|marks?|rim|brim|notch(?:es)?|window|arrow|dots?|threads|edge|face|surface|cent(?:re|er)|middle|top|bottom|max|min|full|half|halfway|quarter|same|equal|even|alike|flat|level|parallel|square|flush|tight|\w+tight|red|green|yellow|white|orange|palm|fingertips?|nip\w*|pinch\w*|thumb|fingers?|hands?|clicks?|detent|stop|shoulder|bead|step|weep\w*|dribbl\w*|trickl\w*|spills?|hole|thirds?|no|nothing|without|drag|resistance|rub|friction|nudge)\b/i

/** A stretch [at, to) of a text that may be a limit without a number. */
export type Loose = { readonly at: number; readonly to: number; readonly text: string }

/** @returns every stretch that may be a limit without a number, in order; linear in the length of a sentence */
export const findLooseQualities = (text: string): readonly Loose[] =>
  ANY.test(text)
    ? matchesOf(text, LOOSE).map(match => ({ at: match.index, to: match.index + match[0].length, text: match[0] }))
    : []
