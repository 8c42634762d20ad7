import type { Reading } from './feature'
import type { Thing } from './gather'

/** What is bolted on is a part of the job, whatever a toolbox may hold of that name: "the two bolts on the caliper". */
const CARRIES =
  /\b(?:bolts?|nuts?|screws?|studs?|circlips?|pads?|piston)(?: \w+)? (?:on|in|of|from|off|holding|through|under|behind|retaining|securing) (?:the|this|that|its|your|each|both|either|every) (?:[\w-]+ )?$/i
/** "The anvil gap", "caliper bolts". */
const OF_IT =
  '(?:(?:mounting|fixing|clamp|retaining|slide|pinch) )?(?:bolts?|nuts?|screws?|studs?|gap|clearance|bracket|housing|piston|pads?|bore|seat|mounts?|mountings?|carrier|pivot)'
const USED =
  /\b(?:with|using|use|uses|grab|get|fetch|need|needs|by|want|reach for|pick up|have|got)(?: (?:a|an|the|your|my|this|that|some|one|two|both))?(?: [\w-]+){0,2} $|\b(?:an?|your|my)(?: [\w-]+){0,2} $/i

/**
 * Whether a thing named like a tool is one that is worked on in this talk: it carries fasteners or has a gap of its own, and
 * nobody takes it in hand. Names of one word alone: "breaker bar" and "10 mm spanner" are never a part of the job.
 */
export const isWorkedOn = ({ name, mentions }: Thing, readings: readonly Reading[]): boolean => {
  if (!/^[a-z]+$/i.test(name)) return false
  const before = mentions.map(({ sentence, at }) => readings[sentence]?.text.slice(0, at) ?? '')
  if (before.some(text => USED.test(text))) return false
  const own = new RegExp(`\\b(?:the|its|each|both|this|that) ${name} ${OF_IT}\\b`, 'i')
  return before.some(text => CARRIES.test(text)) || readings.some(({ text }) => own.test(text))
}
