import { PEOPLE } from '@/lib/trade/english'
import { classesOf, guessBase, verbOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import type { Clause } from './clause'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { fromAgent } from './wording-agent'
import { orderOfPlace, withArticle, yours } from './wording-place'
import { baseOf, DIRECT, isIdleVerb, likewise, orderFrom } from './wording-verb'

/** A stretch of a sentence, token indices [from, to), of one breath. */
export type Stretch = { readonly from: number; readonly to: number }

const BE = /^(?:be|is|are|was|were|been|'s|'re|gets?|got|getting)$/
const CHAIN =
  /^(?:be|is|are|was|were|been|'s|'re|gets?|got|has|have|had|needs?|wants?|ought|to|must|should|can|could|may|will|would|'ll|shall|do|does|now|then|also|just|only|first|always|never|not|thereupon|thereafter|finally|next|again|both|all|carefully|slowly|gently|fully|so|too)$/

const SAME = new Set('put cut set shut hit let split spread shed run'.split(' '))

/** What tells how a thing is, where nobody says that it has to be done: "is held by two screws". */
const STATES =
  /^(?:hold|secure|fasten|drive|locate|mount|support|mark|stamp|make|hide|bury|seat|wear|break|crack|chip|mean|call|know|design|leave|want|need|see|bend|seize|stick|cover|attach|join|connect|find|weld|cast|paint|number|burn|damage|allow|build|spring|use|write|print|say|tell|do|finish|show|give|supply|buy|rust|trap|pay|hang|stand|wire|load|lock|collect|lose)$/

const isDone = ({ word, tag }: Token): boolean => {
  const form = verbOf(word)?.form
  return tag === 'past' || form === 'past' || form === 'participle' || SAME.has(word) || /(?:ied|[^e]ed)$/.test(word)
}

const isAct = (base: string): boolean => {
  if (/^(?:be|have|get|go|come|let's)$/.test(base)) return false
  const classes = [...classesOf(base)]
  return classes.length > 0 && classes.some(name => name !== 'mind' && name !== 'behave' && name !== 'use')
}

const NAMES = /^(?:noun|part|tool|material|word|name|ing|unit|number|adjective|pronoun|past|third|verb|adverb)$/
const FRONTS =
  /^(?:from|at|in|on|with|by|before|after|under|over|behind|between|through|inside|into|onto|for|along|round|around|using|to|without|near)$/

/** Where in [from, to) the subject begins behind a phrase put in front; `from` where nothing stands in front. */
const subjectAt = (tokens: readonly Token[], from: number, to: number): number | undefined => {
  if (!FRONTS.test(tokens[from]?.word ?? '')) return from
  for (let i = from + 2; i < to; i++) {
    const [token, last] = [tokens[i], tokens[i - 1]]
    if (token === undefined || last === undefined) return undefined
    if (token.isAfterPause) return i
    const opens = token.tag === 'determiner' || /^(?:it|they|she|he|one|both|all)$/.test(token.word)
    const isEnd = NAMES.test(last.tag) && last.tag !== 'adverb' && last.tag !== 'adjective'
    if (opens && (isEnd || /^(?:rear|front|side|top|bottom|left|right|inside|outside|underneath)$/.test(last.word)))
      return i
  }
  return undefined
}

const isPlural = (word: string): boolean => word === 'feet' || /[^su]s$/.test(word)

const CANNOT_BE =
  /^(?:i|we|you|who|what|which|there|that|this|somebody|someone|nobody|nothing|people|everyone|everybody)$/i

/** The thing done to, with its article; undefined for what no hand takes. */
const objectOf = (said: string): string | undefined => {
  const thing = said.replace(/^(?:(?:and|then|but|so|now|next|also|first|thereafter|likewise|all right|okay),? )+/i, '')
  if (
    thing.split(' ').length > 8 ||
    /^(?:that no|no|so|what's) |\bthere\b|. it\b|. or |^(?:upstairs|downstairs|outdoors|outside|inside|all the way|yes)\b/i.test(
      thing,
    )
  )
    return undefined
  if (/ and (?:a|an|the) /i.test(thing) && !/^(?:the|an?|both|your|its) /i.test(thing)) return undefined
  if (thing === '' || CANNOT_BE.test(thing)) return undefined
  if (
    /\b(?:i|we|you|he|she|they|which|who|that's|it's|is|are|was|were|isn't|should|must|would|could|can|will)\b/i.test(
      thing.replace(/^(?:it|they|he|she)$/i, ''),
    )
  )
    return undefined
  if (/^(?:[a-z]+ing|his .*)$/i.test(thing)) return undefined
  if (/^(?:it|she|he)$/i.test(thing)) return 'it'
  return /^they$/i.test(thing) ? 'them' : withArticle(yours(thing))
}

/** "are lifted out and wiped": the second action is on all of them too. */
const onAll = (rest: string, thing: string): string =>
  thing === 'them' || /[^s]s$/.test(thing.split(/ (?:of|from|on|in|at|with)\b|,/)[0] ?? '')
    ? rest.replace(/\b(and [a-z]+) it\b/g, '$1 them')
    : rest

/** Whether a subject holds another verb: then the sentence is longer than it was read. */
const isTelling = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).some(({ tag, word }, i) => {
    if (word === "'s") return false
    // "The thumb rest": a verb by its tag, a part by its place.
    if (tag === 'verb')
      return from + i === from || /^(?:determiner|pronoun|particle|preposition)$/.test(tokens[from + i + 1]?.tag ?? '')
    return /^(?:third|auxiliary|modal|condition|question|cause)$/.test(tag)
  })

const placed = (order: string, front: string): string => (front === '' ? order : `${order} ${yours(front)}`)

/** "from the left the retainer is removed", "must be let off", "is the first stage then removed". */
const fromDone = (reading: Reading, { from, to }: Stretch, ahead: string): string | undefined => {
  const { tokens, text } = reading
  for (let at = from + 1; at < to; at++) {
    const token = tokens[at]
    if (token === undefined || !isDone(token)) continue
    let be = at
    while (be > from && (CHAIN.test(tokens[be - 1]?.word ?? '') || tokens[be - 1]?.tag === 'adverb')) be--
    const chain = tokens.slice(be, at)
    const base = verbOf(token.word)?.base ?? (token.tag === 'past' ? baseOf(token) : guessBase(token.word))
    const isBidden = chain.some(({ word }) => /^(?:to|must|should|gets?|then|now|first|always|needs?)$/.test(word))
    if (!chain.some(({ word }) => BE.test(word))) {
      // "thereafter is the first stage removed"
      const is = tokens.findIndex(({ word }, i) => i >= from && i < at && /^(?:is|are)$/.test(word))
      const isTurned =
        is >= 0 &&
        is <= from + 2 &&
        at - is < 7 &&
        tokens[is - 1]?.word !== 'there' &&
        tokens[is + 1]?.tag === 'determiner' &&
        isAct(base)
      if (!isTurned || STATES.test(base)) continue
      const thing = objectOf(sayTokens(text, tokens, is + 1, at))
      const rest = likewise(sayTokens(text, tokens, at + 1, to))
      return thing === undefined ? undefined : `${base} ${thing} ${rest}`.trim()
    }
    if (
      !(isAct(base) || chain.some(({ word }) => /^gets?$/.test(word))) ||
      (STATES.test(base) && !isBidden && !(base === 'wear' && /(?:glov|goggle|glass|mask|muff|boot)/.test(text)))
    )
      continue
    if (
      chain.some(({ word }) => /^(?:could|may|would)$/.test(word)) ||
      chain.some(({ word, tag }) => word === 'cannot' || (word === 'can' && tag === 'negation'))
    )
      continue
    if (chain.some(({ word }) => /^(?:was|were|been|had|can|could|may|would)$/.test(word)) && STATES.test(base))
      continue
    const start = subjectAt(tokens, from, be)
    if (start === undefined) return undefined
    if (isTelling(tokens, start, be)) return undefined
    const own = sayTokens(text, tokens, start, be)
    const said = start === be || (/^(?:it|they)$/i.test(own) && ahead !== '') ? ahead : own
    if (/^he$/i.test(own)) return undefined
    const thing = objectOf(said)
    if (thing === undefined) return undefined
    const no = tokens.slice(from, at).some(({ tag }) => tag === 'negation') ? 'do not ' : ''
    const rest = onAll(likewise(sayTokens(text, tokens, at + 1, to)), thing)
    const front = start === from ? '' : sayTokens(text, tokens, from, start)
    const order =
      /^(?:off|out|on|in|up|down|away|back)$/.test(rest) && !/^(?:it|them)$/.test(thing)
        ? `${base} ${rest} ${thing}`
        : `${base} ${thing} ${rest}`.trim()
    return placed(`${no}${order}`, front)
  }
  return undefined
}

/** Parts do these only where a hand makes them: "the ring lifts with the tweezers". */
const BY_HAND =
  /^(?:slide|pull|lift|unhook|unscrew|unclip|unbolt|unplug|unwind|unlatch|unthread|swing|roll|twist|pop|drop|push|press|snap|peel|tilt|draw|slip|flip|prise|pry|screw|clip|hook|tap|thread|wind|bolt|slot|turn|spin|rotate|fold|tuck|lower|stand|rest)$/
const LIKE_THINGS = /^(?:clips|hooks|screws|taps|drops|threads|turns|presses|bolts|slots|folds|stands|rests)$/
const WAYS =
  /^(?:straight|right|clean|easily|freely|upwards?|downwards?|outwards?|sideways|backwards?|forwards?|clear|home)$/
const GOES = /^(?:come|go|comes|goes|coming|going|went)$/
/** "into the jar and gets a shake": what it does next is told, not ordered. */
const ON_TELLING = /,? and (?:gets?|gives?|stays?|goes|go|comes?|is|are|has|have|it|they|she|he|then)\b.*$/i
const IN_BODY = /\b(?:skin|eyes?|fingers?|lungs?|nose|face)\b/i

/** "the hold-down has to come off", "it pulls straight out", "the loop drops over the post". */
const fromMoving = (reading: Reading, { from, to }: Stretch, ahead: string): string | undefined => {
  const { tokens, text } = reading
  for (let at = from; at < to; at++) {
    const [token, next, then] = [tokens[at], at + 1 < to ? tokens[at + 1] : undefined, tokens[at + 2]]
    if (token === undefined) return undefined
    const verb = verbOf(token.word)
    let chain = at
    while (chain > from && CHAIN.test(tokens[chain - 1]?.word ?? '')) chain--
    const hasTo = chain < at && /^(?:to|must|should)$/.test(tokens[at - 1]?.word ?? '')
    if (tokens.slice(chain, at).some(({ word }) => /^(?:will|'ll|can|could|may|would|do|does)$/.test(word))) continue
    const isGoing =
      GOES.test(token.word) &&
      (hasTo ||
        (/g$/.test(token.word)
          ? chain < at
          : /s$|^went$/.test(token.word) || !/^(?:you|we|i)$/.test(tokens[chain - 1]?.word ?? '')))
    const isMany =
      verb?.form === 'base' &&
      chain === at &&
      at > from &&
      NAMES.test(tokens[at - 1]?.tag ?? '') &&
      isPlural(tokens[at - 1]?.word ?? '')
    const isMade =
      BY_HAND.test(verb?.base ?? '') && (verb?.form === 'third' || (hasTo && verb?.form === 'base') || isMany)
    if (!isGoing && !isMade) continue
    const start = subjectAt(tokens, from, chain)
    if (start === undefined) return undefined
    const before = tokens[at - 1]
    const isPlaced =
      next !== undefined &&
      !next.isAfterPause &&
      (next.tag === 'particle' || next.tag === 'preposition' || WAYS.test(next.word)) &&
      next.word !== 'of' &&
      !/^(?:for|about|without|like)$/.test(next.word)
    if (isGoing && !isPlaced) continue
    if (isMade && chain === at) {
      if (
        tokens.slice(start, at).some(({ tag }) => tag === 'number') ||
        before?.tag === 'determiner' ||
        before?.tag === 'question' ||
        /^(?:that|which|who)$/.test(before?.word ?? '')
      )
        continue
      const isClear =
        WAYS.test(next?.word ?? '') ||
        (isPlaced &&
          /^(?:preposition|particle)$/.test(next?.tag ?? '') &&
          (then?.tag === 'determiner' || then?.tag === 'pronoun'))
      const isAlone = /^un/.test(verb?.base ?? '') && (next === undefined || next.isAfterPause)
      if (LIKE_THINGS.test(token.word) ? !isClear || at === from : !isPlaced && !isAlone) continue
    } else if (isMade && !isPlaced) continue
    if (isTelling(tokens, start, chain)) return undefined
    const own = sayTokens(text, tokens, start, chain)
    const said = start === chain || (/^(?:it|they)$/i.test(own) && ahead !== '') ? ahead : own
    const thing = objectOf(said)
    if (thing === undefined) return undefined
    if (tokens.slice(from, at).some(({ tag }) => tag === 'negation')) return undefined
    const front = start === from ? '' : sayTokens(text, tokens, from, start)
    const where = sayTokens(text, tokens, at + 1, to).replace(ON_TELLING, '')
    if (IN_BODY.test(where)) return undefined
    if (isGoing) {
      const way = where.replace(/^(?:straight|right|clean) (?=(?:off|out|up|down|in|back)\b)/, '')
      const [particle = '', ...more] = way.split(' ')
      const behind = tokens.find(({ word }, i) => i > at && i < to && word === more[0]?.replace(/,$/, '').toLowerCase())
      if (
        /^(?:off|out|away)$/.test(particle) &&
        behind !== undefined &&
        !/^(?:determiner|pronoun|preposition|to|condition|and)$/.test(behind.tag)
      ) {
        const order = orderOfPlace(thing, particle)
        return placed(behind.tag === 'verb' ? order : `${order}, ${more.join(' ')}`, front)
      }
      if (way === 'through' || (token.word === 'went' && (/^through\b/.test(way) || /^an? /i.test(said))))
        return undefined
      return /^(?:off|out|on|in|back|up|down|away|into|onto|over|under|round|around|between|behind|inside|through|to|against)\b/.test(
        way,
      ) && !/^(?:to|through)(?: (?:a|the))? (?:\d|one|two|three|stop|rest)/.test(way)
        ? placed(orderOfPlace(said === 'it' ? 'it' : thing, way), front)
        : undefined
    }
    return placed(
      `${verb?.base} ${said === '' || /^your /i.test(said) ? thing : thing.replace(/^your /, 'the ')} ${where}`.trim(),
      front,
    )
  }
  return undefined
}

const ACTORS = /^(?:one|she|he)$/

/** "one wipes from the inside out", "the ejectors one pushes forward": who does it is anyone. */
const fromAnyone = (reading: Reading, stretch: Stretch): string | undefined => {
  const { tokens } = reading
  const at = tokens.findIndex(({ word }, i) => i >= stretch.from && i < stretch.to - 1 && ACTORS.test(word))
  if (at < 0) return undefined
  let verb = at + 1
  while (
    verb < stretch.to &&
    (tokens[verb]?.tag === 'adverb' || /^(?:then|now|just|also|always|only)$/.test(tokens[verb]?.word ?? ''))
  )
    verb++
  const token = tokens[verb]
  const as = token === undefined ? undefined : verbOf(token.word)
  if (token === undefined || as === undefined || token.isAfterPause || !isAct(as.base)) return undefined
  if (
    as.form === 'base' ||
    as.form === 'ing' ||
    /^(?:this|that|the|each|every|which|no|other|first|last)$/.test(tokens[at - 1]?.word ?? '')
  )
    return undefined
  const last = tokens[at - 1]
  if (at > stretch.from && last?.isAfterPause === false && (last.tag === 'adjective' || last.tag === 'past'))
    return undefined
  if (as.base === 'make' || as.base === 'do') return undefined
  const next = tokens[verb + 1]
  const takesThing = next?.tag === 'determiner' || next?.tag === 'pronoun'
  if (
    tokens[at]?.word !== 'one' &&
    !takesThing &&
    !(/^(?:adjective|material)$/.test(next?.tag ?? '') && as.form !== 'participle')
  )
    return undefined
  const takes =
    next?.tag === 'determiner' || next?.tag === 'pronoun' || next?.tag === 'preposition' || next?.tag === 'number'
  const hasFront = at > stretch.from
  if (!takes && !hasFront && next !== undefined && !next.isAfterPause && next.tag !== 'adverb') return undefined
  const retagged = tokens.map(
    (other, i): Token =>
      i === at
        ? { ...other, word: 'one', tag: 'pronoun' }
        : i === verb
          ? { ...other, tag: 'third', base: as.base }
          : other,
  )
  const clause: Clause = {
    from: stretch.from,
    to: stretch.to,
    start: stretch.from,
    frame: 'statement',
    verb,
    marker: undefined,
    isNegated: false,
  }
  return fromAgent({ ...reading, tokens: retagged }, clause)
}

const TELLERS = /^(?:i|we|you)$/
const LEADS =
  /^(?:just|always|then|now|also|usually|only|simply|have|got|to|need|want|gonna|going|must|should|can|will|'ll|'re|'m|do|did|'d|would|carefully|first|go|ahead|like|really|gently|never|do)$/

/** "the mould I open", "you fish it with a hook", "before anything I take a photograph": no table has the verb, or a thing stands in front. */
const fromTold = (reading: Reading, { from, to }: Stretch, ahead: string): string | undefined => {
  const { tokens, text } = reading
  const at = tokens.findIndex(({ word }, i) => i >= from && i < to - 1 && TELLERS.test(word))
  if (at < 0 || tokens.slice(from, to).some(({ tag }, i) => tag === 'negation' && from + i !== at)) return undefined
  let verb = at + 1
  while (verb < to - 1 && (LEADS.test(tokens[verb]?.word ?? '') || tokens[verb]?.tag === 'adverb')) verb++
  const token = tokens[verb]
  const next = verb + 1 < to ? tokens[verb + 1] : undefined
  if (token === undefined || token.isAfterPause || isIdleVerb(token) || /^(?:get|go|come|make)$/.test(token.word))
    return undefined
  const as = verbOf(token.word)
  const isKnown = as !== undefined && isAct(as.base) && as.form !== 'ing' && !/^(?:noun|auxiliary)$/.test(token.tag)
  const takes = next !== undefined && !next.isAfterPause && /^(?:determiner|pronoun|number)$/.test(next.tag)
  const isUnknown =
    /^(?:word|material|adjective)$/.test(token.tag) &&
    as === undefined &&
    next !== undefined &&
    (DIRECT.test(next.word) || /^(?:up|down|off|out)$/.test(next.word))
  if (!isKnown && !isUnknown) return undefined
  const base = as?.base ?? token.word
  const rest = sayTokens(text, tokens, verb + 1, to)
  if (rest === '' && at === from && ahead === '') return undefined
  if (tokens.slice(verb + 1, to).some(({ tag }) => tag === 'third' || tag === 'modal' || tag === 'auxiliary'))
    return undefined
  if (as === undefined && /(?:pt|ought|aught|ed)$/.test(base)) return undefined
  const said = isKnown
    ? (orderFrom(reading, verb, to) ?? `${base} ${rest}`)
    : `${base} ${yours(rest).replace(/^(?:her|him)(?=$| )/i, 'it')}`.trim()
  if (at === from) {
    if (takes || isUnknown) return said
    const thing = objectOf(ahead)
    return thing === undefined ||
      thing === 'it' ||
      (next !== undefined && !/^(?:adverb|preposition|particle)$/.test(next.tag))
      ? undefined
      : `${base} ${thing} ${rest}`.trim()
  }
  if (tokens.slice(from, at).some(({ tag }) => tag === 'question')) return undefined
  const front = sayTokens(text, tokens, from, at)
  const opener = tokens[from]
  if (/^(?:preposition|particle|to|condition)$/.test(opener?.tag ?? '')) {
    if (isTelling(tokens, from + (opener?.tag === 'to' ? 2 : 1), at) && opener?.tag !== 'preposition') return undefined
    return takes || next !== undefined ? placed(said, front) : undefined
  }
  const thing = takes ? undefined : objectOf(front)
  return thing === undefined || thing === 'it' || (next?.tag === 'noun' && !next.isAfterPause)
    ? undefined
    : `${base} ${thing} ${rest}`.trim()
}

/** "Do write it down", "have it on a flat floor": an order by a word that is none elsewhere. */
const fromDoing = (reading: Reading, { from, to }: Stretch): string | undefined => {
  const { tokens, text } = reading
  const [first, next] = [tokens[from], tokens[from + 1]]
  if (first?.word !== 'do' || next === undefined || next.isAfterPause || from + 2 >= to) return undefined
  if (next.tag === 'verb' && !isIdleVerb(next)) return sayTokens(text, tokens, from + 1, to)
  if (isTelling(tokens, from + 1, to)) return undefined
  const said = sayTokens(text, tokens, from, to)
  return DIRECT.test(next.word) && !/^do (?:that|this|it)(?:$| (?:like|as)\b)/i.test(said) ? said : undefined
}

/** "the stage gets a wipe with alcohol", "the rods get oil". */
const fromGetting = (reading: Reading, { from, to }: Stretch): string | undefined => {
  const { tokens, text } = reading
  const gets = tokens.findIndex(({ word }, i) => i > from && i < to - 1 && /^gets?$/.test(word))
  const at = gets > 0 && /^(?:only|just)$/.test(tokens[gets + 1]?.word ?? '') ? gets + 1 : gets
  if (at < 0 || tokens[gets - 1]?.tag === 'to' || tokens[at - 1]?.tag === 'modal') return undefined
  const next = tokens[at + 1]
  if (
    next === undefined ||
    isDone(next) ||
    /^(?:to|in|on|off|out|up|a bit|too|so|very|it|rid|worse|hot|cold|warm|stuck)$/.test(next.word)
  )
    return undefined
  const isGiven = ['determiner', 'number', 'material', 'adjective', 'noun', 'tool', 'word'].includes(next.tag)
  const start = subjectAt(tokens, from, gets)
  if (!isGiven || start === undefined || next.tag === 'adjective') return undefined
  const thing = objectOf(sayTokens(text, tokens, start, gets))
  const given = sayTokens(text, tokens, at + 1, to).replace(ON_TELLING, '')
  const front = start === from ? '' : sayTokens(text, tokens, from, start)
  const isPerson = PEOPLE.has(tokens[gets - 1]?.word ?? '') || /\b(?:shock|fright)\b/i.test(given)
  if (isPerson || !tokens.slice(at + 1, to).some(({ tag }) => /^(?:noun|material|part|tool|word)$/.test(tag)))
    return undefined
  return thing === undefined || thing === 'it' || given === '' ? undefined : placed(`give ${thing} ${given}`, front)
}

const AGAIN = /^(?:once more|again) (?=(?:with|at|on|in|from|until|for|the)\b)/i
const SAME_AS = /^(?:the |and the )?same (?:thing,? )?(?=(?:again|with|on|at|for|the|in|to|underneath)\b)/i

/** "once more with a dry cloth", "the same at the other end", "the second one in the same way". */
const fromAgain = (said: string): string | undefined => {
  if (/^(?:once more|again|the same again|the same)$/i.test(said)) return undefined
  if (AGAIN.test(said)) return `repeat ${said.replace(AGAIN, '')}`
  if (SAME_AS.test(said)) {
    const on = said.replace(SAME_AS, '').replace(/^again /i, '')
    return /^(?:with|on|at|for|in|to|underneath)\b/i.test(on)
      ? `do the same ${on}`
      : /^the\b/i.test(on)
        ? `do the same on ${on}`
        : `do the same, ${on}`
  }
  const alike = /^(.+?),? (?:we (?:do )?)?(likewise|in the same way|the same way|ditto|the same)$/i.exec(said)
  const thing = alike === null ? undefined : objectOf(alike[1] ?? '')
  return thing === undefined || thing === 'it' ? undefined : `do ${thing} in the same way`
}

/** What was said is corrected in the same breath: which half counts is for the user to say. */
export const TAKEN_BACK =
  /\b(?:sorry,? no|no,? (?:wait|sorry|hang on|hold on|i am|i'm|that's|it's|not)|nah,|wait,? (?:no|is it)|hang on|hold on|tell a lie|mistaken|scratch that|strike that|excuse me|no,? it (?:is|isn't))/i

/**
 * The order one stretch gives that no clause's frame tells: who does it is anyone, a phrase stands in front, or the part
 * moves by itself in the talk.
 *
 * @param ahead the thing named just before, where the stretch leaves it out
 */
export const lateOrder = (reading: Reading, stretch: Stretch, ahead: string): string | undefined =>
  TAKEN_BACK.test(reading.text)
    ? undefined
    : (fromAgain(sayTokens(reading.text, reading.tokens, stretch.from, stretch.to)) ??
      fromAnyone(reading, stretch) ??
      fromTold(reading, stretch, ahead) ??
      fromDoing(reading, stretch) ??
      fromDone(reading, stretch, ahead) ??
      fromMoving(reading, stretch, ahead) ??
      fromGetting(reading, stretch))
