import { decodeHTML } from 'entities/decode'

/** A place inside a cue where the file says what time it is. */
export type Stamp = {
  /** Offset in the text without mark-up. */
  readonly at: number
  /** Seconds. */
  readonly time: number
}

/** A cue's text without its mark-up. */
export type CueText = {
  readonly text: string
  /** Of the first voice span. */
  readonly speaker?: string
  /** Every voice named in the cue, in order. */
  readonly voices: readonly string[]
  readonly stamps: readonly Stamp[]
  /** Tags that are none of WebVTT's: most likely text that holds a `<`. */
  readonly strange: readonly string[]
}

const NAMES = /^\/?(?:c|i|b|u|v|ruby|rt|lang|font|s|)(?:[.\s]|$)/

/** WebVTT timestamp, hours optional. @source W3C WebVTT, "collect a WebVTT timestamp" */
const TIMESTAMP = /^(?:(\d{2,}):)?([0-5]\d):([0-5]\d)\.(\d{3})$/

const toSeconds = (match: RegExpExecArray): number => {
  const [, hours, minutes, seconds, thousandths] = match
  return (1000 * (Number(hours ?? 0) * 3600 + Number(minutes) * 60 + Number(seconds)) + Number(thousandths)) / 1000
}

/**
 * Drops the tags of a WebVTT cue, decodes its character references and reads its voice spans and inner timestamps.
 *
 * @param raw the cue's lines as the file has them
 * @source W3C WebVTT, cue text parsing rules: a `<` opens a tag up to the next `>` or the end
 */
export const parseCueText = (raw: string): CueText => {
  const voices: string[] = []
  const stamps: Stamp[] = []
  const strange: string[] = []
  let text = ''
  let from = 0
  while (from < raw.length) {
    const open = raw.indexOf('<', from)
    const run = raw.slice(from, open < 0 ? raw.length : open)
    text += run.includes('&') ? decodeHTML(run) : run
    if (open < 0) break
    const close = raw.indexOf('>', open)
    const tag = raw.slice(open + 1, close < 0 ? raw.length : close)
    from = close < 0 ? raw.length : close + 1
    const time = TIMESTAMP.exec(tag)
    if (time !== null) stamps.push({ at: text.length, time: toSeconds(time) })
    else if (/^v[.\s]/.test(tag)) {
      const voice = decodeHTML(tag.replace(/^v[^\s]*\s*/, ''))
        .replace(/\s+/g, ' ')
        .trim()
      if (voice !== '' && voices.at(-1) !== voice) voices.push(voice)
    } else if (!NAMES.test(tag)) strange.push(`<${tag}${close < 0 ? '' : '>'}`)
  }
  const [speaker] = voices
  return { text, voices, stamps, strange, ...(speaker === undefined ? {} : { speaker }) }
}
