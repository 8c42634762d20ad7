import { z } from 'zod'
import type { Quantity } from '@/lib/quantity/quantity'
import { BASES, KINDS, LEVELS } from './kinds'
import { openObject } from './schema'

const seconds = z.number().min(0)

export const kindSchema = z.enum(KINDS)
export const levelSchema = z.enum(LEVELS)
export const basisSchema = z.enum(BASES)

/** Limits in one unit (UCUM code). */
export const quantitySchema: z.ZodType<Quantity> = openObject({
  low: z.number().exactOptional(),
  high: z.number().exactOptional(),
  nominal: z.number().exactOptional(),
  unit: z.string().exactOptional(),
})

/** A drafted mark that nobody has kept yet. */
export const pencilSchema = openObject({
  /** Share of such marks that are right, 0 to 1. */
  confidence: z.number().min(0).max(1),
  /** Why it was drafted, in a few words. */
  reason: z.string(),
  /** What only the user can answer, such as the name of "this guy". */
  question: z.string().exactOptional(),
})

/** A still taken for a step; the picture itself is kept beside the project, named by `file`. */
export const stillSchema = openObject({
  /** Moment in the footage, seconds. */
  time: seconds,
  /** Alternative text. */
  alt: z.string(),
  file: z.string().exactOptional(),
})

/** What a measuring tool can do: its range (in `range.unit`) and its permissible deviation in per cent of reading. */
export const capabilitySchema = openObject({
  range: quantitySchema,
  deviation: z.number().min(0).exactOptional(),
})

/** A half-open span [start, end) of the footage in seconds, with a kind and what the sheet says of it. */
export const markSchema = openObject({
  id: z.string().min(1),
  kind: kindSchema,
  start: seconds,
  end: seconds,
  /** What the sheet says. For a spec its name, for tool and material the name with its size. */
  text: z.string(),
  /** The words spoken. */
  said: z.string().default(''),
  pencilled: pencilSchema.exactOptional(),
  /** Steps: order in the procedure, counted from 1; need not be the order in the footage. */
  place: z.number().exactOptional(),
  /** Other kinds: id of the step it belongs to. */
  step: z.string().exactOptional(),
  /** Cautions. */
  level: levelSchema.exactOptional(),
  hazard: z.string().exactOptional(),
  /** Specs; absent if only qualitative. */
  quantity: quantitySchema.exactOptional(),
  /** Specs: a second value stated as equal to the first. */
  equivalent: quantitySchema.exactOptional(),
  /** Specs: the condition ("past contact", "cold") or the qualitative limit ("hand tight"). */
  reference: z.string().exactOptional(),
  basis: basisSchema.exactOptional(),
  citation: z.string().exactOptional(),
  /** Tools and materials: price as said. */
  price: z.string().exactOptional(),
  /** Tools that measure. */
  capability: capabilitySchema.exactOptional(),
  still: stillSchema.exactOptional(),
})
export type Mark = z.infer<typeof markSchema>
