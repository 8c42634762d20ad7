import type { Hazard } from './hazard'
import { DEEDS_OF_PARTS } from './hazards-deeds-edges'
import { DEEDS_OF_ENERGY } from './hazards-deeds-energy'
import { DEEDS_OF_FALLING } from './hazards-deeds-falls'
import { MORE_DEEDS } from './hazards-deeds-more'
import { DEEDS_OF_STUFF } from './hazards-deeds-stuff'

/**
 * What a deed on a kind of part brings, however the machine is called, each with the words that answer just that: a caution on
 * splashed acid says nothing of its fumes. To teach a deed, add a row to the file of its kind. General knowledge, no source;
 * kinds of hazard after ISO 12100:2010 annex B (from memory).
 */
export const DEED_HAZARDS: readonly Hazard[] = [
  ...DEEDS_OF_FALLING,
  ...DEEDS_OF_PARTS,
  ...DEEDS_OF_ENERGY,
  ...DEEDS_OF_STUFF,
  ...MORE_DEEDS,
]
