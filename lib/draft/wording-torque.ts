import { withA } from './wording-kinds'
import { withArticle, yours } from './wording-place'

const DENIES =
  /\bnever (?:do|does|take|takes|torque|tighten|pull|run|turn|wind|set|goes)\b(?! (?:\w+ ){0,2}(?:over|past|above|beyond|more)\b)|n['’]t (?:want|need|take|like|get) (?:[\w.-]+ ){1,4}(?:newton|foot|inch|pound|n\.?m\b)/i
/** @returns whether a text tells a torque as the wrong one: "the bolts don't want twenty newton metres" */
export const deniesTorque = (text: string): boolean => DENIES.test(text)

const TORQUE =
  /((?:(?:about|to|at|between|no more than|not over|at most) )*(?:(?:\d[\d.,/-]*|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:-\w+)?|hundred|a hundred|point|and|to|or|plus|minus|half|a half|quarter)\s)+(?:newton[ -]?(?:metres?|meters?|centimetres?)|foot[ -]?pounds?|inch[ -]?pounds?|pound[ -]?feet|n\.?m\.?)(?:,? (?:plus (?:or |and )?minus|either way|give or take)(?: (?:[\d.]+|one|two|three|four|five|half|a half|a|ten))+(?: percent)?)?)/i

/** "twenty-five newton metres", "anchors, torque wrench, ninety newton metres". */
export const fromTorque = (said: string, whole: string): string | undefined => {
  const found = TORQUE.exec(said)
  // A figure taken back is for the user to settle.
  if (
    found === null ||
    /\b(?:no(?! more)|nah|sorry|wait|other|another|apologi[sz]e|mistake|old|was|had|hang on|hold on|wrong|lie|aren't|isn't|instead|last time)\b/i.test(
      whole,
    ) ||
    deniesTorque(whole)
  )
    return undefined
  const [ahead = '', behind = ''] = [said.slice(0, found.index), said.slice(found.index + found[0].length)]
  const limit = (found[1] ?? '').trim().replace(/^(?:at|to|and) /i, '')
  const parts = ahead
    .split(',')
    .map(part =>
      part
        .trim()
        .replace(/^(?:and|then|so|now|next)(?: |$)/i, '')
        .replace(/,? (?:to|at|goes to|go to|and|by)$/i, ''),
    )
    .filter(part => part !== '')
  const tool = parts.find(part => /\b(?:wrench|driver|clicker|screwdriver)\b/i.test(part))
  const things = parts.filter(part => part !== tool)
  const how = things.filter(
    (part, i) => i > 0 && /\b(?:cross\w*|star|pattern|diagonal\w*|stages?|goes|hand first)\b/i.test(part),
  )
  const rest = things.filter(
    part => !how.includes(part) && !/^(?:by )?(?:hand|fingers?)(?: first| tight)?$/i.test(part),
  )
  if (
    rest.some(
      part =>
        part.split(' ').length > 8 ||
        /\b(?:first one|neighbour|little by)\b/i.test(part) ||
        /\b(?:and|then)$/i.test(part) ||
        /\d/.test(part.split(' ')[0] ?? ''),
    )
  )
    return undefined
  if (/\b(?:star|cross\w*|pattern)\b/i.test(rest[0] ?? '')) how.push(...rest.splice(0, 1))
  const thing =
    rest.length === 0
      ? ''
      : ` ${[withArticle(yours(rest[0] ?? '')), ...rest.slice(1)].join(', ')}${rest.length > 1 ? ',' : ''}`
  const spread =
    /\bplus(?: or|\/| and)? minus [\w.-]+(?: (?:point \w+|one|two|three|four|five|six|seven|eight|nine))?|\bup to [\d.]+\b/i.exec(
      whole,
    )?.[0]
  const isGiven = spread === undefined || /plus|up to/i.test(limit)
  const isSame = /^up to/i.test(spread ?? '') && limit.includes(spread?.split(' ').at(-1) ?? '')
  const give = isGiven || isSame ? '' : `, ${spread}`
  const tail = /^,? ?(?:on|for|each|all|in|with|crosswise|crossways)\b/i.test(behind) ? behind : ''
  const more = how.length === 0 ? '' : `, ${how.join(', ')}`
  return `tighten${thing} to ${limit}${/plus/i.test(tail) ? '' : give}${tool === undefined ? '' : ` with ${withA(tool, tool)}`}${tail}${more}`
}

const TOLD = /\b(?:i|we|you|he|she|they|it|there|that)\b|\b(?:and|but|so|which|because|if|when)\b/i

const NO_NAME = /^(?:this|these|those|each|every|so|then|now|no|not|big)\b|\b(?:with|each|are|tried|drawn)\b/i

/** Like `fromTorque`, where a verb tells the limit: "the cap is thirty newton metres", "bolts at ninety foot-pounds". */
export const torqueTold = (said: string, whole: string): string | undefined => {
  const found = TORQUE.exec(said)
  if (found === null || TORQUE.test(said.slice(found.index + found[0].length))) return undefined
  const ahead = said
    .slice(0, found.index)
    .replace(/ (?:gets?|takes?|wants?|needs?) ?$/i, '')
    .replace(/,? (?:goes|go|done up|torqued?|set|tightened|is|are|'s|be|to|at|up)+$/gi, '')
  const thing = (ahead.split(/, | and | then /).at(-1) ?? '')
    .replace(
      /\b(?:is|are|'s|goes|go|done up|(?:the )?(?:final )?torque(?:'s)?(?! (?:wrench|driver|screwdriver|key))|at|to|set|up|i reckon|i think|call it)\b/gi,
      ' ',
    )
    .replace(/\s+/g, ' ')
    .trim()
  const isName =
    thing !== '' &&
    !TOLD.test(thing) &&
    thing.split(' ').length < 5 &&
    !NO_NAME.test(thing) &&
    !/\d/.test(thing) &&
    !/['’]/.test(thing)
  return fromTorque(`${isName ? `${thing}, ` : ''}${said.slice(found.index).trim()}`, whole)
}
