import type { Draft, Drafted } from './draft'

const SIZED = new Set('wide thick long tall deep high across apart short thin proud'.split(' '))
/** `and then an eighth more`. */
const FURTHER = new Set('more further farther past back again tighter looser'.split(' '))
/** Where a sixteenth lies. */
const SIDES = new Set('toward towards off out in above below beneath lower higher shy clear'.split(' '))
/** What a rule is divided in. */
const RULED = new Set([16, 32, 64])
/** Words that end like more than one thing and are none. */
const NO_PLURAL =
  /^(?:this|is|was|has|does|goes|its|his|yes|across|always|perhaps|somewheres|us|as|plus|less|minus|comes|gets|needs)$/

/** `8 to 10 wide`, `less than fourteen somewhere`, `1.4 cold`: a number before a word that it counts nothing of. */
export const isMeasuring = ({ lexemes }: Drafted, draft: Draft): boolean => {
  const next = lexemes[draft.to]?.text ?? ''
  if (SIZED.has(next)) return true
  const finest = draft.phrase.term.number?.numeral.denominator
  if (finest !== undefined && (FURTHER.has(next) || (RULED.has(finest) && SIDES.has(next)))) return true
  const isThings = /^[a-z]{3,}s$/.test(next) && !NO_PLURAL.test(next)
  const isBounded = draft.bound !== undefined || draft.phrase.hasTolerance
  return !isThings && (isBounded || draft.phrase.term.number?.numeral.hasPoint === true)
}
