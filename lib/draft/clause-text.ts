import type { Token } from '@/lib/trade/tagger'

/** Said while thinking or to soften; left out of the sheet. */
const IDLE = new Set(
  "um uh uh-huh mm-hm er erm ah eh oh hmm mmm just actually basically literally honestly really simply obviously please kinda sorta anyway alright okay ok yeah yep aye och mate folks guys buddy sir ma'am dear wee mind probably".split(
    ' ',
  ),
)
/** Idle only at the end of what is said. */
const IDLE_AT_END = new Set(
  'now there here then again too also well first right so and but or for me you us see look if course meanwhile altogether still'.split(
    ' ',
  ),
)
const IDLE_PHRASES =
  /\b(?:you know(?: what i mean)?|i mean|i guess|i think|i suppose|i reckon|kind of|sort of|go ahead and|or whatever|or something(?: like that)?|of course|by the way|as i said|like i said|if you like|if you want|for me|for us|if you can|if you will|or so|a little bit of|at this point|this time|as well(?! as)|(?:the )?(?:right here|right there|over there|over here|up there|down there)|real quick|nice and|god forbid|believe me|trust me|to be honest|no worries)\b/gi

/** Named for a person or a form, with a capital wherever they stand. */
const CAPITAL = /^(?:Phillips|Allen|Torx|Woodruff|Bowden|Philips|Belleville|Bourdon|Celsius|Fahrenheit)\b/

/** The first letter small again, but for "I", acronyms and names that are sizes: "ABS", "M8", "V-belt". */
export const decapitalize = (said: string): string => {
  const first = /^\S*/.exec(said)?.[0] ?? ''
  const isKept =
    /^I(?:$|['’,])/.test(first) ||
    /^\p{Lu}.*[\p{Lu}\d]/u.test(first) ||
    /^[B-Z][,;]?$/.test(first) ||
    /^[A-Z]-/.test(first) ||
    CAPITAL.test(first)
  return isKept ? said : `${said.charAt(0).toLowerCase()}${said.slice(1)}`
}

/** "M12" keeps its letter, though the words fall apart. */
const decapitalizeAt = (text: string, token: Token, word: string): string =>
  /^\p{L}\d/u.test(text.slice(token.at)) ? word : decapitalize(word)

/** "Not just the switch": that too, so that nothing is refused. */
export const isNotOnly = (tokens: readonly Token[], i: number): boolean =>
  tokens[i]?.word === 'not' && /^(?:just|only|merely)$/.test(tokens[i + 1]?.word ?? '')

/** Said with "no" as things, read as verbs. */
const NO_DEED = /^(?:torque|force|heat|grease|oil|glue|tape|paint|hammer|pressure)$/

/** "Never, ever, | touch that", "don't, | lift it", "don't you ever | lift it": refused just before, with nothing else said between. */
export const isRefusedAhead = (tokens: readonly Token[], from: number): boolean => {
  // "No torque on them."
  const [no, deed, next] = tokens.slice(from, from + 3)
  if (no?.word === 'no' && NO_DEED.test(deed?.word ?? '') && deed?.isAfterPause === false && next?.tag === 'particle')
    return true
  if (tokens[from]?.tag === 'and') return false
  const isEver = tokens[from - 1]?.word === 'ever'
  const leads = isEver ? LEADS_EVER : LEADS_REFUSED
  let first = from
  while (first > 0 && leads.test(tokens[first - 1]?.word ?? '')) first--
  // "You don't, | lift it" tells of one time; "you never, ever | lift it" of every one.
  if (tokens[first]?.word === 'you' && !isEver) first++
  const isOwn = first === 0 || tokens[first]?.isAfterPause === true || tokens[first - 1]?.tag === 'and'
  const said = tokens.slice(first, from).map(({ word }) => word)
  return isOwn && /\b(?:never|don['’]t|(?:do|must|should|may|can|would) not)\b/.test(said.join(' '))
}
const LEADS_REFUSED = /^(?:never|ever|don't|don’t|do|not|please|you)$/
const LEADS_EVER = /^(?:never|ever|don't|don’t|do|not|please|you|i|we|one|must|should|would|may|can)$/

/** "Twist it rather than | pull it": what is not done. */
export const isContrasted = (tokens: readonly Token[], from: number): boolean =>
  tokens[from - 1]?.word === 'than' && tokens[from - 2]?.word === 'rather'

/** "like" between pauses or before an amount fills; "like a wallet" compares. */
const isIdle = (tokens: readonly Token[], i: number): boolean => {
  const token = tokens[i]
  if (token === undefined || token.tag === 'verb') return false
  if (token.word === 'like') {
    const next = tokens[i + 1]
    return token.isAfterPause || next === undefined || next.isAfterPause || next.tag === 'number'
  }
  // "Not just at the wall" is there too.
  if (token.word === 'just' && isNotOnly(tokens, i - 1)) return false
  // "These guys" are parts.
  return IDLE.has(token.word) && !/^(?:this|these|that|those|little|big)$/.test(tokens[i - 1]?.word ?? '')
}

const OPENED = /^(?:gonna|wanna|gotta|'em|’em|till|'til|’til|'cause|’cause)$/i

/** Signs before a figure in written notes, in words. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/<=|≤/, 'at most'],
  [/>=|≥/, 'at least'],
  [/</, 'under'],
  [/>/, 'over'],
  [/±|\+\/-/, 'plus or minus'],
]

/** The sign in [from, to) in words; one blank, as between nearly all words, holds none. */
const signIn = (text: string, from: number, to: number): string | undefined => {
  if (to - from < 1 || (to - from === 1 && text[from] === ' ')) return undefined
  const between = text.slice(from, to)
  return SIGNS.find(([pattern]) => pattern.test(between))?.[1]
}

/** @returns the words of a stretch of tokens as said, idle ones left out; contractions stay whole, pauses become commas, the sentence's first word goes small. */
export const sayTokens = (text: string, tokens: readonly Token[], from: number, to: number): string => {
  const out: string[] = []
  let last = -1
  let hasPause = false
  for (let i = from; i < to; i++) {
    const token = tokens[i]
    if (token === undefined || token.at === last) continue
    last = token.at
    hasPause ||= token.isAfterPause
    if (isIdle(tokens, i)) continue
    const sign = out.length === 0 ? undefined : signIn(text, tokens[i - 1]?.to ?? token.at, token.at)
    if (sign !== undefined) out.push(sign)
    // Half a contraction is said whole only when both halves are meant.
    const startsHalf = tokens[i - 1]?.at === token.at
    const endsHalf = tokens[i + 1]?.at === token.at && i + 1 >= to
    const word = startsHalf || endsHalf ? token.word : text.slice(token.at, token.to)
    if (hasPause && out.length > 0) out.push(`${out.pop()},`)
    // "M12" is two tokens and one word.
    const isGlued = !hasPause && out.length > 0 && tokens[i - 1]?.to === token.at
    hasPause = false
    const isFirst = token.at === tokens[0]?.at
    const shown = OPENED.test(word) ? token.word : isFirst ? decapitalizeAt(text, token, word) : word
    out.push(isGlued ? `${out.pop()}${shown}` : shown)
  }
  return tidy(out.join(' '))
}

/** A noun that never came: "under the, where the notches are", "lift the its case". */
const FALSE_START =
  /\b(?:the|a|an|your|my|our|its),?\s+(?=(?:the|a|an|your|my|our|its|this|these|those|where|when|with|of|from|at|by|it|them|and|is|are)\b)/gi

const CALLS_FOR_MORE = new Set(
  'the a an this your my our its to of with from into onto for at by towards toward against between under and or than'.split(
    ' ',
  ),
)

/** Words that rightly follow themselves. */
const DOUBLES = new Set(['that', 'had', 'half', 'back'])

const withoutIdleEnd = (words: readonly string[]): readonly string[] => {
  let kept = words
  while (kept.length > 1 && IDLE_AT_END.has(kept.at(-1)?.toLowerCase() ?? '')) {
    const less = kept.slice(0, -1)
    const end = (less.at(-1) ?? '').toLowerCase()
    const isTold =
      /^(?:you|me|us)$/i.test(kept.at(-1) ?? '') && /^(?:on|at|off|in|over|behind|near|let|give)$/.test(end)
    if (end === 'for' || !(isTold || CALLS_FOR_MORE.has(end))) kept = less
    else break
  }
  return kept
}

/** Leaves out idle phrases and loose ends. */
export const tidy = (said: string): string => {
  const kept = said.replace(IDLE_PHRASES, ' ').replace(FALSE_START, '')
  const joined = kept.includes(',') ? kept.replace(/\s*,(?:\s*,)*/g, ',') : kept
  const spaced = /\s\s|[^\S ]/.test(joined) ? joined.replace(/\s+/g, ' ') : joined
  const bare = spaced.trim().replace(/^[,;:\s]+|[,;:.!?\s]+$/g, '')
  let words = withoutIdleEnd(
    bare.split(' ').filter((word, i, all) => word !== all[i - 1] || word.length < 2 || DOUBLES.has(word)),
  )
  while (words.length > 1 && /^(?:and|then|so|but|or|now),?$/i.test(words[0] ?? '')) words = words.slice(1)
  return words.join(' ').replace(/[,;:.!?]+$/, '')
}

export const countWords = (text: string): number => text.split(/\s+/).filter(word => /[\p{L}\p{N}]/u.test(word)).length

/** Most words a step may have. @source ASD-STE100 rule 5.1 (from memory): 20 words in a procedural sentence */
export const MOST_WORDS = 20

const LOOSE = new Set(
  "a an the this that these those your my our his its their to of with from into onto for at by and or but nor if when while because as than which who is are be was will would can could should must very between approx approximately roughly circa per each every some any not no don't never until so before after where how what towards toward against near it's there's they're you're we're i'm that's you we they i he she".split(
    ' ',
  ),
)

/** What stands behind the last space of a text. */
const lastWordOf = (text: string): string => {
  const word = text.slice(text.lastIndexOf(' ') + 1)
  return /\s/.test(word) ? (word.split(/\s/).at(-1) ?? '') : word
}

/** Whether a text ends on a word that calls for another. */
export const isLooseEnded = (text: string): boolean => {
  const last = lastWordOf(text)
    .toLowerCase()
    .replace(/[,;.]+$/, '')
  if (!LOOSE.has(last)) return false
  // "Where the notches are" is whole.
  if (/\b(?:where|what|how|who|which|that)(?: \S+){1,5} (?:is|are|was|were|which|from|for|to|at|with|on)$/i.test(text))
    return false
  if (/\b(?:on|in|to|of|for|with|from|at|round|under|over) each$/i.test(text)) return false
  if (/\b(?:place|spot|hole|slot|side|way|bag|box) (?:it|they) \w+ (?:from|in|on|to|out of)$/i.test(text)) return false
  return !/\b(?:that|this|these|those|you)$/.test(last)
}

const OPENS_MORE =
  /^(?:and|or|but|with|from|until|so|because|which|where|when|while|if|before|after|in|on|into|onto|for|at|by|to|under|between)$/i

/** Takes words off the end that call for another. */
export const withoutLooseEnd = (text: string): string => {
  let said = text
  while (said.includes(' ') && isLooseEnded(said)) said = said.replace(/[,;]?\s+\S+$/, '')
  return said
}

/** Cuts a text to so many words: at a comma or before what adds to it, where it can; never on a word that calls for another. */
export const cutToWords = (text: string, most = MOST_WORDS): string => {
  if (countWords(text) <= most) return text
  const words = text.split(/\s+/)
  const isSeam = (i: number) => /[,;]$/.test(words[i - 1] ?? '') || OPENS_MORE.test(words[i] ?? '')
  let end = most
  while (end > most / 2 && !isSeam(end)) end--
  const kept = words.slice(0, end > most / 2 ? end : most)
  return withoutLooseEnd(kept.join(' ')).replace(/[,;]+$/, '')
}

/** A sentence for the sheet: capital first, full stop last. */
export const asSentence = (text: string): string => {
  const bare = text.trim().replace(/[\s,;:.!?]+$/, '')
  return bare === '' ? '' : `${bare.charAt(0).toUpperCase()}${bare.slice(1)}.`
}

/** Orders as one sentence: "lift it, wipe it and put it back". */
export const joinOrders = (orders: readonly string[]): string => {
  if (orders.length < 2) return orders[0] ?? ''
  const hasComma = orders.slice(0, -1).some(order => order.includes(','))
  return `${orders.slice(0, -1).join(', ')}${hasComma ? ',' : ''} and ${orders.at(-1)}`
}
