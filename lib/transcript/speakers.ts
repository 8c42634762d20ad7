import type { Cue } from '@/lib/procedure/recording'

/** `Bea: text`, `BEA VOSS: text`, `Speaker 2: text`, at the head of a cue. */
const PREFIX = /^(?:[-–—]\s*|>>\s*)?(\p{Lu}[\p{L}\p{N}.'’-]*(?: \p{Lu}?[\p{L}\p{N}.'’-]*){0,2}):\s+(?=\S)/u

/** Words that open a sentence with a colon without being anybody's name. */
const NO_NAMES =
  /^(?:note|warning|caution|danger|notice|important|step|tip|tools?|parts?|materials?|torque|spec|check|question|answer|remember|first|second|next|so|now|okay|ok|example|q|a|pro tip|rule|chapter|part|section)\b/i

/**
 * Takes the names that transcripts put before the text (`Bea: …`) as speakers, where a name turns up at least twice, or
 * at least two names do. Who has spoken is taken to speak on until the next name.
 *
 * @returns the cues, text without the name; the same cues where nobody is named
 */
export const toNamedCues = (cues: readonly Cue[]): readonly Cue[] => {
  const counts = new Map<string, number>()
  for (const cue of cues) {
    const name = cue.speaker === undefined ? PREFIX.exec(cue.text)?.[1] : undefined
    if (name !== undefined && !NO_NAMES.test(name)) counts.set(name, (counts.get(name) ?? 0) + 1)
  }
  const total = [...counts.values()].reduce((sum, n) => sum + n, 0)
  const names = new Set(
    [...counts].filter(([, n]) => n >= 2 || (counts.size >= 2 && total >= 0.5 * cues.length)).map(([name]) => name),
  )
  if (names.size === 0) return cues
  let speaker: string | undefined
  return cues.map(cue => {
    if (cue.speaker !== undefined) {
      speaker = cue.speaker
      return cue
    }
    const match = PREFIX.exec(cue.text)
    const name = match?.[1]
    if (match === null || name === undefined || !names.has(name))
      return speaker === undefined ? cue : { ...cue, speaker }
    speaker = name
    return { ...cue, speaker, text: cue.text.slice(match[0].length) }
  })
}
