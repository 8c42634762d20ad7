/** Longest cue in seconds. */
const LONGEST = 5
/** Silence that ends a cue, in seconds. */
const PAUSE = 0.55

const weightOf = text => [...text].reduce((sum, letter) => sum + (/\d/.test(letter) ? 3 : 1), 1)

/** Words of a sentence spread over its true time by their letters; figures are read out, so they count threefold. */
const wordsOf = ({ speaker, text, start, end }) => {
  const words = text.split(' ')
  const total = words.reduce((sum, word) => sum + weightOf(word), 0)
  let at = start
  return words.map(word => {
    const length = ((end - start) * weightOf(word)) / total
    at += length
    return { speaker, text: word, start: at - length, end: at }
  })
}

const clock = seconds => {
  const ms = Math.round(seconds * 1000)
  const two = n => String(n).padStart(2, '0')
  return `${two(Math.floor(ms / 3_600_000))}:${two(Math.floor(ms / 60_000) % 60)}:${two(Math.floor(ms / 1000) % 60)}.${String(ms % 1000).padStart(3, '0')}`
}

const escaped = text => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')

/** Captions as a machine cuts them: full cues of up to five seconds wherever sentences end, a new one for a new voice. */
export const toCaptions = lines => {
  const cues = []
  for (const word of lines.flatMap(wordsOf)) {
    const last = cues.at(-1)
    const goesOn =
      last !== undefined &&
      last.speaker === word.speaker &&
      word.start - last.end < PAUSE &&
      word.end - last.start <= LONGEST
    if (goesOn) {
      last.text += ` ${word.text}`
      last.end = word.end
    } else cues.push({ ...word })
  }
  const blocks = cues.map(
    ({ speaker, text, start, end }) => `${clock(start)} --> ${clock(end)}\n<v ${speaker}>${escaped(text)}`,
  )
  return `WEBVTT\n\nNOTE Invented talk, spoken by espeak-ng. Made by scripts/make-demo.mjs. CC0 1.0.\n\n${blocks.join('\n\n')}\n`
}
