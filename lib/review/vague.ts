import { onceForText } from './memo'

/** Pointing words that need the picture. Common speech, no source. */
const VAGUE =
  /\b(?:(?:this|that|these|those|the) (?:(?:little|lil|big|small|black|brass|metal|round|other|wee|red|blue|white|long|short|square|old|plastic|rubber|shiny|silver) )*(?:guys?|fell(?:a|as|ow|ows|er|ers)|things?|thingy|thingies|bits?|bad boy|doohickey|doodad|gizmo|whatsit|jobb(?:y|ie)|dude|sucker|puppy|contraption|thingamajig|thingummy|chap|bugger|beast|gubbins|doings|bloke|one (?:here|there)|metal box|box (?:here|there|down here))|thingamajig|thingummy|doohickey|whatchamacallit|whatsit|gizmo|doodad|thingy|some (?:stuff|thing)|this here|(?:this|that) (?:over|down|up|in) (?:here|there))\b/i

/** @returns the words of a text that only point at a part; undefined where it names all it speaks of. */
export const vagueIn = onceForText((text: string): string | undefined => VAGUE.exec(text)?.[0])

/** What looks like it and names something. */
export const NOT_VAGUE =
  /\b(?:the (?:first|last|same|main|important|other|only) thing|(?:the|that) bits? (?:holder|set)|drill bits?|(?:this|that|the|these|those) (?:[\w-]+ )?bits? of|the right thing)\b/i
