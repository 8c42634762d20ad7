import { onceForText } from './memo'
import { type Thing, toThing } from './thing'
import { tokensOf } from './words'

/** Words of size, number and suitability that name nothing. */
const SIZES = new Set(
  `mm cm m inch in ft v volt w kw a ah l ml litre liter kg g n nm n.m lb ft-lb psi no number size small large suitable right good own proper correct each pair set-of long short medium
  insulated stubby metric imperial`.split(/\s+/),
)
/** Where the name of a listed thing ends: "Socket set (metric)", "Pan for the oil". */
const ASIDE = /\s*[(;[/]|\s(?:for|to|with|from|of at least|as|at least|or similar)\s/i

/** A block of wood is a wood block; a roll of tape is tape. */
const OF = /\b(blocks?|wedges?|planks?|boards?|sticks?|bars?|rods?) of ((?:[a-z]+ ){0,2}[a-z]+)/i

/** A pry bar is a tool, "0 to 10 bar" a range. */
const isNaming = (token: string, i = 0, all: readonly string[] = []): boolean =>
  /^[a-z][a-z'-]*$/.test(token) && !SIZES.has(token) && !(token === 'bar' && /^\d/.test(all[i - 1] ?? ''))

/** @returns the things that one entry of a list names: "padlock and tag", "socket + ratchet". */
export const thingsListed = (text: string): readonly string[] => text.split(/\band\b|[,+&]/)

/**
 * @returns the thing that an entry of a list names: what stands before the first comma or bracket, sizes left out, words after
 *   the comma put before it. "Pliers, circlip" is a circlip pliers, "Torque wrench, 5 to 25 N·m" a torque wrench.
 */
export const listedThing = onceForText((text: string): Thing => {
  const end = text.search(ASIDE)
  const [first = '', ...more] = (end > 0 ? text.slice(0, end) : text).replace(OF, '$2 $1').split(',')
  const further = more.flatMap(part => (/\d/.test(part) ? [] : tokensOf(part))).filter(isNaming)
  return toThing([...further, ...tokensOf(first).filter(isNaming)])
})

/** @returns the thing that words of a step name, sizes left out. */
export const namedThing = onceForText((name: string): Thing => toThing(tokensOf(name).filter(isNaming)))
