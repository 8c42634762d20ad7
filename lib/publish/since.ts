import type { Project } from '@/lib/procedure/project'
import { toSheet } from '@/lib/procedure/sheet'
import { adopt } from './adopt'
import { type Comparison, compareSheet, otherFootage } from './compare'
import { toSheetMarkdown } from './markdown'
import { bullets, heading, item, paragraph, text } from './nodes'
import { markdown } from './processor'
import type { PublishOptions } from './publication'
import type { ReadBack } from './read-back'
import { parseSheetMarkdown } from './read-markdown'

/** What became of a sheet since it was published. */
export type Since = Pick<Comparison, 'unread'> & {
  /** Revision of the earlier sheet; empty where it has none. */
  readonly revision: string
  /** What was changed, in plain words and in the order of a sheet. */
  readonly changes: readonly string[]
  /** Why it may be another recording's sheet; absent where nothing speaks for it. */
  readonly doubt?: string
}

/** What a change would do, as what was done; why it is one is said of sheets edited by hand only. */
const PAST: readonly (readonly [RegExp, string])[] = [
  [/^Change /, 'Changed '],
  [/^Take away /, 'Took away '],
  [/^Drop (.*): it is not in the sheet any more$/, 'Took out $1'],
  [/^Add /, 'Added '],
  [/^Move /, 'Moved '],
  [/^Keep (.*): its pencil flag was taken away$/, 'Kept $1'],
]

const inPast = (about: string): string => {
  const [form, word] = PAST.find(([each]) => each.test(about)) ?? [/$/, '']
  return about.replace(form, word)
}

/**
 * What changed in a recording since a sheet of it was published: read back the other way round.
 *
 * @param earlier the sheet as `parseSheetMarkdown` read it
 * @returns the changes from the earlier sheet to the project as it is now, and what was not understood of the earlier one. Never
 *   throws.
 */
export const changesSince = (project: Project, earlier: ReadBack): Since => {
  const { heading: procedure, marks } = adopt(project, earlier)
  const before: Project = { ...project, procedure, marks }
  // What nobody has kept yet is not in such a sheet, then or now.
  const options: PublishOptions = earlier.isKeptOnly ? { pencilled: 'leave-out' } : {}
  const now = parseSheetMarkdown(toSheetMarkdown(toSheet(project), options))
  const changes = now.ok ? compareSheet(before, now.value).changes : []
  const doubt = otherFootage(project, earlier)
  return {
    ...(doubt === undefined ? {} : { doubt }),
    revision: earlier.heading.revision,
    changes: changes.map(({ about }) => inPast(about)),
    unread: earlier.unread,
  }
}

/** @returns the changes as a list in Markdown. */
export const toSinceMarkdown = (
  { procedure }: Project,
  { revision, changes }: Pick<Since, 'revision' | 'changes'>,
): string =>
  markdown.stringify({
    type: 'root',
    children: [
      heading(1, `${procedure.title}: what changed ${sinceWords(revision)}`),
      ...(changes.length === 0
        ? [paragraph(text('Nothing.'))]
        : [bullets(changes.map(change => item(paragraph(text(change)))))]),
    ],
  })

/** @returns `since revision A`, or since the earlier sheet where that has none. */
export const sinceWords = (revision: string): string =>
  revision === '' ? 'since the earlier sheet' : `since revision ${revision}`
