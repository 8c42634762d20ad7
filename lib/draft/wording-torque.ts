import { withA } from './wording-kinds'
import { withArticle, yours } from './wording-place'

const TORQUE =
  /((?:(?:about|to|at|between|no more than|not over|at most) )*(?:(?:\d[\d.,/-]*|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:-\w+)?|hundred|a hundred|point|and|to|or|half|a half|quarter)\s)+(?:newton[ -]?(?:metres?|meters?|centimetres?)|foot[ -]?pounds?|inch[ -]?pounds?|pound[ -]?feet|n\.?m\.?)(?:,? (?:plus (?:or |and )?minus|either way|give or take)(?: (?:[\d.]+|one|two|three|four|five|half|a half|a|ten))+(?: percent)?)?)/i

/** "twenty-five newton metres", "anchors, torque wrench, ninety newton metres". */
export const fromTorque = (said: string, whole: string): string | undefined => {
  const found = TORQUE.exec(said)
  // A figure taken back is for the user to settle.
  if (
    found === null ||
    /\b(?:no(?! more)|nah|sorry|wait|other|old|was|had|hang on|hold on|wrong|lie|aren't|isn't|instead|last time)\b/i.test(
      whole,
    )
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
      part => part.split(' ').length > 8 || /\b(?:and|then)$/i.test(part) || /\d/.test(part.split(' ')[0] ?? ''),
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
  const give = spread === undefined || /plus|up to/i.test(limit) ? '' : `, ${spread}`
  const tail = /^,? ?(?:on|for|each|all|in|with|crosswise|crossways)\b/i.test(behind) ? behind : ''
  const more = how.length === 0 ? '' : `, ${how.join(', ')}`
  return `tighten${thing} to ${limit}${/plus/i.test(tail) ? '' : give}${tool === undefined ? '' : ` with ${withA(tool, tool)}`}${tail}${more}`
}
