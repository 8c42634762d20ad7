import { VERB_MATERIALS, WEAK_MATERIALS } from '@/lib/trade/materials'
import { classesOf, singular } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { FASTENER_TOOLS, VERB_TOOLS, WEAK_TOOLS } from '@/lib/trade/tools'
import type { Clause } from './clause'
import type { Reading } from './feature'
import { type NounPhrase, toNounPhrases } from './noun-phrase'

/** A thing named in a sentence that may be a tool or a material, with what tells whether it is used here. */
export type Mention = {
  /** Tokens [from, to) that name it, or the verb that implies it. */
  readonly from: number
  readonly to: number
  /** Set where a verb or a bare size implies the thing. */
  readonly implied?: string
  readonly phrase?: NounPhrase
  readonly features: readonly string[]
}

const NEW = new Set(['new', 'fresh', 'spare', 'brand-new', 'replacement', 'clean'])
const WITH = new Set([
  'with',
  'using',
  'through',
  'by',
  'on',
  'in',
  'into',
  'of',
  'for',
  'from',
  'under',
  'underneath',
  'between',
  'over',
  'against',
])
const USES = new Set('use grab get take fetch pick need want put have got wear reach find'.split(' '))

const wordOf = (token: Token | undefined, edge: string): string =>
  token === undefined ? edge : token.tag === 'number' ? '#' : (token.base ?? token.word)

const shapeOf = (token: Token | undefined): string => {
  if (token === undefined) return 'edge'
  if (
    [
      'preposition',
      'determiner',
      'particle',
      'auxiliary',
      'modal',
      'negation',
      'and',
      'to',
      'condition',
      'cause',
      'pronoun',
    ].includes(token.tag)
  )
    return token.word
  return token.tag
}

const clauseAt = (clauses: readonly Clause[], at: number): Clause | undefined =>
  clauses.find(clause => at >= clause.from && at < clause.to)

const featuresOf = (reading: Reading, phrase: NounPhrase): readonly string[] => {
  const { tokens, clauses } = reading
  const before = tokens[phrase.from - 1]
  const before2 = tokens[phrase.from - 2]
  const opensClause = before === undefined || tokens[phrase.from]?.isAfterPause === true
  const after = tokens[phrase.to]
  const closesClause = after === undefined || after.isAfterPause
  const inside = tokens.slice(phrase.from, phrase.to)
  const clause = clauseAt(clauses, phrase.from)
  const verb = clause?.verb === undefined ? undefined : tokens[clause.verb]
  const lexical =
    phrase.isTool && phrase.isMaterial ? 'either' : phrase.isTool ? 'tool' : phrase.isMaterial ? 'material' : 'other'
  const isWeak = phrase.isTool
    ? WEAK_TOOLS.has(phrase.name)
    : phrase.isMaterial
      ? WEAK_MATERIALS.has(phrase.name)
      : false
  const strength = lexical === 'other' ? 'other' : `${isWeak ? 'weak' : 'strong'}-${lexical}`
  const hasNumber = inside.some(token => token.tag === 'number')
  const isNew = inside.some(token => NEW.has(token.word))
  const words = phrase.to - phrase.head
  const features = [
    'bias',
    `is:${strength}`,
    `before:${opensClause ? 'pause' : shapeOf(before)}`,
    `after:${closesClause ? 'pause' : shapeOf(after)}`,
    `${strength}+before:${opensClause ? 'pause' : shapeOf(before)}`,
    `${strength}+after:${closesClause ? 'pause' : shapeOf(after)}`,
    `before2:${opensClause ? 'pause' : `${shapeOf(before2)} ${shapeOf(before)}`}`,
    `head-words:${Math.min(2, words)}`,
    `modifiers:${Math.min(3, phrase.head - phrase.from)}`,
  ]
  if (hasNumber) features.push('sized', `${strength}+sized`)
  if (isNew) features.push('new', `${strength}+new`)
  if (phrase.measure !== undefined) features.push('measured', `${strength}+measured`)
  if (inside.some(token => token.tag === 'adjective')) features.push('adjective')
  if (before !== undefined && WITH.has(before.word)) features.push(`with:${before.word}`)
  const previous = before?.tag === 'determiner' ? before2 : before
  if (previous !== undefined && WITH.has(previous.word))
    features.push(`over-article:${previous.word}`, `${strength}+over-article:${previous.word}`)
  if (previous?.base !== undefined) {
    features.push('object')
    for (const name of classesOf(previous.base)) features.push(`object-of:${name}`, `${strength}+object-of:${name}`)
    if (USES.has(previous.base)) features.push('used', `${strength}+used`)
  }
  if (clause !== undefined) {
    features.push(`frame:${clause.frame}`, `${lexical}+frame:${clause.frame}`)
    if (clause.marker !== undefined) features.push(`marker:${clause.marker}`)
    if (clause.isNegated) features.push('negated', `${strength}+negated`)
  }
  if (verb?.base !== undefined)
    for (const name of classesOf(verb.base)) features.push(`verb:${name}`, `${lexical}+verb:${name}`)
  if (tokens.slice(Math.max(0, phrase.from - 3), phrase.from).some(token => token.tag === 'negation'))
    features.push('after-not')
  if (reading.isQuestion) features.push('question')
  if (reading.own.includes('has:money')) features.push('money')
  if (reading.own.includes('all-past')) features.push('past')
  if (reading.own.includes('has:people')) features.push('people')
  if (reading.own.includes('has:time-past')) features.push('time-past')
  features.push(`acts:${reading.own.find(name => name.startsWith('acts:')) ?? ''}`)
  const determiner = before?.tag === 'determiner' ? before.word : 'none'
  features.push(`article:${determiner}`, `${strength}+article:${determiner}`)
  features.push(`head:${wordOf(inside.at(-1), '')}`)
  for (const token of inside.slice(0, -1)) features.push(`mod:${wordOf(token, '')}`)
  if (previous?.base !== undefined) features.push(`of-verb:${previous.base}`, `${strength}+of-verb:${previous.base}`)
  if (verb?.base !== undefined) features.push(`verb-is:${verb.base}`)
  if (previous !== undefined) features.push(`prev:${wordOf(previous, '')}`)
  if (after !== undefined && !closesClause) features.push(`next:${wordOf(after, '')}`)
  return features
}

const isCandidate = (reading: Reading, phrase: NounPhrase): boolean => {
  if (phrase.isTool || phrase.isMaterial || phrase.measure !== undefined) return true
  const { tokens } = reading
  const inside = tokens.slice(phrase.from, phrase.to)
  if (inside.some(token => NEW.has(token.word) || token.tag === 'number')) return true
  const before = tokens[phrase.from - 1]
  const previous = before?.tag === 'determiner' ? tokens[phrase.from - 2] : before
  return (
    previous !== undefined &&
    (previous.word === 'with' || previous.word === 'using' || (previous.base !== undefined && USES.has(previous.base)))
  )
}

const ACTS = new Set(['order', 'you', 'i', 'we', 'past', 'passive'])
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
  if (phrases.some(phrase => phrase.isTool)) return []
  return phrases.flatMap((phrase): readonly Mention[] => {
    const last = reading.tokens[phrase.to - 1]
    if (last === undefined) return []
    const one = singular(last.word)
    const before = reading.tokens[phrase.to - 2]?.word
    const tool = FASTENER_TOOLS.get(`${before} ${one}`) ?? FASTENER_TOOLS.get(one)
    const clause = clauseAt(reading.clauses, phrase.from)
    const verb = clause?.verb === undefined ? undefined : reading.tokens[clause.verb]
    if (tool === undefined || clause === undefined || clause.isNegated || !ACTS.has(clause.frame)) return []
    const size = phrase.to - phrase.from > 1 ? reading.tokens[phrase.from] : undefined
    const features = [
      'bias',
      'is:fastener',
      `fastener:${one}`,
      `fastener-frame:${clause.frame}`,
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

/** @returns the mentions of a sentence that may be tools or materials, said or implied. */
export const toMentions = (reading: Reading): readonly Mention[] => {
  const phrases = toNounPhrases(reading.tokens)
  return [
    ...phrases
      .filter(phrase => isCandidate(reading, phrase))
      .map(phrase => ({ from: phrase.from, to: phrase.to, phrase, features: featuresOf(reading, phrase) })),
    ...impliedByVerbs(reading),
    ...impliedByFasteners(reading, phrases),
    ...impliedBySizes(reading),
    ...impliedByFastenerSizes(reading),
  ]
}
