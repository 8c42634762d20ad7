const WORDS =
  'so now you take the cover off and put it over here then loosen these four bolts about half a turn and mind the spring it wants twelve newton metres on the way back in wipe the seat first with a clean rag and look for any wear on the lip'.split(
    ' ',
  )

const stamp = (seconds: number): string => {
  const ms = Math.round(seconds * 1000)
  const two = (n: number) => String(Math.floor(n)).padStart(2, '0')
  return `${two(ms / 3_600_000)}:${two((ms / 60_000) % 60)}:${two((ms / 1000) % 60)}.${String(ms % 1000).padStart(3, '0')}`
}

/** A long invented talk as WebVTT: `cues` cues of `perCue` words at 2.5 words a second, a full stop every 14 words. */
export const longTalk = (cues: number, perCue: number): string => {
  const blocks = ['WEBVTT']
  let at = 0
  let count = 0
  for (let i = 0; i < cues; i++) {
    const words = Array.from({ length: perCue }, () => {
      const word = WORDS[count % WORDS.length] ?? ''
      count++
      return count % 14 === 0 ? `${word}.` : count % 14 === 1 ? word.charAt(0).toUpperCase() + word.slice(1) : word
    })
    const end = at + perCue / 2.5
    blocks.push(`${stamp(at)} --> ${stamp(end)}\n${words.join(' ')}`)
    at = end + (i % 7 === 0 ? 0.6 : 0.1)
  }
  return blocks.join('\n\n')
}
