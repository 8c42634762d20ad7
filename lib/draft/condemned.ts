/** Alternatives of one pattern, each a row. */
const anyOf = (...rows: readonly string[]): RegExp => new RegExp(`\\b(?:${rows.join('|')})`, 'i')

/** Where what is thrown out ends up. */
const AWAY =
  '(?:old iron|iron pile|scrap\\w*|bins?|skip|trash\\w*|rubbish|dumpster|junk\\w*|landfill|recycl\\w*|garbage|barrel|dustbin|tip|heap|bucket|fire|dump|graveyard|bone ?yard|wastebasket|museum)\\b'
const IS = "(?:is|are|'s|'re|counts as|call it)"

/**
 * What is said of a part that fails its limit: thrown out, refused, replaced, done again.
 *
 * @source common practice, no source
 */
const VERDICT = anyOf(
  `(?:go(?:es)?|gets?|belongs?|lands?|ends? up|flies|throw(?:n|s)?|chuck(?:ed|s)?|toss(?:ed|es)?|put|drop(?:ped|s)?|straight|off|is|are|it's|they're)(?: \\w+){0,2} (?:in|into|on|onto|to|for)(?: (?:the|my|our|a|that))? (?:\\w+ )?${AWAY}`,
  '(?:quits?|gives? up|gave up) on\\b|(?:says?|kiss(?:es)?|wave) (?:it |them )?good ?bye|parts? (?:with|company)\\b|(?:bury|buries|retires?|retired|toss(?:ed|es)?|ditch(?:ed|es)?|dump(?:ed|s)?|chuck(?:ed|s)?|binned|scrapped|condemn(?:s|ed)?|junk(?:ed|s)?|rejects?|rejected)\\b(?! (?:rate|the idea))',
  '(?:cut|break|broken) (?:it |them )?up\\b|sen[dt]s? (?:it|them|her|him|the \\w+) (?:back|away|off)\\b|out (?:it|they|he|she) (?:goes|go|comes?)\\b',
  `${IS} (?:(?:just|only|all|as good as|already|ready|officially|well|truly) )?(?:for )?(?:scrap|used up|spent|history|rubbish|trash|junk|garbage|landfill|dead|toast|cooked|finished|shot|worn(?: out)?|(?:of )?no (?:use|good|more)|useless|past it|too far gone|gone|firewood|kaput|ruined|old iron|a goner|condemned|rejected|unfit|unsafe|failed|through\\b(?! the)|not (?:coming|going) back|a (?:fail|failure|reject)|time (?:for|to))\\b`,
  `${IS} an? (?:new|fresh) \\w+`,
  "(?:is|are|'s|'re) (?:not|no longer|never) (?:road[- ])?(?:legal|allowed|safe|good|acceptable|fit|usable|right|okay|ok|worth|permitted|serviceable|healthy|normal)\\b|(?:isn't|aren't) (?:legal|allowed|safe|good|acceptable|fit|usable|right|okay|ok|worth|permitted|healthy|normal)\\b|illegal\\b",
  '(?:throw|throws|chuck|sling|toss|pitch|bin|scrap) (?:it|them|her|him|that|the \\w+)\\b',
  "(?:won't|will not|don't|do not|doesn't|does not|isn't|aren't|wouldn't|would not|refuses? to|never|nobody) (?:\\w+ ){0,2}?(?:runs?|use|reuse|re-use|refit|re-fit|fit|put|sign|pass(?:es)?|let|leaves?|serve|ride|drive|fly|trust|keep|sell|go(?:es)? (?:back|out|in|on)|going (?:back|out|in|on)|leaving|stays?|argue|bother|accept|release|hand)\\b",
  "(?:get|fit|buy|order|needs?|wants?|want|earns?|time for|there's|fitting|due) (?:for )?(?:an? )?(?:new|another|fresh|replacement)\\b|(?:for|to) replacement\\b|(?:needs?|wants?) (?:replacing|changing|renewing|regrinding|rebuilding|skimming|rebushing)\\b",
  '(?:and|then|so|,) (?:it|they|he|she|the \\w+(?: \\w+)?|that \\w+) (?:comes?|has to come|must come|goes?) (?:off|out|back to)\\b',
  'starts? (?:over|again|from)\\b|(?:do|does|did) it (?:all )?(?:over|again)\\b|(?:pull|take|comes?) (?:it |them )?apart\\b|had (?:its|their|his|her) (?:day|time|life)\\b|days are (?:over|numbered|done|counted)\\b|life is over\\b|out of (?:service|spec|limits|tolerance)\\b|off the road\\b',
  "(?:is|are|be|gets?|get|it's|they're|must be|has to be|have to be) (?:changed|replaced|renewed|scrapped|swapped|binned|thrown (?:out|away)|re-?ground|skimmed|re-?shimmed|rebuilt|rebushed|retired)\\b",
)

/** What is said of a part that may stay. */
const PRAISE =
  /\b(?:good(?! ?bye)|fine|okay|ok|happy|all right|alright|enough|perfect|normal|acceptable|will do|leaves? (?:it|them|alone|well alone|be)\b|(?:can|may) (?:\w+ )?(?:keep|use|reuse|run|put|stay)|stays? in|goes back in|lives|reuse it|safe|carry on|move on|lovely|happy days|we're there|you're there|healthy)\b(?<!\bno good|\bnot fine|\bnot okay|\bnot safe|\bnot good|\bnot enough|\bas good|\bno longer good|\bno longer safe|isn't good|aren't good|isn't safe|aren't safe|isn't okay|isn't normal|\bnot normal|\bnot acceptable|isn't acceptable)/i

/** A sentence without any of these condemns nothing. */
const MAY =
  /\b(?:go(?:es)?|gets?|belongs?|lands?|ends?|flies|throw\w*|chuck\w*|toss\w*|put|drop\w*|straight|quits?|gives?|gave|good ?bye|parts?|bury|buries|retire\w*|ditch\w*|dump\w*|bin\w*|scrap\w*|condemn\w*|junk\w*|reject\w*|cut|break|broken|sen[dt]s?|out|is|are|be|\w+'s|\w+'re|\w+n't|not|never|nobody|refuses?|need\w*|wants?|time|new|off|over|again|apart|day|days|replac\w*|illegal|throws?|sling|pitch)\b/i

/**
 * @param stretch the words around a limit, no more than its own sentence
 * @returns whether they condemn what is beyond the limit
 */
export const isCondemned = (stretch: string): boolean =>
  MAY.test(stretch) && VERDICT.test(stretch) && !PRAISE.test(stretch)

/** What opens the telling of a fault. */
const OPENS = /\b(?:if|when|whenever|once|anything|any|as soon as|the moment)\b[^,.;]*$/i
const FIRST = /^ ?(?:and |but |so |or |now |okay,? )?(?:anything |much |even )?$/i
/** What follows from it: somebody or something does or is something. */
const FOLLOWS =
  /^[^.;?!]{0,30}?(?: means\b|(?:,|\band\b|\bthen\b)? ?\b(?:no\b(?! more)|nope|never|(?:you|i|we)(?:'ll|'d|'re|'m)?(?! (?:want|need|should|like|get|got|have|look|see|aim|go|move))\b|adjust|shim|reset|re-?grind|bend|file|start over))\b/i

/**
 * @param ahead the words before a one-sided limit, in its sentence
 * @param after the words after it
 * @param isOver whether it lies above; what lies below is as often the aim, and only a condition makes a fault of it
 * @returns whether something is done or said of what lies beyond it that is no praise: `over 0.4 you adjust it`
 */
export const isRemedied = (ahead: string, after: string, isOver: boolean): boolean =>
  (OPENS.test(ahead) || (isOver && FIRST.test(ahead) && FOLLOWS.test(after))) && !PRAISE.test(`${ahead} ${after}`)
