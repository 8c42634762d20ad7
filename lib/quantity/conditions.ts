import type { Draft, Drafted } from './draft'
import type { Lexeme } from './lexemes'
import { type Trie, trieOf } from './trie'

/** Conditions a value holds under, and starting points it counts from. Each is kept as it was said. */
const CONDITIONS: Trie<'condition'> = trieOf([
  [
    'condition',
    'past contact, past gasket contact, after contact, after gasket contact, after it touches, after it contacts, past finger tight, past hand tight, past snug, after finger tight, after hand tight, past touching, past first contact, after seating, past seating, past seated, from seated, from fully seated, out from seated, out from fully seated, from contact, from fully closed, from closed, from lightly seated, off the seat, cold, stone cold, dead cold, ice cold, hot, warm, at operating temperature, at operating temp, at running temperature, fully warmed up, fully warm, at idle, idling, at rest, rested, at full charge, fully charged, no load, with no load, under load, under no load, with load, at full load, full load, at full throttle, wide open, at half throttle, dry, oiled, lightly oiled, lubed, lubricated, wet, with the engine off, engine off, engine running, with the engine running, key on, key off, at room temperature, per side, each side, on each side, per tire, per tyre, in each tire, in each tyre, per wheel, each, apiece, total, of deflection, of free play, of freeplay, of play, of lash, of travel, of slack, of endplay, of end play, of backlash, of runout, of sag, of preload, of drop, of clearance, of wear, of vacuum, on the first pass, on the final pass, first pass, second pass, final pass, whichever comes first, whichever is first, whichever is sooner, pin to pin, star pattern, in a star, in a star pattern, in sequence, in a cross pattern, cross pattern, criss cross, intake, exhaust, inlet, front, rear, per foot, per inch, per metre, per meter, left to right, side to side, both sides, either side, at the gauge, at the pump, at the wheel, at sea level, at the tip, new, used, with new gasket, with the wheel off the ground, on the ground, unloaded, loaded, rider on, in winter, in summer, below freezing, out of the box, at the shaft, at the spindle, when cold, when hot, when warm, when new, when dry, at the bead, at the center, at the centre, in the middle, at mid span, mid span, mid travel, at top dead center, at top dead centre, at tdc',
  ],
])

/** Limits without a number. */
const QUALITIES: Trie<'quality'> = trieOf([
  [
    'quality',
    'hand tight, finger tight, fingers tight, thumb tight, wrist tight, spanner tight, wrench tight, hand tightened, finger tightened, snug, snug plus, good and snug, just snug, hand snug, fingertip tight, just nipped, nipped up, barely tight, just touching, just touch, just kissing, just kisses, just drag, just drags, light drag, slight drag, a light drag, a slight drag, flush, flush with, bottomed out, fully seated, to the brim, good and tight, german tight, drum tight, guitar string tight, firm, hand firm, same both sides, same on both sides, same reading on both sides, equal on both sides, between the marks, between the two marks, between the lines, between the two lines, between low and high, between min and max, between minimum and maximum, up to the full mark, to the full mark, to the full line, at the full mark, on the full mark, to the max line, to the bottom of the threads, bottom of the threads, to the line, up to the line, to the mark, up to the mark, to the top line, halfway up the sight glass, halfway up the glass, middle of the sight glass, level with the bottom of the hole, level with the bottom of the fill hole, no play, no free play, no gap, no slack, no wobble, till it stops, until it stops, till it bottoms, until it bottoms, a hair past snug, tight by hand, by hand only, no tighter than hand tight, gutentight, finger snug, lightly seated, lightly snug, stone dry, bone dry, zero play, zero drag',
  ],
])

const MAX = 12

/** The longest phrase of a table among lexemes from `i` on. */
const match = (trie: Trie<string>, lexemes: readonly Lexeme[], i: number): number | undefined => {
  const first = lexemes[i]?.text ?? ''
  if (!trie.next.has(first.includes(' ') ? first.slice(0, first.indexOf(' ')) : first)) return undefined
  let node: Trie<string> = trie
  let found: number | undefined
  for (let j = i; j < lexemes.length && j < i + MAX; j++) {
    const lexeme = lexemes[j]
    if (lexeme === undefined) break
    if (lexeme.text === '-' && j > i && lexeme.isGlued) continue
    let next: Trie<string> | undefined = node
    for (const word of lexeme.text.split(' ')) if (word !== '-') next = next?.next.get(word)
    if (next === undefined) break
    node = next
    if (node.value !== undefined) found = j + 1
  }
  return found
}

const slice = (text: string, lexemes: readonly Lexeme[], from: number, to: number): string =>
  text.slice(lexemes[from]?.at ?? 0, lexemes[to - 1]?.to ?? 0).replace(/\s+/g, ' ')

const isBreak = (lexeme: Lexeme | undefined): boolean =>
  lexeme === undefined || ['.', ';', '?', '!'].includes(lexeme.text)

const AFTER = 7
const BEFORE = 7

/** Lengths after `over` or `per` that a value holds for: `five tenths over twelve inches`, `ten millimetres per metre`. */
export const readSpanned = ({ text, lexemes, drafts }: Drafted): void => {
  for (let n = 0; n < drafts.length; n++) {
    const draft = drafts[n]
    if (draft === undefined || draft.dropped !== undefined || draft.unit === undefined) continue
    const next = drafts[n + 1]
    const joint = lexemes[draft.to]?.text ?? ''
    if (
      ['per', 'for every', 'a', 'in a', 'every'].includes(joint) ||
      (joint === 'for' && lexemes[draft.to + 1]?.text === 'every')
    ) {
      const at = joint === 'for' ? draft.to + 2 : draft.to + 1
      const unit = lexemes[at]
      if (unit?.is === 'unit' && unit.unit.count !== 'many' && joint !== 'every') {
        draft.reference = slice(text, lexemes, draft.to, at + 1)
        draft.to = at + 1
      } else if (next !== undefined && next.from === at && ['per', 'for'].includes(joint)) {
        draft.reference = slice(text, lexemes, draft.to, next.to)
        next.dropped = 'what the value before it holds for'
      }
    }
    if (
      next !== undefined &&
      next.dropped === undefined &&
      next.from === draft.to &&
      joint === 'over' &&
      next.bound === 'low' &&
      isLength(draft) &&
      isLength(next)
    ) {
      draft.reference = slice(text, lexemes, next.from, next.to)
      next.dropped = 'what the value before it holds for'
    }
    // "over twelve inches I want to see less than three thou"
    if (
      next !== undefined &&
      lexemes[draft.from]?.text === 'over' &&
      draft.bound === 'low' &&
      isLength(draft) &&
      isLength(next) &&
      next.bound === 'high' &&
      !isBreakBetween(lexemes, draft.to, next.from)
    ) {
      next.reference = slice(text, lexemes, draft.from, draft.to)
      draft.dropped = 'what the value after it holds for'
    }
  }
}

const isBreakBetween = (lexemes: readonly Lexeme[], from: number, to: number): boolean => {
  for (let i = from; i < to; i++) if (isBreak(lexemes[i])) return true
  return false
}

const LENGTHS = new Set(['mm', 'cm', 'm', 'um', '[in_i]', '[mil_i]', '[ft_i]'])
const isLength = (draft: Draft): boolean => LENGTHS.has(draft.unit?.code ?? '') || draft.unit?.ambiguous === 'mil'

/** Which lexemes belong to a draft that is a reading, by index in the list of drafts; where the next one starts. */
export type Places = { readonly owner: Int32Array; readonly next: Int32Array }

export const placesOf = ({ lexemes, drafts }: Drafted): Places => {
  const owner = new Int32Array(lexemes.length).fill(-1)
  const next = new Int32Array(lexemes.length + 1).fill(lexemes.length)
  drafts.forEach((draft, n) => {
    if (draft.dropped === undefined) owner.fill(n, draft.from, draft.to)
  })
  for (let i = lexemes.length - 1; i >= 0; i--) {
    const isStart = owner[i] !== -1 && owner[i] !== owner[i - 1]
    next[i] = isStart ? i : (next[i + 1] ?? lexemes.length)
  }
  return { owner, next }
}

/** Places of a pair, said before or after their value. */
const PLACES = new Set(['intake', 'exhaust', 'inlet', 'front', 'rear'])

/** The condition nearest to a draft: after it in the clause, else before it. */
export const findCondition = (
  text: string,
  lexemes: readonly Lexeme[],
  draft: Draft,
  { owner }: Places,
): string | undefined => {
  const label = lexemes[draft.from - 1]
  if (label !== undefined && PLACES.has(label.text)) return slice(text, lexemes, draft.from - 1, draft.from)
  const found: string[] = []
  for (let i = draft.to; i < draft.to + AFTER && i < lexemes.length; i++) {
    if (isBreak(lexemes[i]) || owner[i] !== -1) break
    if (PLACES.has(lexemes[i]?.text ?? '') && i > draft.to && owner[i + 1] !== -1 && i + 1 < lexemes.length) break
    const to = match(CONDITIONS, lexemes, i)
    if (to === undefined) continue
    found.push(slice(text, lexemes, i, to))
    i = to - 1
    if (found.length === 2) break
  }
  if (found.length > 0) return found.join(', ')
  for (let i = draft.from - 1; i >= 0 && i > draft.from - BEFORE; i--) {
    if (isBreak(lexemes[i]) || owner[i] !== -1) return undefined
    const to = match(CONDITIONS, lexemes, i) ?? match(QUALITIES, lexemes, i)
    if (to !== undefined && to <= draft.from) return slice(text, lexemes, i, to)
  }
  return undefined
}

/** A limit without a number. Lexeme indices [from, to). */
export type Quality = { readonly from: number; readonly to: number; readonly text: string }

/** Words that make `snug` a verb and `firm` no limit: `snug the nuts`. */
const VERB_AFTER = new Set(['the', 'those', 'these', 'that', 'up', 'down', 'all', 'each', 'both', 'your'])

/** Every limit without a number that no quantity counts from. */
export const findQualities = (
  text: string,
  lexemes: readonly Lexeme[],
  { owner, next }: Places,
): readonly Quality[] => {
  const found: Quality[] = []
  for (let i = 0; i < lexemes.length; i++) {
    const to = match(QUALITIES, lexemes, i)
    if (to === undefined) continue
    const isVerb =
      ['snug', 'firm', 'just touch', 'flush'].includes(lexemes[i]?.text ?? '') &&
      VERB_AFTER.has(lexemes[to]?.text ?? '')
    const isNegated =
      ['not', "n't", 'too', 'how', 'than', 'is'].includes(lexemes[i - 1]?.text ?? '') &&
      lexemes[i]?.text === 'snug' &&
      lexemes[i - 1]?.text !== 'is'
    const start = next[to] ?? lexemes.length
    const isCounted = ['past', 'after', 'from'].includes(lexemes[i - 1]?.text ?? '') && (owner[i - 2] ?? -1) !== -1
    const isBase = owner[i] !== -1 || (start < lexemes.length && start - to <= 4 && isStep(lexemes, to, start))
    if (!isVerb && !isNegated && !isBase && !isCounted) found.push({ from: i, to, text: slice(text, lexemes, i, to) })
    i = to - 1
  }
  return found
}

/** `snug plus an eighth of a turn`, `finger tight, then another half turn`: the quality is where the quantity starts. */
const isStep = (lexemes: readonly Lexeme[], from: number, to: number): boolean => {
  if (from === to) return true
  for (let i = from; i < to; i++) if (['plus', 'then', 'and'].includes(lexemes[i]?.text ?? '')) return true
  return false
}
