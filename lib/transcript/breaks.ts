import { paceOf } from './boundary'
import { cutRun } from './run'
import { isListNumber, type Token } from './token'

/** Ends a sentence: a full stop, question or exclamation mark, or ellipsis, perhaps with closing quotes or brackets. */
const CLOSED = /[.?!…。！？]["'”’»)\]]*$/

/** Shortened words whose point ends no sentence by itself. */
const TITLE = /^(?:mr|mrs|ms|dr|fig|figs|vs|e\.g|i\.e)\.$/i
const SHORTENED =
  /^(?:e\.g|i\.e|etc|approx|vs|no|nos|fig|figs|mr|mrs|ms|dr|st|jr|sr|ft|in|lbs?|oz|pt|qt|gal|min|max|sec|hr|hrs|dia|qty|pos|ref|temp|incl|dept|ext|p\.s|a\.m|p\.m|u\.s|[a-z])\.$/i

/** Words that no sentence ends with: what they belong to is still to come. */
const OPEN = new Set(
  'a an the this these my your his her its our their to of with from into onto for at by and or but nor if when while because cause as than that which who is are was were be been am will would can could should must do does did have has had not no very about around between per each every some any i you we they he she it lets let gonna wanna just really'.split(
    ' ',
  ),
)
/** Of those, words that often do end one. */
const CLOSABLE = new Set('it that this you no not do does did have is are was that them'.split(' '))

/** Words that open a new thought. One word, or several from the same place. */
const OPENERS: readonly (readonly string[])[] = [
  'okay',
  'ok',
  'alright',
  'all right',
  'right',
  'so',
  'now',
  'then',
  'and then',
  'next',
  'first',
  'second',
  'finally',
  'after that',
  'once',
  'before you',
  'make sure',
  'be careful',
  'careful',
  'dont forget',
  'remember',
  'oh',
  'oh and',
  'also',
  'but',
  'and now',
  'and so',
  'go ahead',
  'youre going',
  'youre gonna',
  'you want',
  'were going',
  'were gonna',
  'im going',
  'im gonna',
  'ill',
  'lets',
  'because',
  'well',
  'yeah',
  'yes',
  'no',
  'if you',
  'when you',
].map(phrase => phrase.split(' '))
const OPENERS_BY_WORD = new Map<string, (readonly string[])[]>()
for (const phrase of OPENERS) {
  const [first = ''] = phrase
  OPENERS_BY_WORD.set(first, [...(OPENERS_BY_WORD.get(first) ?? []), phrase])
}

/** A pause that ends a sentence where nothing else shows one, in seconds. Common practice, no source. */
const PAUSE = 0.2
/** Words of a sentence that is long enough to be cut before an opener, and of one that has to be cut. */
const LONG = 14
const TOO_LONG = 32
/** Words after which a sentence is cut wherever it stands. */
const ENDLESS = 60
/** Fewer words than this are no talk: their pauses and openers alone tell. */
const FEW = 12
/** A piece longer than this, in words, has no punctuation worth trusting. */
const TRUSTED = 45

const keyOf = (token: Token | undefined): string => token?.text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '') ?? ''

const isClosed = (token: Token, next: Token | undefined, hasCapitals: boolean): boolean => {
  if (isListNumber(token)) return true
  if (!CLOSED.test(token.text)) return false
  if (next === undefined) return true
  const isLower = /^["'“‘(]*\p{Ll}/u.test(next.text)
  const bare = token.text.replace(/^["'“‘([]+/, '')
  if (TITLE.test(bare)) return false
  if (SHORTENED.test(bare)) return !isLower && !/^\d/.test(next.text)
  return !(hasCapitals && isLower && /(?:\.{2,}|…)$/.test(token.text))
}

const isTurn = (token: Token, next: Token): boolean =>
  next.opens || (token.speaker !== next.speaker && next.speaker !== undefined && token.speaker !== undefined)

/** How good a place after tokens[i] is to end a sentence; 0 is none. */
const strengthAfter = (tokens: readonly Token[], i: number): number => {
  const [token, next] = [tokens[i], tokens[i + 1]]
  if (token === undefined || next === undefined) return 0
  const gap = next.start - token.end
  const key = keyOf(token)
  if (gap < 1 && OPEN.has(key) && !CLOSABLE.has(key)) return 0
  let strength = gap >= PAUSE ? 2 + Math.min(gap, 2) : 0
  const phrases = OPENERS_BY_WORD.get(keyOf(next)) ?? []
  if (phrases.some(phrase => phrase.every((word, k) => keyOf(tokens[i + 1 + k]) === word))) strength += 1.5
  if (next.isFirst) strength += 0.4
  if (/[,;:]$/.test(token.text)) strength += 0.6
  return OPEN.has(key) ? strength / 2 : strength
}

/** Cuts a sentence too long to be trusted at its pauses and before words that open a new thought. */
const cutLong = (tokens: readonly Token[], from: number, to: number, ends: number[]): void => {
  let start = from
  let best = -1
  let bestStrength = 0
  for (let i = from; i < to - 1; i++) {
    const length = i - start + 1
    const strength = strengthAfter(tokens, i)
    if (strength >= 2 || (strength >= 1.5 && length >= LONG)) {
      ends.push(i)
      start = i + 1
      best = -1
      bestStrength = 0
      continue
    }
    if (length >= 5 && strength >= bestStrength && strength > 0) {
      best = i
      bestStrength = strength
    }
    if (length >= ENDLESS && best < 0) best = i
    if (length >= TOO_LONG && best >= 0) {
      ends.push(best)
      start = best + 1
      i = best
      best = -1
      bestStrength = 0
    }
  }
  ends.push(to - 1)
}

/**
 * Where sentences end: at punctuation and a change of speaker; in captions without punctuation where words, pauses and
 * lengths make an end likely; a sentence that runs on, at pauses and before words that open a new thought.
 *
 * @param tokens timed, in order of what was said
 * @returns index of the last token of each sentence, ascending
 */
export const findSentenceEnds = (tokens: readonly Token[]): readonly number[] => {
  let [closed, followed] = [0, 0]
  tokens.forEach((token, i) => {
    const next = tokens[i + 1]
    if (next === undefined || !CLOSED.test(token.text)) return
    closed++
    if (/^["'“‘(]*[\p{Lu}\p{N}]/u.test(next.text)) followed++
  })
  const hasCapitals = followed >= 0.5 * closed
  const isBare = closed < tokens.length / 40
  const pace = isBare && tokens.length >= FEW ? paceOf(tokens) : undefined
  const ends: number[] = []
  let from = 0
  tokens.forEach((token, i) => {
    const next = tokens[i + 1]
    if (next !== undefined && !isTurn(token, next) && !isClosed(token, next, hasCapitals)) return
    if (pace !== undefined) for (const end of cutRun(tokens, from, i + 1, pace)) ends.push(end)
    else if (isBare || i - from + 1 > TRUSTED) cutLong(tokens, from, i + 1, ends)
    else ends.push(i)
    from = i + 1
  })
  return ends
}
