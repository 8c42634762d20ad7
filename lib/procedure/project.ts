import { z } from 'zod'
import { kindSchema, markSchema } from './mark'
import { recordingSchema } from './recording'
import { openObject } from './schema'

/** What the project file of this version says of itself. */
export const FORMAT = 'tellwright'
export const VERSION = 1

/** When the job is due again: whichever comes first. */
export const intervalSchema = openObject({
  hours: z.number().positive().exactOptional(),
  months: z.number().positive().exactOptional(),
})
export type Interval = z.infer<typeof intervalSchema>

/** A manual, plate or drawing the procedure leans on. */
export const referenceSchema = openObject({ title: z.string(), part: z.string().default('') })
export type Reference = z.infer<typeof referenceSchema>

/** The head of the procedure: what it is for and who answers for it. */
export const headingSchema = openObject({
  title: z.string().default(''),
  equipment: z.string().default(''),
  scope: z.string().default(''),
  interval: intervalSchema.exactOptional(),
  revision: z.string().default(''),
  author: z.string().default(''),
  references: z.array(referenceSchema).readonly().default([]),
})
export type Heading = z.infer<typeof headingSchema>

/** A finding the user let stand, and why. `mark` is absent for a finding about the whole. */
export const waiverSchema = openObject({ rule: z.string(), mark: z.string().exactOptional(), reason: z.string() })
export type Waiver = z.infer<typeof waiverSchema>

/** A drafted mark the user dropped: drafting again leaves it out. */
export const droppedSchema = openObject({ kind: kindSchema, start: z.number(), end: z.number(), text: z.string() })

/** The project file, version 1. */
export const projectSchema = openObject({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  procedure: headingSchema,
  recording: recordingSchema,
  marks: z.array(markSchema).readonly(),
  waivers: z.array(waiverSchema).readonly().default([]),
  dropped: z.array(droppedSchema).readonly().exactOptional(),
})
/** Everything that is kept of one job: what the file holds and what the bench edits. */
export type Project = z.infer<typeof projectSchema>

/** @returns a project with nothing in it yet. */
export const emptyProject = (): Project => ({
  format: FORMAT,
  version: VERSION,
  procedure: { title: '', equipment: '', scope: '', revision: '', author: '', references: [] },
  recording: { footage: null, transcript: null },
  marks: [],
  waivers: [],
})
