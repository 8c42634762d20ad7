import * as words from '@/lib/trade/english'
import type { Token } from '@/lib/trade/tagger'

/** Word sets that say something of a sentence by being in it. */
const SETS = {
  body: words.BODY,
  harm: words.HARM,
  deadly: words.DEADLY,
  injury: words.INJURIES,
  agent: words.AGENTS,
  spoils: words.SPOILS,
  care: words.CARE,
  damage: words.DAMAGE,
  state: words.STATE_WORDS,
  people: words.PEOPLE,
  money: words.MONEY,
  evaluation: words.EVALUATIONS,
  hedge: words.HEDGE,
  advice: words.ADVICE,
  chat: words.CHAT,
  'time-past': words.TIME_PAST,
  negation: words.NEGATIONS,
  cause: words.CAUSES,
  condition: words.CONDITIONS,
  modal: words.MODALS,
} as const

type SetName = keyof typeof SETS

const SET_NAMES = Object.keys(SETS) as SetName[]

/** Numbers of the sets that hold a word. */
const SETS_OF = new Map<string, number[]>()
for (const [i, name] of SET_NAMES.entries())
  for (const word of SETS[name]) {
    const list = SETS_OF.get(word)
    if (list === undefined) SETS_OF.set(word, [i])
    else list.push(i)
  }

/** Sets that say more together. */
const PAIRS = [
  ['body', 'harm'],
  ['harm', 'negation'],
  ['damage', 'negation'],
  ['harm', 'modal'],
  ['damage', 'modal'],
  ['state', 'condition'],
  ['state', 'cause'],
  ['body', 'negation'],
  ['harm', 'condition'],
  ['damage', 'condition'],
  ['time-past', 'people'],
  ['advice', 'state'],
  ['body', 'modal'],
  ['care', 'body'],
  ['care', 'spoils'],
  ['spoils', 'negation'],
  ['spoils', 'modal'],
  ['agent', 'body'],
  ['agent', 'care'],
  ['agent', 'modal'],
  ['injury', 'body'],
  ['injury', 'modal'],
  ['deadly', 'modal'],
  ['agent', 'negation'],
] as const

const PAIR_FEATURES = PAIRS.map(([a, b]) => ({
  bits: (1 << SET_NAMES.indexOf(a)) | (1 << SET_NAMES.indexOf(b)),
  name: `both:${a}+${b}`,
}))

const COUNTED = ['number', 'unit', 'money', 'tool', 'material', 'part', 'verb', 'past', 'third', 'ing', 'particle']
const COUNTED_AT = new Map(COUNTED.map((tag, i) => [tag, i]))

/** Names of what is told of once, and of what is told of again; written once for all sentences. */
type Told = { readonly once: string; readonly again: string }
const SET_FEATURES = SET_NAMES.map((name): Told => ({ once: `has:${name}`, again: `has2:${name}` }))
const TAG_FEATURES = COUNTED.map((tag): Told => ({ once: `tag:${tag}`, again: `tag2:${tag}` }))

/** What was met of up to 31 kinds: a bit a kind for what was met at all and for what was met again, and the order of it. */
type Met = { seen: number; again: number; readonly order: number[] }

const meet = (met: Met, kind: number): void => {
  const bit = 1 << kind
  if ((met.seen & bit) !== 0) met.again |= bit
  else {
    met.seen |= bit
    met.order.push(kind)
  }
}

const tellMet = ({ again, order }: Met, names: readonly Told[], found: string[]): void => {
  for (const kind of order) {
    const name = names[kind]
    if (name === undefined) continue
    found.push(name.once)
    if ((again & (1 << kind)) !== 0) found.push(name.again)
  }
}
const SPEAKER = new Set(['i', 'my', 'me', 'mine'])
const LISTENER = new Set(['you', 'your'])
const TOGETHER = new Set(['we', 'our', 'us'])

const lengthClass = (n: number): number => [3, 5, 8, 12, 18, 26].findLastIndex(limit => n >= limit) + 1

/** Features of the words a sentence holds, whatever their order. */
export const wordFeatures = (tokens: readonly Token[]): string[] => {
  const found: string[] = []
  const sets: Met = { seen: 0, again: 0, order: [] }
  const tags: Met = { seen: 0, again: 0, order: [] }
  let [speaker, listener, together] = [false, false, false]
  for (const { word, tag } of tokens) {
    const inSets = SETS_OF.get(word)
    if (inSets !== undefined) for (const set of inSets) meet(sets, set)
    const counted = COUNTED_AT.get(tag)
    if (counted !== undefined) meet(tags, counted)
    if (SPEAKER.has(word)) speaker = true
    else if (LISTENER.has(word)) listener = true
    else if (TOGETHER.has(word)) together = true
  }
  tellMet(sets, SET_FEATURES, found)
  for (const { bits, name } of PAIR_FEATURES) if ((sets.seen & bits) === bits) found.push(name)
  tellMet(tags, TAG_FEATURES, found)
  found.push(`long:${lengthClass(tokens.length)}`)
  if (speaker) found.push('has:i')
  if (listener) found.push('has:you')
  if (together) found.push('has:we')
  return found
}
