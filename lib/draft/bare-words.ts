/** `back in three`, `inside thirty`. */
export const IN_TIME = /\b(?:in|inside|within|after|by)(?: about| under| only| just)? $/i
/** `at thirty`, after a time: something else. */
export const AT = /\b(?:at|to)(?: about| around)? $/i
export const IN_TIME_SAID = /^(?:inside|within)\b/i
export const ENDS = /^(?:[,.;?!]|$| (?:or|and|flat|max)\b)/i

/** Units that a bare number can take over from one said before. */
export const INHERITED = new Set([
  'torque',
  'length',
  'pressure',
  'temperature',
  'voltage',
  'current',
  'resistance',
  'speed',
  'volume',
  'mass',
])

/** What a figure that nothing tells of may be, as long before as it was said. */
export const RECALLED = new Set([...INHERITED].filter(of => of !== 'mass' && of !== 'volume' && of !== 'torque'))
export const RECALLED_OR_TORQUE = new Set([...RECALLED, 'torque'])
export const FASTENED =
  /\b(?:tight\w*|nip\w*|pull\w*|wrench\w*|click\w*|bolts?|nuts?|screws?|studs?|clamps?|caps?|pins?|plugs?|torque\w*|cross|star)\b/i
export const INHERITED_OR_TURN = new Set([...INHERITED, 'angle', 'turn'])
/** What another source tells anew, which may be how long or how often too. */
export const TOLD_ANEW = new Set([...INHERITED_OR_TURN, 'time', 'interval', 'share'])
/** How long something takes or how often it is due is told otherwise by up to so many times. Common practice, no source. */
export const NEAR_TIME = 2.1

export const FRACTION = /\b(?:half|third|quarter|fifth|sixth|eighth)s?\b|\d\/\d/i
export const RULER = /\b(?:sixteenth|thirty-second|sixty-fourth)s?\b|\/(?:16|32|64)\b/i
/** What joins a second figure to the one before it: `every six months, or three`, `ten minutes, fifteen when it's damp`. */
export const ALSO = /\b(?:or|rather|make it)(?: every| about| only| just)? $/i
export const ALSO_COMMA = /, (?:and |but |maybe |or )?$/i
export const ALSO_WHEN = /^ (?:if|when|where) (?:it's|it is|you|they|the|there|that|she|he)\b/i
export const TIMES = new Set(['time', 'interval'])
export const TURNED =
  /\b(?:turn\w*|screw\w*|back(?:ed)? (?:it |them )?off|touch\w*|contact|hand[- ]?tight|finger[- ]?tight|snug|clockwise|nut|slacken\w*|undo)\b/i

/** `then a quarter back`. */
export const TURNED_AFTER = /^ (?:more|back|further|past|tighter|looser|backwards?)\b/i

/** Lengths of another order than what is set on a bench. */
export const AFAR = new Set(['m', 'km', '[mi_i]', '[ft_i]'])

/** Said in passing by those who count in metric units. */
export const IMPERIAL = new Set(['[in_i]', '[ft_i]', '[psi]', '[ft_i].[lbf_av]', '[in_i].[lbf_av]', '[degF]'])

/** Nothing in a shop is set to fewer degrees than this without a word for them. Common practice, no source. */
export const LEAST_HEAT = 5

/** `count to thirty`, `a slow count of twenty`. */
export const COUNTED_TO = /\bcount(?:ing|ed|s)?(?: slowly| out| up)?(?: to| of| off)?(?: about| around| maybe)? $/i
/** `every six months, and the belt every two`. */
export const EVERY =
  /\b(?:every|each|(?:again|next|then|it's|is) (?:at|after|in)|it's(?: more like)?|more like every)(?: about| around)? $/i
export const EVERY_WORD = /\b(?:every|each)(?: about| around)? $/i
export const EVERY_REACH = 2
/** Takes back what was said just before, so that what follows is of the same. */
export const AMENDS =
  /(?:,|^| )(?:no|nah|nope|sorry|wait|excuse me|hang on|hold on|i mean|correction|i tell a lie|scratch that|what am i (?:saying|talking about))\b[^.;?!]{0,60}$/i
/** Units of how often something is done. */
export const RECURS = new Set(['d', 'wk', 'mo', 'a', 'km', '[mi_i]'])
/** Nothing is done every so many days, months or years. */
export const LEAST_FAR = 1000
export const DRIVEN =
  /\b(?:ride|rides|riding|drive|driven|road|oil|brakes?|tyres?|tires?|belt|chain|car|bike|truck|trailer|engine|service|miles|kilomet\w+|inspect\w*|look|rivers?)\b/i

/** What turns at hundreds or thousands of revs. */
export const TURNS =
  /\b(?:engine|motor|idl(?:e|es|ed|ing)|throttle|revs?|revving|rpm|pto|shaft|spindle|blade|rotor|drum|fan|governor|tick ?over|flat out|wide open)\b/i
export const IDLES = /\b(?:idl(?:e|es|ed|ing)|revs?|tick ?over)\b/i
/** Nothing else is set to so many without a unit near what turns. Common practice, no source. */
export const LEAST_REVS = 300

/** `run it at five hundred`. */
export const RUN_AT =
  /\b(?:run|runs|running|spin|spins|spinning|rev|revs|idles?|idling)(?: (?:it|her|him|them|the \w+))?(?: [a-z]+){0,4} (?:at|up to|to|around|about) $/i

/** Figures this fine are lengths where nothing else is named: `0.05`, `two tenths`, `five hundredths`. Common practice, no source. */
export const FINE_SAID = /\b(?:tenths?|hundredths?|thousandths?)\b/i
export const FINE_FIGURE = /(?:^|[^\d])0?\.\d\d+/
/** Inches have three decimals or more: `.030`. */
export const FINE_INCHES = /(?:^|[^\d])0?\.\d{3}/
/** Inches in decimals are no coarser than this. */
export const LEAST_COARSE = 0.26

/** Sentences for which a unit told without a figure holds. */
export const DECLARED_REACH = 8

export const PERCENT = /%|\bper ?cent\b/i
export const POUNDS = /\bpounds?\b/i
/** What pounds may be of, by what is measured. */
export const POUNDS_OF: Readonly<Record<string, string>> = {
  torque: '[ft_i].[lbf_av]',
  pressure: '[psi]',
  mass: '[lb_av]',
}
export const OF_POUNDS = new Set(Object.values(POUNDS_OF))

/** `0.3 to 0.8 between pin and jaw`, `within 25 of centre`: how far apart. */
export const BETWEEN = /^ (?:between (?:the )?[a-z]+(?: [a-z]+)? and|of (?:the )?(?:cent(?:re|er)|middle|edge)) ?\b/i

/** What is told by a figure without a unit. */
export const UNITLESS =
  /\bp ?h\b|\b(?:specific gravity|hydrometer|shore|rockwell|octane|parts (?:per|of the|in a) million|ppm)\b/i
/** Nothing else bare is told below nought in a shop. Common practice, no source. */
export const BELOW_ZERO = /\bminus (?!or\b)|^-\d/i

/** What stands every so far along something. */
export const SPACED =
  /\b(?:battens?|joists?|stakes?|pegs?|nails?|screws?|studs?|posts?|straps?|ties|clips?|holes?|tacks?|staples?|rivets?|brackets?|hangers?|supports?|hooks?|pins?|stitch\w*)\b/i

/** What is measured new and worn is mostly a length. */
export const WORN_FROM_NEW =
  /\b(?:(?:when|while) (?:it|they|she|he|one)(?:'s|'re| is| are| was| were)? (?:new|born|fresh)|(?:is|are|was|were|from|as) (?:brand )?new|new (?:is|are|they|it|one)\b|when new)\b/i
