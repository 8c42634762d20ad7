import { BODY } from '@/lib/trade/english'
import { wordSet } from '@/lib/trade/list'
import { decapitalize, withoutLooseEnd } from './clause-text'
import { deedOf, NO_ACTION, namesNoAction } from './deed-feature'
import type { Reading } from './feature'
import { FASTENERS, hasTool, isStuff, MEASURED, WORN } from './wording-kinds'
import { isSound } from './wording-parts'
import { withArticle, yours } from './wording-place'

/** Verbs done to a part. */
const TO_PARTS = wordSet(
  'fit refit remove undo loosen slacken unscrew unbolt unclip unhook tighten torque unplug disconnect reconnect connect open close lift lay set hang slide press push pull lock raise lower release return clamp hook tie insert start stop run turn hold support tap drive seat screw',
)
/** Verbs of taking apart among them. */
const APART = wordSet('remove undo loosen slacken unscrew unbolt unclip unhook unplug disconnect')
/** Verbs of fasteners among them; a tool named for one is what it is done with. */
const OF_FASTENERS = wordSet('undo loosen slacken unscrew unbolt tighten torque')
/** Verbs of putting in place among them: of parts, never of stuff or a tool in hand. */
const IN_PLACE = wordSet('fit refit reconnect connect return')
/** Verbs that put a thing to work or close it up. */
const TOGETHER = wordSet('fit refit reconnect connect return tighten torque close lock insert screw start clamp')
/** Verbs of taking apart, opening or stopping, which are never another's place where a talk says "on", "in" or "back". */
const OPENS = new Set([...APART, 'open', 'release', 'stop', 'lift'])
/** Verbs done to a surface with stuff or a tool. */
const TO_SURFACES = wordSet(
  'grease oil clean wipe brush vacuum spray coat rinse wash dry scrape polish glue tape mark fill soak lubricate degrease dust',
)

/** Every verb a step may be named by. */
export const DEEDS: readonly string[] = [...TO_PARTS, ...TO_SURFACES, 'switch']

const WHERE =
  /(?:^| )(?:on|in|into|onto|over|under|underneath|through|down|up|across|round|around|along|to|with|from|at|until|before|after|against|behind|between|off|out|by|for|back|away|together|inside|when|while|if|so|as)\b/i
const ON =
  /^(?:back )?(?:on|onto|over|in|into|down|through|across|round|around|along|inside|between|under)(?: (?:to|into|onto))? (?=\S)/i
const LONE = /^(?:back |all )*(?:off|out|back|up|down|in|on|over|away|through|together|home)$/i
const BEFORE_WAY =
  /^(?:back |all )*(?:in|on|up|down|back|off|out|over)(?= (?:by|with|until|at|before|after|in|on|onto|into|hand|fingers?)\b)/i

/** What holds what is put in or on it, and is neither closed up nor cleaned by that. */
const HOLDS =
  /\b(?:cups?|mug|bowls?|box|boxes|bags?|tins?|trays?|buckets?|jars?|pots?|dish|skips?|bins?|bench|table|shelf|pocket|floor|ground|cloth|rag|towels?|swabs?|pads?|buds?|brush|sponge|wipes?|tissue|stick|cleaner|water|hand|fingers?)$/i
/** Not all is done: "no grease on the rim", "the lid not on yet". */
const REFUSED = /^(?:no|none)\b|\b(?:not(?! (?:longer|more|less|over|too|so|quite)\b)|never)\b/i
/** What is plugged in. */
const PLUGGED = /\b(?:plugs?|leads?|cords?|cables?|connectors?|charger|socket|mains|wall)\b/i
/** Letters of a verb that tell it in its forms. */
const STEM = 4

type Order = { readonly thing: string; readonly where: string; readonly more: string }

/** The first order of a worded step: what it is done to, where or how, and what else is ordered. */
const takeApart = (text: string): Order => {
  const behind = text.replace(/\.$/, '').replace(/^[\p{L}-]+ ?/u, '')
  const rest = behind.replace(/^(?:off|on|out|up|down|away|back) (?=(?:the|your|an?|all|both|each)\b)/i, '')
  const first = rest.split(/,? and |, /)[0] ?? rest
  const at = first.search(WHERE)
  return {
    thing: (at < 0 ? first : first.slice(0, at)).trim(),
    where: at < 0 ? '' : first.slice(at).trim(),
    more: rest.slice(first.length),
  }
}

const lastOf = (thing: string): string => thing.split(' ').at(-1) ?? ''
const isPronoun = (thing: string): boolean => /^(?:it|them|this|that|these|those|one|there)$/i.test(thing)
const placeOf = (where: string): string =>
  /^[^,]*/.exec(where.replace(/ (?:of|with|until|by|so|before|after|for|from)\b.*$/i, ''))?.[0] ?? ''
const isOfStuff = (thing: string): boolean => isStuff(thing) || MEASURED.test(thing)

const toPart = (deed: string, own: string, { thing, where, more }: Order): string | undefined => {
  const on = ON.exec(where)
  if (hasTool(thing) && OF_FASTENERS.has(deed) && on !== null)
    return `${deed} ${where.slice(on[0].length)} with ${thing}${more}`
  if (hasTool(thing) && OF_FASTENERS.has(deed)) return undefined
  if (IN_PLACE.has(deed) && (hasTool(thing) || /^(?:back |all )*(?:off|out|away)\b/i.test(where))) return undefined
  if (APART.has(deed) && /^(?:into|onto|to)\b/i.test(where)) return undefined
  if (deed === 'unplug' && (/\b(?:plug|key)$/i.test(thing) || !PLUGGED.test(thing))) return undefined
  if (isOfStuff(thing) || (IN_PLACE.has(deed) && HOLDS.test(placeOf(where)))) return undefined
  const way = LONE.test(where)
    ? ''
    : where
        .replace(BEFORE_WAY, '')
        .replace(/^back (?=\S)/i, '')
        .trim()
  if (thing === '') return undefined
  // "Cover on, clips on": the rest goes back with it.
  const also = more.replace(
    new RegExp(`(, | and )${own} (?=(?:the|your|both|all|its)\\b(?! (?:new|fresh)\\b))`, 'g'),
    `$1${deed} `,
  )
  return [deed, thing, way].filter(part => part !== '').join(' ') + also
}

/** "Put a smear of grease on": greased "with a smear". */
const withMeans = (thing: string, deed: string): string => {
  const means = thing.replace(new RegExp(` of (?:the )?${deed}$`, 'i'), '')
  return new RegExp(`^(?:the |some )?${deed}$`, 'i').test(means) ? '' : ` with ${means}`
}

const onSurface = (deed: string, { thing, where, more }: Order): string | undefined => {
  const on = ON.exec(where)
  if (on !== null && (isPronoun(thing) || HOLDS.test(placeOf(where)))) return undefined
  if (on !== null) return `${deed} ${where.slice(on[0].length)}${withMeans(thing, deed)}${more}`
  if (thing === '' || hasTool(thing) || isOfStuff(thing) || lastOf(thing).toLowerCase() === deed) return undefined
  const way = LONE.test(where) ? '' : where
  return [deed, thing, way].filter(part => part !== '').join(' ') + more
}

const switched = ({ thing, where, more }: Order, text: string): string | undefined => {
  const way = /\b(?:off|on)\b/i.exec(text)?.[0].toLowerCase()
  const rest = where.replace(/^(?:back )?(?:off|on|out|down|up)\b ?/i, '')
  return way === undefined || thing === '' || isPronoun(thing)
    ? undefined
    : [`switch ${way}`, thing, rest].filter(part => part !== '').join(' ') + more
}

/** Whether the rest of a step has the verb already; the name of stuff is no verb. */
const isSaid = (text: string, deed: string): boolean =>
  text.toLowerCase().includes(TO_SURFACES.has(deed) ? ` and ${deed} ` : ` ${deed} `)

/** Whether a verb would turn round what was told, or say it twice: what comes off is not fitted, what goes back on is not undone. */
const isTurned = (text: string, deed: string, said: string): boolean => {
  const own = deedOf(text)
  if (own === 'use' && !TO_SURFACES.has(deed) && !OF_FASTENERS.has(deed)) return true
  if (/^take an? (?:photo|picture)/i.test(text) || isSaid(text, deed)) return true
  if (
    /^(?:switch|undo|torque)$/.test(own) ||
    (TOGETHER.has(own) && OPENS.has(deed)) ||
    (OPENS.has(own) && TOGETHER.has(deed))
  )
    return true
  return OPENS.has(deed) && /\b(?:back|again|new|fresh)\b/i.test(said)
}

/** What is done to the thing that a sentence without an action opens with; all that was said of it stays. */
const toNamed = (deed: string, text: string, reading: Reading): string | undefined => {
  const { phrases, tokens } = reading
  const [thing] = phrases
  if (thing === undefined || thing.from > 1 || (tokens[0]?.tag !== 'determiner' && thing.from > 0)) return undefined
  const next = tokens[thing.to]
  const isAlone = next === undefined || next.isAfterPause || next.tag === 'preposition' || next.tag === 'particle'
  const said = text.slice(NO_ACTION.length).trim()
  if (said.toLowerCase().includes(deed.slice(0, STEM))) return undefined
  if (!isAlone || BODY.has(tokens[thing.to - 1]?.word ?? '') || WORN.test(said)) return undefined
  const isMeans = thing.isTool || thing.isMaterial
  if (isMeans || (OF_FASTENERS.has(deed) && !FASTENERS.test(said))) return undefined
  return deed === 'switch' ? undefined : `${deed} ${withArticle(yours(decapitalize(said)))}`
}

/**
 * @param text a worded step
 * @param deed another verb for its first order
 * @returns the step with that verb, what is spread or held said behind "with"; undefined where it would not read as an order
 */
export const withDeed = (text: string, deed: string, reading: Reading): string | undefined => {
  const isNameless = namesNoAction(text)
  if (isTurned(text, deed, reading.text)) return undefined
  if (!isNameless && /^put on\b/i.test(text) && WORN.test(text)) return undefined
  // "Put no grease on the rim": what is refused gets no other verb.
  const order = takeApart(text)
  if (REFUSED.test(`${order.thing} ${order.where}`)) return undefined
  const said = isNameless
    ? toNamed(deed, text.replace(/\.$/, ''), reading)
    : deed === 'switch'
      ? switched(order, reading.text)
      : TO_PARTS.has(deed)
        ? toPart(deed, deedOf(text), order)
        : TO_SURFACES.has(deed)
          ? onSurface(deed, order)
          : undefined
  const told = said === undefined ? undefined : withoutLooseEnd(said.replace(/ {2,}/g, ' ').trim())
  return told !== undefined && isSound(told) && deedOf(told) === deed ? told : undefined
}
