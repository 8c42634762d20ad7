import { guessBase } from '@/lib/trade/morphology'
import type { Token } from '@/lib/trade/tagger'
import type { Clause, Frame } from './clause'
import { asSentence, countWords, cutToWords, MOST_WORDS, sayTokens } from './clause-text'
import type { Reading } from './feature'
import { nameThings } from './pointing'

/** What the sheet says of a step, and what only the user can answer. */
export type Worded = { readonly text: string; readonly question?: string }

const ACTS: ReadonlySet<Frame> = new Set(['order', 'you', 'i', 'we', 'passive', 'nominal', 'past'])
const KEEPS = new Set(['until', 'till', 'before', 'after', 'once', 'when', 'if', 'unless', 'while', 'where', 'as'])
const POWER =
  /\b(?:power|isolator|engine|breaker|heaters?|ignition|pump|gas|water|fuel|supply|mains|motor|light|lights|current|air|compressor|machine|switch|heat|blower|fan|vacuum|steam|disconnect|battery|charger|electricity)$/i
const WORN =
  /\b(?:glasses|goggles|gloves|mask|respirator|visor|shield|muffs|plugs|defenders|apron|boots|protection|helmet|harness)$/i

const article = (said: string): string => {
  const low = `${said.charAt(0).toLowerCase()}${said.slice(1)}`
  const isSettled =
    /^(?:the|a|an|your|my|our|this|that|these|those|both|all|each|every|it|them|one|two|three|four|five|six|seven|eight|\d\S*)\b/i
  return isSettled.test(low) ? low : `the ${low}`
}
const own = (said: string): string => said.replace(/^(?:my|our)\b/i, 'your')

/** "wheel off", "cap back on", "bike in the stand". */
const fromNominal = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens, text } = reading
  const at = tokens.findIndex(
    (token, i) => i > clause.start && i < clause.to && (token.tag === 'particle' || token.tag === 'preposition'),
  )
  if (at < 0) return undefined
  const thing = sayTokens(text, tokens, clause.start, at)
  if (thing === '') return undefined
  const rest = sayTokens(text, tokens, at, clause.to)
  // "No grease on the faces": the lead-in skipped "no", which must never get lost.
  const lead = tokens[clause.start - 1]
  const isRefused =
    lead !== undefined && /^(?:no|not|never)$/.test(lead.word) && tokens[clause.start]?.isAfterPause === false
  const refused = /^(?:no|not|never)\s+(.+)$/i.exec(thing)?.[1] ?? (isRefused ? thing : undefined)
  if (refused !== undefined) return `do not use ${refused.toLowerCase()} ${rest}`
  const words = rest.toLowerCase().split(' ')
  const [first = '', second = ''] = words
  const tail = words.slice(first === 'back' ? 2 : 1).join(' ')
  const join = (verb: string, more: string) => `${verb} ${article(own(thing))}${more === '' ? '' : ` ${more}`}`
  if (first === 'back' && /^(?:on|in|up|together|down)$/.test(second)) return join('refit', tail)
  const grip = /^(.*\S)\s+(hand|finger|fingers)$/i.exec(thing)
  if (first === 'tight' && grip !== null) return `tighten ${article(own(grip[1] ?? ''))} ${grip[2]} tight`
  if (/^(?:new|fresh|brand-new|another)\b/i.test(thing) && /^(?:on|in|into|onto|over|under|to)$/.test(first))
    return join('fit', tail === '' ? '' : rest)
  if (first === 'off' && POWER.test(thing)) return join('switch off', tail)
  if (first === 'on' && WORN.test(thing)) return join('put on', tail)
  if (first === 'on' && tail === '' && POWER.test(thing)) return join('switch on', '')
  if (/^(?:off|out|away)$/.test(first) && second !== 'of') return join('remove', tail)
  if (first === 'out' && second === 'of') return join('take', rest)
  if (/^(?:on|in)$/.test(first) && tail === '') return join('fit', '')
  if (/^(?:up|apart|down|open|shut|closed|loose|tight)$/.test(first) && tail === '')
    return join(
      {
        up: 'raise',
        apart: 'separate',
        down: 'lower',
        open: 'open',
        shut: 'shut',
        closed: 'close',
        loose: 'loosen',
        tight: 'tighten',
      }[first] ?? 'set',
      '',
    )
  return join('put', rest)
}

/** "the cover is lifted off", "the washer goes back on", "off comes the lid". */
const fromPassive = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens, text } = reading
  const verb = clause.verb
  const token = verb === undefined ? undefined : tokens[verb]
  if (verb === undefined || token === undefined) return undefined
  const be = tokens.findIndex(
    (other, i) =>
      i >= clause.start &&
      i <= verb &&
      (other.tag === 'auxiliary' ||
        other.tag === 'modal' ||
        other.base === 'go' ||
        other.base === 'come' ||
        /^(?:goes|comes|gets|get)$/.test(other.word)),
  )
  const thing = sayTokens(text, tokens, clause.start, be < 0 ? verb : be)
  if (thing === '') return undefined
  const rest = sayTokens(text, tokens, verb + 1, clause.to)
  if (token.base === 'go' || token.base === 'come') {
    const [first = '', ...more] = rest.split(' ')
    const object = article(own(thing))
    if (first === 'back' && /^(?:on|in|up|together)$/.test(more[0] ?? ''))
      return `refit ${object} ${more.slice(1).join(' ')}`
    if (/^(?:off|out|away)$/.test(first)) return `remove ${object} ${more.join(' ')}`
    if (/^(?:on|in)$/.test(first) && more.length === 0) return `fit ${object}`
    return `put ${object} ${rest}`
  }
  const base = token.base ?? guessBase(token.word)
  const [particle = '', ...tail] = rest.split(' ')
  return /^(?:off|out|on|in|up|down|away|back)$/.test(particle) && tail.length === 0
    ? `${base} ${particle} ${article(own(thing))}`
    : `${base} ${article(own(thing))} ${rest}`
}

/** From the main verb on; an object given later by pronoun stays. */
const fromVerb = (reading: Reading, clause: Clause): string | undefined => {
  const { tokens, text } = reading
  const { verb } = clause
  const token = verb === undefined ? undefined : tokens[verb]
  if (verb === undefined || token === undefined) return undefined
  const base = token.base ?? (token.tag === 'ing' || token.tag === 'past' ? guessBase(token.word) : token.word)
  const rest = sayTokens(text, tokens, verb + 1, clause.to)
  return `${base} ${own(rest.replace(/\bmy\b/gi, 'your').replace(/\b(?:our)\b/gi, 'the'))}`.trim()
}

const phraseOf = (reading: Reading, clause: Clause): string | undefined => {
  const said =
    clause.frame === 'nominal'
      ? fromNominal(reading, clause)
      : clause.frame === 'passive'
        ? fromPassive(reading, clause)
        : fromVerb(reading, clause)
  if (said === undefined || said.split(' ').length < 2 || /^(?:strike|scratch) that\b/.test(said)) return undefined
  return clause.isNegated ? `do not ${said.replace(/^not /, '')}` : said
}

const isIdleVerb = (clause: Clause, tokens: readonly Token[]): boolean => {
  const word = clause.verb === undefined ? '' : (tokens[clause.verb]?.base ?? tokens[clause.verb]?.word ?? '')
  return /^(?:want|need|know|think|like|say|mean|have|be|see|remember|forget|guess|love|hate|tell|talk|call|hear|let's|get to|look like|go ahead)$/.test(
    word,
  )
}

const trailing = (reading: Reading, clause: Clause): string => {
  const said = sayTokens(reading.text, reading.tokens, clause.from, clause.to)
  return KEEPS.has(clause.marker ?? '') ? said.replace(/^(?:and|then|so|but)\s+/i, '') : ''
}

/**
 * Says a spoken step as a procedure writer would: base-form verb first, lead-ins and fillers gone, conditions kept behind
 * their action, at most 20 words.
 */
export const wordStep = (reading: Reading, before?: Reading): Worded => {
  const parts: string[] = []
  let pending = ''
  for (const clause of reading.clauses) {
    if (clause.marker !== undefined) {
      const condition = trailing(reading, clause)
      if (countWords(condition) < 3 || /'(?:re|s|ve|ll|d|m)$/.test(condition)) continue
      if (parts.length > 0 && clause.marker !== 'if') parts.push(`${parts.pop()} ${condition}`)
      else if (parts.length === 0) pending = condition
      continue
    }
    if (!ACTS.has(clause.frame) || isIdleVerb(clause, reading.tokens)) continue
    const phrase = phraseOf(reading, clause)
    if (phrase === undefined) continue
    if (clause.isNegated && parts.length > 0) continue
    parts.push(pending === '' ? phrase : `${phrase} ${pending}`)
    pending = ''
  }
  const kept: string[] = []
  for (const part of parts)
    if (kept.length === 0 || countWords([...kept, part].join(' and ')) <= MOST_WORDS) kept.push(part)
  if (kept.length === 0) return fallback(reading)
  const joined = kept.length === 1 ? (kept[0] ?? '') : `${kept.slice(0, -1).join(', ')} and ${kept.at(-1)}`
  const named = nameThings(joined.replace(/\s+/g, ' '), reading, before)
  return { ...named, text: asSentence(cutToWords(named.text)) }
}

const fallback = ({ text, tokens }: Reading): Worded => {
  const said = sayTokens(text, tokens, 0, tokens.length)
  return {
    text: asSentence(cutToWords(`do this: ${said.charAt(0).toLowerCase()}${said.slice(1)}`)),
    question: 'What is done here? The talk names no action.',
  }
}
