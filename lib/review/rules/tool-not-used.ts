import type { Mark } from '@/lib/procedure/mark'
import { dimensionOf } from '@/lib/quantity/units'
import type { Act } from '@/lib/trade/pairs'
import { PART_HEADS } from '@/lib/trade/parts'
import { actionsOf } from '../action'
import { instrumentIn } from '../instrument'
import { listedThing, thingsListed } from '../listed'
import { onceFor } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import { lineStems } from '../stem-index'
import type { Subject } from '../subject'
import { contentStems, stemOf, verbOf } from '../words'

/** What tools of a kind are used for: listed ones are in use where the sheet does such a thing. General knowledge, no source. */
const USES: readonly (readonly [tool: RegExp, use: RegExp])[] = [
  [
    /\b(?:spanner|wrench|socket|ratchet|breaker bar|extension|nut (?:driver|spinner|runner)|pliers|grips|hex|allen|torx|key|screwdriver|driver|bit|impact)s?\b/i,
    /\b(?:tighten|loosen|torque|remove|undo|unscrew|screw|bolt|nut|fit|refit|slacken|hold|open|disconnect|pull|clip|pin|retighten|take off|unbolt|adjust|plug|turn|secure|install|replace|reinstall|prise|prize|pry|lever|ease|lift off|nip|snug|crack|part|do up|undo|join)\w*\b/i,
  ],
  [/\btorque\b/i, /\b(?:torque|tighten)\w*\b/i],
  [
    /\b(?:glasses|goggles|gloves?|visor|shield|muffs|defenders|plugs|mask|respirator|apron|boots|hat|helmet|padlock|lock|tag|lockout|hasp|extinguisher|protection|overalls|mat)\b/i,
    /./,
  ],
  [
    /\b(?:pan|tray|bucket|bowl|container|jug|jar|funnel|can|dish|tub|bottle|syringe|pump|cup|tin|basin|saucer)\b/i,
    /\b(?:drain|fill|pour|oil|fluid|water|coolant|catch|collect|screws?|empty|mix|top up|refill|rinse|soak|parts?|flush|bleed)\w*\b/i,
  ],
  [
    /\b(?:multimeter|voltmeter|ohmmeter|ammeter|clamp meter|voltage tester|test lamp|insulation tester|oscilloscope)s?\b/i,
    /\b(?:volt\w*|current|amps?|resist\w*|ohms?|continuity|dead|live|charging|fuses?|wires?|wiring|terminals?|winding|element|electric\w*|coil|capacitor|battery|posts?)\b/i,
  ],
  [
    /\b(?:gauge|meter|caliper|micrometer|feeler|rule|ruler|tape|tester|indicator|scale|thermometer|level|straightedge|refractometer|hydrometer|square|stopwatch|timer|watch)s?\b/i,
    /\b(?:measure|check|gap|clearance|read|test|pressure|voltage|resistance|thickness|temperature|length|wear|prove|dead|depth|runout|play|level|straight|square|time|deflection|align|distance|slack|tension|weigh|wait|minutes?|inspect|verify)\w*\b/i,
  ],
  [
    /\b(?:brush|scraper|vacuum|hoover|rag|cloth|air gun|blow gun|broom|sponge|file|stone|emery)\b/i,
    /\b(?:clean|brush|scrape|wipe|vacuum|hoover|blow|dust|dirt|debris|swarf|sweep|clear|deburr|file|polish|sharpen|rinse|wash|rust)\w*\b/i,
  ],
  [
    /\b(?:jack|stand|ramp|hoist|lift|crane|chock|wedge|block|trolley)s?\b/i,
    /\b(?:jack|raise|lift|lower|stand|support|chock|block|wheel|hoist)\w*\b/i,
  ],
  [
    /\b(?:torch|lamp|light|flashlight|mirror|magnifier|camera|phone|marker|pen|chalk|pencil|label|scribe|paint)s?\b/i,
    /\b(?:look|inspect|check|mark|label|photograph|see|find|note|write|record|number)\w*\b/i,
  ],
  [
    /\b(?:hammer|mallet|drift|punch|chisel|puller|press|lever|pry|bar|extractor|pick|hook|spudger|tweezers|forceps|tongs)s?\b/i,
    /\b(?:tap|drive|knock|press|pull|remove|pry|lever|extract|ease|seat|free|fit|drift|hammer|lift|hook|pick|prise|separate|break)\w*\b/i,
  ],
  [/\b(?:pipe|tube|bolt|cable|wire|glass|tile|gasket|bar) cutters?\b/i, /\b(?:cut|crop|trim|shorten|sever)\w*\b/i],
  [
    /\b(?:saw|drill|reamer|cutter|knife|snips|shears|scissors|blade|strippers?|crimper)s?\b/i,
    /\b(?:snip|nip|clip|shear|part|cut|drill|ream|trim|strip|crimp|open|slit|saw|sharpen)\w*\b/i,
  ],
  [/\b(?:soldering|iron|heat gun|torch|hair ?dryer|kettle)\b/i, /\b(?:solder|heat|warm|shrink|braze|boil)\w*\b/i],
  [/\b(?:grease gun|oiler|oil can)\b/i, /\b(?:grease|oil|lubricat)\w*\b/i],
  [
    /\b(?:vice|vise|clamp|strap|rope|wire|stand|bench|fixture|jig|cradle)s?\b/i,
    /\b(?:clamp|hold|secure|mount|support|hang|strap|tie|grip|fit|put|place|set|stand|turn)\w*\b/i,
  ],
]

const TURNING = USES[0]?.[0]
const TURNS: readonly Act[] = ['remove', 'loosen', 'tighten', 'disconnect', 'connect', 'refit']
/** "Take the black lead off": whatever the verb, something is undone or done up. */
const isTurned = (words: string): boolean =>
  words.split('\n').some(text => actionsOf(text).some(({ acts }) => TURNS.some(act => acts.has(act))))

/** Listed as one entry, "socket and ratchet" is in use where one of them is named. */
const isNamedIn = (text: string, stems: ReadonlyMap<string, number>): boolean =>
  thingsListed(text).some(part => stems.has(stemOf(listedThing(part).head)))

const PARTS: ReadonlySet<string> = new Set([...PART_HEADS].map(stemOf))
/** Tools made for one part, which their name says: a bearing puller. */
const FOR_ONE = /^(?:puller|extractor|compressor|remover|installer|separator|splitter|breaker|tool|spreader)$/

/** Tools for one purpose, whatever else is turned near them. General knowledge, no source. */
const PURPOSES: readonly (readonly [tool: RegExp, use: RegExp])[] = [
  [/\b(?:pipe|tube) (?:cutter|bender|expander|flaring tool)s?\b/i, /\b(?:cut|bend|flare|expand|swage)\w*\b/i],
  [/\bstrap wrench/i, /\b(?:filter|canister|cartridge|bowl|pulley|collar|jar|cap|trap|housing|spin)\w*\b/i],
  [/\bbasin wrench/i, /\b(?:taps?|faucets?|back ?nuts?)\b/i],
  [/\b(?:pipe|stillson) wrench/i, /\b(?:pipes?|unions?|nipples?|fittings?|couplings?|valves?|gland|elbows?|rods?)\b/i],
  [/\b(?:lug|wheel) (?:wrench|brace)/i, /\b(?:lug|wheels?|nuts)\b/i],
  [/\bspoke (?:key|wrench)/i, /\b(?:spokes?|true|nipples?)\b/i],
  [/\bspark plug (?:socket|spanner|wrench)/i, /\bplugs?\b/i],
  [/\bvalve (?:core|spring) (?:tool|compressor|remover)/i, /\bvalves?|core\b/i],
  [/\bsoldering iron\b/i, /\b(?:solder|desolder|unsolder|tin|melt)\w*\b/i],
  [/\b(?:rivet gun|riveter)\b/i, /\brivet\w*\b/i],
  [
    /\b(?:cordless|power|electric|hammer|hand) drill\b/i,
    /\b(?:drill|bore|hole|pilot|screw|ream|countersink|brush|spin|turn|mix|drive)\w*\b/i,
  ],
  [/\b(?:spirit|bubble) level\b/i, /\b(?:level|plumb|upright|horizontal|vertical|square|slope|fall|tilt)\w*\b/i],
  [
    /\b(?:crimp\w* (?:tool|pliers)|crimpers?)\b/i,
    /\b(?:crimp|ferrule|lugs?|terminals?|sleeve|plug|connector|splice)\w*\b/i,
  ],
  [/\b(?:staple|glue|nail|caulking|sealant) gun\b/i, /\b(?:staple|glue|nail|caulk|seal|stick|bead)\w*\b/i],
  [/\b(?:hack|hole|jig|band|hand|tenon|coping) ?saw\b/i, /\b(?:saw|cut|hole|trim|shorten)\w*\b/i],
  [/\bangle grinder\b/i, /\b(?:grind|cut|dress|weld|rust)\w*\b/i],
  [/\b(?:taps? and dies?|thread tap|die nut)\b/i, /\b(?:thread|tap|die|chase)\w*\b/i],
]

/** A vacuum cleaner is in use where something is vacuumed, a grease gun where something is greased. */
const isInVerb = (tool: string, stems: ReadonlyMap<string, number>): boolean =>
  listedThing(tool).rest.some(word => verbOf(word) !== undefined && stems.has(stemOf(word)))

/** Whether a tool is made for a part that the sheet never mentions. */
const isForAnother = (tool: string, stems: ReadonlyMap<string, number>): boolean => {
  const { head, rest } = listedThing(tool)
  const parts = rest.map(stemOf).filter(word => PARTS.has(word))
  return FOR_ONE.test(head) && parts.length > 0 && !parts.some(part => stems.has(part))
}

/** What lies ready without being told, or goes by many names. */
const AT_HAND =
  /\b(?:rags?|cloths?|wipes?|towels?|paper|gloves?|glasses|goggles|shoes|boots|protection|tape|bags?|containers?|boxe?s?|sacks?|trays?|labels?|tags?|cards?|solvents?|cleaners?|degreasers?|alcohol|spirits?|lubricants?|grease|sealants?|kits?|sets?|consumables?|detergents?|soap|cleaning)\b/i

const finding = (mark: Mark): Found => ({
  place: atMark(mark),
  message: `"${mark.text}" is listed, but no step uses it. Name it in its step, or drop it from the list.`,
})

/** What only shows what lies ready. Common speech, no source. */
const PRESENTS =
  /\b(?:i(?:'ve| have)|we(?:'ve| have)|you(?:'ve| have)|there(?:'s| is| are)|here(?:'s| is| are))\b[^.;]*\b(?:got|laid out|here|ready|lying|on the (?:table|bench|cart|tray|floor)|in my (?:bag|box|kit)|at hand|with me)\b|\b(?:also|always) (?:got|have|carry|bring)\b/i

const toldStems = onceFor(
  (sentences: Subject['sentences']): ReadonlySet<string> =>
    new Set(sentences.flatMap(({ text }) => (PRESENTS.test(text) ? [] : contentStems(text)))),
)

const NEVER_MEASURES =
  /\b(?:spanner|wrench|socket|driver|screwdriver|pliers|hammer|mallet|puller|drift|knife|cutters?|brush|rags?|gloves?|glasses|goggles|pan|tray|bucket|jack|stands?|grease gun|oil can|gun|pump|saw|file|scraper|funnel|lamp|torch|lock|tag|ladder|vacuum|cloth)\b/i

const check = ({ sheet, project, sentences }: Subject): readonly Found[] => {
  if (sheet.steps.length === 0 || sheet.tools.length + sheet.materials.length === 0) return []
  const stems = lineStems(project.marks)
  const lines = sentences.length > 0 ? [] : project.marks.filter(({ kind }) => kind !== 'tool' && kind !== 'material')
  const all = lines.map(({ text, reference }) => `${text} ${reference ?? ''}`).join('\n')
  const told = toldStems(sentences)
  // A tool laid down one step early or late still belongs to what is done there.
  const near = (id: string | undefined): string => {
    const at = sheet.steps.findIndex(({ mark }) => mark.id === id)
    return at < 0
      ? ''
      : sheet.steps
          .slice(Math.max(0, at - 1), at + 2)
          .flatMap(({ mark, checks, specs }) => [mark, ...checks, ...specs].map(({ text }) => text))
          .join('\n')
  }
  // Listed with a limit of its step, it measures that.
  const hasSpec = ({ text, step }: Mark): boolean => {
    const kinds = instrumentIn(text)?.kinds
    const at = sheet.steps.findIndex(({ mark }) => mark.id === step)
    return sheet.steps
      .slice(Math.max(0, at - 1), at + 2)
      .some(
        ({ specs }) =>
          at >= 0 &&
          specs.some(({ quantity }) =>
            kinds === undefined
              ? !NEVER_MEASURES.test(text)
              : kinds.length === 0 || kinds.includes(dimensionOf(quantity?.unit ?? '') ?? ''),
          ),
      )
  }
  const unnamed = (mark: Mark): boolean => {
    const { words: all } = listedThing(mark.text)
    return all.length > 0 && !all.some(word => stems.has(stemOf(word)) || told.has(stemOf(word)))
  }
  const materials = sheet.materials.filter(mark => !AT_HAND.test(mark.text) && unnamed(mark)).map(finding)
  const tools = sheet.tools.flatMap((mark): Found[] => {
    const last = stemOf(listedThing(mark.text).head)
    const purpose = PURPOSES.find(([tool]) => tool.test(mark.text))?.[1]
    const isNamed = listedThing(mark.text).rest.some(word => stems.has(stemOf(word)) || told.has(stemOf(word)))
    if (purpose !== undefined && !isNamed && !purpose.test(sentences.length > 0 ? near(mark.step) : all))
      return [finding(mark)]
    if (last === '' || isNamedIn(mark.text, stems) || isInVerb(mark.text, stems)) return []
    if (told.has(last) || hasSpec(mark)) return []
    if (isForAnother(mark.text, stems)) return [finding(mark)]
    const uses = USES.filter(([tool]) => tool.test(mark.text)).slice(0, sentences.length > 0 ? 1 : undefined)
    const words = sentences.length > 0 ? near(mark.step) : all
    return uses.some(([tool, use]) => use.test(words) || (tool === TURNING && isTurned(words))) ? [] : [finding(mark)]
  })
  return [...tools, ...materials]
}

/** Listed and never picked up. */
export const toolNotUsed: Rule = {
  id: 'tool-not-used',
  level: 'consider',
  about: 'A tool or material is listed and no step uses it.',
  why: 'Either the list asks for what nobody needs, or the step that needs it is missing.',
  source: 'IEC/IEEE 82079-1:2019: tools and materials up front (from memory)',
  trips: sample([
    ['step', 'Wipe the lens'],
    ['tool', 'bearing puller'],
  ]),
  passes: sample([
    ['step', 'Pull the bearing off the shaft'],
    ['tool', 'bearing puller'],
  ]),
  check,
}
