import { VERB_MATERIALS } from '@/lib/trade/materials'
import { classesOf, singular } from '@/lib/trade/morphology'
import { FASTENER_TOOLS, VERB_TOOLS } from '@/lib/trade/tools'
import type { Clause } from './clause'
import type { Reading } from './feature'
import type { Mention } from './mention'
import type { NounPhrase } from './noun-phrase'

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
    const name = VERB_TOOLS.get(base) ?? VERB_MATERIALS.get(base)
    if (clause.verb === undefined || name === undefined || clause.isNegated || !ACTS.has(clause.frame)) return []
    const features = [
      'bias',
      VERB_TOOLS.has(base) ? 'is:implied' : 'is:implied-stuff',
      `implied:${base}`,
      `implied-frame:${clause.frame}`,
      `head:${name.split(' ').at(-1)}`,
    ]
    return [{ from: clause.verb, to: clause.verb + 1, implied: name, features }]
  })

/** Tools that a fastener calls for where it is turned: "back out the four screws". */
const impliedByFasteners = (reading: Reading, phrases: readonly NounPhrase[]): readonly Mention[] => {
  const hasTool = phrases.some(phrase => phrase.isTool)
  return phrases.flatMap((phrase): readonly Mention[] => {
    const last = reading.tokens[phrase.to - 1]
    if (last === undefined) return []
    const one = singular(last.word)
    const before = reading.tokens[phrase.to - 2]?.word
    const tool = FASTENER_TOOLS.get(`${before} ${one}`) ?? FASTENER_TOOLS.get(one)
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
/** How many words back the fastener may be that a size is of. */
const NEAR = 9

/** Sizes across the flats that are common in a shop, in millimetres. Common practice, no source. */
const isTurnable = (text: string): boolean => !/^\d+$/.test(text) || (Number(text) > 4 && Number(text) <= 41)

/** "three bolts, thirteen", "plug off, 17 mil": a size said of a fastener stands for what turns it. */
const impliedByFastenerSizes = ({ tokens }: Reading): readonly Mention[] =>
  tokens.flatMap((token, i): readonly Mention[] => {
    const text = token.word.replace(/-?(?:mm|mil|mill|millimet(?:er|re)s?)$/, '')
    if (token.tag !== 'number' || !SIZE.test(text) || !isTurnable(text)) return []
    const unit = tokens[i + 1]
    const hasUnit = text !== token.word || (unit !== undefined && !unit.isAfterPause && MILLIMETRES.test(unit.word))
    const to = hasUnit && text === token.word ? i + 2 : i + 1
    const before = tokens[i - 1]
    const after = tokens[to]
    if (!token.isAfterPause && !FASTENERS.has(before?.word ?? '')) return []
    if (after !== undefined && !after.isAfterPause && !['and', 'pronoun', 'particle'].includes(after.tag)) return []
    const back = tokens.slice(Math.max(0, i - NEAR), i).findLast(({ word }) => FASTENERS.has(word))
    if (back === undefined) return []
    return [
      {
        from: i,
        to,
        implied: /[/-]/.test(text) ? `${text} wrench` : `${text} mm wrench`,
        features: [
          'bias',
          'is:fastener-size',
          hasUnit ? 'fastener-size:unit' : 'fastener-size:bare',
          `fastener-size-of:${singular(back.word)}`,
          before !== undefined && FASTENERS.has(before.word) ? 'fastener-size:beside' : 'fastener-size:apart',
          ...(tokens.some(({ word }) => /^(?:torque|tighten|newton|metres|meters|foot-pounds|pounds)$/.test(word))
            ? ['fastener-size:tightened']
            : []),
          'head:wrench',
        ],
      },
    ]
  })

/** @returns the mentions of tools and stuff that nobody names but a verb, a fastener or a size calls for. */
export const impliedMentions = (reading: Reading, phrases: readonly NounPhrase[]): readonly Mention[] => [
  ...impliedByVerbs(reading),
  ...impliedByFasteners(reading, phrases),
  ...impliedBySizes(reading),
  ...impliedByFastenerSizes(reading),
]
