import { formatFragment, formatTime, type Span } from '@/lib/procedure/time'

/** Schemes an address may have; any other is taken for part of a file name. Nothing here can run a script. */
const SCHEMES = /^(?:https?|file):/i

/** Half surrogate pairs would make the encoder throw. */
const encode = (text: string, keep: RegExp): string =>
  [...text.replace(/\p{Cs}/gu, '\uFFFD')].map(char => (keep.test(char) ? char : encodeURIComponent(char))).join('')

/**
 * The address of the footage for links.
 *
 * @param name the footage's file name
 * @param given what the user wants in front instead: an http(s) or file address, or a path
 * @returns percent-encoded where needed, without fragment; empty where there is neither name nor address
 */
export const footageAddress = (name: string | undefined, given: string | undefined): string => {
  if (given !== undefined && given.trim() !== '') {
    const [bare = ''] = given.trim().split('#')
    const path = /[A-Za-z0-9\-._~!$&'()*+,;=/?%@]/
    return SCHEMES.test(bare) ? encode(bare, /[A-Za-z0-9\-._~!$&'()*+,;=:/?%@[\]]/) : encode(bare, path)
  }
  return name === undefined ? '' : encode(name, /[A-Za-z0-9\-._~!'()*]/)
}

/** @returns whether a span can be a fragment: the standard wants its start before its end. */
const isProper = (span: Span): boolean => Math.round(span.start * 1000) < Math.round(span.end * 1000)

/**
 * A link to a span of the footage, such as `shop.mp4#t=75,92`; a span without length links to its start.
 *
 * @source W3C Media Fragments URI 1.0, temporal dimension
 */
export const spanAddress = (address: string, span: Span): string =>
  `${address}#${isProper(span) ? formatFragment(span) : `t=${Math.round(span.start * 1000) / 1000}`}`

/** @returns the span of a link into footage, in seconds; end undefined where the link has only a start. */
export const parseSpanAddress = (address: string): { start: number; end: number | undefined } | undefined => {
  const match = /[#&]t=(?:npt:)?(\d+(?:\.\d+)?)(?:,(\d+(?:\.\d+)?))?(?:&|$)/.exec(address)
  if (match === null) return undefined
  return { start: Number(match[1]), end: match[2] === undefined ? undefined : Number(match[2]) }
}

/** @returns a span for people: `1:15–1:32`; `no time yet` for what comes from a text without times. */
export const formatSpan = ({ start, end }: Span): string => {
  if (start === 0 && end === 0) return 'no time yet'
  return formatTime(start) === formatTime(end) || end < start
    ? formatTime(start)
    : `${formatTime(start)}–${formatTime(end)}`
}
