import { DISPOSAL } from '@/lib/trade/waste'
import { withoutLeadIn } from './instructing'
import { onceForText } from './memo'

/** Verbs that carry something away. */
const AWAY =
  /^(?:[a-z]+ly,? )?(?:take|put|hand|return|dispose|recycle|bin|throw|place|drop|pour|tip|empty|store|keep|bring|carry|deliver|collect|send|leave|transfer|wrap|give|discard|scrap|sort|bag|decant|dump|lift|pull|move|hang|stow|pack|box|crate|save|pass|ship|post|label|seal|sweep|shovel|lay|haul|cart|drag|truck|sling|chuck|toss|lob|fling|ditch|shove|stuff|pop|get rid|cure|fold|roll|neutrali[sz]e|leave|hand over|donate|sell|trade|cart off|clear away)\b/i
/** "Coil the old rope and put it in the scrap". */
const THEN_AWAY =
  /^(?:coil|tape|tie|wrap|fold|roll|cut|drain|empty|crush|flatten|rinse|dry)\b[^.;]*\b(?:and|then) (?:put|take|throw|drop|hand|send|bin|give|carry|bring|return)\b (?:it|them|the|that)\b/i
/** What is done with. */
const SPENT =
  /\b(?:old|used|spent|waste|worn|worn-out|dirty|oily|soaked|greasy|contaminated|drained|dead|empty|broken|leftover|full|spoilt|(?:cleaner|rinse|rinsing|wash|washing|bowl|flush|flushing|descaler|soapy) water|left over|left-over|surplus|bagged|boxed|wrapped|spilt|spilled|blunt|dull|frayed|blown|torn|split(?! (?:pin|ring|washer|collar|bush|rim|nut|key|case|link|bearing|shaft|sleeve|clamp|loom|conduit|charge))|bent(?![- ]nose)|exhausted|flattened|expired|rest of the|scrap|greasy|rinsed|failed|burnt|cracked|perished|washy|sooty|swept|soot|ash(?:es)?|swarf|sludge|debris|offcuts|shavings|clippings|trimmings|lint|grit|(?:solvent|paint|resin|alcohol|ink|oil|grease|fuel|coolant) (?:rags?|cloths?|wipes?|towels?|waste|paper|swabs?|granules|pads?))\b/i
/** Where it goes for good; a pan or a bucket under the drain only catches. */
const GOES =
  /\b(?:in|into|to|with|at|for|down)\b[^.;]*\b(?:foul (?:drain|sewer)|box|bin|(?:waste|trash|rubbish|garbage|refuse|biohazard|sharps|yellow|red|disposal) bag|drum|container|skip|canister|jar|store|storage|collection|recycl\w*|depot|waste|trash|rubbish|dealer|supplier|point|site|yard|collectors?|contractors?|recyclers?|merchants?|refiners?|reclaimers?|carriers?|renderers?|re-?grind\w*|re-?sharpen\w*|re-?tread\w*|rebuild\w*|exchange|(?:oil|bottle|battery) bank|amnesty|pallet|carton|crate|cage|electronics \w+|(?:lidded|closed|labelled|labeled|marked|sealed|waste|steel|metal|red|oily|spent|dirty) (?:\w+ )?(?:can|tin|bucket|crate|caddy)|general waste|be (?:ground|sharpened|rebuilt|recycled)|municipal|household|scrap|council|landfill|cabinet|sharpening|remanufactur\w*|core|sluice|sink|gully|sewer|toilet|gravel|lawn|yard|hardcore|flower ?bed|pail with a lid|sack|dumpster|drop-?off|(?:licensed|gas|bottle) fillers?|tip|compost|landfill|transfer station|dustbin|wheelie ?bin)\b|\bon(?:to)? the (?:scrap|compost|rubbish|waste|metal (?:pile|heap))\b/i
const TAKEN = /\b(?:off|out|from|back(?! to the (?:dealer|supplier|shop|maker|store|depot|merchant)\b))\b/i

/**
 * @returns whether a step gets rid of what is left over, so that it neither drains, nor takes apart, nor puts together: waste
 *   named as such, or something old put where waste goes.
 */
export const isDisposing = onceForText(
  (text: string): boolean =>
    (AWAY.test(text) || THEN_AWAY.test(text)) &&
    (DISPOSAL.test(text) || (SPENT.test(text) && GOES.test(text) && !TAKEN.test(text))),
)

/** "The old oil goes in the drum": told of the thing rather than ordered. */
const IS_TAKEN =
  /\b(?:go(?:es)?|went|is put|are put|is taken|are taken|gets? (?:put|taken|binned|bagged|boxed|swept)|stays?|off|back)\b/i

/** @returns whether a sentence of the talk says where something spent goes. */
export const tellsDisposal = onceForText(
  (text: string): boolean =>
    !/\?|\bcustomer\b/.test(text) &&
    SPENT.test(text) &&
    (isDisposing(withoutLeadIn(text)) ||
      (IS_TAKEN.test(text) && /\b(?:in|into|to|with)\b/i.test(text) && WASTE_PLACE.test(text))),
)
const WASTE_PLACE =
  /\b(?:bins?|(?:waste|oily|oil|scrap|red|yellow|dust|spent|grease) (?:drum|can|tin|box|bag|bucket|container|skip|pallet)|drum|skip|dumpster|tip|recycl\w*|collect(?:or|ion|ors)|contractors?|depot|dealer|scrap\w*|oil bank|bank|amnesty|trash|rubbish|garbage|general waste|hazardous \w+|council|landfill|compost|merchant)\b/i
