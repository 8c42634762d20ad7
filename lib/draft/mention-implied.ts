import { VERB_MATERIALS } from '@/lib/trade/materials'
import { classesOf, singular } from '@/lib/trade/morphology'
import { ENERGY_POINTS, FASTENER_TOOLS, VERB_TOOLS } from '@/lib/trade/tools'
import type { Clause } from './clause'
import type { Reading } from './feature'
import type { Mention } from './mention'
import { kindOfWord, type NounPhrase } from './noun-phrase'
import { inDigits } from './thing-name'

/** @returns the clause that a token is in */
export const clauseAt = (clauses: readonly Clause[], at: number): Clause | undefined =>
  clauses.find(clause => at >= clause.from && at < clause.to)

const ACTS = new Set(['order', 'you', 'i', 'we', 'past', 'passive'])
/** Frames in which fasteners come off or go on: "grille off, four screws" too. */
const TURNED = new Set([...ACTS, 'nominal', 'fragment', 'statement'])
const SIZE =
  /^(?:\d{1,2}|(?:three|five|seven|nine|eleven|thirteen|fifteen)-?(?:eighths|sixteenths)|\d{1,2}\/\d{1,2}|eight|ten|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty-two|twenty-four)$/

/** Tools and stuff that a verb names by itself: "brush the fins", "grease those". */
const impliedByVerbs = (reading: Reading): readonly Mention[] =>
  reading.clauses.flatMap((clause): readonly Mention[] => {
    const token = clause.verb === undefined ? undefined : reading.tokens[clause.verb]
    const base = token?.base ?? ''
    const isLocked = base === 'lock' && reading.tokens.some(({ word }) => ENERGY_POINTS.has(singular(word)))
    const isBlocked = base === 'block' && reading.tokens.some(({ word }) => singular(word) === 'wheel')
    const name = isLocked ? 'padlock' : isBlocked ? 'wheel chocks' : (VERB_TOOLS.get(base) ?? VERB_MATERIALS.get(base))
    if (clause.verb === undefined || name === undefined || clause.isNegated || !ACTS.has(clause.frame)) return []
    const features = [
      'bias',
      VERB_MATERIALS.has(base) && !VERB_TOOLS.has(base) ? 'is:implied-stuff' : 'is:implied',
      `implied:${base}`,
      `implied-frame:${clause.frame}`,
      `head:${name.split(' ').at(-1)}`,
    ]
    return [{ from: clause.verb, to: clause.verb + 1, implied: name, features }]
  })

const OVER = new Set(['on', 'over', 'in', 'under', 'round', 'around', 'across', 'through', 'between'])

/** "Tape over the handle", "drift on the nut": a thing at the head of a clause that looks like a verb. */
const likeVerbs = ({ tokens, clauses }: Reading): readonly Mention[] =>
  clauses.flatMap(({ frame, verb, start }): readonly Mention[] => {
    const token = verb === undefined ? undefined : tokens[verb]
    if (verb === undefined || token === undefined || frame !== 'order' || verb !== start) return []
    const [next, after] = [tokens[verb + 1], tokens[verb + 2]]
    if (next === undefined || next.isAfterPause || !OVER.has(next.word) || after?.tag !== 'determiner') return []
    const { isTool, isMaterial } = kindOfWord(token.word)
    if (!isTool && !isMaterial) return []
    const kind = isTool ? (isMaterial ? 'either' : 'tool') : 'material'
    return [
      {
        from: verb,
        to: verb + 1,
        implied: token.word,
        features: [
          'bias',
          `is:like-verb-${kind}`,
          `like-verb:${token.word}`,
          `like-verb-before:${next.word}`,
          `head:${token.word}`,
        ],
      },
    ]
  })

/** Turned by hand. */
const BY_HAND = new Set(['wing', 'thumb', 'knurled', 'plastic', 'jubilee'])
const HEAD_SIZE = /^(?:[6-9]|[12]\d|3[0-6])$/

/** "Four 13 mil bolts", "two bolts, they are 6 mil hex": what turns a bolt or a nut; undefined where hands do or another tool is told. */
const turnerOf = ({ tokens, text }: Reading, { from, to }: NounPhrase): string | undefined => {
  const inside = tokens.slice(from, to)
  if (inside.some(({ word }) => BY_HAND.has(word))) return undefined
  if (/\b(?:hex|allen|torx|star)(?: (?:key|bit|head)s?)?(?=$|[.,;])/i.test(text.slice(tokens[to - 1]?.to ?? 0)))
    return undefined
  const unit = inside.findIndex(({ word }) => MILLIMETRES.test(word))
  const [size = ''] = inDigits([inside[unit - 1]?.word ?? ''])
  return HEAD_SIZE.test(size) ? `${size} mm wrench` : 'wrench'
}

/** Tools that a fastener calls for where it is turned: "back out the four screws". */
const impliedByFasteners = (reading: Reading, phrases: readonly NounPhrase[]): readonly Mention[] => {
  const hasTool = phrases.some(phrase => phrase.isTool)
  return phrases.flatMap((phrase): readonly Mention[] => {
    const last = reading.tokens[phrase.to - 1]
    if (last === undefined) return []
    const one = singular(last.word)
    const before = reading.tokens[phrase.to - 2]?.word
    const told = FASTENER_TOOLS.get(`${before} ${one}`) ?? FASTENER_TOOLS.get(one)
    const tool = told === 'wrench' ? turnerOf(reading, phrase) : told
    const clause = clauseAt(reading.clauses, phrase.from)
    const verb = clause?.verb === undefined ? undefined : reading.tokens[clause.verb]
    if (tool === undefined || clause === undefined || clause.isNegated || !TURNED.has(clause.frame)) return []
    const size = phrase.to - phrase.from > 1 ? reading.tokens[phrase.from] : undefined
    const features = [
      'bias',
      'is:fastener',
      `fastener:${one}`,
      `fastener-frame:${clause.frame}`,
      ...(hasTool ? ['fastener-beside-tool'] : []),
      ...[...classesOf(verb?.base ?? '')].map(name => `fastener-verb:${name}`),
      ...(size?.tag === 'number' ? ['fastener-count'] : []),
      `head:${tool.split(' ').at(-1)}`,
    ]
    return [{ from: phrase.from, to: phrase.to, implied: tool, features }]
  })
}

/** "with the nine-sixteenths", "a seventeen on the nut": a size that stands for its spanner. */
const impliedBySizes = (reading: Reading): readonly Mention[] =>
  reading.tokens.flatMap((token, i): readonly Mention[] => {
    const before = reading.tokens[i - 1]
    const after = reading.tokens[i + 1]
    const isArticle = before?.word === 'a' || before?.word === 'the' || before?.word === 'your' || before?.word === 'an'
    const stands =
      after === undefined ||
      after.isAfterPause ||
      after.tag === 'and' ||
      after.tag === 'to' ||
      after.tag === 'preposition' ||
      after.tag === 'particle'
    if (token.tag !== 'number' || !isArticle || !stands || !SIZE.test(token.word)) return []
    const lead = reading.tokens[i - 2]
    return [
      {
        from: i,
        to: i + 1,
        implied: `${token.word} wrench`,
        features: [
          'bias',
          'is:size',
          `size-after:${lead?.tag === 'preposition' ? lead.word : (lead?.tag ?? 'edge')}`,
          `size-before:${after?.word ?? 'edge'}`,
          'head:wrench',
        ],
      },
    ]
  })

const FASTENERS = new Set(
  'bolt bolts nut nuts locknut locknuts screw screws stud studs plug plugs terminal terminals nipple nipples fitting fittings union unions bleeder clamp clamps fastener fasteners capscrew capscrews'.split(
    ' ',
  ),
)
const MILLIMETRES = /^(?:mm|mil|mills?|millimet(?:er|re)s?)$/
const INCHES = /^inch(?:es)?$/
/** "Minus off, ten mil": what a size with its unit may be said of beside fasteners. */
const ENDS = new Set('battery negative minus lead earth cable'.split(' '))
const AUXILIARIES = new Set(["'re", 'are', "'s", 'is'])

/** "Two bolts, 14s", "which are tens". */
const SIZES_OF_MANY = /^(?:\d{1,2}|ten|eight|thirteen|seventeen|nineteen)s$/

/** How many words back the fastener may be that a size is of. */
const NEAR = 9

/** Sizes across the flats that are common in a shop, in millimetres. Common practice, no source. */
const isTurnable = (text: string): boolean => !/^\d+$/.test(text) || (Number(text) > 4 && Number(text) <= 41)

/** "three bolts, thirteen", "plug off, 17 mil": a size said of a fastener stands for what turns it. */
const impliedByFastenerSizes = ({ tokens }: Reading): readonly Mention[] =>
  tokens.flatMap((token, i): readonly Mention[] => {
    const isMany = SIZES_OF_MANY.test(token.word)
    const word = isMany ? token.word.slice(0, -1) : token.word
    const text = word.replace(/-?(?:mm|mil|mill|millimet(?:er|re)s?|inch)$/, '')
    const isPart = /^(?:half|quarter|three-quarters?)$/.test(text)
    if (!(token.tag === 'number' || isMany || isPart) || !(isPart || (SIZE.test(text) && isTurnable(text)))) return []
    const unit = tokens[i + 1]
    const isUnit = unit !== undefined && !unit.isAfterPause && !isMany
    const isInch = word.endsWith('inch') || (isUnit && INCHES.test(unit.word)) || text === 'three-quarter'
    const hasUnit = text !== word || isInch || (isUnit && MILLIMETRES.test(unit.word))
    if (isPart && !isInch) return []
    const to = hasUnit && isUnit && (INCHES.test(unit.word) || MILLIMETRES.test(unit.word)) ? i + 2 : i + 1
    const [lead, article] = [tokens[i - 1], tokens[i - 2]]
    const before = lead?.word === 'a' || lead?.word === 'an' ? article : lead
    const after = tokens[to]
    const isSaidOf = isMany || FASTENERS.has(before?.word ?? '') || AUXILIARIES.has(before?.word ?? '')
    if (!token.isAfterPause && !isSaidOf) return []
    if (after !== undefined && !after.isAfterPause && !['and', 'pronoun', 'particle'].includes(after.tag)) return []
    const back = tokens
      .slice(Math.max(0, i - NEAR), i)
      .findLast(({ word }) => FASTENERS.has(word) || (hasUnit && ENDS.has(word)))
    if (back === undefined) return []
    const isInches = isInch || /[/-]/.test(text)
    // Screws of a size in inches have a hexagon head: common practice, no source.
    const turner = isInches && singular(back.word) === 'screw' ? 'nut driver' : 'wrench'
    return [
      {
        from: i,
        to,
        implied: isInches ? `${isPart ? `${text}-inch` : text} ${turner}` : `${text} mm ${turner}`,
        features: [
          'bias',
          'is:fastener-size',
          hasUnit ? 'fastener-size:unit' : 'fastener-size:bare',
          `fastener-size-of:${singular(back.word)}`,
          isSaidOf ? 'fastener-size:beside' : 'fastener-size:apart',
          ...(tokens.some(({ word }) => /^(?:torque|tighten|newton|metres|meters|foot-pounds|pounds)$/.test(word))
            ? ['fastener-size:tightened']
            : []),
          ...(isMany ? ['fastener-size:many'] : []),
          `head:${turner.split(' ').at(-1)}`,
        ],
      },
    ]
  })

const TORX = new Set([5, 6, 7, 8, 9, 10, 15, 20, 25, 27, 30, 40, 45, 50, 55, 60])
const SIZED_AFTER = new Set(['key', 'socket', 'spanner', 'wrench', 'torx', 'allen', 'hex'])

/** "Key 14", "socket 12", "key of six", "Torx 25", "a T25", "PH1": a size that stands after its tool. */
const impliedBySizesAfter = ({ tokens }: Reading): readonly Mention[] =>
  tokens.flatMap((token, i): readonly Mention[] => {
    const lead = tokens[i - 1]
    if (lead === undefined || token.isAfterPause) return []
    const driver = /^ph([0-3])$/.exec(token.word)
    if (token.tag !== 'number' && driver === null) return []
    const [size] = inDigits([token.word])
    const n = Number(size)
    const make = (from: number, implied: string, kind: string): readonly Mention[] => [
      {
        from,
        to: i + 1,
        implied,
        features: ['bias', 'is:size-after', `size-kind:${kind}`, `head:${implied.split(' ').at(-1)}`],
      },
    ]
    const after = tokens[i + 1]
    // "A T25 driver" names its tool itself.
    if (after?.tag === 'tool' && !after.isAfterPause) return []
    const isGlued = lead.to === token.at
    if (isGlued && lead.word === 't') return TORX.has(n) ? make(i - 1, `T${n} torx driver`, 'torx') : []
    if (isGlued && lead.word === 'ph') return n < 4 ? make(i - 1, `PH${n} screwdriver`, 'phillips') : []
    const tool = lead.word === 'of' || lead.word === 'number' ? tokens[i - 2] : lead
    const isBare = after === undefined || after.isAfterPause || !(after.tag === 'unit' || after.tag === 'number')
    if (tool === undefined || !SIZED_AFTER.has(tool.word) || !isBare || !Number.isInteger(n) || n < 2 || n > 60)
      return []
    const from = tokens.indexOf(tool)
    if (tool.word === 'torx') return TORX.has(n) ? make(from, `T${n} torx driver`, 'torx') : []
    const isHex =
      tool.word === 'allen' ||
      tool.word === 'hex' ||
      /^(?:hex|allen|hexagon|six-corner)$/.test(tokens[from - 1]?.word ?? '')
    const name = isHex ? 'hex key' : tool.word === 'key' ? (n < 7 ? 'hex key' : 'spanner') : tool.word
    return make(from, `${n} mm ${name}`, tool.word)
  })

/** @returns the mentions of tools and stuff that nobody names but a verb, a fastener or a size calls for. */
export const impliedMentions = (reading: Reading, phrases: readonly NounPhrase[]): readonly Mention[] => [
  ...impliedByVerbs(reading),
  ...likeVerbs(reading),
  ...impliedByFasteners(reading, phrases),
  ...impliedBySizes(reading),
  ...impliedByFastenerSizes(reading),
  ...impliedBySizesAfter(reading),
]
