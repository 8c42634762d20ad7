import { classesOf, guessBase, verbOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { yours } from './wording-place'

/** Verbs that say no action of hands, whoever says them. */
const IDLE_VERB =
  /^(?:want|need|know|think|like|say|mean|have|be|see|remember|forget|guess|love|hate|tell|talk|call|hear|let's|get to|look like|go ahead|seem|appear|happen|become|believe|reckon|hope|suppose|worry|care|promise|learn|teach|buy|sell|pay|lose|live|sleep|eat|laugh|drink|trust|find|miss|wonder|hope|mind|wish|is|are|was|were|been|am|has|had|do|does|did|'s|'re|'ve|'m)$/
export const isIdleVerb = (token: Token | undefined): boolean => IDLE_VERB.test(token?.base ?? token?.word ?? '')

/** Verbs no lexicon of ours has yet, told by what stands behind them. */
export const AS_VERB =
  /^(?:hose|line|vac|shim|bag|tape|mask|sponge|towel|do|finger|thumb|hoover|torch|jet|chamfer|slack|comb|shovel|thin|plane|fog|flick|dab|swab|blot)$/
export const DIRECT = /^(?:the|a|an|your|my|our|its|this|that|these|those|it|them|him|her|both|all|each|every)$/

/** What is a part with an action's name, never an order. */
export const COMPOUND =
  /^(?:lock|jam|check|set|drain|bleed|feed|guide|stop|drive|kick|pinch|brake|jack|pump|pressure|fill|test|clamp|pick|number|press|spray|wear|slide|filter|fan|cover|dust|splash|clear|power|short|tube|oil|grease|lift|brush) (?:nuts?|plates?|side|covers?|screws?|valves?|plugs?|pins?|bolts?|nipples?|rollers?|stands?|rings?|caps?|belts?|shafts?|wheels?|leads?|ports?|hoses?|pipes?|handles?|number|twelve|bed|line|lines|gun|cup|springs?|end|pan|box|sheet|tubes?|2|pozi|guard|hose|back)$/

/** Likely base of a past form outside the lexicon: "limited", "pasted", "scribbled". */
const presentOf = (word: string): string => {
  if (/[aeiou](?:it|en|er|on|or|el)ed$/.test(word) || /[^aeiou](?:it|en|er|on|or)ed$/.test(word))
    return word.slice(0, -2)
  return /(?:[bcdfgkptz]l|ast|[^aeiou]ur|[aeiou]us|[rn][cgsv])ed$/.test(word) ? word.slice(0, -1) : guessBase(word)
}

export const baseOf = (token: Token): string =>
  token.base ??
  verbOf(token.word)?.base ??
  (token.tag === 'ing' || token.tag === 'past' ? presentOf(token.word) : token.word)

/** What none but a statement holds: "the dead one goes", "in which the loss". */
export const TELLS =
  /\b(?:i|we|you|she|he|they|which|who|goes|comes|is|are|was|were|that's|it's|[a-z]+n't|will|would|can|could|must|should)\b|\bone [a-z]+s\b/i
export const OPENS_PLACE =
  /^(?:in|on|at|inside|under|over|from|with|by|of|behind|between|into|onto|for|to|after|before|through)\b/i

const IN_PAST = /\b(and|then) ((?:re)?[a-z]+)\b(?= (?:the|a|an|it|them|that|my|your|off|on|out|up|down|back|in)\b)/g

/** "shut the door and dropped the chock": all of it is told, all of it is ordered. */
const nowToo = (said: string): string =>
  said.replace(IN_PAST, (all, and: string, word: string) => {
    const verb = verbOf(word)
    return verb !== undefined && (verb.form === 'past' || verb.form === 'participle') ? `${and} ${verb.base}` : all
  })

/** "him" and "her" are how some talk of parts. */
const neutral = (said: string): string =>
  said.replace(
    /^((?:off |on |out |in |up |down |back )*)(?:him|her)(?=$|,| (?:off|on|out|in|up|down|back|with|to|until|from|right|a|straight|and|by|over)\b)/i,
    '$1it',
  )

/** "lifted … and is brushed", "unloaded and placed": the second verb as an order on the same thing. */
export const likewise = (said: string): string =>
  said.replace(
    /\b(and|or),? (?:is |are |gets? |was |were )?((?:re)?[a-z]+)\b(?! (?:screw|bolt|nut|wire|end|edge|washer|water|steel|part|face)s?\b)/g,
    (all, and: string, word: string) => {
      const verb = verbOf(word)
      return verb !== undefined && (verb.form === 'participle' || verb.form === 'past') && word !== verb.base
        ? `${and} ${verb.base} it`
        : all
    },
  )

export const orderFrom = ({ text, tokens }: Reading, verb: number, to: number): string | undefined => {
  const token = tokens[verb]
  if (token === undefined || token.tag === 'auxiliary' || token.tag === 'modal') return undefined
  // A word no table has is a verb only where one must stand.
  const isUnknown = token.tag === 'word' || token.tag === 'name'
  if (
    isUnknown &&
    (/s$|^\p{Lu}/u.test(text.slice(token.at, token.to)) ||
      /^(?:have|had|got|'ve|'d)$/.test(tokens[verb - 1]?.word ?? ''))
  )
    return undefined
  if (token.word === 'try' && tokens[verb + 1]?.tag === 'and' && verb + 2 < to)
    return `try to ${sayTokens(text, tokens, verb + 2, to)}`
  const rest = nowToo(sayTokens(text, tokens, verb + 1, to))
  const done = /^(it|them|that|the [a-z-]+(?: [a-z-]+)?) ([a-z]+)\b(.*)$/.exec(rest)
  const as = done === null || baseOf(token) !== 'get' ? undefined : verbOf(done[2] ?? '')
  if (as?.form === 'past' || as?.form === 'participle') return `${as.base} ${done?.[1]}${done?.[3]}`
  return `${baseOf(token)} ${neutral(yours(rest))}`.trim()
}

const NOUNS = new Set(['part', 'tool', 'material', 'noun', 'word', 'unit', 'name', 'ing', 'verb', 'pronoun'])
export const hasNoun = (tokens: readonly Token[], from: number, to: number): boolean =>
  NOUNS.has(tokens[to - 1]?.tag ?? '') ||
  tokens.slice(from, to).some(({ tag }) => tag === 'part' || tag === 'tool' || tag === 'material')

export const isHandWork = (base: string): boolean => {
  const classes = [...classesOf(base)]
  return classes.length > 0 && !classes.includes('behave') && !classes.includes('mind')
}

const HANDLED = new Set(['remove', 'fit', 'tighten', 'clean', 'apply', 'control', 'make', 'record'])
export const isHandled = (base: string): boolean => [...classesOf(base)].some(name => HANDLED.has(name))

const SKIPS = /^(?:want|need|like|going|gonna|have|got|just|always|to|ahead|will|usually|now|then)$/

/** The verb that says what an agent does, over "want to", "'re going to", "carefully". */
export const actionFrom = (tokens: readonly Token[], from: number, to: number): number | undefined => {
  for (let i = from; i < to; i++) {
    const token = tokens[i]
    if (token === undefined) return undefined
    if (SKIPS.test(token.word) || (token.word === 'go' && tokens[i + 1]?.word === 'ahead')) continue
    if (['adverb', 'negation', 'auxiliary', 'modal', 'filler'].includes(token.tag)) continue
    return ['verb', 'third', 'past', 'ing'].includes(token.tag) || AS_VERB.test(token.word) ? i : undefined
  }
  return undefined
}
