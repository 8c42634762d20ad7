/** Times that are a least or a greatest one by how the sentence goes on. @source common practice, no source */
const HIGH: readonly (readonly [ahead: RegExp, after: RegExp])[] = [
  // "Two minutes and the resin's gone off."
  [
    /$/,
    /^[^.;?!]{0,16},? and (?:it|they|she|he|that|the \w+)(?:'s| is| are| has|'ll be| will be)?(?: \w+)? (?:gone(?: off)?|set|hard|dead|cooked|burnt|ruined|solid|useless|too late|no good|dry|wasted)\b/i,
  ],
  // "Good till noon, four hours, after that bin it."
  [
    /$/,
    /^[^.;?!]{0,16},? (?:and |but )?after that (?:it's|it is|it'll|you'll|bin|throw|chuck|mix|they're|they|don't|no|the \w+(?:'s| is))\b(?! (?:can|may|will do))/i,
  ],
  // "If you're still cranking after a minute, stop."
  // "If it hasn't lit after twenty seconds, let go."
  [
    /\b(?:if|when)\b[^.;\d]{0,24}\b(?:hasn't|haven't|has not|isn't|aren't|doesn't|don't|won't|not)\b[^.;\d]{0,30}\b(?:after|in|within|inside|by)(?: about| around)? (?:an? )?$/i,
    /^/,
  ],
  [/\b(?:if|when)\b[^.;\d]{0,40}\bstill\b[^.;\d]{0,40}\bafter(?: about| around)? (?:an? )?$/i, /^/],
]
const LOW: readonly (readonly [ahead: RegExp, after: RegExp])[] = [
  // "It's a good twenty minutes before you can touch it", "Two days before anybody walks on it."
  [
    /(?:^|[.;] |\b(?:it's|it is|it'll be|that's|takes|so|and|well|right),? )(?:about |easily )?$/i,
    /^ before (?:you|anybody|anyone|it|they|the \w+|he|she|we|i)\b/i,
  ],
  // "Purge it five minutes, ten does no harm."
  [
    /$/,
    /^, (?:but |and )?[\w-]+(?: \w+)? (?:does|do|will do|won't do|never did|wouldn't) (?:it |them |her )?(?:no |any )?(?:harm|hurt)/i,
  ],
  // "Leave it overnight, or four hours if you really must."
  [
    /$/,
    /^,? if (?:you|you're|you are|it|time)(?: really| absolutely| just)? (?:can't|cannot|must|have to|in a (?:rush|hurry)|pushed|pressed|impatient|desperate|short of time|really|need it)/i,
  ],
  // "It should still be there after five minutes."
  [
    /\b(?:should|must|has to|have to|ought to|needs? to|wants? to)(?: \w+)? still\b[^.;\d]{0,30}\bafter(?: about| around)? $/i,
    /^/,
  ],
]

/**
 * @param ahead the words before a time, in its sentence
 * @param after the words after it
 * @returns which end of the time is told; undefined where neither is
 */
export const toldEnd = (ahead: string, after: string): 'low' | 'high' | undefined => {
  const holds = ([one, two]: readonly [RegExp, RegExp]): boolean => two.test(after) && one.test(ahead)
  return HIGH.some(holds) ? 'high' : LOW.some(holds) ? 'low' : undefined
}
