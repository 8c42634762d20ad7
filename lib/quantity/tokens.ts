/** One word, figure or sign of a text, with offsets [at, to). */
export type Token = {
  /** As written. */
  readonly raw: string
  /** In lower case, with plain apostrophes, dashes and micro signs. */
  readonly text: string
  readonly is: 'word' | 'figure' | 'sign'
  /** Of a figure: its value, with decimal comma or point and thousands marks understood. */
  readonly value?: number
  readonly at: number
  readonly to: number
  /** Whether it touches the token before it. */
  readonly isGlued: boolean
}

const FIGURE = /\d{1,3}(?:,\d{3})+(?:\.\d+)?(?!\d)|\d+(?:[.,]\d+)?|\.\d+/y
const WORD = /\p{L}[\p{L}\p{M}]*(?:['’]\p{L}+)*/uy
const SPACE = /\s+/y

const PLAIN: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    '’': "'",
    '–': '-',
    '—': '—',
    '−': '-',
    '‐': '-',
    '‑': '-',
    μ: 'µ',
    '⋅': '·',
    '∙': '·',
    '•': '·',
    '″': '"',
    '”': '"',
    '“': '"',
    '′': "'",
    º: '°',
    '˚': '°',
  },
  null,
)

const FRACTIONS: Readonly<Record<string, number>> = Object.setPrototypeOf(
  {
    '½': 1 / 2,
    '⅓': 1 / 3,
    '⅔': 2 / 3,
    '¼': 1 / 4,
    '¾': 3 / 4,
    '⅕': 1 / 5,
    '⅖': 2 / 5,
    '⅗': 3 / 5,
    '⅘': 4 / 5,
    '⅙': 1 / 6,
    '⅚': 5 / 6,
    '⅛': 1 / 8,
    '⅜': 3 / 8,
    '⅝': 5 / 8,
    '⅞': 7 / 8,
  },
  null,
)

const plain = (raw: string): string => {
  let text = ''
  for (const sign of raw) text += PLAIN[sign] ?? sign
  return text.toLowerCase()
}

/** A figure's value: `1,250` is a thousand, `0,75` and `3,5` have a decimal comma. */
const figureValue = (raw: string): number => {
  if (/^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(raw) && !raw.startsWith('0,')) return Number(raw.replaceAll(',', ''))
  return Number(raw.replace(',', '.'))
}

const isDigit = (code: number): boolean => code >= 48 && code <= 57
const isSmall = (code: number): boolean => code >= 97 && code <= 122
const isLetter = (code: number): boolean => isSmall(code) || (code >= 65 && code <= 90)

/** End of a run of plain letters; -1 where anything else (an accent, an apostrophe) may belong to the word. */
const plainEnd = (text: string, at: number): number => {
  let to = at
  while (isLetter(text.charCodeAt(to))) to++
  const next = text.charCodeAt(to)
  return next > 127 || next === 39 ? -1 : to
}

const matchAt = (pattern: RegExp, text: string, at: number): string | undefined => {
  pattern.lastIndex = at
  return pattern.exec(text)?.[0]
}

/** The figure at a place: with its decimals, or one that begins with its point (`.5`). */
const figureAt = (text: string, at: number, isAfterWord: boolean): string | undefined => {
  const code = text.charCodeAt(at)
  if (isDigit(code)) return matchAt(FIGURE, text, at)
  return code === 46 && isDigit(text.charCodeAt(at + 1)) && !isAfterWord ? matchAt(FIGURE, text, at) : undefined
}

/**
 * Splits a text into words, figures and signs. Letters and figures that touch (`5mm`, `M8`) are separate, glued tokens.
 *
 * @returns tokens in order, offsets into `text`; never throws, linear in the text's length
 */
export const toTokens = (text: string): readonly Token[] => {
  const tokens: Token[] = []
  let end = -1
  for (let at = 0; at < text.length; ) {
    const code = text.charCodeAt(at)
    if (code === 32) {
      at++
      continue
    }
    const isGlued = at === end
    const letters = isLetter(code) ? plainEnd(text, at) : -1
    if (letters > 0) {
      const raw = text.slice(at, letters)
      tokens.push({ raw, text: raw.toLowerCase(), is: 'word', at, to: letters, isGlued })
      at = end = letters
      continue
    }
    const space = matchAt(SPACE, text, at)
    if (space !== undefined) {
      at += space.length
      continue
    }
    const token = otherAt(text, at, isGlued, tokens.at(-1))
    tokens.push(token)
    at = end = token.to
  }
  return tokens
}

const COUNTED =
  '(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty|hundred|thousand|half|quarter|eighth|sixteenth|(?:hundred|thousand)ths?)'
const SHORTENED = new RegExp(`^${COUNTED}['’](?:s|d|ll|re)$`, 'i')
/** A unit shortened with its verb: only after a number. */
const SHORTENED_UNIT =
  /^(?:bar|mils?|mill|psi|volts?|amps?|ohms?|degrees?|inch|inches|thou|minutes?|hours?|seconds?|turns?|metres?|meters?|millimet(?:re|er)s?|pounds?|litres?|liters?|quarts?|percent|revs|kilos?|grams?|months?|weeks?|years?)['’](?:s|d|ll|re)$/i
const NUMBER = new RegExp(`^(?:${COUNTED}|one|an?|point)$`)
const VERB_END = /['’](?:s|d|ll|re)\b/y
/** What makes a verb of an `'s` after a figure, and no plural: `120's the most`. */
const FIGURE_VERB =
  /['’](?:s|d|ll) (?:the|my|your|what|plenty|enough|as|all|too|about|where|not|no|fine|right|far|max|min|be|do)\b/y

/** Where a word that is a number or a unit with a verb drawn together to it ends: `seventy's the limit`. */
const shortenedEnd = (raw: string, before: Token | undefined): number | undefined => {
  const isShort =
    SHORTENED.test(raw) || ((before?.is === 'figure' || NUMBER.test(before?.text ?? '')) && SHORTENED_UNIT.test(raw))
  return isShort ? raw.search(/['’]/) : undefined
}

/** The verb drawn together to a number or unit just before. */
const verbAt = (text: string, at: number, before: Token | undefined): string | undefined => {
  const code = text.charCodeAt(at)
  if (before === undefined || (code !== 39 && code !== 0x2019)) return undefined
  if (before.is === 'figure' && matchAt(FIGURE_VERB, text, at) === undefined) return undefined
  return matchAt(VERB_END, text, at)
}

/** A figure, a word with accents or apostrophes, a fraction sign, or one sign. */
const otherAt = (text: string, at: number, isGlued: boolean, before: Token | undefined): Token => {
  const figure = figureAt(text, at, isGlued && before?.is !== 'sign')
  if (figure !== undefined)
    return { raw: figure, text: figure, is: 'figure', value: figureValue(figure), at, to: at + figure.length, isGlued }
  const verb = isGlued ? verbAt(text, at, before) : undefined
  if (verb !== undefined) return { raw: verb, text: plain(verb), is: 'word', at, to: at + verb.length, isGlued }
  const whole = matchAt(WORD, text, at)
  const word = whole?.slice(0, shortenedEnd(whole, before))
  const raw = word ?? String.fromCodePoint(text.codePointAt(at) ?? 32)
  const to = at + raw.length
  const fraction = FRACTIONS[raw]
  if (fraction !== undefined) return { raw, text: raw, is: 'figure', value: fraction, at, to, isGlued }
  return { raw, text: plain(raw), is: word === undefined ? 'sign' : 'word', at, to, isGlued }
}
