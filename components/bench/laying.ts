import { formatProblem, type Problem, type Result, success } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import { titleOfFile } from '@/lib/procedure/title'
import { openBrowserStore } from '@/lib/store/browser-store'
import type { ProjectStore } from '@/lib/store/store'
import type { GivenFile } from './given'
import { lengthsDoubt } from './lengths'
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

/** Remembers where a project's footage can be had again. */
export const keepFootage = async (id: string, { file, handle }: GivenFile): Promise<void> => {
  filesAtHand.set(id, file)
  if (handle !== undefined) await benchStore().keepSource(id, { handle })
}

type Given = Extract<Sorted, { is: 'footage' }>

/** One project made of what was given, the footage that belongs to it, and what a recording has no room for. */
type Assembled = { readonly project: Project; readonly footage: Given | undefined; readonly aside: readonly string[] }

const titled = (project: Project): Project => {
  if (project.procedure.title !== '') return project
  const name = project.recording.footage?.name ?? project.recording.transcript?.name ?? ''
  return { ...project, procedure: { ...project.procedure, title: titleOfFile(name) } }
}

/** The first of each is laid; a second footage, transcript or project is left aside, and said so. */
export const assemble = (parts: readonly Sorted[], empty: Project): Assembled => {
  const projects = parts.flatMap(part => (part.is === 'project' ? [part.project] : []))
  let project = projects[0] ?? empty
  let footage: Given | undefined
  const aside: string[] = projects
    .slice(1)
    .map(({ procedure }) => `The project “${procedure.title}” was left aside: lay it on the bench by itself.`)
  for (const part of parts) {
    const { recording } = project
    if (part.is === 'footage') {
      const isIts = recording.footage === null || recording.footage.fingerprint === part.footage.fingerprint
      if (footage !== undefined || !isIts)
        aside.push(
          `“${part.footage.name}” was left aside: this recording's footage is “${(footage?.footage ?? recording.footage)?.name}”.`,
        )
      else {
        footage = part
        // The same file under another name: links are written with the name it has now.
        const known = recording.footage?.name ?? part.footage.name
        if (known !== part.footage.name)
          aside.push(`The footage was “${known}” and is “${part.footage.name}” now: links are written with that name.`)
        project = { ...project, recording: { ...recording, footage: { ...recording.footage, ...part.footage } } }
      }
    }
    if (part.is === 'transcript') {
      if (recording.transcript === null)
        project = { ...project, recording: { ...recording, transcript: part.transcript } }
      else
        aside.push(
          `“${part.transcript.name}” was left aside: this recording's transcript is “${recording.transcript.name}”.`,
        )
    }
  }
  const doubt = lengthsDoubt(project.recording)
  return { project: titled(project), footage, aside: doubt === undefined ? aside : [...aside, doubt] }
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
  const { project, footage, aside } = assemble(parts, emptyProject())
  await benchStore().save(id, project)
  if (footage !== undefined) await keepFootage(id, footage.given)
  const notices = [...problems, ...parts.flatMap(part => (part.is === 'project' ? [] : part.problems))]
  noticesAtHand.set(id, [...aside, ...notices.map(formatProblem)])
  return success({ id, problems: notices })
}
