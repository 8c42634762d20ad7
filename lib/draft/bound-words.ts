/** Alternatives of one pattern, each a row. */
const anyOf = (...rows: readonly string[]): RegExp => new RegExp(`(?:${rows.join('|')})`, 'i')

/** Words of numbers as a pattern's alternatives, from one up. */
export const NUMBERS = 'one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\w+teen|\\w+ty'
/** A word that begins another figure: `at least two of them` bounds the figure after it. */
const NEXT = `(?! (?:an?|half|${NUMBERS}|\\w+ty-\\w+)\\b)`
/** Where words of a bound stand for themselves: `or under load` bounds nothing. */
const ENDS = '(?=$|[,.;]| (?:is|are|and|but|at|in|for|if|before|when)\\b)'
const IS = "(?:is|are|was|'s|would be|'d be)"
const WHOSE = '(?:the|my|your|our|his|their|its)'

/** Said after a figure, it is the most. @source common practice, no source */
export const MOST_AFTER = anyOf(
  `^ (?:[a-z]+ ){1,3}or (?:anything )?(?:less|under|below|lower)\\b${ENDS}`,
  '^,? or (?:anything )?(?:less|under|below|quicker|faster|closer|tighter|lower|cooler|colder|smaller|thinner|shorter)\\b(?! (?:or|it|he|she|they|you|the)\\b)',
  `^,? (?:the |as |an? )?(?:absolute |very |bare )?(?:maximal|maximum|max|ceiling)\\b${NEXT}(?! (?:of )?$)`,
  '^[^.;?!]{0,30}(?:,|\\band\\b|\\bbut\\b) ?any (?:more|further|farther|higher|longer|wider|deeper|bigger|hotter|faster|looser)\\b(?! questions)',
  `^[^.;?!]{0,36}(?:,|\\band\\b|\\bbut\\b|^) ?(?:anything )?(?:over|above|past|beyond|(?:more|higher|longer|wider|hotter|deeper) than) that\\b,?(?! (?:is|'s|are) (?:fine|ok|okay|good|better|even))`,
  "^[^,]{0,30},? (?:that's |and that's |it's )?over the odds\\b",
  // `and there I draw the line`, `I'd rather you went under than over`.
  "^[^.;?!]{0,30},? (?:and )?(?:there|that's where|that is where|here)(?:'s where)? (?:i|we)(?:'d)? (?:draw the line|stop|quit)\\b",
  '^[^.;?!]{0,24}\\brather\\b[^.;?!]{0,20}\\b(?:under|below|less|low|short) than (?:over|above|more|high|long)\\b',
  // `more is scrap`, `more and the door swings`, `and if it's more`.
  `^[^.;?!]{0,30}, (?:and |but )?(?:if (?:it's|it is|there's) )?(?:any )?more(?: than that)?(?:,| is\\b| and\\b| means\\b)(?! (?:fine|ok|okay|good|better|even|nice|always|no harm|welcome|than enough))`,
  "^[^,]{0,30}(?:,|\\band|\\bbut) ?(?:and |but |that's |it's )?(?:by )?(?:no|not|never)(?: no| one| any| (?:one|an?|a single)(?: \\w+){1,2})? (?:more|further|farther|higher|longer|over|wider|deeper|bigger|beyond|hotter|faster|thicker|past)\\b(?! often| than(?! that\\b))",
  `^[^,]{0,30},? (?:and )?(?:tops\\b|at (?:the )?(?:very |absolute )?(?:most|utmost|uttermost|outside|longest|highest|hottest|furthest|farthest|widest|latest|worst|slowest|max(?:imum)?)\\b${NEXT})`,
  `^[^,]{0,30},? (?:and )?at a (?:push|pinch|stretch)\\b`,
  `^[^,]{0,30},? (?:and |which |but |so )?(?:that ?)?(?:is|'s|are) (?:about )?${WHOSE} (?:absolute |very |own |upper |top )?(?:limit|max(?:imum)?|ceiling|most|lot|cut-?off)\\b`,
  "^'s (?:my|the) limit\\b",
  "^[^.;?!]{0,30}(?:,|\\band\\b|\\bbut\\b|^) ?(?:and |but )?(?:that's|that is|it's) (?:about )?(?:all|your lot|the lot|the end of it|far enough|(?:being )?generous|pushing it|stretching it)(?:$|[,.;]| (?:for|with|i|you|we)\\b)",
  "^[^,]{0,24}\\b(?:is|are|'s),? (?:[a-z ,]{0,16})?(?:no crime|allowed|permitted|permissible|tolerable|tolerated|acceptable|allowable)\\b",
  `^[^,]{0,40}\\b${IS} (?:about |just )?as (?:much|many|far|wide|hot|deep|high|long|big|large|thick|fast|loose|slack|hard|heavy|rough|late|tall|hard|bad) as (?:i|you|we|it|they|that|any|he|she|the|an?)\\b`,
  '^[^,]{0,24}, as (?:far|deep|high|wide|hot|much) as (?:i|we)\\b',
  "^ (?:out )?and i(?:'ll| will|'d| would) (?:let it|live with)",
  "^[^,]{0,20}\\bi(?:'ll| will|'d| would)? (?:allow|tolerate|accept|can live with|put up with|forgive|overlook|let (?:go|pass|slide))\\b",
  `^[^,]{0,24}\\b${IS} all (?:(?:of )?the (?:[a-z-]+ ){1,3})?(?:you|it|they|he|she|i|we|that(?: \\w+)?|this(?: \\w+)?|the \\w+|there)(?:'ll| will| can|'d| would|'re| are|'s| is)? (?:ever |be )?(?:get|gets|have|has|allowed|permitted|stand|stands|bear|bears|tolerate|allow|allows|accept|give|grant|let)\\b`,
  `^[^,]{0,24}\\b${IS} (?:about )?${WHOSE} (?:very )?(?:hottest|highest|longest|widest|deepest|farthest|furthest|loosest|fastest|heaviest|biggest|largest|thickest|tallest|roughest|greatest|upper)\\b`,
  `^,? (?:and |but )?(?:anything )?(?:higher|more|over|above|beyond|further|longer|hotter|wider|faster|tighter|deeper)(?: than)?(?: that| it)? (?:is|are|isn't|'s|won't|will|would|does|doesn't) [^,.;]{0,20}(?:not|n't|no\\b|never|too|wrong|forbidden|trouble|bad|damage|out\\b|allowed)`,
  `^,? (?:and |but )?(?:better|rather|preferably|ideally) (?:a (?:bit|little|touch) )?(?:less|lower|shorter|under|smaller|cooler)\\b`,
  `^,? (?:and |but )?(?:less|lower|shorter|smaller|cooler|under)(?:(?:'s| is| would be) (?:even |always |still )?better|(?: if|,? even)\\b)`,
  "^[^.;?!]{0,48}, (?:and |but )?(?:it |that |they )?(?:must|should|may|can)(?:n't| not) be (?:any )?(?:more|longer|higher|bigger|wider|over|deeper)\\b",
  '^,? (?:and )?not (?:a|one|an) (?:whisker|hair|drop|tick|fraction|jot|click|gram|shade|bit|inch|notch|degree|second|thou|scrap|smidge|touch|crumb) (?:over|more|past|beyond|above|further|longer|higher|worse|wider|hotter)\\b',
  "^[^,]{0,20}\\b(?:is|'s|would be|'d be) (?:far |way |already |getting )?(?:a lot(?: already)?|plenty already|too (?:much|many|far|hot|high|wide|deep|loose|slack|long|big|fast|thick))\\b",
  `^[^,.;]{0,30}(?:,| so| and| but)* (?:so |and |keep it |stay |it's |be )*(?:at or (?:below|under)|under|below|(?:no|not|never|nothing) (?:more than|over|above|past|beyond|higher than)|(?:don't|do not|never) (?:go |let it go )?(?:over|past|above|beyond)) that\\b`,
)
/** `two millimetres passes, three doesn't`: the figure that doesn't tells which end the first is. */
export const OTHER_FAILS = new RegExp(
  `^[^,.;]{0,36} (?:passes|is (?:fine|ok|okay|all right|good)|will do|goes|lives|stays), (?:but )?(${NUMBERS}|an?)(?: [a-z]+)? (?:doesn't|isn't|won't|don't|is (?:not|too)|i don't|i won't|no)\\b`,
  'i',
)
/** Said after a figure, it is the least. */
export const LEAST_AFTER = anyOf(
  `^ (?:[a-z]+ ){1,3}or (?:anything )?(?:more|over|above|better|higher|thicker)\\b${ENDS}`,
  '^[^,]{0,30},? (?:and )?if not (?:more|longer|higher|better|deeper|thicker|later)\\b',
  `^[^.;?!]{0,30}, (?:and |but )?(?:if (?:it's|it is|there's) )?(?:any )?less(?: than that)?(?:,| is\\b| and\\b| means\\b)(?! (?:fine|ok|okay|good|better|even|nice|always|no harm|welcome|than enough))`,
  '^,? or (?:anything )?(?:longer|more|over|above|better|higher|thicker|warmer|hotter|bigger|wider|deeper|stronger|heavier|later|taller|stiffer|up)\\b(?! (?:less|it|he|she|they|you|the)\\b)',
  '^[^.;?!]{0,24}\\brather\\b[^.;?!]{0,20}\\b(?:over|above|more|high|long) than (?:under|below|less|low|short)\\b',
  '^,? (?:and|or|on) (?:up|upwards?|above)\\b(?! (?:to|the|it|and)\\b)',
  '^[^,]{0,24},? (?:anyhow|easy|easily)(?:$|[,.;])',
  `^[^,]{0,24}\\b${IS} (?:about )?${WHOSE} (?:very )?(?:thinnest|lowest|smallest|shortest|coldest|slowest|tightest|narrowest|lightest|shallowest|coolest|fewest|lower)\\b`,
  `^,? (?:and |but )?(?:better|rather|preferably|ideally) (?:a (?:bit|little|touch|shade) )?(?:more|longer|higher|over|bigger|thicker|warmer|later)\\b`,
  `^[^,.;]{0,24},? (?:and |but )?(?:more|longer|higher|bigger|thicker|over)(?:(?:'s| is| are| would be) (?:even |always |still )?(?:better|nice|nicer|fine|good|okay|welcome)| (?:if|when)\\b| in (?:the )?(?:winter|cold|frost|damp)\\b|(?: won't| does no| doesn't| never) (?:hurt|harm|bother|matter|worry|trouble|upset)\\w*)`,
  "^[^,]{0,30},? (?:and |so |but )?[^.;?!]{0,40}\\b(?:can't|cannot|mustn't|must not|can not|not|never|won't)\\b[^,.;]{0,24}\\banything (?:less|lower|smaller|thinner|shorter|weaker|under|below)\\b",
  '^,? (?:and )?not (?:a|one|an) (?:whisker|hair|drop|tick|fraction|jot|click|gram|shade|bit|inch|notch|degree|second|thou) (?:less|under|below|shorter|lower|short)\\b',
  `^[^,]{0,30},? (?:and )?(?:i mean,? |i'd say |that's )?(?:at (?:the )?(?:very |bare |absolute )?(?:least|shortest|lowest|nearest|closest|thinnest|earliest|quickest|soonest|minimum)\\b${NEXT}|(?:bare |absolute )?minimum\\b)`,
  `^[^,]{0,36}(?:,|\\band\\b|\\bbut\\b) (?:and |but )?(?:no|not|never|nothing|any)(?: any| an?(?: \\w+){1,2})? (?:less|sooner|shorter|lower|smaller|under|nearer|closer|earlier|thinner|below)\\b${NEXT}(?! than (?:an?|half|${NUMBERS}|\\w+ty-\\w+)\\b)`,
  "^[^.;?!]{0,48}, (?:and |but )?(?:it |that |they )?(?:must|should|may|can)(?:n't| not) be (?:any )?(?:less|shorter|lower|smaller|thinner|sooner|under)\\b",
  `^[^.;?!]{0,36}(?:,|\\band\\b|\\bbut\\b) ?(?:anything )?(?:under|below|(?:less|lower|shorter|thinner|fewer) than) that\\b,?(?! (?:is|'s|are) (?:fine|ok|okay|good|better|even))`,
  "^[^.;?!]{0,30}(?:,|\\band\\b|\\bbut\\b)[^,.;]{0,16}\\b(?:don't|do not|never|not|nobody|no one|nothing)\\b[^,.;]{0,20}\\b(?:before|sooner than|earlier than|until) (?:that|then)\\b",
  '^[^,]{0,36}, or (?:more|over|better|higher|longer)\\b',
  `^[^,]{0,40}\\b${IS} (?:about |just )?as (?:thin|short|low|little|small|shallow|narrow|few|slow|cold|cool|near|close|tight) as (?:i|you|we|it|they|that|any|he|she|the)\\b`,
  '^[^,]{0,24}, as (?:thin|short|low|little|near|close) as (?:i|you|we|it|they)\\b(?! (?:can|could|possibly)\\b)',
  `^[^,]{0,30},? (?:and |which |but |so )?(?:that ?)?(?:is|'s|are) (?:about )?${WHOSE} (?:absolute |very |bare )?(?:minimum|least|floor|bottom line)\\b`,
  "^[^,]{0,20}\\b(?:is|'s|would be|'d be) (?:far |way |already |getting )?too (?:little|few|thin|low|short|shallow|near|close|cold|tight)\\b",
  `^[^,.;]{0,30}(?:,| so| and| but)* (?:so |and |keep it |stay |it's |be |i give it |i'd give it |give it |you give it )*(?:at or (?:above|over)|(?:keep (?:it|them)|stay|stays|be|always|anywhere|somewhere) (?:over|above)|(?:no|not|never|nothing) (?:less than|under|below|lower than)|(?:don't|do not|never) (?:go |let it go )?(?:under|below)) that\\b`,
  `^[^.;?!]{0,40}\\b(?:not|never|no|\\w+n't)\\b(?: [a-z']+){0,3}? (?:any )?(?:thinner|less|lower|shorter|smaller|narrower|closer|nearer|cooler|colder|weaker|lighter|fewer) than (?:that|this)\\b`,
)

/** `the minimum thickness is stamped on it, 22`. */
export const END_NAMED =
  /\b(minimum|maximum)(?: (?!is|are|of|at|stamped|printed|cast)[a-z]+)?(?: (?:is|'s|are|of|at|stamped|printed|marked|cast)\b[^.;\d]{0,30})? ?$/i
/** Words between such a name and a figure that make it a reading. */
export const READ_OFF = /\b(?:find|found|got|have|measured?|mine|ours|we're|i'm)\b/i
/** `it's got thirty seconds to build pressure`. */
export const HAS = /\b(?:has|have|gets?|\w+'s got|\w+'ve)(?: got)?(?: about| only)? $/i
export const TO_DO = /^ (?:to (?!(?:the|a|an|one|two|each|every|go)\b)[a-z]+|before (?:it|they|she|he|the|that|you))\b/i
/** `don't touch it for twelve hours`: it may be left longer. */
export const LEAVE_FOR =
  /\b(?:don't|do not|never|nobody|no one|can't|mustn't)\b[^.,;\d]{0,16}\b(?:open|touch|crack|move|disturb|walk|use|ride|load|lift|peek|drive|go near|handle|step|turn it on|switch it on|close|wet)\w*\b[^.,;\d]{0,24}\bfor(?: at least| about)?(?: an?)? $/i
/** `never run it for an hour with the lid off`: the way is refused, not the time asked for. */
export const IN_A_WAY = /^ (?:with|without|at a time|at once|on end|straight|flat out)\b/i
/** `leave twenty millimetres poking out or the collar won't bite`: more does no harm. */
export const LEAVES =
  /(?<!\b(?:never|not|don't|can't|mustn't) )\b(?:leave|allow|needs?|wants?|want|need|keep(?![^.,;]* (?:at|to) $))\b[^.,;\d]{0,30}$/i
export const OR_SHORT =
  /^[^.;?!]{0,36}?,? (?:or|otherwise|else|or else) (?:it|they|she|he|you|the [a-z]+(?: [a-z]+)?)(?:'ll| will| won't| can't| doesn't| don't| just| simply|(?<=\bit|\bshe|\bhe) [a-z]+s)\b/i
/** `if it can't make seven bar`, `it has to see sixty, or it survives`. */
export const CANNOT_REACH =
  /\b(?:can't|cannot|won't|doesn't|isn't able to|fails to|couldn't)(?: even)? (?:make|reach|build|hold|manage|get(?: up)? to|give|pull|hit|see|show)(?: about| around)? $/i
export const MUST_REACH =
  /\b(?:has to|have to|must|needs? to|got to)(?: \w+)? (?:see|reach|hit|make|get(?: up)? to|read|show|give|hold|pull|lift|carry|deliver|put out|bear)(?: about| around)? $/i
export const OR_ELSE = /^[^.;?!]{0,24}?,? (?:or(?! (?:so|more|less|better|a|an|two|three)\b)|otherwise|else|if not)\b/i
/** `it has to see seventy before anyone eats it`. */
export const BEFORE_AFTER = /^,? before (?:you|it|they|he|she|i|we|any\w*|the|that)\b/i
/** `unless it shows 12.6 volts`. */
export const UNLESS_REACHED =
  /\bunless (?:it|they|she|he|that|the \w+)(?: \w+)? (?:shows?|reads?|makes?|reach(?:es)?|gets? to|holds?|has|sees?|gives?)(?: about| around)? $/i
/** `it must have stopped by eight seconds`, `it's only good for an hour`, `after an hour it's dead`. */
export const DONE_BY =
  /\b(?:should|must|has to|have to|ought to|needs? to)\b[^.;\d]{0,30}\b(?:stopped|still|dead|off|gone|out|done|finished|settled|at rest|closed|open)\b(?: \w+)? (?:by|after|in|within)(?: about| around)? $/i
export const GOOD_FOR = /\b(?:good|usable|workable|fresh) for(?: about| around| only| maybe)? $/i
export const AFTER_BEFORE = /(?:^|[,;]|\b(?:and|but|so)\b) ?after(?: about| around)? $/i
/** `it must have been off for an hour`. */
export const HAVE_BEEN =
  /\b(?:must|has to|have to|should|needs? to|wants? to|ought to) have been [a-z]+(?: [a-z]+)? for(?: about| at least)? $/i
/** `once there's three millimetres left on them`. */
export const LEFT_AFTER = /^(?: of (?:the )?[a-z]+)?(?: [a-z]+)? left\b/i
/** `at six millimetres they go in the bin`. */
export const AT_BEFORE = /(?:^|[,;]|\b(?:and|but|so|then)\b) ?at(?: about| around)? $/i
/** `twelve millimetres of sag and I'm reaching for the tensioner`. */
export const ACTED_ON = /^ of [a-z ]{2,20}?,? and (?:i'm|you're|we're|it's|she's) [a-z]+ing\b/i
/** `I'd stop at forty`. */
export const STOPS_BEFORE =
  /\b(?:i|we|you|they)(?:'d| would) (?:stop|quit|draw the line|call it a day) at(?: about| around)? $/i
/** `anything from one megohm up`. */
export const FROM = /\bfrom\b/i
export const UPWARDS = /^,? (?:up|upwards?|onwards?|on up)\b(?! (?:to|the|it|and)\b)/i
/** People kept this far off: the least. */
export const AWAY = /\b(?:keeps?|stands?|stays?|step|back|held|kept)\b[^.;\d]{0,40}$/i
export const AWAY_AFTER = /^,? (?:off|away|back|clear|from)\b/i
export const CLEAR_AFTER = /^ (?:clear|away) (?:of|from)\b/i
export const CLEAR = /\b(?:sits?|hangs?|runs?|lies?|is|are|stays?)\b[^.;\d]{0,30}$/i
/** Said before a figure, it is the most. */
export const MOST_BEFORE =
  /\b(?:(?:mustn't|shouldn't|can't|must not|should not|may not|won't let it|don't let it|isn't to|is not to|not to) (?:\w+ )?(?:drop|lose|fall|rise|climb|move|vary|drift|sag|creep|leak|change|differ|wander|go down|go up|come down|come up)(?: [a-z]+){0,3}? (?:by|as much as)(?: as much as| more than)?|(?:ceiling|upper limit|top limit|red line)(?:'s| is| of)(?: at)?|allow(?:s|ed|ing)?(?: you| us| me)?|let(?:s|ting)? (?:you|us|me) (?:have|get away with)(?: up to)?|get(?:s|ting)? away with|tolerates?|tolerance|permits?|permitted|(?:can|may|might|could) (?:be (?:out|off|crooked|bent|bowed)|differ|vary|deviate|drift|stray|wander|lose|drop|sag|sink|creep|leak|lean|wobble|swing|rock)(?: [a-z ]{0,30}?)?(?: by)?|(?:live|put up) with|forgives?(?: (?:it|them|her|you))?|inside of|before [a-z ]{2,24} reach(?:es)?|(?:should(?:n't| not)|must(?:n't| not)|may not|cannot|can't) (?:pass|exceed|reach)|older than|\b(?:agrees?|match(?:es)?) to|\b(?:is|are|be|it's|they're|run|runs|lie|lies|stays?)(?: all| dead)? (?:true|flat|square|parallel|level|round|straight)(?: with each other)? to|\b(?:can't|cannot|won't|don't|doesn't|mustn't) [a-z]+(?: [a-z]+)? but|safe working load(?: is|'s| of)?|rated to)[^,.;\d]{0,24}$/i
/** `the longest you may hold it is five seconds`. */
export const MOST_IS =
  /\bthe (?:very |absolute )?(?:most|highest|hottest|longest|widest|deepest|farthest|furthest|loosest|fastest|biggest|largest|thickest|greatest) (?:[a-z]+ ){0,2}?(?:you|i|we|it|they|that|one|this|these|he|she)\b[^,.;\d]{0,30}(?:is|'s|are|be)(?: about| around| just)? $/i
export const LEAST_IS =
  /\bthe (?:very |absolute )?(?:least|lowest|thinnest|smallest|shortest|tightest|narrowest|coldest|slowest|fewest) (?:[a-z]+ ){0,2}?(?:you|i|we|it|they|that|one|this|these|he|she)\b[^,.;\d]{0,30}(?:is|'s|are|be)(?: about| around| just)? $/i
/** `a bend no tighter than`: the radius is the least. */
export const TIGHTER = /\b(?:tighter|sharper) (?:[a-z]+ ){0,2}?than\b(?:[^,.;]|\.\d){0,30}$/i
export const BENDS =
  /\b(?:bends?|bent|bending|radius|radii|curves?|curved|loops?|coil\w*|corner|turns?|kinks?|elbows?|sweep)\b/i
/** `it should hold for a good minute`: what something must last, it may last longer. */
export const LASTS =
  /\b(?:should|must|has to|have to|ought to|wants? to|needs? to)\b[^,.;]{0,24}\b(?:hold|last|stay|spin|coast|keep|burn|ring|swing|stand|float|go on|run on|carry on)\w*(?: on| up| still| dry| lit| spinning| going| turning| burning)?(?: for)? ?$/i
/** `good down to four`. */
export const STILL_GOOD =
  /\b(?:good|fine|okay|ok|usable|serviceable|safe|works?|runs?|lives?|lasts?|legal)\b[^.;\d]{0,24}\b(?:down to|as low as)(?: about| around)? $/i
export const AS_LOW =
  /\b(?:go|get|run|drop|take it|bring it) (?:down )?as (?:low|thin|short|little|small) as(?: about| around)? $/i
/** `don't touch it before an hour is up`. */
export const NOT_BEFORE_IT =
  /\b(?:not|never|nothing|nobody|don't|do not|can't|mustn't|won't)\b[^.;\d]{0,40}\bbefore (?:it|they|she|he|you|the \w+)(?:'s|'re|'ve| is| are| has| have| gets?| got| reach\w*| shows?| reads?| says?)?(?: \w+)?(?: to)? ?$/i
/** `twenty-four volts or you've got a bad cell`. */
export const OR_FAULT = /^,? or (?:you've|it's|there's|something's|you have|it has|she's|they're)\b/i
/** `good until eight`. */
export const GOOD_UNTIL =
  /\b(?:good|fine|okay|ok|usable|serviceable|safe|legal)\b[^.;\d]{0,16}\b(?:until|till?)(?: about| around)? $/i
export const NOT_BEFORE =
  /\b(?:not|never|nothing|nobody|don't|do not|can't|mustn't|won't)\b[^.;\d]{0,40}\bbefore(?: the| a| an)? ?$/i
export const IS_OVER = /^ (?:is|are|has|have|were|was)? ?(?:over|up|gone|passed|out|done|been)\b/i
/** `you should not get a sixteenth in anywhere`. */
export const GOES_NOT_IN =
  /\b(?:shouldn't|should not|mustn't|must not|can't|cannot|couldn't|oughtn't to|not be able to) (?:be able to )?(?:get|slide|slip|fit|push|poke) (?:more than )?(?:an? |even an? )?$/i
export const IN_AFTER = /^ (?:in|into|under|between|through|anywhere)\b/i
/** `six is where I stop`, `one point six is the law`. */
export const STOPS_AT =
  /^[^,.;]{0,16} is (?:the (?:law|legal limit|legal minimum)(?= (?:on|for|here|in|and|so)\b|$|[,.;])|(?:about )?(?:where|when) (?:i|we|you|they|it)(?:'d|'ll| would| will)? (?:stop|stops|quit|(?:start to )?(?:fret|worry|complain|frown)|draw|give up|call|bin|change|replace|scrap|retire))/i
/** `once it passes 25`. */
export const PASSES_BEFORE =
  /\b(?:pass(?:es|ed)?|exceed(?:s|ed)?|reach(?:es|ed)?|hits?|sees?|gets? to|is up to|(?:grown|stretched|sagged|opened(?: up)?|moved|dropped|spread|thinned|shrunk|worn) by)(?: about| around)? $/i
export const LIMIT_BEFORE = /\b(?:limit(?:'s| is| was| of|)|discard (?:at|limit))[^,.;\d]{0,22}$/i
/** `four mil of lift and they're due`. */
export const DUE_AFTER =
  /^[^,.;]{0,32},? and (?:it|they|he|she|that)(?:'s|'re| is| are) (?:due|done|out|scrap|scrapped|retired|binned|junk|history|toast|condemned|finished|worn|for the (?:bin|scrap|skip))\b(?! (?:below|under|over|above|at|past|by)\b)/i
export const CHANGED_AT =
  /\b(?:change|renew|replace|scrap|bin|swap|retire|discard)(?:s|d|ed|ned)?(?: it| them| the \w+)?(?: out)? at (?:about |around )?$/i
/** `once they're down to three`, `when it has stretched to twelve`: where a thing is renewed. */
export const DOWN_TO =
  /\b(?:down to|worn to|wears? to|drops? to|drop(?:s|ped)? to|falls? to|thinned to|thins? to)(?: about| around| just| only)? ?$/i
export const GROWN_TO =
  /\b(?:stretche[sd] to|opens? (?:up )?to|grows? to|gets? out to|climbs? to|rises? to|wears? out to)(?: about| around| just)? ?$/i
export const RENEWED =
  /\b(?:chang\w+|renew\w*|replac\w+|scrap\w*|bin|binned|swap\w*|retire\w*|discard\w*|new (?:one|set|pair|\w+s)|fit new|they're done|it's done|had (?:it|enough)|finished|time for|chuck|throw)\b/i

/** What gets thinner, shorter or lower in use: its limit is a least value. */
export const WEARS =
  /\b(?:wear(?:s|ing)?|worn|new|brush(?:es)?|lining|linings|pads?|discs?|disks?|rotors?|tread|shoes?|thickness|thick|rollers?|pins?|facing|friction|teeth|depth left|blocks?|plates?|soles?|liners?|knife|knives|blades?)\b/i
/** What gets wider, longer or looser in use. */
export const GROWS =
  /\b(?:play|gap|slack|stretch\w*|runout|run-out|clearance|bend|bent|out|wobble|wobbles|swing\w*|sway|shake|float|backlash|error|difference|apart|elongation|sag|bow|drop|leak\w*|drips?|loss|creep|lift|drift\w*|vibration|noise|twist|warp\w*)\b/i
/** `you won't get it off until it's up at sixty`. */
export const NOT_UNTIL =
  /\b(?:not|never|nothing|nobody|don't|do not|can't|mustn't|won't)\b[^.;\d]{0,40}\b(?:until|till?) (?:it|they|she|he|you|the \w+)(?:'s|'re|'ve| is| are| has| have)?(?: \w+)? (?:at|up to|to|reached|over|above|had)(?: about| around| at least)?(?: an?)? $/i
/** `there's got to be two inches over it or it sucks air`. */
export const THERE_MUST =
  /\bthere(?:'s| has| must| should| needs| have| ought)?(?: \w+)? (?:got to|gotta|to|must|should)? ?(?:be|stay)(?: about| around)? $/i
