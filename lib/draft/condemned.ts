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
  `(?:go(?:es)?|gets?|belongs?|lands?|ends? up|flies|throw(?:n|s)?|chuck(?:ed|s)?|toss(?:ed|es)?|put|drop(?:ped|s)?|straight|off|is|are|\\w+'s|they're)(?: \\w+){0,2} (?:in|into|on|onto|to|for)(?: (?:the|my|our|a|that))? (?:\\w+ )?${AWAY}`,
  '(?:quits?|gives? up|gave up) on\\b|(?:says?|kiss(?:es)?|wave) (?:it |them )?good ?bye|parts? (?:with|company)\\b|(?:bury|buries|retires?|retired|toss(?:ed|es)?|ditch(?:ed|es)?|dump(?:ed|s)?|chuck(?:ed|s)?|binned|scrapped|condemn(?:s|ed)?|junk(?:ed|s)?|rejects?|rejected)\\b(?! (?:rate|the idea))',
  '(?:cut|break|broken) (?:it |them )?up\\b|sen[dt]s? (?:it|them|her|him|the \\w+) (?:back|away|off)\\b|(?:out|off) (?:it|they|he|she) (?:goes|go|comes?)\\b',
  `${IS} (?:(?:just|only|all|as good as|already|ready|officially|well|truly) )?(?:for )?(?:scrap|used up|spent|history|rubbish|trash|junk|garbage|landfill|dead|toast|cooked|finished|done (?:with|for)|shot|worn(?: out)?|(?:of )?no (?:use|good|more)|useless|past it|too far gone|gone|firewood|kaput|ruined|old iron|a goner|condemned|rejected|unfit|unsafe|failed|through\\b(?! the)|not (?:coming|going) back|a (?:fail|failure|reject)|time (?:for|to))\\b`,
  `${IS} an? (?:new|fresh) \\w+`,
  '(?:everybody|everyone) (?:comes?|gets?|goes?|stops?|is) (?:down|out|off|home|work)\\b',
  '\\w+er than [^.;?!]{0,30} (?:comes?|goes?|gets?) (?:out|off|back)\\b',
  "(?:unhappy|not (?:too |very )?happy|n't (?:be )?happy|worr(?:y|ied)|nervous|concerned|suspicious)\\b",
  `${IS} (?:(?:a|good|enough|sufficient|the) )?(?:cause|reason|grounds?|sign) (?:for|to|of) (?:an? |the )?(?:re\\w+|scrap\\w*|change|changing|exchange|swap\\w*|new|overhaul|bin\\w*|wear|trouble)\\b`,
  "(?:is|are|'s|'re) (?:not|no longer|never) (?:road[- ])?(?:legal|allowed|safe|good|acceptable|fit|usable|right|okay|ok|worth|permitted|serviceable|healthy|normal)\\b|(?:isn't|aren't) (?:legal|allowed|safe|good|acceptable|fit|usable|right|okay|ok|worth|permitted|healthy|normal)\\b|illegal\\b",
  '(?:throw|throws|chuck|sling|toss|pitch|bin|scrap) (?:it|them|her|him|that|the \\w+)\\b',
  "(?:won't|will not|don't|do not|doesn't|does not|isn't|aren't|wouldn't|would not|refuses? to|never|nobody) (?:\\w+ ){0,2}?(?:runs?|use|reuse|re-use|send|ship|certify|touch|refit|re-fit|fit|put|sign|pass(?:es)?|let|leaves?|serve|ride|drive|fly|trust|keep|sell|go(?:es)? (?:back|out|in|on)|going (?:back|out|in|on)|leaving|stays?|argue|bother|accept|release|hand)\\b",
  "(?:get|fit|buy|order|needs?|wants?|want|earns?|time for|there's|fitting|due) (?:for )?(?:an? )?(?:new|another|fresh|replacement)\\b|(?:for|to) replacement\\b|(?:needs?|wants?) (?:replacing|changing|renewing|regrinding|rebuilding|skimming|rebushing)\\b",
  '(?:and|then|so|,) (?:it|they|he|she|the \\w+(?: \\w+)?|that \\w+) (?:comes?|has to come|must come|goes?) (?:off|out|back to)\\b',
  "(?:we|you|i|they)(?:'ll|'d)? exchange\\b|something(?:'s| is) (?:wrong|amiss|up|not right)\\b",
  'starts? (?:over|again|from)\\b|(?:do|does|did) it (?:all )?(?:over|again)\\b|(?:pull|take|comes?) (?:it |them )?apart\\b|had (?:its|their|his|her) (?:day|time|life)\\b|days are (?:over|numbered|done|counted)\\b|life is over\\b|out of (?:service|spec|limits|tolerance)\\b|off the road\\b',
  "(?:is|are|be|gets?|get|it's|they're|must be|has to be|have to be) (?:changed|replaced|renewed|scrapped|swapped|binned|thrown (?:out|away)|re-?ground|skimmed|re-?shimmed|rebuilt|rebushed|retired)\\b",
)

/** What is said of a part that may stay. */
const PRAISE =
  /\b(?:good(?! ?bye)|fine|okay|ok|happy|content|pleased|satisfied|(?:is|'s) (?:the|a|my|our) (?:rule|aim|target|goal)|all right|alright|enough|perfect|normal|acceptable|will do|leaves? (?:it|them|alone|well alone|be)\b|(?:can|may) (?:\w+ )?(?:keep|use|reuse|run|put|stay)|stays? in|goes back in|lives|reuse it|safe|carry on|move on|lovely|happy days|we're there|you're there|healthy)\b(?<!\bno good|\bnot happy|n't happy|n't be happy|too happy|very happy|\bnot fine|\bnot okay|\bnot safe|\bnot good|\bnot enough|\bas good|\bno longer good|\bno longer safe|isn't good|aren't good|isn't safe|aren't safe|isn't okay|isn't normal|\bnot normal|\bnot acceptable|isn't acceptable)/i

/** A sentence without any of these condemns nothing. */
const MAY =
  /\b(?:go(?:es)?|gets?|belongs?|lands?|ends?|flies|throw\w*|chuck\w*|toss\w*|put|drop\w*|straight|quits?|gives?|gave|good ?bye|parts?|bury|buries|retire\w*|ditch\w*|dump\w*|bin\w*|scrap\w*|condemn\w*|junk\w*|reject\w*|cut|break|broken|sen[dt]s?|out|is|are|be|\w+'s|\w+'re|\w+n't|not|never|nobody|refuses?|need\w*|wants?|time|new|off|over|again|apart|day|days|replac\w*|exchange\w*|worr\w+|unhappy|nervous|concerned|suspicious|illegal|throws?|sling|pitch|every(?:body|one))\b/i

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
  /^[^.;?!]{0,30}?(?: means\b|(?:,|\band\b|\bthen\b)? ?\b(?:no\b(?! more)|nope|never|(?:you|i|we)(?:'ll|'d|'re|'m)?(?! (?:want|need|should|like|get|got|have|look|see|aim|go|move))\b|adjust|shim|reset|re-?grind|bend|file|change|replace|swap|renew|scrap|bin|tighten|loosen|stop|shut|call|clean|check|find|fix|fit|mark|order|send|turn|start over))\b/i

/**
 * @param ahead the words before a one-sided limit, in its sentence
 * @param after the words after it
 * @param isOver whether it lies above; what lies below is as often the aim, and only a condition makes a fault of it
 * @returns whether something is done or said of what lies beyond it that is no praise: `over 0.4 you adjust it`
 */
export const isRemedied = (ahead: string, after: string, isOver: boolean): boolean =>
  (OPENS.test(ahead) || (isOver && FIRST.test(ahead) && FOLLOWS.test(after))) && !PRAISE.test(`${ahead} ${after}`)

/** Opens the telling of a fault whatever is measured: `any cell more than`, `a nick deeper than`, `the minute it goes over`. */
const TELLS =
  /(?:^|[,;]|\b(?:and|but|so|or|now)\b) ?(?:anything|anyone|any|an?|the (?:minute|moment|second|day))\b(?: [\w'-]+){0,5} ?$/i
/** `let it get past seventy and the magnets go`. */
const LET = /^ ?(?:and |but |so |now )?let (?:it|her|him|them|the \w+|that)(?: \w+){0,2} ?$/i
const PASSES = /^(?:(?:gets?|go(?:es)?|rises?|climbs?|drops?|falls?|runs?) )?(?:over|above|past|beyond|under|below)\b/i
const AND = /^[^,.;]{0,16},? and\b/i
const ANYTHING = /^any(?:thing|one)?\b/i
/** Of a part that wears, told first: `thinner than 2 mil and it's new shoes`. */
const WORSE =
  /^(?:colder|cooler|slower|nearer|closer|thinner|narrower|shorter|shallower|weaker|lower|smaller|deeper|wider|longer|looser|thicker|bigger|rougher|flatter|higher|hotter|slacker) than\b/i
const ASKED =
  /\b(?:should|must|wants?|needs?|has to|have to|had to|ought|shall|looking for|after|keep|stay|get (?:it|them)|likes?|aim|supposed|until|till?|before|wait|let|leave|make sure|limit|rule|always|or so|guess|else|otherwise|if not|in case|unless)\b/i
/** `less than five and it'll catch`. */
const BEYOND =
  /^(?:anything )?(?:less than|more than|under|over|below|above|past|beyond|short of|shy of|north of|south of|upwards? of)\b/i
const AND_IT =
  /^[^,.;]{0,20},? and (?:it|they|you|she|he|that|there|the \w+)(?:'ll|'s|'re| will| won't| can't| doesn't| gets?| goes?| starts?| is| are| comes?)\b/i
/** `below twelve volts it's charged first`. */
const IT_IS =
  /^,? (?:it|they|she|he|that)(?:'s|'re| is| are| gets?| goes?| comes?| has to| have to) (?!(?:a|an|the|in|inside|within|on|at|good|fine|ok|okay|all|ready|safe|done|set|full|healthy|happy|enough|warm enough|hot enough|cool enough|charged(?! (?:first|up|again))|your|my|still|only|just|about|too|not|where|when|what|how|like)\b)[a-z]+/i
/** `under twenty-five degrees of pitch leaks`, `past a hundred you shut down`. */
const DOES =
  /^(?: of [a-z]+)?,? (?:(?:leaks?|slips?|cracks?|fails?|burns?|sags?|binds?|jams?|freezes?|chatters?|squeals?|overheats?|melts?|stalls?|won't [a-z]+|doesn't [a-z]+)\b|(?:you|i|we)(?:'d|'ll)? (?:shut|stop|bin|scrap|change|replace|renew|throw|send|call|walk|quit|strip|reject|refuse|start (?:again|over)|go home)\b)/i
const HEAD = /^ ?(?:and |but |so |or |now )?$/i
const TO_CLAUSE =
  /(?:^|[^\w])(?:,|and|so|then)? ?(?:it|that|there|you|i|we|they|the|this|those)(?:'s|'re|'ll|'d)?\b|^ \w+s\b/i

/**
 * @param ahead the words before a one-sided limit, in its sentence
 * @param said the limit's own words
 * @param after the words after it, to the end of the sentence
 * @returns whether what lies beyond is told as an event with something following from it, and nothing is asked for or
 * praised: `any cell more than 0.05 off the rest, top it up`
 */
export const isEventTold = (ahead: string, said: string, after: string): boolean => {
  const clause = /[^,;]*$/.exec(ahead)?.[0] ?? ''
  if (LET.test(clause) && PASSES.test(said) && AND.test(after) && !PRAISE.test(after)) return true
  const isOpened = TELLS.test(ahead) || (ANYTHING.test(said) && HEAD.test(clause))
  const isWorse = WORSE.test(said) && HEAD.test(clause) && TO_CLAUSE.test(after)
  const isBeyond =
    BEYOND.test(said) && HEAD.test(clause) && (AND_IT.test(after) || IT_IS.test(after) || DOES.test(after))
  if (!(isOpened || isWorse || isBeyond) || !/\w/.test(after)) return false
  return !(ASKED.test(clause) || ASKED.test(after) || PRAISE.test(`${clause} ${after}`))
}

/** `it stalls if you go below five hundred`: what comes of it, told first. */
const HARM_FIRST =
  /\b(?:stalls?|seizes?|overheats?|melts?|cracks?|burns?(?: out| up)?|blows?(?: up| out)?|bursts?|floods?|leaks?|slips?|strips?|snaps?|breaks?|trips?|cuts? out|goes (?:wrong|bad|off)|dies|boils?|smokes?|jams?|rattles?|chatters?|starves?|warps?|fails?|tears?|wears? out|gives up|ruins?|kills?|wrecks?|spoils?)\b[^.;?!]{0,24}\b(?:if|when|whenever|once)\b(?: [\w']+){1,7} ?$/i

/** @returns whether the words before a limit tell the harm that comes of what is beyond it */
export const isHarmTold = (ahead: string): boolean => HARM_FIRST.test(ahead)
