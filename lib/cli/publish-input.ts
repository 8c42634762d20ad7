import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { countOf } from '@/lib/procedure/count'
import { formatProblem, type Problem, TellwrightError } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import { parseProject } from '@/lib/procedure/project-file'
import { toSheet } from '@/lib/procedure/sheet'
import { toPublishedFindings } from '@/lib/publish/findings'
import { isSafePath } from '@/lib/publish/manifest'
import type { PublishOptions } from '@/lib/publish/publication'
import { type Io, readText } from './command'

/** A project to publish, with what is its own. */
export type Input = { readonly path: string; readonly project: Project; readonly options: PublishOptions }

const tellProblems = (problems: readonly Problem[], io: Io): void => {
  for (const problem of problems) io.err(`tellwright publish: ${formatProblem(problem)}`)
}

/** Reads a project file. @returns undefined after saying on standard error why it could not be read */
const readProject = async (path: string, io: Io): Promise<Project | undefined> => {
  const text = await readText(io, path)
  const parsed = parseProject(text, path === '-' ? 'standard input' : path)
  if (parsed.ok) return parsed.value
  tellProblems(parsed.problems, io)
  return undefined
}

/** The stills a project names, from the folder it lies in and from nowhere else. */
const readStills = async (path: string, project: Project, io: Io): Promise<ReadonlyMap<string, Uint8Array>> => {
  const stills = new Map<string, Uint8Array>()
  for (const { id, still } of project.marks) {
    if (still?.file === undefined || path === '-') continue
    if (!isSafePath(still.file)) {
      io.err(`tellwright publish: ${path}: the still "${still.file}" lies outside the project's folder; left out`)
      continue
    }
    try {
      stills.set(id, await io.read(join(dirname(path), still.file)))
    } catch (error) {
      if (!(error instanceof TellwrightError)) throw error
      io.err(`tellwright publish: still left out: ${error.message}`)
    }
  }
  return stills
}

/** Faces of the handout from the packages; without them the reader's own faces are used. */
export const readFonts = async (io: Io): Promise<NonNullable<PublishOptions['fonts']>> => {
  const require = createRequire(import.meta.url)
  const faces = [
    ['text-400', '@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-400-normal.woff2'],
    ['text-700', '@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-700-normal.woff2'],
    ['figures-400', '@fontsource/b612-mono/files/b612-mono-latin-400-normal.woff2'],
  ] as const
  const fonts = new Map<(typeof faces)[number][0], Uint8Array>()
  for (const [face, file] of faces) {
    try {
      fonts.set(face, await io.read(require.resolve(file)))
    } catch {
      return new Map()
    }
  }
  return fonts
}

/** What a publication needs beside the project: the review for its head (by which rules file), the talk for captions. */
export type Needs = { readonly hasHead: boolean; readonly hasTalk: boolean; readonly rules?: string }

const reviewOf = async (
  path: string,
  project: Project,
  given: string | undefined,
  io: Io,
): Promise<Pick<PublishOptions, 'findings'> | undefined> => {
  const [{ reviewProject }, { readShopFile }] = await Promise.all([
    import('@/lib/review/review'),
    import('./shop-file'),
  ])
  const rules = await readShopFile(given, path, io)
  if (!rules.ok) {
    tellProblems(rules.problems, io)
    return undefined
  }
  const findings = toPublishedFindings(toSheet(project), reviewProject(project, { rules: rules.value }))
  const stops = findings.filter(({ level, waived }) => level === 'stop' && waived === undefined).length
  const name = path === '-' ? 'standard input' : path
  if (stops > 0) io.err(`tellwright publish: ${name}: ${countOf(stops, 'stop finding')}; said at the head`)
  return { findings }
}

const talkOf = async ({ recording }: Project): Promise<Pick<PublishOptions, 'sentences'>> => {
  if (recording.transcript === null) return {}
  const { toSentences } = await import('@/lib/transcript/sentence')
  return { sentences: toSentences(recording.transcript) }
}

/**
 * Reads a project with its stills, its findings and what was said, ready to publish.
 *
 * @returns undefined after saying on standard error why it could not be read
 */
export const readInput = async (
  path: string,
  shared: PublishOptions,
  { hasHead, hasTalk, rules }: Needs,
  io: Io,
): Promise<Input | undefined> => {
  const project = await readProject(path, io)
  if (project === undefined) return undefined
  const stills = hasHead ? { stills: await readStills(path, project, io) } : {}
  const review = hasHead ? await reviewOf(path, project, rules, io) : {}
  if (review === undefined) return undefined
  const talk = hasTalk ? await talkOf(project) : {}
  return { path, project, options: { ...shared, ...stills, ...review, ...talk } }
}
