import { sayTokens } from './clause-text'
import type { Reading } from './feature'
import { WORN } from './wording-kinds'
import { yours } from './wording-place'

const PUTS_ON = /^put on (?:[\w'’-]+ ){0,4}?[\w'’-]+$/i
/** Refused, taken off, or another's. */
const NOT_YOURS =
  /(?:n['’]t|\b(?:no|not|never|without|than|his|her|their|its|instead of|under|over|forget|skip|ditch|leave|lose|drop))(?: [\w'’-]+){0,2} ?$/i
const IS_OFF =
  /^,? ?(?:off|out|away|aside|\w+n['’]t|can|will|would|should|may|stays?(?! on\b)|hangs?|is|are|was|were|in the|on the|on its|for (?:the|your|my|his|her)|if)\b/i

/**
 * "Harness, visor, ear defenders": everything that is worn, not what is named first alone.
 *
 * @param order an order to put something on, and nothing else
 */
export const withAllWorn = (order: string, { text, tokens, phrases }: Reading): string => {
  if (!PUTS_ON.test(order) || !WORN.test(order)) return order
  const own = order.toLowerCase()
  const more = phrases.flatMap(({ from, to }): readonly string[] => {
    const name = sayTokens(text, tokens, from, to)
    const [at, end] = [tokens[from]?.at ?? 0, tokens[to - 1]?.to ?? 0]
    const isNew = !own.includes(name.toLowerCase()) && !own.includes(WORN.exec(name)?.[0].toLowerCase() ?? ' ')
    const isMeant = WORN.test(name) && !NOT_YOURS.test(text.slice(0, at)) && !IS_OFF.test(text.slice(end))
    return isNew && isMeant ? [yours(name)] : []
  })
  const all = [order, ...new Set(more)]
  return all.length < 2 ? order : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`
}
