import type { Loudness } from './loudness'

/** Loudness clips are brought to unless the user says otherwise, LUFS. @source EBU R 128 (from memory) */
export const TARGET = -23

/** No peak between samples may go over it, dBTP. @source EBU R 128 (from memory): maximum permitted true peak */
export const CEILING = -1

/** How a sound is to be turned up or down. */
export type Gain = {
  readonly decibels: number
  /** What samples are multiplied by. */
  readonly factor: number
  /** Loudness it then has, LUFS. */
  readonly reached: number
  /** Whether the ceiling keeps it below the target: nothing is ever clipped or compressed to get there. */
  readonly isHeld: boolean
}

/**
 * The gain that brings a sound to the target, or as near from below as its true peak lets it.
 *
 * @param target LUFS
 * @param ceiling dBTP; it binds the true peak, not only the samples
 * @returns undefined for silence, which has no level
 */
export const gainTo = (sound: Loudness, target = TARGET, ceiling = CEILING): Gain | undefined => {
  if (!Number.isFinite(sound.integrated)) return undefined
  const wanted = target - sound.integrated
  const room = ceiling - sound.truePeak
  const decibels = Math.min(wanted, room)
  return {
    decibels,
    factor: 10 ** (decibels / 20),
    reached: sound.integrated + decibels,
    isHeld: room < wanted,
  }
}

/**
 * The loudest level, up to the target, that all the sounds can have alike under the ceiling.
 *
 * @returns LUFS; the target where every sound reaches it. Give it to gainTo as target to have all clips alike.
 */
export const commonLevel = (sounds: readonly Loudness[], target = TARGET, ceiling = CEILING): number =>
  Math.min(target, ...sounds.map(sound => gainTo(sound, target, ceiling)?.reached ?? target))
