import type { z } from 'zod'
import { issueWords } from './issue'
import { type Problem, type Result, refusal, success } from './problem'
import { FORMAT, type Project, projectSchema, VERSION } from './project'

/** Brings a file of version N (the key) to version N + 1. Empty while there is one version. */
const MIGRATIONS: Readonly<Record<number, (old: Record<string, unknown>) => Record<string, unknown>>> = {}

const pathOf = (path: readonly PropertyKey[]): string =>
  path.map((part, i) => (typeof part === 'number' ? `[${part}]` : i === 0 ? String(part) : `.${String(part)}`)).join('')

const asProblem =
  (file: string | undefined) =>
  (issue: z.core.$ZodIssue): Problem => ({
    code: 'bad-project-field',
    message: `${issueWords(issue)}. The file on disk was not changed; mend this field or open an earlier copy.`,
    place: { ...(file === undefined ? {} : { file }), path: pathOf(issue.path) || '(top)' },
  })

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const migrate = (raw: Record<string, unknown>): Record<string, unknown> => {
  let now = raw
  for (let version = Number(raw.version); MIGRATIONS[version] !== undefined; version++)
    now = MIGRATIONS[version]?.(now) ?? now
  return now
}

/** Name of a project file. */
const OURS = /\.tellwright\.json$/i

const duplicateIds = (project: Project, file: { readonly file?: string }): Problem[] => {
  const seen = new Set<string>()
  return project.marks.flatMap((mark, i) => {
    if (!seen.has(mark.id)) {
      seen.add(mark.id)
      return []
    }
    const message = `two marks carry the id "${mark.id}"; ids must be unique. Give this one another.`
    return [{ code: 'duplicate-mark-id', message, place: { ...file, path: `marks[${i}].id` } }]
  })
}

/**
 * Reads a project file.
 *
 * @param text the file's content (JSON)
 * @param file its name, for messages
 * @returns the project, unknown fields kept; or problems, each with the path inside the file and what was expected:
 *   `not-json`, `not-a-project`, `newer-project`, `bad-project-field`, `duplicate-mark-id`. Never throws.
 */
export const parseProject = (text: string, file?: string): Result<Project> => {
  const place = file === undefined ? {} : { file }
  let raw: unknown
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    const message =
      OURS.test(file ?? '') && /^\uFEFF?\s*\{/.test(text)
        ? `this project file is damaged or was cut short: it is not valid JSON (${why}). It was not changed; open an earlier copy.`
        : `this is not a project file: it is not valid JSON (${why}). Choose a *.tellwright.json file.`
    return refusal({ code: 'not-json', message, place })
  }
  if (!isObject(raw) || raw.format !== FORMAT) {
    const found = isObject(raw) ? JSON.stringify(raw.format ?? null) : Array.isArray(raw) ? 'a list' : typeof raw
    const message = `this is JSON but not a project file: expected "format": "${FORMAT}", found ${found}.`
    return refusal({ code: 'not-a-project', message, place: { ...place, path: 'format' } })
  }
  if (typeof raw.version === 'number' && raw.version > VERSION) {
    const message = `this file is version ${raw.version}; this Tellwright reads up to version ${VERSION}. Update Tellwright; the file was not changed.`
    return refusal({ code: 'newer-project', message, place: { ...place, path: 'version' } })
  }
  const parsed = projectSchema.safeParse(migrate(raw))
  if (!parsed.success) return { ok: false, problems: parsed.error.issues.map(asProblem(file)) }
  const twice = duplicateIds(parsed.data, place)
  return twice.length > 0 ? { ok: false, problems: twice } : success(parsed.data)
}

/** @returns the project as the text of its file: indented JSON with a closing line feed. */
export const formatProject = (project: Project): string => `${JSON.stringify(project, null, 1)}\n`
