import { verbOf } from '@/lib/trade/morphology'
import { ALWAYS_WORN, BY_HAND, FASTENERS } from './wording-kinds'

const POWER =
  /\b(?:power|isolator|engine|breaker|heaters?|ignition|pump|gas|water|fuel|supply|mains|motor|light|lights|current|air|compressor|machine|switch|heat|blower|fan|vacuum|steam|disconnect|battery|charger|electricity)$/i
const WORN = new RegExp(`\\b(?:${ALWAYS_WORN}|mask|plugs|protection)$`, 'i')
const BRAKE = /\b(?:brakes?|handbrake|choke|tension|pressure|load)$/i
const SETTLED =
  /^(?:the|a|an|your|my|our|its|his|her|their|this|that|these|those|both|all|each|every|everything|everyone|some|any|no|what|what's|whatever|it|them|him|one|two|three|four|five|six|seven|eight|nine|ten|half|another|either|new ones?|\d\S*)\b/i

const MEASURED =
  /^(?:wee |little |tiny |small |good |thin )*(?:drop|dab|smear|bit|touch|coat|squirt|film|spot|blob|bead|splash|piece|strip|pinch|couple|lick|pair|shot|wipe|turn)\b(?= of| more|$)/i

const LIMB = /^(?:hands?|fingers?|foot|feet|face|eyes?|thumbs?|sleeves?|hair)$/i

/** Gives a thing an article where it has none. */
export const withArticle = (thing: string): string =>
  SETTLED.test(thing) ? thing : `${LIMB.test(thing) ? 'your' : MEASURED.test(thing) ? 'a' : 'the'} ${thing}`

/** What the speaker calls theirs is the reader's. */
export const yours = (said: string): string => said.replace(/\b(?:my|our)\b/gi, 'your')

/** "it", "them" for what moves by itself in the talk: "she goes", "they come". */
export const asObject = (thing: string): string => {
  if (/^(?:it|he|she|him|her)$/i.test(thing)) return 'it'
  return /^(?:they|them)$/i.test(thing) ? 'them' : withArticle(yours(thing))
}

const ALONE: Readonly<Record<string, string>> = {
  up: 'raise',
  apart: 'separate',
  down: 'lower',
  open: 'open',
  shut: 'shut',
  closed: 'close',
  loose: 'loosen',
  tight: 'tighten',
}

/** A side or a mark that shows which way round a part goes. */
const SIDE =
  /\b(?:side|sides|end|face|lip|teeth|arrow|arrows|mark|marks|bevel|writing|serrations|dot|lettering|notch|groove|bump)$/i
export const tellsWay = (said: string): boolean => {
  const [, thing = ''] =
    /^(.+?) (?:facing )?(?:up|down|forwards?|upwards?|downwards?|out|outwards?|inwards?|backwards?)\b/i.exec(said) ?? []
  return SIDE.test(thing)
}

/** "in an X": the pattern fasteners are tightened in. */
const IN_TURN =
  /^(?:down )?in (?:an? |the )?(?:x|star|cross|circle|pattern|sequence|order|crisscross|criss-cross)(?=[,.;]|$| (?:pattern|shape|sequence|order|and|so|to|until|with|at|by|from)\b)/i

const FROM_PEOPLE =
  /^from (?:[\w']+ ){0,2}?(?:you|people|everybody|everyone|anybody|anyone|faces?|eyes|hands?|skin|flames?|heat|fire|sparks?|bystanders|children)\b/i

const MOVED = new RegExp(`^(?:${BY_HAND})$`)

/** "this little mesh slides" and "out" tell what a hand does: the verb with its thing. */
const movedBy = (thing: string, first: string): string | undefined => {
  const words = thing.split(' ')
  const verb = verbOf(words.at(-1) ?? '')
  if (
    verb?.form !== 'third' ||
    !MOVED.test(verb.base) ||
    words.length < 3 ||
    !/^(?:the|this|that|it)$/i.test(words[0] ?? '')
  )
    return undefined
  return /^(?:off|out|away|up|down|apart|open|back|forward|straight|into|onto|over|under)$/.test(first)
    ? `${verb.base} ${asObject(words.slice(0, -1).join(' '))}`
    : undefined
}

const MANNER = /\s+(all the way|right|straight|well|fully|firmly|halfway)$/i

/** "off the lock" is from the lock. */
const fromWhere = (tail: string): string =>
  tail === '' ||
  /^(?:with|by|at|in|for|after|before|until|when|to|over|onto|into|from|and|using|without|[a-z]+ly)\b/i.test(tail)
    ? tail
    : `from ${tail.replace(/^of\s+/i, '')}`

/**
 * Says where a thing goes as an order: "wheel" and "back on" make "refit the wheel".
 *
 * @param said the thing
 * @param where particle or preposition first, lower case, then the rest
 */
export const orderOfPlace = (said: string, where: string): string => {
  const manner = MANNER.exec(said)?.[1]
  const thing = manner === undefined ? said : said.replace(MANNER, '')
  const isStill = /\b(?:still|already|stays?)$/i.test(thing)
  const object = asObject(thing.replace(/\s+(?:still|already|stays?)$/i, ''))
  const words = where.split(' ').filter(word => word !== '')
  const [first = '', second = ''] = words
  const tail = words.slice(1).join(' ')
  const join = (verb: string, ...more: readonly (string | undefined)[]) =>
    [verb, object, ...more].filter(part => part !== undefined && part !== '').join(' ')
  const moved = movedBy(thing, first)
  if (moved !== undefined) return `${moved} ${where}`
  if (FASTENERS.test(thing) && (/^down(?: again)?$/.test(where) || IN_TURN.test(where)))
    return join('tighten', where.replace(/^down(?: again)?$/, ''))
  const isBody = LIMB.test(thing.replace(/^(?:your|my|both|both your|the) /i, ''))
  if (isStill || (isBody && /^(?:off|out|away|clear)$/.test(first)))
    return join('keep', where).replace(/^keep the (?=\S+ (?:off|out|away|clear))/, 'keep your ')
  if (first === 'back' && second === 'on' && words.length === 2 && POWER.test(thing)) return `switch ${object} back on`
  if (first === 'back') return backOf(second, words.slice(1).join(' '), words.slice(2).join(' '), join)
  if (/^(?:new|fresh|brand-new|another)\b/i.test(thing) && /^(?:on|in|into|onto|over|under|to)$/.test(first))
    return join('fit', tail === '' ? '' : where)
  if (BRAKE.test(thing) && tail === '' && /^(?:on|off)$/.test(first)) return join(first === 'on' ? 'apply' : 'release')
  if (first === 'off' && POWER.test(thing))
    return join('switch off', tail.replace(/^(?!at|by|with|in|on)/, tail && 'at '))
  if (isBody && /^(?:on|in)$/.test(where)) return join('put', where)
  if (first === 'up' && WORN.test(thing)) return join('put on')
  if (first === 'on' && WORN.test(thing) && !/^(?:the|an?|your|my|its|top of)\b/i.test(tail))
    return join('put on', tail.replace(/^(and \S+) on$/, '$1'))
  if (first === 'on' && tail === '' && POWER.test(thing)) return join('switch on')
  if (BRAKE.test(thing) && tail === '' && /^(?:up|down)$/.test(first)) return join(first === 'up' ? 'apply' : 'release')
  if (first === 'away' && second === 'from') return join(FROM_PEOPLE.test(tail) ? 'keep' : 'move', where)
  if (first === 'out' && second === 'of') return join('take', where)
  if (/^(?:off|out|away)$/.test(first)) return join('remove', fromWhere(tail))
  // The machine is plugged in; no plug is fitted.
  if (/^(?:the )?plug$/i.test(thing) && where === 'in') return 'plug in'
  if (/^(?:on|in)$/.test(first) && tail === '') return join('fit')
  if (/^(?:up|down)$/.test(where) && SIDE.test(thing)) return join('put', where)
  if (ALONE[first] !== undefined && (tail === '' || /^(?:until|to|onto|with|by|on|a|an|one|two|three|\d)/.test(tail)))
    return join(ALONE[first] ?? '', manner, tail)
  if (first === 'to') return join('set', where)
  return join('put', manner === undefined ? where : `${manner} ${where}`)
}

/** Things are kept there; nothing is fitted there. */
const CONTAINER =
  /^in (?:its|the|your|my|their|a|an) (?:[a-z]+ )?(?:can|box|case|drawer|bag|pocket|sock|rack|tray|bin|tin|jar|cabinet|cupboard|van|shed|bottle|bucket|tub)\b/i

const backOf = (
  second: string,
  place: string,
  tail: string,
  join: (verb: string, ...more: readonly string[]) => string,
): string => {
  if (second === 'in' && CONTAINER.test(place)) return join('put', `back ${place}`)
  if (/^(?:on|in|together)$/.test(second))
    return join(
      'refit',
      tail === ''
        ? ''
        : /^(?:with|by|after|until|before|from|at|in|on|to|and|using|over|under)\b/.test(tail)
          ? tail
          : place,
    )
  if (second === 'up') return join('raise', tail)
  if (second === 'down') return join('lower', tail)
  return join('put', `back ${place}`.trim())
}

const WAY = '(off|out|in|on|up|down|back(?: (?:on|in|down|up))?|away|over)'
const MOVES = '(?:comes?|goes?|went|came|come|go)'
const COMES = new RegExp(`^${WAY} (?:${MOVES}|with) (.+)$`, 'i')
const IT_COMES = new RegExp(
  `^${WAY} ((?:the|that|this|those|these|it|she|he|they)\\b(?: [a-z-]+){0,3}?) ${MOVES}\\b ?(.*)$`,
  'i',
)
const PLACED = /\s(?=(?:with|by|until|before|after|from|on|onto|into|in|to|for|at|over|through|using)\b)/i

/** "off comes the presser foot", "in she goes with a twist", "up with the front on the ramps". */
export const fromInverted = (said: string): string | undefined => {
  const it = IT_COMES.exec(said)
  if (it !== null) return orderOfPlace(it[2] ?? '', `${(it[1] ?? '').toLowerCase()} ${it[3] ?? ''}`.trim())
  const comes = COMES.exec(said)
  if (comes === null) return undefined
  if (/^back \w+ with\b/i.test(said)) return `refit it with ${comes[2]}`
  const [thing = '', ...rest] = (comes[2] ?? '').split(PLACED)
  return verbOf(thing.split(' ')[0] ?? '')?.form === 'third'
    ? undefined
    : orderOfPlace(thing, `${(comes[1] ?? '').toLowerCase()} ${rest.join(' ')}`.trim())
}
