import { onceForText } from './memo'

/** What people say for a part whose name they skip. Common speech, no source. */
const STAND_INS =
  'guys?|fell(?:a|as|ow|ows|er|ers)|things?|thingy|thingies|thingamajigs?|thingumm(?:y|ies|ybob)|bits?|bad boys?|doohickeys?|doodads?|gizmos?|gadgets?|whatsits?|whatnots?|jobb(?:y|ie|ies)|dudes?|suckers?|puppy|puppies|contraptions?|chaps?|buggers?|beggars?|beasts?|gubbins|doings|blokes?'
/** Those that are parts or people as well, unless a hand points at them. */
const POINTED_AT =
  'lads?|lass(?:es)?|rascals?|rogues?|devils?|beaut(?:y|ies)|bab(?:y|ies)|critters?|creatures?|monsters?|characters?|customers?|jokers?|geezers?|gents?|gentlem[ae]n|lumps?|blobs?|dingus|so-and-so'
/** Words before a stand-in that name nothing either. */
const LOOKS =
  'little|lil|big|small|tiny|wee|large|black|brass|metal|round|other|red|blue|white|green|yellow|grey|gray|orange|long|short|square|fat|thin|tall|old|new|dirty|filthy|disgusting|ugly|funny|odd|weird|plastic|rubber|steel|copper|wooden|glass|shiny|silver|golden|barrel|ring|button|pin|knob|spring|star|hook|first|second|next|last|two|three|four|stubborn|sneaky|naughty|poor|wobbly|pointy|curly|springy'
/** Pointing words that need the picture. */
const VAGUE = new RegExp(
  `\\b(?:(?:this|that|these|those|the) (?:(?:${LOOKS}) )*(?:${STAND_INS}|one (?:here|there)|(?<!scrap )metal box(?! for\b)|box (?:here|there|down here))|(?:this|that|these|those) (?:(?:${LOOKS}) )*(?:${POINTED_AT})|(?:yer|yon|your) man (?:here|there)|(?:this|that|these|those) (?:[a-z-]+ )?(?:here|there)(?= (?:has|have|is|are|and|till|until|with|while|out|off|up|down|back|in|a)\\b|[.,;]|$)|thingamajig|thingumm(?:y|ybob)|doohickey|whatchamacallit|whatsit|gizmo|doodad|thingy|some (?:stuff|thing)|this here|(?:this|that) (?:over|down|up|in) (?:here|there))\\b`,
  'i',
)

/** @returns the words of a text that only point at a part; undefined where it names all it speaks of. */
export const vagueIn = onceForText((text: string): string | undefined => VAGUE.exec(text)?.[0])

/** What looks like it and names something. */
export const NOT_VAGUE =
  /\b(?:the (?:first|last|same|main|important|other|only) thing|(?:the|that) bits? (?:holder|set)|drill bits?|(?:this|that|the|these|those) (?:[\w-]+ )?bits? of|the right thing|(?:the|that) (?:best|worst|funny|odd|big|whole|real|only|next|last) thing|that there|that out there|(?:this|that|these|those) (?:time|day|job|week|year|side|way|end|point|room|shop)s? (?:here|there))\b/i
