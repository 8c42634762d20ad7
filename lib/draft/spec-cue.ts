import { isCondemned } from './condemned'

/** How a figure is put, by the words just before and after it: the name of a cue and what shows it. @source common practice, no source */
const BEFORE: readonly (readonly [string, RegExp])[] = [
  [
    'set',
    /\b(?:set|sets|dial|turn|blow|pump|charge|fill|wind|heat|warm|torque|tighten|bring|inflate|pull|do|run|take|put|adjust|gap|shim|trim|cut|wait|hold|leave|give|let|keep|go)\b[^.,;]{0,30}$/i,
  ],
  [
    'wants',
    /\b(?:gets?|wants?|needs?|likes?|calls? for|asks? for|should|ought to|must|has to|have to|got to|gotta|supposed to|meant to|wants to|needs to|looking for|we're after|you're after|you want|i want|i like|aim for)\b[^.,;]{0,30}$/i,
  ],
  ['be', /\b(?:is|are|'s|'re|be)(?: about| around| just| only)? $/i],
  [
    'reading',
    /\b(?:i've got|i have|i get|i got|i see|i read|i'm at|i'm on|we're at|showing|came to|came up|comes out at|here is|here's|mine(?:'s| is)?|this one(?:'s| is)?|that one(?:'s| is)?|it's got|says on|now it's|it read|measured)\b[^.;]{0,24}$/i,
  ],
  [
    'past',
    /\b(?:was|were|had|did|took|came|went|gave|lost|held|lasted|found|used to|bought|paid|drove|spent|sat)\b[^.;]{0,30}$/i,
  ],
  ['would', /\b(?:would|'d|could|might|may)\b[^.,;]{0,24}$/i],
  ['if', /\b(?:if|unless|when|once|until|till|before)\b[^.,;]{0,36}$/i],
  ['not', /\b(?:no|not|never|don't|doesn't|won't|can't|shouldn't|mustn't|isn't|ain't|without)\b[^.,;]{0,30}$/i],
  ['made-of', /\b(?:got|has|have|with|there's|there are|comes with|a pair of|a set of|made of|by)\b[^.,;]{0,12}$/i],
  ['clock', /\b(?:since|by|at|till|until|about|past|to) $/i],
  [
    'other',
    /\b(?:other|others|old|older|last|another|next door|neighbou?r\w*|brother|sister|mate|uncle|dad|grand\w*|the car|the van|the truck|used to|back when|years ago|yesterday|this morning|last (?:week|month|year|time)|some|most|people|folks|fellas|them that)\b[^.;]{0,48}$/i,
  ],
  ['away', /\b(?:drive|drove|miles?|road|town|from here|up the|down the|walk|away|haul)\b[^.;]{0,30}$/i],
  ['every', /\bevery $|\bonce an? $|\beach $/i],
  [
    'of-a-pair',
    /\b(?:left|right|front|rear|back|other|inner|outer|top|bottom|upper|lower|big|small|first|second|third|last|next|near|far)(?: (?:one|ones|side|sides|leg|hand|end|pair|two))?(?:'s|,| gets?| takes?| wants?| is| has| needs?| likes?| to| at)+ (?:about |only |just )?$/i,
  ],
  [
    'ruin',
    /\b(?:dead|gone|ruined|finished|fails?|dies|worn|shot|rots?|rusts?|burns?|lasts?|lives?|back|leaks?)(?: \w+){0,2} (?:in|within|inside|after|for) (?:about |under )?$/i,
  ],
  [
    'made-in',
    /\b(?:made|built|did|done|fixed|finished|learnt|learned|sold|ready|here|home|there)(?: \w+){0,3} in (?:about |under |less than )?$/i,
  ],
  [
    'moved',
    /\b(?:drive|drove|roll|ride|back and forth|forward and back|forwards?|backwards?|reverse|walk|push (?:it|her|him)|pace|along|down the|across the|round the)\b[^.;]{0,24}$/i,
  ],
  ['must-not', /\b(?:mustn't|shouldn't|must not|should not|can't|cannot|may not|don't want|never)\b[^.,;]{0,24}$/i],
  ['after', /\bafter(?: the| about| first| another)* ?$/i],
  ['in', /\b(?:in|inside|within)(?: about| under)? $/i],
  ['for', /\bfor(?: about| a| at least| another| up to)? ?$/i],
]

const AFTER: readonly (readonly [string, RegExp])[] = [
  ['closes', /^[,.;?!]|^$/],
  ['of', /^ of (?:a |the |an )?\w+/i],
  ['verb', /^ (?:to|before|and then|then|so|until|till)\b/i],
  [
    'theirs',
    /^(?:'s| is| was|,? that's|,? that was)(?: for)? (?:the|my|his|her|their|your|an? other|on the other|what i|from)\b/i,
  ],
  ['thing', /^[ -](?!of|and|or|to|for|in|on|at|is|are|if|so|but|when|then|each|with|from|before|after|per)[a-z]{3,}/i],
  ['past', /^ (?:ago|old|later|earlier|back|before (?:it|i|they|he|she) \w+ed)\b|^[ -](?:year|month|week|day)-old\b/i],
  ['or-dies', /^[^.;]{0,16},? (?:or|else|otherwise) (?:it|you|they|the|he|she)(?:'s|'ll|'re|'d)?\b/i],
  ['because', /^[^.;]{0,16},? (?:because|since|as|so that|so the|so it|so you)\b/i],
  [
    'trade',
    /^ (?:of|in|on|up|doing|with) (?!(?:the )?(?:oil|water|clean|cold|hot|play|slack))(?:\w+ ){0,1}\w+(?:s|ing|ness|job|game|trade)\b/i,
  ],
  [
    'off',
    /^ (?:off|away|up the road|down the road|from here|ago|of (?:rope|string|wire|road|track|garden|hose|cable|pipe|cord|tape))\b/i,
  ],
  ['apiece', /^ (?:each|apiece|per|a (?:pop|piece|go|time|side|corner))\b/i],
]

/** What a whole sentence is like, as far as it bears on its figures. */
const SENTENCE: readonly (readonly [string, RegExp])[] = [
  [
    'money',
    /\b(?:quid|dollars?|bucks?|pounds? (?:each|apiece|a pop)|price\w*|costs?|bill|invoice|ticket|paid|cheap\w*|dear|pence|cents?|euros?)\b|[£$€]/i,
  ],
  [
    'harm',
    /\b(?:skin|scald\w*|kill\w*|blind\w*|finger off|hand off|burn(?:s|t|ed)? you|hurt\w*|hospital|through you)\b/i,
  ],
  [
    'story',
    /\b(?:i once|there was a|when i was|used to|back in|years ago|i've seen|i knew|my (?:dad|mum|mom|father|brother|sister|uncle|neighbou?r|mate|boss|old)|a (?:boy|fella|fellow|lad|bloke|guy|customer))\b/i,
  ],
  ['mine', /\bmy (?!rule|limit|figure|number|advice|target)\w+|\bours?\b|\bmine\b/i],
  ['this-one', /\b(?:this one|that one|here|now|today|these ones|yours)\b/i],
  [
    'fault',
    /\b(?:if|when) (?:it|they|you|the|that|there)\b[^.;]*\b(?:then|means|it's|they're|you've|replace|change|bin|scrap|new)\b/i,
  ],
  ['asks', /\?/],
  [
    'instrument',
    /\b(?:meter|multimeter|voltmeter|ammeter|clamp|infra-?red|thermometer|probe|tacho\w*|gauge|dial|feelers?|cal+ipers?|micrometer|torque wrench|ruler|tape|straight-?edge|scales?|stopwatch|needle|read(?:s|ing)?)\b/i,
  ],
  [
    'from-memory',
    /\b(?:from (?:my head|memory)|if i remember|i believe|i think|i reckon|off the top|i wanna say|i want to say|as i recall|don't quote me)\b/i,
  ],
  [
    'told-by',
    /\b(?:book|manual|sheet|chart|sticker|label|plate|nameplate|leaflet|decal|sidewall|card|handbook|instructions?|recommends?)\b/i,
  ],
  [
    'due',
    /\b(?:change|check|clean|service|replace|grease|oil|inspect|do it|look at|again|recheck|retorque|re-torque|wash|test)\w*\b/i,
  ],
]

const WINDOW = 64

/**
 * Cues of how the figure at [at, to) of a sentence is put, for the model that weighs limits.
 *
 * @param shape range, least, most, nominal or qualitative
 */
export const cuesOf = (text: string, at: number, to: number, shape: string): readonly string[] => {
  const ahead = /[^.;?!]*$/.exec(text.slice(Math.max(0, at - WINDOW), at))?.[0] ?? ''
  const after = text.slice(to, to + WINDOW)
  const cues = [
    ...BEFORE.flatMap(([name, pattern]) => (pattern.test(ahead) ? [`ahead:${name}`] : [])),
    ...AFTER.flatMap(([name, pattern]) => (pattern.test(after) ? [`after:${name}`] : [])),
    ...SENTENCE.flatMap(([name, pattern]) => (pattern.test(text) ? [`all:${name}`] : [])),
  ]
  if (ahead.trim() === '') cues.push('ahead:nothing')
  else if (/[,:] ?$/.test(ahead)) cues.push('ahead:comma')
  if (
    (shape === 'least' || shape === 'most') &&
    isCondemned(`${ahead}${text.slice(at, to)}${/^[^.;?!]*/.exec(after)?.[0] ?? ''}`)
  )
    cues.push('near:condemned')
  const whole = text.length - (to - at) < 16 ? ['alone'] : []
  return [...cues, ...cues.map(name => `${shape}+${name}`), ...whole]
}

const QUALITIES: readonly (readonly [string, RegExp])[] = [
  ['by-hand', /\b(?:hand|finger|thumb|wrist)/i],
  ['to-a-click', /\b(?:click|detent|stop|shoulder|bead|step)/i],
  ['to-a-mark', /\b(?:line|mark|notch|arrow|dot|window|min|max|full mark)/i],
  ['snug', /\b(?:snug|nip|pinch|tight)/i],
  ['in-line', /\b(?:flush|level|even|parallel|square|in line|cent)/i],
  ['part-full', /\b(?:half|third|quarter|full|brim|rim)/i],
  ['alike', /\b(?:same|equal|alike)/i],
  ['no-play', /\b(?:no|nothing|without|zero)\b/i],
  ['drag', /\b(?:drag|rub|resist|friction|nudge|touch|kiss)/i],
  ['weeps', /\b(?:weep|dribbl|trickl|spill|hole|runs?|comes?|drip|ooz|flow|shows?)/i],
  ['only', /\b(?:only|just|alone|nothing but)\b/i],
  ['coloured', /\b(?:red|green|yellow|white|orange)\b/i],
]

/** What is done to reach a limit without a number. @source common practice, no source */
const DOINGS: readonly (readonly [string, RegExp])[] = [
  ['filled', /\b(?:fill\w*|top(?:ped)? (?:it |them )?(?:up|off)|pour\w*|level|oil|fluid|coolant|water|pump|grease)\b/i],
  [
    'pressed',
    /\b(?:press\w*|tap\w*|push\w*|driv\w+|drift\w*|knock\w*|hammer\w*|seat\w*|sits?|stands?|sink|sunk|edge|file)\b/i,
  ],
  [
    'screwed',
    /\b(?:tight\w*|screw\w*|nuts?|bolts?|cap|plug|axle|ring|close\w*|spin|wind|run (?:it|them|the)|bring it|take it up|snug\w*|knobs?|clamps?|unions?)\b/i,
  ],
  ['done', /\b(?:tighten\w*|screw\w*|cap|plug|nut|bolts?|on|up|back|close\w*|set|bring|run|spin|do)\b/i],
  ['read', /\b(?:needle|pointer|gauge|dial|read\w*|shows?|light|lamp|float|glass|window|dipstick|stick)\b/i],
]
const LEADS: readonly (readonly [string, RegExp])[] = [
  ['until', /\b(?:until|till?|so that|so it|so they)\b[^,.;]*$/i],
  ['must', /\b(?:must|should|has to|have to|wants? to|needs? to|ought to|is to|'s to|are to)\b[^,.;]{0,24}$/i],
  ['if', /\b(?:if|when|once|where)\b[^,.;]*$/i],
  ['not', /\b(?:not|never|isn't|don't|doesn't|won't|can't)\b[^,.;]{0,20}$/i],
]
/** What ends it there: `and stop`, `and no more`, `leave the spanner`. */
const ENDED =
  /^,? (?:and (?:that's|then) (?:it|all|enough)|and (?:you )?stop|and no\b|no\b|not\b|and not\b|then stop|leave\b|and leave|that's (?:it|all|enough|plenty)|all (?:the way )?(?:round|around))/i

/**
 * What sort of limit without a number a phrase is, and how it is led up to.
 *
 * @param said the phrase, at `at` in its sentence
 */
export const qualityCues = (said: string, text: string, at: number): readonly string[] => {
  const kinds = QUALITIES.flatMap(([name, pattern]) => (pattern.test(said) ? [`quality-of:${name}`] : []))
  const lead = `${text.slice(Math.max(0, at - WINDOW), at)}${/^(?:until|till?|so)\b/i.test(said) ? 'until ' : ''}`
  const more = [
    ...DOINGS.flatMap(([name, pattern]) => (pattern.test(text) ? [name] : [])),
    ...LEADS.flatMap(([name, pattern]) => (pattern.test(lead) ? [`lead-${name}`] : [])),
    ...(ENDED.test(text.slice(at + said.length)) ? ['ended'] : []),
  ]
  return [
    ...kinds,
    ...more.map(name => `quality+${name}`),
    ...more.flatMap(name => kinds.map(kind => `${kind}+${name}`)),
  ]
}
