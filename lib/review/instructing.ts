import { actionsOf } from './action'
import { onceForText } from './memo'

/** What speakers say before the order itself. Common speech, no source. */
const LEAD_IN =
  /^(?:(?:okay|ok|all right|alright|right|so|now|then|next|and|but|um|uh|er|well|first(?:ly| thing| of all)?|second(?:ly)?|third(?:ly)?|finally|lastly|after that|once (?:that's|that is|it's) (?:done|out|off)|from (?:there|here)|at this point|again|also|just|simply|here|there we go|what (?:you|we|i) (?:do|want to do|wanna do|need to do) (?:here |now )?is|the (?:first|next|last) thing (?:is|to do is)|(?:you|we)(?:'re| are) (?:going to|gonna)|(?:you|we)'ll (?:want to|need to|have to)?|(?:you|we|i) (?:want to|wanna|need to|have to|can|should|must|always)|i(?:'m| am) (?:going to|gonna)|let's|let us|go ahead and|please|always|make sure (?:you|to)|be sure to|it's time to)[\s,]*)+/i
const STRONG =
  /\b(?:make sure|you(?: really)? (?:want|need|have|must|should|gotta)|must be|has to be|have to be|should be|needs to be|don't|do not|never)\b/i
const CHAT =
  /^(?:hello|hi|hey|hiya|good (?:morning|afternoon|evening|day)|g'day|bonjour|hola|ciao|welcome|morning|evening|howdy|greetings|alright (?:folks|guys|everyone))\b|\b(?:subscribe|like button|comment|channel|see you|thanks for|coffee|my name|welcome|video|episode|price|paid|cheers)\b|\?$/i

/** @returns whether a sentence is small talk or a question. */
export const isChat = (text: string): boolean => CHAT.test(text)

/** @returns the sentence without what leads in to the order. */
export const withoutLeadIn = (text: string): string => text.replace(LEAD_IN, '')

/** @returns whether a sentence tells to do, look at or avoid something. */
export const isInstructing = onceForText((text: string): boolean => {
  if (CHAT.test(text)) return false
  const bare = withoutLeadIn(text)
  const [first] = actionsOf(bare)
  if (first !== undefined && (first.things.length > 0 || first.particle !== undefined)) return true
  return STRONG.test(text)
})

/** Verbs of thought and talk, and those too general to be an order by themselves. */
const MENTAL = new Set(
  'be have do go come get give let make see look know think say tell mean want need like keep find show call talk ask explain watch listen wait leave repeat read remember note expect use try start stop begin continue work feel bear prevent allow order'.split(
    ' ',
  ),
)

/** How often the job is done: no order of the job itself. */
const OFTEN =
  /\b(?:every|each) (?:[\d.,]+|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|fifty|(?:a )?hundred|few|other|couple of) (?:(?:hundred|thousand|running|working|operating) )?(?:hours?|days?|weeks?|months?|years?|shifts?|miles|kilomet)|\b(?:every|once a|twice a|each) (?:day|week|month|year|season|spring|autumn|fall|shift)\b/i
/** "Torque wrench, the small one" names a tool. */
const TOOL_NAME =
  /^(?:the |a |an |my |your )?(?:torque|pry|pipe|drill|feeler|grease|heat|strap|tap|lock|hook|press|wire|pin|drain|screw|impact|spring|clamp|crimp|paint|spray|test|level|stop) (?:wrench|bars?|bits?|gauges?|gun|tool|driver|spanner|watch|brush|lamp|light|meter|pan|stand|vice|kit|set)\b(?! (?:the|it|them)\b)/i

/** @returns whether a sentence plainly orders an action on something. */
export const isOrder = onceForText((text: string): boolean => {
  if (CHAT.test(text) || OFTEN.test(text) || TOOL_NAME.test(withoutLeadIn(text))) return false
  const [first] = actionsOf(withoutLeadIn(text))
  return (
    first !== undefined &&
    (first.acts.size > 0 || !MENTAL.has(first.verb)) &&
    first.things.some(({ head }) => head !== '')
  )
})
