import type { Hazard } from './hazard'
import { ENERGY } from './hazards-energy'
import { MOTION } from './hazards-motion'
import { SUBSTANCES } from './hazards-substance'

/**
 * Hazards by what signals them. The cautions are the usual ones; they never promise that a job is safe, and the maker's manual,
 * local codes and licensed practice come first. To teach a wording, extend `signals` or `known` of its entry.
 */
export const HAZARDS: readonly Hazard[] = [...SUBSTANCES, ...ENERGY, ...MOTION]
