/**
 * Letters to sounds for words the dictionary lacks (names, trade words), longest spelling first. A guess that is good
 * enough to find a word's place and length. Phones as in the CMU dictionary. From memory, no source.
 */
const RULES: readonly (readonly [string, string])[] = [
  ['tion', 'SH AH N'],
  ['sion', 'ZH AH N'],
  ['ough', 'AO'],
  ['augh', 'AO'],
  ['eigh', 'EY'],
  ['igh', 'AY'],
  ['tch', 'CH'],
  ['dge', 'JH'],
  ['sch', 'SH'],
  ['eau', 'OW'],
  ['air', 'EH R'],
  ['ear', 'IH R'],
  ['eer', 'IH R'],
  ['oor', 'AO R'],
  ['our', 'AW ER'],
  ['ch', 'CH'],
  ['sh', 'SH'],
  ['th', 'TH'],
  ['ph', 'F'],
  ['wh', 'W'],
  ['ck', 'K'],
  ['ng', 'NG'],
  ['qu', 'K W'],
  ['kn', 'N'],
  ['wr', 'R'],
  ['gh', 'G'],
  ['ee', 'IY'],
  ['ea', 'IY'],
  ['oo', 'UW'],
  ['ou', 'AW'],
  ['ow', 'OW'],
  ['oi', 'OY'],
  ['oy', 'OY'],
  ['ai', 'EY'],
  ['ay', 'EY'],
  ['au', 'AO'],
  ['aw', 'AO'],
  ['ie', 'IY'],
  ['ei', 'IY'],
  ['ew', 'UW'],
  ['ue', 'UW'],
  ['oa', 'OW'],
  ['ar', 'AA R'],
  ['er', 'ER'],
  ['ir', 'ER'],
  ['ur', 'ER'],
  ['or', 'AO R'],
  ['bb', 'B'],
  ['dd', 'D'],
  ['ff', 'F'],
  ['gg', 'G'],
  ['ll', 'L'],
  ['mm', 'M'],
  ['nn', 'N'],
  ['pp', 'P'],
  ['rr', 'R'],
  ['ss', 'S'],
  ['tt', 'T'],
  ['zz', 'Z'],
  ['ce', 'S'],
  ['ci', 'S IH'],
  ['cy', 'S IY'],
  ['a', 'AE'],
  ['b', 'B'],
  ['c', 'K'],
  ['d', 'D'],
  ['e', 'EH'],
  ['f', 'F'],
  ['g', 'G'],
  ['h', 'HH'],
  ['i', 'IH'],
  ['j', 'JH'],
  ['k', 'K'],
  ['l', 'L'],
  ['m', 'M'],
  ['n', 'N'],
  ['o', 'AA'],
  ['p', 'P'],
  ['q', 'K'],
  ['r', 'R'],
  ['s', 'S'],
  ['t', 'T'],
  ['u', 'AH'],
  ['v', 'V'],
  ['w', 'W'],
  ['x', 'K S'],
  ['y', 'IY'],
  ['z', 'Z'],
]

/** Names of the letters, for what is spelled out: abbreviations and words without a vowel. */
const LETTERS: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    a: 'EY',
    b: 'B IY',
    c: 'S IY',
    d: 'D IY',
    e: 'IY',
    f: 'EH F',
    g: 'JH IY',
    h: 'EY CH',
    i: 'AY',
    j: 'JH EY',
    k: 'K EY',
    l: 'EH L',
    m: 'EH M',
    n: 'EH N',
    o: 'OW',
    p: 'P IY',
    q: 'K Y UW',
    r: 'AA R',
    s: 'EH S',
    t: 'T IY',
    u: 'Y UW',
    v: 'V IY',
    w: 'D AH B AH L Y UW',
    x: 'EH K S',
    y: 'W AY',
    z: 'Z IY',
  },
  null,
)

/**
 * A guess at how a word is said.
 *
 * @param word lower-case letters and apostrophes
 * @returns phones of the CMU set, separated by spaces; never empty
 */
export const guessPronunciation = (word: string): string => {
  const letters = word.replace(/[^a-z]/g, '')
  if (letters === '') return 'AH'
  if (!/[aeiouy]/.test(letters)) return [...letters].map(letter => LETTERS[letter]).join(' ')
  const phones: string[] = []
  // A silent e at the end makes the vowel before it long; close enough without.
  const body = letters.length > 3 && /[^aeiou]e$/.test(letters) ? letters.slice(0, -1) : letters
  for (let at = 0; at < body.length; ) {
    const rule = RULES.find(([spelling]) => body.startsWith(spelling, at))
    phones.push(rule?.[1] ?? 'AH')
    at += rule?.[0].length ?? 1
  }
  return phones.join(' ')
}
