import { ACTIONS, IRREGULAR } from '@/lib/trade/actions'
import { ACTS, PARTICLES } from '@/lib/trade/pairs'
import { onceForText } from './memo'

const TOKEN = /[a-z0-9]+(?:[-'’./][a-z0-9]+)*|[,;:.!?()]/g

/** @returns words (lower case, inner hyphens and points kept) and punctuation, in order. */
export const tokensOf = onceForText(
  (text: string): readonly string[] => text.toLowerCase().replaceAll('’', "'").match(TOKEN) ?? [],
)

const KEEP_S = /(?:ss|us|is|ics|gas|chassis|lens|always)$/

/** Plurals in -ves of nouns in -f and -fe. English, no source. */
const IN_F: ReadonlyMap<string, string> = new Map([
  ['leaves', 'leaf'],
  ['halves', 'half'],
  ['knives', 'knife'],
  ['shelves', 'shelf'],
  ['sheaves', 'sheave'],
  ['scarves', 'scarf'],
  ['hooves', 'hoof'],
])

/** @returns the singular of a noun as written, lower case; words that are no plural come back unchanged. */
export const singular = (word: string): string => {
  if (word.length < 4 || !word.endsWith('s') || KEEP_S.test(word)) return word
  const inF = IN_F.get(word)
  if (inF !== undefined) return inF
  if (word.endsWith('ies') && word.length > 4) return `${word.slice(0, -3)}y`
  if (/(?:x|ch|sh|ss|zz)es$/.test(word)) return word.slice(0, -2)
  return word.slice(0, -1)
}

/** Plain verbs of orders that the trades' lexicon leaves to the general language. English, no source. */
const MORE_VERBS = `
  sponge hose mop towel dust sieve plunge sluice smear daub wring rod
  accept access acknowledge adapt advise agitate alter announce answer approve ascertain assist attend await
  balance beat blank blast blend book bow brace cancel chafe chalk chamfer clarify cleanse collapse combine
  commission convey crease cross damp debur declare decrease deflate defrost degas deliver deposit depress
  describe detect determine direct dislodge dispense display distribute divert draft eject elevate eliminate
  encircle enclose enlarge equalise equalize erase erect escort establish estimate evaluate execute exercise
  exhaust expel extinguish familiarise familiarize funnel grasp halt haul heave humidify immerse immobilise
  immobilize impregnate inflate inform inhibit initiate instruct interlock interrupt introduce invert invite jolt
  launch light limit line link loop manoeuvre maneuver massage muffle notify obey orient orientate overlap oversee
  pad pass paste pat patch pause peg penetrate perform phone pile plumb practise practice pre-heat premix print
  program programme provide pulse quieten rake ram reapply rearrange reboot reclaim rectify recut reel refinish
  refresh reinflate reinforce reject relax relieve repack repaint report reprogram request rescue reserve restrain
  restrict resume retard retrieve revolve rewind rework rough salvage saturate screen segregate send shade shelter
  shine shorten shovel shred shroud sift silence sling slit slow smooth spill stabilise stabilize stagger stake
  staple sterilise sterilize stiffen stress submerge submit subtract supply suppress surround survey suspend swirl
  synchronise synchronize tally tamp taper taste tether thin thrust thumb tidy toughen trail translate transmit
  transport travel treat trigger troubleshoot true tuck tug unbox unbuckle unbundle uncoil uninstall unlink unmask
  unpack unstack unstick untangle untwist unzip update upend validate warn weaken widen witness tell ask arrange
  agree explain`
  .split(/\s+/)
  .filter(word => word !== '')

/** Base forms of every verb the trades' lexicon knows. */
export const VERBS: ReadonlySet<string> = new Set([
  ...Object.values(ACTIONS).flat(),
  ...Object.values(ACTS).flatMap(entries => entries.map(entry => entry.split(' ')[0] ?? '')),
  ...'hand offer topple unwind turn operate handle wrap vacuum ventilate allow rotate ramp wet roll pre-fill prefill pre-lubricate re-check re-torque hand-tighten re-tension cross-check double-check zero spin-on neutralise sharpen crosshatch slew stroke dress adjust wash rinse refer obtain contact sign keep carry identify compare note turn select position raise prevent expect feather bed break-in burnish run-in hang pierce form level square wring isolate unroll unfold recover complete hand-start thumb-tighten'.split(
    ' ',
  ),
  ...MORE_VERBS,
])

/** Before a verb: again, undone, beforehand, or by what of the hand. English, no source. */
const PREFIX = /^(?:re-?|un-?|de-?|dis|pre-?|hand-|finger-|thumb-|cross-)(?=[a-z]{3,}$)/
/** Nouns that only look so. */
const NO_PREFIX = new Set(
  'relay refuse research resort retail recoil rebound recount react remark remain record report request result display dispatch distance decrease detail device design deposit descent unit union desk present premium prefix rest reed reel recess rebate respect regard repress repose return resin depart discover discuss discount'.split(
    ' ',
  ),
)

/** @returns whether a word is a verb as it stands: known, or a known one with again, undone or beforehand put before it. */
export const isVerb = onceForText(
  (word: string): boolean =>
    VERBS.has(word) || (PREFIX.test(word) && !NO_PREFIX.has(word) && VERBS.has(word.replace(PREFIX, ''))),
)

/** @returns a verb with its prefix taken off, and the prefix: "rebolt" is bolt again; undefined where it has none. */
export const unprefixed = (verb: string): { readonly prefix: string; readonly verb: string } | undefined => {
  const prefix = VERBS.has(verb) ? undefined : PREFIX.exec(verb)?.[0]
  return prefix === undefined ? undefined : { prefix: prefix.replace('-', ''), verb: verb.slice(prefix.length) }
}

const IRREGULARS = new Map(
  IRREGULAR.flatMap(([base, past, participle]) => [[past, base] as const, [participle, base] as const]),
)

const candidates = (word: string): readonly string[] => {
  const cut = (ending: string): readonly string[] => {
    const stem = word.slice(0, -ending.length)
    return [
      stem,
      `${stem}e`,
      ...(/([a-z])\1$/.test(stem) ? [stem.slice(0, -1)] : []),
      ...(stem.endsWith('i') ? [`${stem.slice(0, -1)}y`] : []),
    ]
  }
  if (word.endsWith('ing') && word.length > 4) return cut('ing')
  if (word.endsWith('ed') && word.length > 3) return cut('ed')
  if (word.endsWith('ies')) return cut('es')
  if (word.endsWith('es')) return [...cut('es'), word.slice(0, -1)]
  if (word.endsWith('s') && !word.endsWith('ss')) return [word.slice(0, -1)]
  return []
}

/** @returns the base form of a known verb in any form, or undefined for every other word. */
export const verbOf = onceForText((word: string): string | undefined => {
  if (isVerb(word)) return word
  const irregular = IRREGULARS.get(word)
  if (irregular !== undefined && VERBS.has(irregular)) return irregular
  return candidates(word).find(isVerb)
})

/** @returns a word reduced so that forms of one word agree: verbs to their base, nouns to the singular. */
export const stemOf = (word: string): string => verbOf(word) ?? singular(word)

const SMALL = new Set(
  `a an the this that these those your our its their his her my it them they you we i he she one ones of to and or with for in on at by from into onto off out up down until till then so as is are was were be been being
  not no any all each every both some more most other same new old used worn clean just only also again now next first before after when while if once than there here which who what how very well will would could should must may might
  do does did don't has have had get got let make sure too over under about around per via forth`.split(/\s+/),
)

/** @returns whether a word carries no meaning of its own for comparing names: articles, pronouns, numbers, prepositions. */
export const isSmall = (word: string): boolean =>
  SMALL.has(word) || /^[\d.,/-]+$/.test(word) || NUMBER_WORDS.has(word) || PARTICLES.has(word)

/** Number words up to ninety, as they stand before nouns. */
export const NUMBER_WORDS: ReadonlySet<string> = new Set(
  'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand half quarter couple few several pair'.split(
    ' ',
  ),
)

/** @returns the stems of the words of a text that carry meaning, in order, repeats kept. */
export const contentStems = onceForText((text: string): readonly string[] =>
  tokensOf(text)
    .filter(token => /[a-z]/.test(token) && !isSmall(token))
    .map(stemOf),
)

/** @returns the same as a set. */
export const stemSet = onceForText((text: string): ReadonlySet<string> => new Set(contentStems(text)))
