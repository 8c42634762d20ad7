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

const TOKEN =
  /(?<figure>\d{1,3}(?:,\d{3})+(?:\.\d+)?(?!\d)|\d+(?:[.,]\d+)?|(?<![\p{L}\p{N}.])\.\d+)|(?<word>\p{L}[\p{L}\p{M}]*(?:['’]\p{L}+)*)|(?<sign>\S)/gu

const PLAIN: Readonly<Record<string, string>> = {
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
}

const FRACTIONS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}

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

/**
 * Splits a text into words, figures and signs. Letters and figures that touch (`5mm`, `M8`) are separate, glued tokens.
 *
 * @returns tokens in order, offsets into `text`; never throws, linear in the text's length
 */
export const toTokens = (text: string): readonly Token[] => {
  const tokens: Token[] = []
  let end = -1
  for (const match of text.matchAll(TOKEN)) {
    const raw = match[0]
    const at = match.index
    const to = at + raw.length
    const common = { raw, at, to, isGlued: at === end }
    const fraction = FRACTIONS[raw]
    if (match.groups?.figure !== undefined) tokens.push({ ...common, text: raw, is: 'figure', value: figureValue(raw) })
    else if (fraction !== undefined) tokens.push({ ...common, text: raw, is: 'figure', value: fraction })
    else tokens.push({ ...common, text: plain(raw), is: match.groups?.word === undefined ? 'sign' : 'word' })
    end = to
  }
  return tokens
}
