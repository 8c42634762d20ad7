import type { Quantity } from '@/lib/quantity/quantity'

/**
 * What the title of a time link says: the mark's id, then the few things its line cannot show exactly, such as
 * `step-7; pencilled=0.62; because=imperative after a pause`. Readers see it only when they hover over the time.
 */
export type Note = { readonly id: string; readonly items: ReadonlyMap<string, string> }

/** Characters that stand for themselves; all others are percent-encoded, so no title can break out of its quotes. */
const PLAIN = /[\p{L}\p{N}\-_.,:()/+'°·± ]/u

const encode = (text: string): string =>
  [...text.replace(/\p{Cs}/gu, '\uFFFD')]
    .map((char, i, all) => {
      const isEdge = i === 0 || i === all.length - 1 || all[i - 1] === ' '
      return PLAIN.test(char) && !(char === ' ' && isEdge) ? char : encodeURIComponent(char)
    })
    .join('')

const decode = (text: string): string | undefined => {
  try {
    return decodeURIComponent(text)
  } catch {
    return undefined
  }
}

/** @returns the title. Half surrogate pairs become U+FFFD; everything else is exact. */
export const formatNote = ({ id, items }: Note): string =>
  [encode(id), ...[...items].map(([key, value]) => (value === '' ? key : `${key}=${encode(value)}`))].join('; ')

/** @returns undefined where the title is not a note: no id, or an encoding that does not decode. */
export const parseNote = (title: string): Note | undefined => {
  const [first = '', ...rest] = title.split(';').map(part => part.trim())
  const id = decode(first)
  if (id === undefined || id === '') return undefined
  const items = new Map<string, string>()
  for (const part of rest) {
    const at = part.indexOf('=')
    const value = decode(at < 0 ? '' : part.slice(at + 1))
    if (value === undefined) return undefined
    items.set(at < 0 ? part : part.slice(0, at), value)
  }
  return { id, items }
}

/** @returns `low,nominal,high,unit`, parts left empty where absent; the unit last, so it may hold commas. */
export const formatExactQuantity = ({ low, nominal, high, unit }: Quantity): string => {
  const numbers = [low, nominal, high].map(n => (n === undefined ? '' : String(n))).join(',')
  return unit === undefined ? numbers : `${numbers},${unit}`
}

/** @returns the quantity of `formatExactQuantity`; undefined where the text is none. */
export const parseExactQuantity = (text: string): Quantity | undefined => {
  const [low, nominal, high, ...unit] = text.split(',')
  const number = (part: string | undefined) => (part === undefined || part === '' ? undefined : Number(part))
  const [l, n, h] = [number(low), number(nominal), number(high)]
  if (high === undefined || [l, n, h].some(Number.isNaN)) return undefined
  return {
    ...(l === undefined ? {} : { low: l }),
    ...(h === undefined ? {} : { high: h }),
    ...(n === undefined ? {} : { nominal: n }),
    ...(unit.length === 0 ? {} : { unit: unit.join(',') }),
  }
}
