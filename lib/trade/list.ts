/**
 * A word list from readable text: entries separated by commas or line ends, `//` starts a comment, blanks around an
 * entry don't matter.
 *
 * @returns the entries in lower case, in their order, each once
 */
export const wordList = (text: string): readonly string[] => [
  ...new Set(
    text
      .split('\n')
      .flatMap(line => (line.split('//')[0] ?? '').split(','))
      .map(entry => entry.trim().toLowerCase())
      .filter(entry => entry !== ''),
  ),
]

/** @returns the words of a text, parted by blanks or line ends, each once */
export const wordSet = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/).filter(word => word !== ''))
