import type { Draft, Drafted } from './draft'
import type { Lexeme } from './lexemes'

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '))

/** What is said of a thing that fails its limit. @source common practice, no source */
const VERDICTS = set(
  'scrap scrapped done bin replace replaced replacing toast junk bad cooked shot finished worn discard discarded throw reject rejected rejects condemn condemned trash fails failed fail ruined dead garbage unserviceable tossed toss chuck renew',
)
const VERDICT_PHRASES = [
  /\bno good\b/,
  /\b(?:needs?|want|get|buy|fit|time for|put) (?:a )?new\b/,
  /\bout of spec\b/,
  /\bdon't bother\b/,
  /\bchange (?:it|them)\b/,
  /\bend of (?:its|their) life\b/,
  /\bhad it\b/,
  /\bto be changed\b/,
  /\b(?:pull|take) (?:it|them) out of service\b/,
]

const clauseStop = (lexeme: Lexeme): boolean => ['.', ';', '?', '!'].includes(lexeme.text)

/** `if`, `once`, `anything`: a comparison after these tells when a thing fails. */
const OPENERS = set('if when once anything any whenever')

const sentence = (lexemes: readonly Lexeme[], draft: Draft): { from: number; to: number } => {
  let from = draft.from
  while (from > 0 && draft.from - from < 30 && !clauseStop(lexemes[from - 1] as Lexeme)) from--
  let to = draft.to
  while (to < lexemes.length && to - draft.to < 30 && !clauseStop(lexemes[to] as Lexeme)) to++
  return { from, to }
}

/** Where the clause a comparison stands in begins: after the last comma. */
const clauseStart = (lexemes: readonly Lexeme[], from: number, to: number): number => {
  for (let i = to - 1; i > from; i--) if (lexemes[i]?.is === 'stop') return i + 1
  return from
}

const hasVerdict = ({ text, lexemes }: Drafted, from: number, to: number): boolean => {
  for (let i = from; i < to; i++) if (VERDICTS.has((lexemes[i]?.text ?? '').replace(/'s$/, ''))) return true
  const words = text.slice(lexemes[from]?.at ?? 0, lexemes[to - 1]?.to ?? 0).toLowerCase()
  return VERDICT_PHRASES.some(phrase => phrase.test(words))
}

const PRAISE =
  /\b(?:good|fine|safe|okay|ok|happy|content|pleased|satisfied|alright|all right|golden|you can|leave it|move on|carry on|keep going|go ahead|reuse|re-use|perfect|great|normal|acceptable|pass(?:es)?|done|lives?|proceed)\b/

const hasPraise = ({ text, lexemes }: Drafted, from: number, to: number): boolean =>
  PRAISE.test(text.slice(lexemes[from]?.at ?? 0, lexemes[to - 1]?.to ?? 0).toLowerCase())

/**
 * A comparison that condemns is a limit on the other side: `if it's under six mil the bar's done` asks for at least six.
 */
export const turnRejections = (drafted: Drafted): void => {
  const { lexemes, drafts } = drafted
  for (const draft of drafts) {
    const { comparison } = draft.phrase
    if (draft.dropped !== undefined) continue
    if (comparison === undefined || draft.bound === undefined) {
      turnOrLess(drafted, draft)
      continue
    }
    const { from, to } = sentence(lexemes, draft)
    const openers = new Set<string>()
    for (let i = clauseStart(lexemes, from, draft.from); i <= draft.from; i++)
      openers.add((lexemes[i]?.text ?? '').split(' ')[0] ?? '')
    const isOpened = [...OPENERS].some(word => openers.has(word))
    const isVerdict = hasVerdict(drafted, from, to)
    const isOrder = /^(?:replace|change|scrap|discard|reject|renew|toss|condemn)/.test(lexemes[from]?.text ?? '')
    // "if it's below X, do something about it": what calls for a remedy is out of limits.
    const isRemedied = openers.has('if') && !hasPraise(drafted, from, to) && to - draft.to > 1
    if (!isRemedied && !(isVerdict && (isOpened || isOrder))) continue
    turn(draft)
  }
}

/** "we change them at 8 or anything shorter": 8 is the least. */
const turnOrLess = (drafted: Drafted, draft: Draft): void => {
  const { lexemes } = drafted
  if (draft.high === undefined || draft.low !== undefined || draft.nominal !== undefined) return
  const last = lexemes[draft.to - 1]
  if (last?.is !== 'role' || last.role !== 'max-after' || !last.text.startsWith('or ')) return
  const { from } = sentence(lexemes, draft)
  if (
    hasVerdict(drafted, from, draft.from) ||
    /\bchange (?:it|them|the)\b/.test(
      drafted.text.slice(lexemes[from]?.at ?? 0, lexemes[draft.from]?.at ?? 0).toLowerCase(),
    )
  )
    turn(draft)
}

/** The note on a limit read from what condemns. */
export const TURNED = 'said as what condemns the part, read as the limit on the other side'

const turn = (draft: Draft): void => {
  if (draft.high !== undefined && draft.low === undefined) {
    draft.low = draft.high
    delete draft.high
  } else if (draft.low !== undefined && draft.high === undefined) {
    draft.high = draft.low
    delete draft.low
  } else return
  draft.bound = draft.bound === 'high' ? 'low' : 'high'
  draft.notes.push({ kind: 'settled', text: TURNED })
}
