/**
 * Speech about another time, machine or person, as far as its own words show it: its numbers are no limits here.
 *
 * @source common practice, no source
 */
const ASIDES: readonly RegExp[] = [
  // Another person or machine.
  /\b(?:my|his|her|our|their|a|your|that) (?:brother|mate|buddy|uncle|aunt|dad|daddy|father|mum|mom|mother|cousin|friend|neighbor|neighbour|sister|wife|husband|boss|granddad|grandad|grandfather|grandpa|brother-in-law|old (?:one|truck|car|bike|machine|shop|boss|house|rig|man)|other (?:one|bike|car|truck|machine|printer|house|rig|saw)|dirt bike|last one|first (?:one|shop|job|year|car))\b/i,
  /\b(?:mate|buddy|friend|guy|fella|lad|lady|man|woman|kid|apprentice|trainee|customer|client|bloke|chap|fellow|somebody|dude|fool|colleague)s? (?:of mine|once|i (?:know|knew|rode|worked)|at my|down the|last|who (?!sews|uses|runs|rides|drives|does)|did|ran|put|had|took|went|used|brought|tried|set|called|came)\b/i,
  /\b(?:theirs?|hers) (?:is|was|did|took|runs?|went)\b|\boff theirs\b/i,
  // What the speaker did, owns or saw once.
  /\bi (?:once|knew|know a|paid|bought|sold|got mine|spent|charge|ask|saw one|watched|did mine|ran mine|did the last|picked (?:this|it|one) up|had one|used to|remember|weigh|drove|only paid|gave|give (?:about )?\$|was (?:born|about|like|maybe|only)|have (?:been|personally|seen|had|owned|driven)|measured|wasted|burned|burnt|snapped|stripped|broke)\b/i,
  /\bi've (?:been|only (?:done|had)|had|seen|owned|got this since|driven|put|personally|done|broken|stripped|used)\b/i,
  /\b(?:we|they|he|she) (?:did|sold|bought|paid|charged?|once|used to|had a|were|spent|made|built|got|ran|drove|lost)\b/i,
  /\byou(?:'ve| have) (?:told|said|been|had|done)\b|\byou (?:told|said) (?:me|it)\b/i,
  /\b(?:mine|ours|yours) (?:did|was|does|had|got|runs?|reads?|landed|went|took|came|measured|is (?:at|about|on)|will|weighs|holds)\b/i,
  /\b(?:mine|ours)'s (?!to\b)/i,
  /\bi'm (?:on|at|seeing|getting|reading|only|about|nearly|down to) /i,
  /\bi (?:get|got|read|see|saw|have|had) (?:about |around |like |maybe |exactly |a good )?(?:\d|(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|\w+ty)\b)/i,
  // Another time.
  /\blast (?:week|month|year|winter|summer|spring|fall|autumn|night|time|job|one|monday|tuesday|wednesday|thursday|friday|saturday|sunday|christmas|season|owner|guy)\b/i,
  /\b(?:when i was|when i (?:started|bought|got)|back in (?:the|my|'?\d|nineteen|twenty)|(?:years?|months?|weeks?|days?|hours?|minutes?) ago|back when|the other day|yesterday|once upon|in my (?:first|last|younger)|this morning i)\b/i,
  /\btorque wrench (?:goes|reads|ranges|runs|covers|does|starts)\b/i,
  /\bsee (?:you|y'all|ya)\b|\bsubscribe\b/i,
  // What did not happen.
  /\b(?:suppose|say) (?:you|i|he|she|we|they|somebody)\b|\bif (?:you|i|he|she|we|they) (?:went|did|put|leaned|cranked|tried|took|ran|had|left|were)\b|\bwere (?:you|i|we) to\b/i,
  /\b(?:ignore that|don't email me|totally normal on that|that's another animal|different (?:bike|car|truck|animal|machine|story|job))\b/i,
  // Money, weight, nameplate.
  /\b(?:cost|costs|paid|priced?|worth|bucks|quid|dollars)\b.*\b(?:me|us|each|a pair|online|apiece)\b/i,
  /\b(?:weighs|weighed) (?:about |around |in at |like |maybe |a good |something like |nearly |close to )?/i,
  /\b(?:sold as|model|serial|made in|built in|bought (?:it|this|one)|dates? from|off the shelf for) /i,
  /\bi'll (?:buy|have|go get|grab) (?:you |myself |us )?(?:a|some)\b/i,
]

/** @returns whether a sentence speaks of something else than the job at hand */
export const isAside = (sentence: string): boolean => ASIDES.some(aside => aside.test(sentence))
