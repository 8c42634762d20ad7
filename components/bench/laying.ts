import { formatProblem, type Problem, type Result, success } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import { openBrowserStore } from '@/lib/store/browser-store'
import type { ProjectStore } from '@/lib/store/store'
import type { GivenFile } from './given'
import type { Sorted } from './sorting'

let opened: ProjectStore | undefined

/** @returns this browser's store, opened once. */
export const benchStore = (): ProjectStore => {
  opened ??= openBrowserStore()
  return opened
}

/** Files the user gave in this visit, by project: browsers without handles can't open them again later. */
export const filesAtHand = new Map<string, File>()

/** What was found when the files of a project were read, shown once it is open. */
export const noticesAtHand = new Map<string, readonly string[]>()

/** What came of laying files on the bench. */
export type Laid = { readonly id: string; readonly problems: readonly Problem[] }

const titleOf = (name: string): string => name.replace(/(\.tellwright)?\.[^.]*$/, '').replace(/[_-]+/g, ' ')

/** Remembers where a project's footage can be had again. */
export const keepFootage = async (id: string, { file, handle }: GivenFile): Promise<void> => {
  filesAtHand.set(id, file)
  if (handle !== undefined) await benchStore().keepSource(id, { handle })
}

const assemble = (parts: readonly Sorted[], empty: Project): Project => {
  let project = parts.find(part => part.is === 'project')?.project ?? empty
  for (const part of parts) {
    if (part.is === 'footage' && project.recording.footage === null)
      project = { ...project, recording: { ...project.recording, footage: part.footage } }
    if (part.is === 'transcript' && project.recording.transcript === null)
      project = { ...project, recording: { ...project.recording, transcript: part.transcript } }
  }
  if (project.procedure.title !== '') return project
  const name = project.recording.footage?.name ?? project.recording.transcript?.name ?? ''
  return { ...project, procedure: { ...project.procedure, title: titleOf(name) } }
}

/**
 * Lays the user's files on the bench as one recording: footage, transcript, or a whole project file.
 *
 * @returns the new project's id, and what the user should know of each file; refused when none could be read
 */
export const layOnBench = async (files: readonly GivenFile[]): Promise<Result<Laid>> => {
  const [{ sortFile }, { emptyProject }] = await Promise.all([import('./sorting'), import('@/lib/procedure/project')])
  const results = await Promise.all(files.map(sortFile))
  const problems = results.flatMap(result => (result.ok ? [] : result.problems))
  const parts = results.flatMap(result => (result.ok ? [result.value] : []))
  if (parts.length === 0) return { ok: false, problems }
  const id = crypto.randomUUID()
  await benchStore().save(id, assemble(parts, emptyProject()))
  for (const part of parts) if (part.is === 'footage') await keepFootage(id, part.given)
  const notices = [...problems, ...parts.flatMap(part => (part.is === 'project' ? [] : part.problems))]
  noticesAtHand.set(id, notices.map(formatProblem))
  return success({ id, problems: notices })
}
