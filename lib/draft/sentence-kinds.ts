/** Kinds that are told by whole sentences. */
export const SENTENCE_KINDS = ['step', 'caution', 'check', 'reason', 'symptom'] as const
export type SentenceKind = (typeof SENTENCE_KINDS)[number]
