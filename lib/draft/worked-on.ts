import { matchesOf } from '@/lib/quantity/matches'
import type { Reading } from './feature'
import type { Thing } from './gather'

/** What is bolted on is a part of the job, whatever a toolbox may hold of that name: "the two bolts on the caliper". */
const CARRIES =
  /\b(?:bolts?|nuts?|screws?|studs?|circlips?|pads?|piston)(?: \w+)? (?:on|in|of|from|off|holding|through|under|behind|retaining|securing) (?:the|this|that|its|your|each|both|either|every) (?:[\w-]+ )?$/i
/** "The anvil gap", "both caliper bolts": holds the name of what has them. */
const OWNER =
  /\b(?:the|its|each|both|this|that|these|those)(?: (?:two|three|four|five|six|eight|\d))? (?=([a-z]+) (?:(?:mounting|fixing|clamp|retaining|slide|pinch) )?(?:bolts?|nuts?|screws?|studs?|gap|clearance|bracket|housing|piston|pads?|bore|seat|mounts?|mountings?|carrier|pivot)\b)/gi
/** "Slide the caliper off", "bolt the caliper back on": what is taken off and put on again is a part. */
const MOUNTED = /\b(?:bolt|unbolt|screw|unscrew|slide|refit|remount|unhook) (?:the|its|each|both|this|that) $/i
const USED =
  /\b(?:with|using|use|uses|grab|get|fetch|need|needs|by|want|reach for|pick up|have|got)(?: (?:a|an|the|your|my|this|that|some|one|two|both))?(?: [\w-]+){0,2} $|\b(?:an?|your|my)(?: [\w-]+){0,2} $/i

/** @returns names, of one word in small letters, of what has fasteners or a gap of its own by what is said in a talk. */
export const ownersIn = (readings: readonly Reading[]): ReadonlySet<string> => {
  const names = new Set<string>()
  for (const { text } of readings) for (const [, name = ''] of matchesOf(text, OWNER)) names.add(name.toLowerCase())
  return names
}

/**
 * Whether a thing named like a tool is one that is worked on in this talk: it carries fasteners or has a gap of its own, and
 * nobody takes it in hand. Names of one word alone: "breaker bar" and "10 mm spanner" are never a part of the job.
 *
 * @param owners as `ownersIn` tells of the readings
 */
export const isWorkedOn = (
  { name, mentions }: Thing,
  readings: readonly Reading[],
  owners: ReadonlySet<string>,
): boolean => {
  if (!/^[a-z]+$/i.test(name)) return false
  const before = mentions.map(({ sentence, at }) => readings[sentence]?.text.slice(0, at) ?? '')
  if (before.some(text => USED.test(text))) return false
  return owners.has(name.toLowerCase()) || before.some(text => CARRIES.test(text) || MOUNTED.test(text))
}
