import { matchesOf } from '@/lib/quantity/matches'
import { type Reading as Limit, type ReadOptions, readQuantities } from '@/lib/quantity/read'

/** What is counted out in a job and has no unit. @source common practice, no source */
const COUNTED =
  /[ -](?:full |good |clear |slow |steady |short |even |more |whole |complete |clean |small |big |little )?(?:drops?|threads?|strokes?|squirts?|pumps?|shots?|layers?|passes|coats?|clicks?|notch(?:es)?|bubbles?|digits?|divisions?|graduations?|beats?|pulses|pulsations?|blinks?|flashes|cycles|links?|teeth|broken wires|wires|drips?|winds|wraps?|(?!(?:turns|revs|revolutions|rounds|minutes|seconds|hours|days|times|gallons|pounds|ounces|pints|quarts|feet|yards|miles|degrees|volts|amps|watts|newtons|inches|bars|pascals|\w*pascals|millibars|decibels|thousandths|hundredths|tenths|\w*(?:lit(?:re|er)s|grams|met(?:re|er)s))\b)[a-z]{3,}s(?= (?:a|per|each|every|to the|in (?:a|the|each|every|one)) (?:minute|hour|day)\b))\b(?: of (?:grease|oil|sealer|sealant|tape|paint|lubricant|threads?))?/gi
/** `five times round`, where something is turned. */
const TIMES = /[ -](?:full )?(?:times(?: (?:round|around))?|rounds)\b/gi
const IS_TURNED =
  /\b(?:turn|spin|rotate|wind|wrap|crank|swing|go|goes|pull) (?:[a-z]+ ){0,4}?(?:round|around|over|by hand)\b|\b(?:turn|spin|rotate|wind|crank) (?:it|them|the|that)\b/i
const IS_TIMES = /^[ -](?:full )?times\b/i
const WOUND = /\b(?:wraps?|winds|rounds)\b/i
/** How often: `forty drops a minute`. */
const RATE = /^,? (?:a|per|each|every|to the|in (?:a|the|each|every|one)|in one) (?:minute|second|hour|day)\b/i
/** `between the two notches`: which ones, no count. */
const WHICH = /\b(?:the|those|these|its|both|all) (?:two|three|four|2|3|4)$/i
/** Characters before it in which the number is said. */
const REACH = 48

const [COUNT, A_RATE] = ['a count', 'a rate']

/** @returns whether a limit is a count, so that its number has no unit to look for */
export const isCount = ({ doubt }: Limit): boolean => doubt === COUNT || doubt === A_RATE

/**
 * `forty to sixty drops a minute`, `at least five threads`: counts, which have a number and no unit. Each is doubtful, for
 * most of what is counted in talk is no limit.
 *
 * @returns in the order of the text
 */
export const countLimits = (text: string, options: ReadOptions): readonly Limit[] =>
  [...matchesOf(text, COUNTED), ...(IS_TURNED.test(text) ? matchesOf(text, TIMES) : [])].flatMap(
    (match): readonly Limit[] => {
      const start = Math.max(0, match.index - REACH)
      const said = text.slice(start, match.index)
      if (WHICH.test(said)) return []
      // Read as a length, since a number alone is read with more doubt; the unit is taken off again.
      const read = readQuantities(`${said} mm`, { ...options, keepsDoubtful: true }).at(-1)
      if (read?.quantity.unit !== 'mm' || read.to < said.length) return []
      const { unit: _, ...number } = read.quantity
      // "Turn it by hand ten times" is a doing; "it goes round at least three times" is a limit.
      if (IS_TIMES.test(match[0]) && number.nominal !== undefined) return []
      const end = match.index + match[0].length
      const rate = RATE.exec(text.slice(end))
      return [
        {
          ...read,
          quantity: WOUND.test(match[0]) || IS_TIMES.test(match[0]) ? { ...number, unit: 'circ' } : number,
          text: text.slice(start + read.at, end),
          at: start + read.at,
          to: end + (rate?.[0].length ?? 0),
          doubt: rate === null ? COUNT : A_RATE,
        },
      ]
    },
  )
