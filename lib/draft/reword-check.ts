import { countOf } from '@/lib/procedure/count'
import type { Kind } from '@/lib/procedure/kinds'
import { type Result, refusal, success } from '@/lib/procedure/problem'
import type { Quantity } from '@/lib/quantity/quantity'
import { readQuantities } from '@/lib/quantity/read'
import { verbOf } from '@/lib/trade/morphology'

/** Most words in a procedural sentence. @source ASD-STE100, rule 5.1 (issue 8 numbering, from memory) */
const MOST_WORDS = 20

/** Most words in any other line. @source ASD-STE100, rule 6.3 for descriptive sentences (from memory) */
const MOST_WORDS_ELSEWHERE = 25

const NEGATION = /\b(?:not|never|no|don't|do not|without|nor|neither|cannot|can't|must not)\b/gi

const limits = (text: string): string =>
  readQuantities(text)
    .map(
      ({ quantity: { low, high, nominal, unit } }: { readonly quantity: Quantity }) =>
        `${low} ${high} ${nominal} ${unit}`,
    )
    .toSorted()
    .join('|')

const numbersIn = (text: string): string => (text.match(/\d+(?:[.,/]\d+)?/g) ?? []).toSorted().join(' ')

const refuse = (message: string) => refusal({ code: 'proposal-refused', message })

/**
 * Whether words proposed for a mark may be offered to the user: the same demands as on the draft itself.
 *
 * @param kind of the mark
 * @param now what the mark says
 * @param proposed by whatever model the user runs; any text
 * @returns the proposal on one line; problem `proposal-refused` where it changes, adds or loses a number or a limit, gains
 *   or loses a "not", is too long, does not open with a verb (steps), or is no plain line
 */
export const checkProposal = (kind: Kind, now: string, proposed: string): Result<string> => {
  const line = proposed.replace(/\s+/g, ' ').trim()
  if (line === '' || /[<>{}[\]`|]/.test(line)) return refuse('the proposal is no plain line of text')
  const words = line.split(' ').filter(word => /[\p{L}\p{N}]/u.test(word))
  const most = kind === 'step' ? MOST_WORDS : MOST_WORDS_ELSEWHERE
  if (words.length > most) return refuse(`the proposal has ${countOf(words.length, 'word')}; at most ${most}`)
  if (limits(now) !== limits(line) || numbersIn(now) !== numbersIn(line))
    return refuse('the proposal changes a number or a limit')
  if ((now.match(NEGATION)?.length ?? 0) !== (line.match(NEGATION)?.length ?? 0))
    return refuse('the proposal gains or loses a negation')
  const [first = ''] = words
  const opening = first.toLowerCase().replace(/[^a-z'-]/g, '')
  const isVerb = verbOf(opening)?.form === 'base' || opening === now.split(' ')[0]?.toLowerCase()
  if (kind === 'step' && !isVerb) return refuse(`the proposal opens with “${first}”, which is no verb of the trade`)
  return success(line)
}
