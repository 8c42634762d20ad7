import { DISPOSAL } from '@/lib/trade/waste'
import { onceForText } from './memo'

/** Verbs that carry something away. */
const AWAY =
  /^(?:[a-z]+ly,? )?(?:take|put|hand|return|dispose|recycle|bin|throw|place|drop|pour|tip|empty|store|keep|bring|carry|deliver|collect|send|leave|transfer|wrap|give|discard|scrap|sort|bag|decant|dump|lift|pull|move|hang|stow|save|pass|ship|post|label|seal|sweep|shovel|lay|haul|cart|drag|truck|sling|chuck|toss|lob|fling|ditch|shove|stuff|pop|get rid|cure|fold|roll|neutrali[sz]e|leave|hand over|donate|sell|trade)\b/i
/** What is done with. */
const SPENT =
  /\b(?:old|used|spent|waste|worn|worn-out|dirty|oily|soaked|greasy|contaminated|drained|dead|empty|broken|leftover|surplus|bagged|boxed|wrapped|spilt|spilled)\b/i
/** Where it goes for good; a pan or a bucket under the drain only catches. */
const GOES =
  /\b(?:in|into|to|with|at|for)\b[^.;]*\b(?:box|bin|(?:waste|trash|rubbish|garbage|refuse|biohazard|sharps|yellow|red|disposal) bag|drum|container|skip|canister|jar|store|storage|collection|recycl\w*|depot|waste|trash|rubbish|dealer|supplier|point|site|yard|scrap|council|landfill|cabinet|sharpening|remanufactur\w*|core|sluice|sink|gully|sewer|toilet|gravel|lawn|yard|hardcore|flower ?bed|pail with a lid|sack|dumpster|tip|compost|landfill|transfer station|dustbin|wheelie ?bin)\b/i
const TAKEN = /\b(?:off|out|from|back)\b/i

/**
 * @returns whether a step gets rid of what is left over, so that it neither drains, nor takes apart, nor puts together: waste
 *   named as such, or something old put where waste goes.
 */
export const isDisposing = onceForText(
  (text: string): boolean =>
    AWAY.test(text) && (DISPOSAL.test(text) || (SPENT.test(text) && GOES.test(text) && !TAKEN.test(text))),
)
