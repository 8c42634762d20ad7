/**
 * Every match of a pattern in a text, in order. Does what `matchAll` does without a copy of the pattern for every text.
 *
 * @param pattern global; never matches nothing at all
 */
export const matchesOf = (text: string, pattern: RegExp): readonly RegExpExecArray[] => {
  const found: RegExpExecArray[] = []
  pattern.lastIndex = 0
  for (let match = pattern.exec(text); match !== null; match = pattern.exec(text)) found.push(match)
  return found
}
