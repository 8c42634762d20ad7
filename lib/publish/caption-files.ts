import type { Caption } from './captions'
import { formatCueTime, toCueText, toSubripText } from './cue'
import { toLine } from './text'

/** @returns captions as WebVTT, speakers as voice spans. @source W3C WebVTT */
export const toVtt = (captions: readonly Caption[]): string => {
  const cues = captions.flatMap(({ start, end, lines, speaker }) => {
    const text = lines.map(toCueText).join('\n')
    // A name must not end in `--`: with the `>` that closes its tag it would read as a time line.
    const name = toCueText(toLine(speaker).replace(/--+/g, '–'))
    return [
      `${formatCueTime(start, '.')} --> ${formatCueTime(end, '.')}`,
      name === '' ? text : `<v ${name}>${text}</v>`,
      '',
    ]
  })
  return ['WEBVTT', '', ...cues].join('\n')
}

/** @returns captions as SubRip. Speakers are left out: the format has no place for them. */
export const toSubrip = (captions: readonly Caption[]): string =>
  captions
    .map(
      ({ start, end, lines }, i) =>
        `${i + 1}\n${formatCueTime(start, ',')} --> ${formatCueTime(end, ',')}\n${lines.map(toSubripText).join('\n')}\n`,
    )
    .join('\n')
