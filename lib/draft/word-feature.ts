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

const SETS_OF = new Map<string, SetName[]>()
for (const [name, set] of Object.entries(SETS) as [SetName, ReadonlySet<string>][])
  for (const word of set) {
    const list = SETS_OF.get(word)
    if (list === undefined) SETS_OF.set(word, [name])
    else list.push(name)
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

const COUNTED = new Set([
  'number',
  'unit',
  'money',
  'tool',
  'material',
  'part',
  'verb',
  'past',
  'third',
  'ing',
  'particle',
])
const SPEAKER = new Set(['i', 'my', 'me', 'mine'])
const LISTENER = new Set(['you', 'your'])
const TOGETHER = new Set(['we', 'our', 'us'])

const lengthClass = (n: number): number => [3, 5, 8, 12, 18, 26].findLastIndex(limit => n >= limit) + 1

/** Features of the words a sentence holds, whatever their order. */
export const wordFeatures = (tokens: readonly Token[]): string[] => {
  const found: string[] = []
  const counts = new Map<string, number>()
  const tags = new Map<string, number>()
  let [speaker, listener, together] = [false, false, false]
  for (const { word, tag } of tokens) {
    for (const name of SETS_OF.get(word) ?? []) counts.set(name, (counts.get(name) ?? 0) + 1)
    if (COUNTED.has(tag)) tags.set(tag, (tags.get(tag) ?? 0) + 1)
    if (SPEAKER.has(word)) speaker = true
    else if (LISTENER.has(word)) listener = true
    else if (TOGETHER.has(word)) together = true
  }
  for (const [name, n] of counts) {
    found.push(`has:${name}`)
    if (n > 1) found.push(`has2:${name}`)
  }
  for (const [a, b] of PAIRS) if (counts.has(a) && counts.has(b)) found.push(`both:${a}+${b}`)
  for (const [tag, n] of tags) {
    found.push(`tag:${tag}`)
    if (n > 1) found.push(`tag2:${tag}`)
  }
  found.push(`long:${lengthClass(tokens.length)}`)
  if (speaker) found.push('has:i')
  if (listener) found.push('has:you')
  if (together) found.push('has:we')
  return found
}
