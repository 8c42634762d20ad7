const SMALL = (
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen ' +
  'eighteen nineteen'
).split(' ')
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety']

/** A whole number in words, as it is said. @param n at least 0; below a million spelled, above digit by digit */
export const spellNumber = (n: number): readonly string[] => {
  if (n < 20) return [SMALL[n] ?? '']
  if (n < 100) return [TENS[Math.floor(n / 10)] ?? '', ...(n % 10 === 0 ? [] : spellNumber(n % 10))]
  if (n < 1000)
    return [SMALL[Math.floor(n / 100)] ?? '', 'hundred', ...(n % 100 === 0 ? [] : ['and', ...spellNumber(n % 100)])]
  if (n < 1_000_000) {
    const rest = n % 1000
    return [...spellNumber(Math.floor(n / 1000)), 'thousand', ...(rest === 0 ? [] : spellNumber(rest))]
  }
  return [...String(n)].flatMap(digit => spellNumber(Number(digit)))
}

/** Units and signs glued to numbers in writing, as they are said. Common practice, no source. */
const SAID: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    mm: 'millimetres',
    cm: 'centimetres',
    m: 'metres',
    km: 'kilometres',
    kg: 'kilograms',
    g: 'grams',
    l: 'litres',
    ml: 'millilitres',
    nm: 'newton metres',
    rpm: 'r p m',
    psi: 'p s i',
    kpa: 'kilopascals',
    v: 'volts',
    a: 'amps',
    w: 'watts',
    h: 'hours',
    s: 'seconds',
    in: 'inch',
    ft: 'feet',
    '%': 'percent',
    '°': 'degrees',
    '°c': 'degrees celsius',
    '°f': 'degrees fahrenheit',
    '"': 'inch',
    '&': 'and',
    '+': 'plus',
    '±': 'plus or minus',
    '=': 'equals',
    '×': 'by',
    '½': 'half',
    '¼': 'quarter',
    '¾': 'three quarters',
  },
  null,
)

const spellDecimal = (text: string): readonly string[] => {
  const [whole = '', fraction] = text.replaceAll(',', '').split('.')
  const head = whole === '' ? [] : spellNumber(Number(whole))
  return fraction === undefined
    ? head
    : [...head, 'point', ...[...fraction].flatMap(digit => spellNumber(Number(digit)))]
}

/** Parts of a written word: numbers, letters (with apostrophes inside), signs that are said. */
const PARTS = /\d[\d,]*(?:\.\d+)?|\.\d+|\p{L}+(?:['’]\p{L}+)*|°[cf]?|[%"&+±=×½¼¾]/giu

/**
 * How a written word is said, as far as spelling goes: `1.2` is "one point two", `35Nm` "thirty five newton metres".
 *
 * @param written one word between spaces, with its punctuation
 * @returns lower-case words of letters and apostrophes; empty for punctuation alone
 */
export const sayWord = (written: string): readonly string[] => {
  const parts = written.normalize('NFC').match(PARTS) ?? []
  return parts.flatMap((part, i) => {
    const plain = part.toLowerCase().replaceAll('’', "'")
    if (/^[\d.]/.test(plain)) return spellDecimal(plain)
    const isAfterNumber = /\d$/.test(parts[i - 1] ?? '')
    if (plain in SAID && (isAfterNumber || !/\p{L}/u.test(plain))) return (SAID[plain] ?? '').split(' ')
    // Accents are dropped: the dictionary has none.
    const bare = plain.normalize('NFD').replace(/\p{M}/gu, '')
    return [bare]
  })
}
