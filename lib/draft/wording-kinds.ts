import { singular } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { TOOL_HEADS } from '@/lib/trade/tools'
import type { Stretch } from './wording-stretch'

const TOOLS = new Set(TOOL_HEADS)

/** What is always worn, wherever in a name it stands. */
export const ALWAYS_WORN =
  'glasses|goggles|gloves|respirator|visor|shields?|face screens?|muffs|defenders|apron|boots|helmets?|harness|spectacles|hard hats?|hairnets?|gauntlets'
export const WORN = new RegExp(
  `\\b(?:${ALWAYS_WORN}|masks?|ear ?plugs|overalls|sleeves|wrist strap|hi-vis|wellies|wellingtons|waterproofs|gaiters)\\b`,
  'i',
)
/** Tools that do their work in a hand; others ("jack", "tray", "stand") are put somewhere. */
export const HANDY =
  /\b(?:brush(?:es)?|grease gun|spinner|toothbrush|spanners?|wrench|ratchet|sockets?|screwdrivers?|driver|pliers|grips|tweezers|knife|scraper|file|vacuum|hammer|mallet|punch|drift|chisel|meter|multimeter|tester|micrometer|calipers?|verniers?|gauges?|feelers?|indicator|ruler|straightedge|square|syringe|allen|torx|hex|hex key|hexes|emery|sandpaper|saw|iron|heat gun|torch|bar|lever|puller|press|extractor|scope|thermometer|loupe|stone|swabs?|buds?|rag|cloth|tissue|sponge|steel wool|wire wool|scrub pad|pad|skewer|toothpick|cocktail stick|tape measure|flathead|phillips|pozi|spatula|marker|pencil|pen)$/i
export const CLEANS =
  /\b(?:cloth|rag|brush|toothbrush|vacuum|swabs?|buds?|cotton|sponge|cleaner|alcohol|isopropyl|spirit|naphtha|degreaser|solvent|detergent|soap|tissue|air|duster|hoover|towel|wipes?|steel wool|scrub pad|scraper)\b/i
export const MEASURES =
  /\b(?:tape(?: measure)?|ruler|rule|calipers?|verniers?|gauges?|micrometer|meter|multimeter|feelers?|straightedge|straight edge|tester|thermometer|indicator|scope|scale|scales|protractor|level)\b/i
export const FASTENERS =
  /\b(?:bolts?|screws?|nuts?|studs?|clips?|thumbscrews?|nails|rivets|latches|locks|catches|(?:button|cap|cross|hex|allen)[ -]?heads)\b/i
const STUFF =
  /\b(?:oil|water|grease|paste|glue|sealant|cleaner|spirit|alcohol|isopropyl|naphtha|threadlock(?:er)?|silicone|wax|soap|detergent|acid|lube|lubricant|powder|graphite|chalk|talc|cement|solder|flux|varnish|paint|primer|ink|fluid|solution|degreaser|remover|compound|putty|adhesive|coolant|rosin|beeswax|cardboard|newspaper|paper|foil)$/i
export const MEASURED =
  /^(?:(?:a|an|the|just|only|one|two|three|four|couple of|few|wee|little|tiny|small|good|thin|light|single|another) )*(?:drops?|dabs?|smears?|touch|coats?|squirts?|film|spots?|blobs?|beads?|splash|pinch|lick|shots?|speck|whisper|puff|smidge|spray|wipe) of\b/i
export const PIECES = /^(?:(?:a|an|one|two|little|small|wee) )*(?:bits?|pieces?|strips?|sheets?|lengths?|scraps?) of\b/i
export const STROKES =
  /^((?:a|an|one|two|three|four|five|six|ten|twenty|thirty|another|couple of|few|good|quick|light|gentle|sharp|last|final|full|more|\d+) )+(turns?|strokes?|taps?|wipes?|rinse|pass(?:es)?|knocks?|clout|rub|flush|wiggle|twists?|tugs?|blasts?|squeeze|shake|polish|whack|sweep)(?= |,|$)(?! of (?:oil|grease|the|a)\b)/i
export const TIME =
  /^(?:(?:about|at least|another|just|say|only|a|for|good) )*(?:(?:[\d.]+|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty|sixty|half|quarter of|couple of|few|to|or|an|and|a)[ -])+(?:seconds?|minutes?|hours?|days?)(?: at least| or so| or more| minimum)?(?=$|,| (?:at|in|on|with|per|under)\b)/i
export const FRESH = /^(?:a |the |your |two |three |four )?(?:new|fresh|brand-new)\b/i
export const BEARS = /^(?:of|at|by|for|from|near|per|about|without|within|than|until)$/
export const PUTS =
  /^(?:into|onto|over|under|underneath|beneath|below|round|around|through|against|between|across|along|on|in|to|down|up|inside|behind|towards?|beside)$/
export const ONLY_THERE = /^(?:on|under|in|behind|inside|below|under|between|beside|along)$/

/** What parts do only where a hand makes them: "the mesh slides out". */
export const BY_HAND = 'slide|pull|lift|swing|pop|peel|tilt|slip|flip|prise|twist|unscrew|unhook|unclip|unplug'

export const NO_THING =
  /^(?:upstairs|downstairs|outdoors|outside|inside|all (?:the way|round)|same|other way|each way|yes)\b/i
export const NO = /^(?:no|not|never|nor|without|nothing|none)\b/i

const isVerb = (tokens: readonly Token[], i: number): boolean => {
  const { tag, word } = tokens[i] ?? {}
  // "A wipe of oil", "under it".
  if ((tokens[i + 1]?.word === 'of' && tag === 'verb') || (word === 'it' && tokens[i - 1]?.tag === 'preposition'))
    return false
  // "Its drive strap".
  if (tag === 'verb' && tokens[i - 1]?.tag === 'determiner' && !tokens[i]?.isAfterPause) return false
  if (/ings$/.test(word ?? '')) return false
  if (tag === 'verb' || tag === 'third' || tag === 'auxiliary' || tag === 'modal') return true
  if (/^(?:i|we|you|he|she|they|it|there|tha|which|who|what|how|why|where)$/.test(word ?? '')) return true
  return (
    tag === 'past' &&
    !/^(?:determiner|adjective|adverb|number|preposition|and)$/.test(tokens[i - 1]?.tag ?? 'determiner')
  )
}

export const isVerbless = (tokens: readonly Token[], { from, to }: Stretch): boolean => {
  for (let i = from; i < to; i++) if (isVerb(tokens, i)) return false
  return true
}

const isPlural = (thing: string): boolean => {
  const last = thing.split(' ').at(-1) ?? ''
  return singular(last) !== last || /(?:tweezers|pliers|grips|gloves|calipers|scissors|glasses|goggles)$/i.test(last)
}

export const SETTLED =
  /^(?:the|a|an|your|my|our|its|his|this|that|these|those|both|all|each|every|some|any|another|one|two|three|four|five|six|seven|eight|nine|ten|twelve|half|\d\S*|plenty|lots)\b/i

const SIZED =
  /^(?:\d\S*|(?:twenty-|thirty-)?(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|thirteen|fifteen|seventeen|nineteen|twenty|thirty))(?:-| (?:mil|mm|inch|millimetre|point|spanner|wrench|socket|driver|hex)\b)/i

/** "a bottle brush", "tweezers": a tool nobody has spoken of yet. */
export const withA = (thing: string, noun: string): string => {
  if (SETTLED.test(thing) && (!SIZED.test(thing) || isPlural(noun))) return thing
  if (isPlural(noun) || STUFF.test(noun) || /\b(?:wool|emery|sandpaper|cotton)$/i.test(noun)) return thing
  return `${/^(?:[aeiou]|8|11|18)/i.test(thing) ? 'an' : 'a'} ${thing}`
}

const REMOVES =
  /\b(?:undo|undone|unscrew\w*|unbolt\w*|remov\w*|loosen\w*|slacken\w*|unclip\w*|off|comes? out|take out|strip\w*|dismantl\w*)\b/i
const FITS =
  /\b(?:back (?:on|in)|refit\w*|fit|fitted|fits|tighten\w*|torque\w*|newton|foot[ -]pounds?|reassembl\w*|goes (?:back|on|in)|new|install\w*|snug\w*|nipped)\b/i

/** Whether what stands around takes things off or puts them on; undefined where it tells neither, or both. */
export const direction = (texts: readonly (string | undefined)[]): 'off' | 'on' | undefined => {
  for (const text of texts) {
    if (text === undefined) continue
    const [off, on] = [REMOVES.test(text), FITS.test(text)]
    if (off !== on) return off ? 'off' : 'on'
  }
  return undefined
}

/** What fits or holds, whatever else is said. */
const FITTED =
  /\b(?:newton|pounds?|n\.?m|snug|tight\w*|torque\w*|plus an?|fingers?|fits?|new|back)\b|\bat (?:\d|[a-z]+ty\b)/i

/** Whether anything said around fasteners speaks of fitting them: else they are named to be taken off. */
export const tellsFitting = (texts: readonly (string | undefined)[]): boolean =>
  texts.some(text => text !== undefined && FITTED.test(text))

export const hasTool = (noun: string): boolean => {
  const words = noun.toLowerCase().split(' ')
  const last = singular(words.at(-1) ?? '')
  return HANDY.test(noun) || TOOLS.has(words.slice(-2).join(' ')) || TOOLS.has(last)
}
/** Whether a name is of what is used up and has no number: grease, paper. */
export const isStuff = (noun: string): boolean => STUFF.test(noun)
