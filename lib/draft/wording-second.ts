import { CAUSES } from '@/lib/trade/english'
import { classesOf, verbOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { countWords, MOST_WORDS, sayTokens } from './clause-text'
import type { Reading } from './feature'
import { conditionOf, KEEPS } from './wording-condition'
import { isVerbless } from './wording-kinds'
import { lateOrder } from './wording-late'
import { fromTorqueTold, fromWornTold, givenOrder, namedOrder } from './wording-named'
import { withArticle, yours } from './wording-place'
import type { Stretch } from './wording-stretch'

/** What a second look at a sentence finds where no clause gave an order. */
export type Second = { readonly text: string; readonly isGuess: boolean }

/** More words than this tell a story; keeps patterns over a stretch cheap. */
const LONGEST = 40

const OPENERS =
  /^(?:and|then|so|but|now|next|right|yes|yeah|also|first|okay|ok|oh|well|finally|lastly|just|only|again|second|third|please|good|alright|um|uh|er|copy|roger)$/
const POINTS = /^(?:that|it|here)$/
const SUBJECT = /^(?:i|we|you|he|she|they|it|there)$/
const BREAKS = /^(?:then|but|so)$/

const isNounish = (token: Token | undefined): boolean =>
  token !== undefined && /^(?:noun|part|tool|material|unit|ing)$/.test(token.tag)

/** Skips lead-ins and "that's", "there's"; never "no". */
const skipOpeners = (tokens: readonly Token[], { from, to }: Stretch): Stretch => {
  let at = from
  while (at < to - 1) {
    const [word = '', next] = [tokens[at]?.word, tokens[at + 1]]
    const isAgain = word === 'again' && /^(?:with|at|on|in|from|until)$/.test(next?.word ?? '')
    const isCounted = /^(?:second|third|first)$/.test(word) && (isNounish(next) || next?.tag === 'word')
    if (isAgain || isCounted) break
    if (OPENERS.test(word)) at++
    else if (POINTS.test(word) && /^(?:'s|is)$/.test(next?.word ?? '') && at + 2 < to) at += 2
    else break
  }
  return { from: at, to }
}

/** Where running captions, which have no pauses, begin another thing. */
const isSeam = (tokens: readonly Token[], i: number, from: number): boolean => {
  const [token, last, next] = [tokens[i], tokens[i - 1], tokens[i + 1]]
  if (token === undefined || last === undefined || i - from < 2) return false
  const isSwitched =
    last.word === 'on' &&
    /^(?:power|isolator|breaker|ignition|padlock|lock|tag|pump|water|gas|handbrake|brake)$/.test(
      tokens[i - 2]?.word ?? '',
    )
  if (last.tag === 'particle' && (isSwitched || !/^(?:over|through|in|on|home)$/.test(last.word)))
    return (token.tag === 'number' && isNounish(next)) || (isNounish(token) && tokens[i - 2]?.tag !== 'verb')
  if (!isNounish(last)) return false
  if (token.word === 'no' || token.word === 'not' || token.word === 'never') return false
  return (token.tag === 'number' || token.tag === 'determiner') && (isNounish(next) || next?.tag === 'unit')
}

/** "before the wire", "once it is dry"; not "as before", "once more", "the night before". */
const isCondition = (tokens: readonly Token[], i: number): boolean => {
  const [token, last, next] = [tokens[i], tokens[i - 1], tokens[i + 1]]
  if (token === undefined || next === undefined || next.isAfterPause || last?.word === 'as' || last?.word === 'than')
    return false
  if (token.word === 'where' || token.word === 'as' || token.word === 'after')
    return next.tag === 'pronoun' || (token.word !== 'after' && next.tag === 'determiner')
  return token.word !== 'once' || next.word !== 'more'
}

/** Splits at pauses, causes, "then" and subjects; at seams too where the sentence has no pause. */
const toStretches = (reading: Reading, hasSeams: boolean): readonly Stretch[] => {
  const { tokens } = reading
  const out: Stretch[] = []
  let from = 0
  for (let i = 1; i <= tokens.length; i++) {
    const token = tokens[i]
    const isEnd =
      token === undefined ||
      token.isAfterPause ||
      CAUSES.has(token.word) ||
      token.tag === 'cause' ||
      BREAKS.test(token.word) ||
      (KEEPS.has(token.word) && isCondition(tokens, i)) ||
      (hasSeams &&
        SUBJECT.test(token.word) &&
        /^(?:noun|part|tool|material|unit|ing|number|adverb|adjective|word|particle)$/.test(
          tokens[i - 1]?.tag ?? '',
        )) ||
      (token.tag === 'and' && SUBJECT.test(tokens[i + 1]?.word ?? '')) ||
      (/^(?:that|it|there|here|this)$/.test(token.word) &&
        /^(?:'s|is)$/.test(tokens[i + 1]?.word ?? '') &&
        tokens[i - 1]?.tag !== 'and' &&
        tokens[i - 1]?.tag !== 'condition') ||
      (hasSeams && isSeam(tokens, i, from))
    if (!isEnd) continue
    if (i > from) out.push({ from, to: i })
    from = i
  }
  return out
}

const BARE: ReadonlySet<string> = new Set(['remove', 'fit', 'clean', 'make', 'apply', 'control'])
/** Things and states first, verbs second: alone behind a pause they order nothing. */
const NO_ORDER =
  /^(?:part|strip|tie|screw|guide|flush|dry|empty|steady|snug|stop|go|wet|press|file|drill|do|get|give|tap|pop|work|run|cool|cover|plug|pin|clip|hook|bolt|seal|level|square|free|warm|key|jack|block|home|back|lap|buff|pump|light|hit|let|leave|keep|mark|set|put|start|charge|rest|bed|pack)$/

/** "The joints | I crimp", "wires | unplug": what is done to the thing named just before. */
const onAhead = (reading: Reading, { from, to }: Stretch, ahead: string): string | undefined => {
  const { tokens, text } = reading
  if (ahead === '' || ahead.split(' ').length > 6 || tokens[from]?.isAfterPause === false) return undefined
  const isTold = /^(?:i|we|you|one)$/.test(tokens[from]?.word ?? '')
  const at = isTold ? from + 1 : from
  const verb = verbOf(tokens[at]?.word ?? '')
  if (verb === undefined || at >= to || NO_ORDER.test(verb.base)) return undefined
  if (![...classesOf(verb.base)].some(name => BARE.has(name))) return undefined
  const isAlone = at + 1 >= to
  if (
    isTold
      ? !isAlone && !/^(?:adverb|preposition|particle)$/.test(tokens[at + 1]?.tag ?? '')
      : !isAlone || verb.form !== 'base'
  )
    return undefined
  return `${verb.base} ${withArticle(yours(ahead))} ${sayTokens(text, tokens, at + 1, to)}`.trim()
}

const isSpoken = (tokens: readonly Token[], { from, to }: Stretch): boolean =>
  tokens.slice(from, to).some(({ tag }) => /^(?:noun|part|tool|material|word)$/.test(tag))

/** The thing named in the breaths right before, the first of them: "its hose, a rubber pipe |". */
const aheadOf = (reading: Reading, stretches: readonly Stretch[], i: number): string => {
  const { tokens, text } = reading
  let first: Stretch | undefined
  for (let k = i - 1; k >= Math.max(0, i - 3); k--) {
    const stretch = stretches[k]
    if (stretch === undefined) break
    const own = skipOpeners(tokens, stretch)
    if (!isVerbless(tokens, stretch)) break
    if (isSpoken(tokens, own)) first = own
  }
  const { tag } = tokens[first?.from ?? -1] ?? {}
  if (
    first === undefined ||
    tag === undefined ||
    /^(?:preposition|particle|to|negation|condition|number|adverb)$/.test(tag)
  )
    return ''
  return sayTokens(text, tokens, first.from, first.to).replace(/,? (?:next|last|first|now|then)$/i, '')
}

/**
 * A second look at a sentence no clause of which gives an order: passives behind a phrase in front, parts that move by
 * themselves in the talk, anyone as the agent; then what names alone tell.
 *
 * @param isSound whether a phrase can stand as an order
 */
export const secondLook = (
  reading: Reading,
  before: Reading | undefined,
  after: Reading | undefined,
  isSound: (phrase: string) => boolean,
): Second | undefined => {
  const { tokens } = reading
  if (reading.isQuestion) return undefined
  const hasPauses = tokens.some(({ isAfterPause }, i) => i > 0 && isAfterPause)
  const around = [before?.text, after?.text]
  const kept: string[] = []
  const fits = (said: string) => kept.length === 0 || countWords([...kept, said].join(' and ')) <= MOST_WORDS
  const late = toStretches(reading, false)
  let pending = ''
  let reach = -1
  let isGuess = false
  late.forEach((stretch, i) => {
    const opener = tokens[stretch.from]
    if (
      opener === undefined ||
      CAUSES.has(opener.word) ||
      opener.tag === 'cause' ||
      stretch.to - stretch.from > LONGEST
    )
      return
    const last = kept.at(-1)
    if (
      KEEPS.has(opener.word) &&
      opener.word !== 'as' &&
      isCondition(tokens, stretch.from) &&
      lateOrder(reading, stretch, '') === undefined
    ) {
      const said = conditionOf(reading, { ...stretch, marker: opener.word })
      if (said === '') return
      if (last === undefined) pending = opener.word === 'where' ? '' : said
      else if (reach === i - 1) kept.splice(-1, 1, `${last} ${said}`)
      reach = i
      return
    }
    const own = skipOpeners(tokens, stretch)
    // "…, so the stuff goes out": what follows, not what is done.
    if (opener.word === 'so' && i > 0 && kept.length === 0 && !tokens[own.from]?.isAfterPause) return
    const ahead = own.from === stretch.from ? aheadOf(reading, late, i) : ''
    const order = lateOrder(reading, own, ahead) ?? onAhead(reading, stretch, ahead)
    if (order === undefined) {
      // How it is done, right behind it.
      const said = sayTokens(reading.text, tokens, stretch.from, stretch.to)
      const isDetail = last !== undefined && reach === i - 1 && isVerbless(tokens, stretch) && countWords(said) < 8
      const more = `${last}${opener.word === 'and' ? ' and' : opener.word === 'then' ? ', then' : ','} ${said}`
      if (isDetail && countWords(more) <= MOST_WORDS && isSound(more)) {
        kept.splice(-1, 1, more)
        reach = i
      }
      return
    }
    if (!isSound(order) || !fits(order)) return
    kept.push(pending === '' ? order : `${order} ${pending}`)
    pending = ''
    reach = i
  })
  if (kept.length === 0) {
    const fine = hasPauses ? late : toStretches(reading, true)
    const runs: Stretch[] = []
    let condition = ''
    for (const stretch of fine) {
      const own = skipOpeners(tokens, stretch)
      const word = tokens[stretch.from]?.word ?? ''
      const isLead = own.to - own.from === 1 && OPENERS.test(tokens[own.from]?.word ?? '')
      if (KEEPS.has(word) && isCondition(tokens, stretch.from)) {
        condition = conditionOf(reading, { ...stretch, marker: word })
        if (runs.length > 0) break
      } else if (runs.length === 0) {
        if (CAUSES.has(word) || !isVerbless(tokens, own)) break
        if (!isLead) runs.push(own)
      } else if (CAUSES.has(word) || !isVerbless(tokens, stretch) || stretch.to - (runs[0]?.from ?? 0) > LONGEST) break
      else runs.push(stretch)
    }
    const named =
      runs.length === 0
        ? (fromTorqueTold(reading) ?? fromWornTold(reading))
        : (namedOrder(reading, runs, around) ??
          fromTorqueTold(reading) ??
          fromWornTold(reading) ??
          // "Cap, a bit of grease round the rim": the thing first, then what is put there.
          (runs.length > 1 ? givenOrder(reading, runs.slice(1), around) : undefined))
    if (named === undefined || !isSound(named.text)) return undefined
    isGuess = named.isGuess
    kept.push(condition === '' ? named.text : `${named.text} ${condition}`)
  }
  return { text: joined(kept), isGuess }
}

const joined = (parts: readonly string[]): string =>
  parts.length < 2
    ? (parts[0] ?? '')
    : `${parts.slice(0, -1).join(', ')}${parts.slice(0, -1).some(part => part.includes(',')) ? ',' : ''} and ${parts.at(-1)}`
