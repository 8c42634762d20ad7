/** Alternatives of one pattern, each a row. */
const anyOf = (...rows: readonly string[]): RegExp => new RegExp(`(?:${rows.join('|')})`, 'i')

/** A word that begins another figure: `at least two of them` bounds the figure after it. */
const NEXT =
  '(?! (?:an?|half|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\w+teen|\\w+ty|\\w+ty-\\w+)\\b)'
const IS = "(?:is|are|was|'s|would be|'d be)"
const WHOSE = '(?:the|my|your|our|his|their|its)'

/** Said after a figure, it is the most. @source common practice, no source */
export const MOST_AFTER = anyOf(
  '^,? or (?:anything )?(?:less|under|below|quicker|faster|closer|tighter|lower|cooler|thinner|shorter)\\b(?! (?:or|it|he|she|they|you|the)\\b)',
  '^ (?:maximal|maximum|max)\\b',
  "^[^,]{0,30},? (?:that's |and that's |it's )?over the odds\\b",
  "^[^,]{0,30}(?:,|\\band|\\bbut) ?(?:and |but |that's |it's )?(?:by )?(?:no|not|never)(?: no| one| any| an?(?: \\w+){1,2})? (?:more|further|farther|higher|longer|over|wider|deeper|bigger|beyond|hotter|faster|thicker|past)\\b(?! often| than(?! that\\b))",
  `^[^,]{0,30},? (?:and )?(?:tops\\b|at (?:the )?(?:very |absolute )?(?:most|outside|max(?:imum)?)\\b${NEXT})`,
  `^[^,]{0,30},? (?:and )?at a (?:push|pinch|stretch)\\b`,
  `^[^,]{0,20},? (?:and |which |but )?(?:that ?)?(?:is|'s|are) (?:about )?${WHOSE} (?:absolute |very |own |upper |top )?(?:limit|max(?:imum)?|ceiling|most|lot|cut-?off)\\b`,
  "^'s (?:my|the) limit\\b",
  "^[^,]{0,24}\\b(?:is|are|'s),? (?:[a-z ,]{0,16})?(?:no crime|allowed|permitted|permissible|tolerable|tolerated|acceptable|allowable)\\b",
  `^[^,]{0,40}\\b${IS} (?:about |just )?as (?:much|many|far|wide|hot|deep|high|long|big|large|thick|fast|loose|slack|hard|heavy|rough|late|tall|hard|bad) as (?:i|you|we|it|they|that|any|he|she|the)\\b`,
  '^[^,]{0,24}, as (?:far|deep|high|wide|hot|much) as (?:i|we)\\b',
  "^ (?:out )?and i(?:'ll| will|'d| would) (?:let it|live with)",
  '^[^,]{0,20}\\bi (?:allow|tolerate|accept|can live with|put up with)\\b',
  `^[^,]{0,24}\\b${IS} all (?:(?:of )?the (?:[a-z-]+ ){1,3})?(?:you|it|they|he|she|i|we|that|there)(?:'ll| will| can|'d| would|'re| are|'s| is)? (?:ever |be )?(?:get|gets|have|has|allowed|permitted|stand|stands|bear|bears|tolerate|allow|allows|accept|give|grant|let)\\b`,
  `^[^,]{0,24}\\b${IS} (?:about )?${WHOSE} (?:very )?(?:hottest|highest|longest|widest|deepest|farthest|furthest|loosest|fastest|heaviest|biggest|largest|thickest|tallest|roughest|greatest|upper)\\b`,
  `^,? (?:and |but )?(?:anything )?(?:higher|more|over|above|beyond|further|longer|hotter|wider|faster|tighter|deeper)(?: than)?(?: that| it)? (?:is|are|isn't|'s|won't|will|would|does|doesn't) [^,.;]{0,20}(?:not|n't|no\\b|never|too|wrong|forbidden|trouble|bad|damage|out\\b|allowed)`,
  `^,? (?:and |but )?(?:better|rather|preferably|ideally) (?:a (?:bit|little|touch) )?(?:less|lower|shorter|under|smaller|cooler)\\b`,
  `^,? (?:and |but )?(?:less|lower|shorter|smaller|cooler|under)(?:(?:'s| is| would be) (?:even |always |still )?better|(?: if|,? even)\\b)`,
  '^,? (?:and )?not (?:a|one|an) (?:whisker|hair|drop|tick|fraction|jot|click|gram|shade|bit|inch|notch|degree|second|thou) (?:over|more|past|beyond|above|further|longer|higher)\\b',
  "^[^,]{0,20}\\b(?:is|'s|would be|'d be) (?:far |way |already |getting )?too (?:much|many|far|hot|high|wide|deep|loose|slack|long|big|fast|thick)\\b",
  `^[^,.;]{0,30}(?:,| so| and| but)* (?:so |and |keep it |stay |it's |be )*(?:at or (?:below|under)|under|below|(?:no|not|never|nothing) (?:more than|over|above|past|beyond|higher than)|(?:don't|do not|never) (?:go |let it go )?(?:over|past|above|beyond)) that\\b`,
)
/** Said after a figure, it is the least. */
export const LEAST_AFTER = anyOf(
  '^,? or (?:anything )?(?:longer|more|over|above|better|higher|thicker|up)\\b(?! (?:less|it|he|she|they|you|the)\\b)',
  '^,? (?:and|or|on) (?:up|upwards?|above)\\b(?! (?:to|the|it|and)\\b)',
  '^[^,]{0,24},? (?:anyhow|easy|easily)(?:$|[,.;])',
  `^[^,]{0,24}\\b${IS} (?:about )?${WHOSE} (?:very )?(?:thinnest|lowest|smallest|shortest|coldest|slowest|tightest|narrowest|lightest|shallowest|coolest|fewest|lower)\\b`,
  `^,? (?:and |but )?(?:better|rather|preferably|ideally) (?:a (?:bit|little|touch|shade) )?(?:more|longer|higher|over|bigger|thicker|warmer|later)\\b`,
  `^,? (?:and |but )?(?:more|longer|higher|bigger|thicker|over)(?:(?:'s| is| are| would be) (?:even |always |still )?better| (?:if|when) you\\b|(?: won't| does no| doesn't| never) (?:hurt|harm)\\w*)`,
  "^[^,]{0,30},? (?:and |so |but )?[^.;?!]{0,40}\\b(?:can't|cannot|mustn't|must not|can not|not|never|won't)\\b[^,.;]{0,24}\\banything (?:less|lower|smaller|thinner|shorter|weaker|under|below)\\b",
  '^,? (?:and )?not (?:a|one|an) (?:whisker|hair|drop|tick|fraction|jot|click|gram|shade|bit|inch|notch|degree|second|thou) (?:less|under|below|shorter|lower|short)\\b',
  `^[^,]{0,30},? (?:and )?(?:at (?:the )?(?:very |bare |absolute )?(?:least|minimum)\\b${NEXT}|(?:bare |absolute )?minimum\\b)`,
  '^[^,]{0,36}(?:,|\\band\\b|\\bbut\\b) (?:and |but )?(?:no|not|never|nothing|any)(?: any| an?(?: \\w+){1,2})? (?:less|sooner|shorter|lower|smaller|under|nearer|closer|earlier|thinner|below)\\b',
  '^[^,]{0,36}, or (?:more|over|better|higher|longer)\\b',
  `^[^,]{0,40}\\b${IS} (?:about |just )?as (?:thin|short|low|little|small|shallow|narrow|few|slow|cold|cool|near|close|tight) as (?:i|you|we|it|they|that|any|he|she|the)\\b`,
  '^[^,]{0,24}, as (?:thin|short|low|little|near|close) as (?:i|you|we|it|they)\\b',
  `^[^,]{0,20},? (?:and |which |but )?(?:that ?)?(?:is|'s|are) (?:about )?${WHOSE} (?:absolute |very |bare )?(?:minimum|least|floor)\\b`,
  "^[^,]{0,20}\\b(?:is|'s|would be|'d be) (?:far |way |already |getting )?too (?:little|few|thin|low|short|shallow|near|close|cold|tight)\\b",
  `^[^,.;]{0,30}(?:,| so| and| but)* (?:so |and |keep it |stay |it's |be )*(?:at or (?:above|over)|over|above|(?:no|not|never|nothing) (?:less than|under|below|lower than)|(?:don't|do not|never) (?:go |let it go )?(?:under|below)) that\\b`,
)
