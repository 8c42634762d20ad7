import { PEOPLE } from '@/lib/trade/english'
import { guessBase, verbOf } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { fromAnyone, fromDoing, fromTold } from './wording-anyone'
import { fromMoving, fromStaying } from './wording-moving'
import { CHAIN, isAct, isTelling, ON_TELLING, objectOf, placed, type Stretch, subjectAt } from './wording-stretch'
import { baseOf, likewise } from './wording-verb'

const BE = /^(?:be|is|are|was|were|been|'s|'re|gets?|got|getting)$/

const SAME = new Set('put cut set shut hit let split spread shed run'.split(' '))

/** What tells how a thing is, where nobody says that it has to be done: "is held by two screws". */
const STATES =
  /^(?:hold|secure|fasten|drive|locate|mount|support|mark|stamp|make|hide|bury|seat|wear|break|crack|chip|mean|call|know|design|leave|want|need|see|bend|seize|stick|cover|attach|join|connect|find|weld|cast|paint|number|burn|damage|allow|build|spring|use|write|print|say|tell|do|finish|show|give|supply|buy|rust|trap|pay|hang|stand|wire|load|lock|collect|lose)$/

const isDone = ({ word, tag }: Token): boolean => {
  const form = verbOf(word)?.form
  return tag === 'past' || form === 'past' || form === 'participle' || SAME.has(word) || /(?:ied|[^e]ed)$/.test(word)
}

/** "are lifted out and wiped": the second action is on all of them too. */
const onAll = (rest: string, thing: string): string =>
  thing === 'them' || /[^s]s$/.test(thing.split(/ (?:of|from|on|in|at|with)\b|,/)[0] ?? '')
    ? rest.replace(/\b(and [a-z]+) it\b/g, '$1 them')
    : rest

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

/** "the baffle wants scraping": what is to be done to it. */
const fromWanting = (reading: Reading, { from, to }: Stretch): string | undefined => {
  const { tokens, text } = reading
  const at = tokens.findIndex(({ word }, i) => i > from && i < to - 1 && /^(?:wants?|needs?)$/.test(word))
  const deed = tokens[at + 1]
  const as = deed === undefined ? undefined : verbOf(deed.word)
  if (at < 0 || as?.form !== 'ing' || !isAct(as.base) || isTelling(tokens, from, at)) return undefined
  const thing = objectOf(sayTokens(text, tokens, from, at))
  if (thing === undefined || thing === 'it') return undefined
  const next = tokens.findIndex(({ tag }, i) => i > at && i < to && tag === 'and')
  const also = next === at + 2 && next + 2 === to ? verbOf(tokens[next + 1]?.word ?? '') : undefined
  if (also?.form === 'ing' && isAct(also.base)) return `${as.base} and ${also.base} ${thing}`
  const more = next < 0 ? undefined : fromWanting(reading, { from: next + 1, to })
  if (more !== undefined)
    return [as.base, thing, sayTokens(text, tokens, at + 2, next), 'and', more].filter(part => part !== '').join(' ')
  const rest = sayTokens(text, tokens, at + 2, to).replace(/^(?:and )?all$|,? and all$/i, '')
  return `${as.base} ${thing} ${rest}`.trim()
}

const AGAIN = /^(?:once more|again) (?=(?:with|at|on|in|from|until|for|the)\b)/i

const SAME_AS = /^(?:the |and the )?same (?:thing,? )?(?=(?:again|with|on|at|for|the|in|to|underneath)\b)/i

/** "once more with a dry cloth", "the same at the other end", "the second one in the same way". */
const fromAgain = (said: string): string | undefined => {
  if (/^(?:once more|again|the same again|the same)$/i.test(said)) return undefined
  if (AGAIN.test(said)) return `repeat ${said.replace(AGAIN, '')}`
  if (SAME_AS.test(said)) {
    const on = said
      .replace(SAME_AS, '')
      .replace(/^again /i, '')
      .replace(/ which .*$/i, '')
    return /^(?:with|on|at|for|in|to|underneath)\b/i.test(on)
      ? `do the same ${on}`
      : /^the\b/i.test(on)
        ? `do the same on ${on}`
        : `do the same, ${on}`
  }
  const alike = /^(.+?),? (?:we (?:do )?)?(likewise|in the same way|the same way|ditto|the same)$/i.exec(said)
  const thing = alike === null ? undefined : objectOf(alike[1] ?? '')
  return thing === undefined ||
    thing === 'it' ||
    /^the (?:about|much|roughly|nearly|just|wound|done|cleaned|filled|greased)\b/.test(thing)
    ? undefined
    : `do ${thing} in the same way`
}

/**
 * The order one stretch gives that no clause's frame tells: who does it is anyone, a phrase stands in front, or the part
 * moves by itself in the talk.
 *
 * @param ahead the thing named just before, where the stretch leaves it out
 */
export const lateOrder = (reading: Reading, stretch: Stretch, ahead: string): string | undefined =>
  fromAgain(sayTokens(reading.text, reading.tokens, stretch.from, stretch.to)) ??
  fromAnyone(reading, stretch) ??
  fromTold(reading, stretch, ahead) ??
  fromDoing(reading, stretch) ??
  fromDone(reading, stretch, ahead) ??
  fromMoving(reading, stretch, ahead) ??
  fromStaying(reading, stretch) ??
  fromGetting(reading, stretch) ??
  fromWanting(reading, stretch)
