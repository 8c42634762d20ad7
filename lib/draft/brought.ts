import type { Reading as Limit } from '@/lib/quantity/read'

/**
 * `pulled up to sixty`: where a thing is brought, no limit.
 *
 * @param ahead the words before the limit, in its sentence
 */
export const isBroughtTo = (limit: Limit, ahead: string): boolean =>
  /^up to\b/i.test(limit.text) &&
  /\b(?:pull(?:s|ed)?|bring|brought|brings|turn(?:s|ed)?|crank(?:s|ed)?|wind|wound|heat(?:s|ed)?|warm(?:s|ed)?|pump(?:s|ed)?|torqued?|tighten(?:s|ed)?|rev(?:s|ved)?|set|run|ran|charge|charged|inflate|inflated|fill|filled|nip|nipped|take|taken|done|wound)(?: (?:it|them|her|him|that|this|each|the \w+(?: \w+)?))?(?: back| slowly)? ?$/i.test(
    ahead,
  )
