/** Calls for care at the head of a clause. */
const OPENS =
  /(?:^|[.,;!?]\s*|\b(?:and|but|so|now|oh|please|just|again|here|because)\s+)(?:(?:be|be very|be really|very|real) careful|careful|take care|(?:watch|look|mind) out|watch (?:it|yourself|yourselves)|mind yoursel(?:f|ves)|beware|heads up|warning|caution|danger|attention|(?:watch|mind) (?:the|this|that|these|those|your|them|how)\b)/i
/** What a thing is or does that hurts whoever is near. "Mind your head" alone is a courtesy. */
const PERIL =
  /\bunder (?:(?:a lot of|lots of|full|some|heavy|great|spring|constant) )?(?:tension|pressure|load|compression)\b|\b(?:razor|very|dead|bloody|really|wicked|pretty|properly)?[- ]?sharp\b|\b(?:is|are|'s|'re|be|gets?|stays?|still|very|red|piping|really|boiling|damn|bloody)\b (?:\w+ )?(?:hot|scalding|boiling|live|loaded|charged|heavy|slippery|pressuri[sz]ed|energi[sz]ed|toxic|corrosive|caustic|poisonous|flammable|explosive|unstable|spring-loaded)\b|\bspring[- ]loaded\b|\b(?:razor[- ]sharp|scalding|red[- ]hot|high voltage|stored (?:energy|pressure)|loaded spring|live (?:wires?|terminals?|parts?|mains|busbars?)|moving parts?|pinch points?|hot (?:oil|water|steam|metal|surfaces?|parts?))\b|\b(?:it|that|they|this|these|which|spring|blade|lid|door|belt|chain|fan|rotor)(?:'ll| will| can| could| may| might)? (?:bites?|pinch(?:es)?|kicks?|snaps?|jumps?|swings?|drops?|falls?|burns?|scalds?|cuts?|whips?|shoots?|flies|fly)\b|\b(?:acid|caustic|bleach|ammonia|chlorine|sharp edges?|hot surface|fumes|asbestos)\b/i

/** @returns whether a text calls for care and tells what would hurt: "careful, the spring is under tension" */
export const isWarning = (text: string): boolean => {
  const said = text.replaceAll('’', "'")
  const opener = OPENS.exec(said)
  return opener !== null && PERIL.test(said.slice(opener.index))
}
