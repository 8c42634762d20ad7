// Words of the domain as plain lists, apart from the schemas, so that screens can use them without loading zod.

/** Kinds of mark. Trade words. */
export const KINDS = ['step', 'caution', 'spec', 'tool', 'material', 'check', 'reason', 'symptom'] as const
export type Kind = (typeof KINDS)[number]

/** Signal words from gravest to least. @source ANSI Z535.6 (from memory): the four levels */
export const LEVELS = ['danger', 'warning', 'caution', 'notice'] as const
export type Level = (typeof LEVELS)[number]

/** Where a spec's value comes from. Trade words. */
export const BASES = ['spoken', 'plate', 'manual', 'common-practice'] as const
export type Basis = (typeof BASES)[number]
