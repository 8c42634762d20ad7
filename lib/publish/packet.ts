import { countOf } from '@/lib/procedure/count'
import type { Project } from '@/lib/procedure/project'
import { talkEnd } from '@/lib/procedure/recording'
import { toSheet } from '@/lib/procedure/sheet'
import { factList, jobFacts, noticeBlock, toContents } from './contents'
import { toNotices } from './head'
import { MANIFEST, toManifest } from './manifest'
import { toPictures } from './pictures'
import type { PublishedFile, PublishOptions } from './publication'
import { selected } from './selection'
import { type Job, jobTitle } from './service'
import { serviceContents } from './service-contents'
import { toServiceNotes } from './service-notes'
import { SINGLES } from './singles'
import { toFileName, toLine } from './text'

/** A project with the options that are its own: stills, clips and findings differ from job to job. */
export type PacketJob = { readonly project: Project; readonly options: PublishOptions }

const inFolder = (folder: string, file: PublishedFile): PublishedFile =>
  folder === '' ? file : { ...file, path: `${folder}/${file.path}` }

const clipFiles = ({ project, options }: PacketJob): readonly PublishedFile[] =>
  toPictures(
    selected(toSheet(project), options).steps.map(step => step.mark),
    options.clips,
    'clips',
  ).files.filter(({ type }) => /^(?:video|audio)\//.test(type))

/** How long a job runs, seconds: its footage, else its talk; undefined where neither has a length. */
const lengthOf = ({ recording: { footage, transcript } }: Project): number | undefined =>
  footage?.seconds ?? (talkEnd(transcript) || undefined)

const jobFiles = async (job: PacketJob, folder: string): Promise<readonly PublishedFile[]> => {
  const all: PublishedFile[] = []
  for (const publication of SINGLES) all.push(...(await publication.files(job.project, job.options)))
  const files = [...all, ...clipFiles(job)]
  const whole = toSheet(job.project)
  const sheet = selected(whole, job.options)
  const steps = sheet.steps.map(({ mark }) => toLine(mark.text))
  const before = [
    ...factList(jobFacts(sheet, job.options.footageAddress)),
    ...toNotices(whole, job.options).map(noticeBlock),
  ]
  const contents = toContents(jobTitle(whole), before, [{ title: 'Files', files, steps }])
  return [{ path: 'index.html', type: 'text/html', content: contents }, ...files].map(file => inFolder(folder, file))
}

const withManifest = async (title: string, files: readonly PublishedFile[]): Promise<readonly PublishedFile[]> => {
  const content = `${JSON.stringify(await toManifest(title, files), null, 2)}\n`
  return [...files, { path: MANIFEST, type: 'application/json', content }]
}

/**
 * The files of a packet: every publication of every job, its stills, the clips given, a page of contents and a manifest. Several
 * jobs each have a folder, in the order given, and notes of the whole service stand at the root.
 *
 * @param title of the service; default: the first job's title, or `Service of N jobs`
 */
export const packetFiles = async (jobs: readonly PacketJob[], title?: string): Promise<readonly PublishedFile[]> => {
  const [only, ...others] = jobs
  if (only === undefined) return []
  if (others.length === 0) return withManifest(title ?? jobTitle(toSheet(only.project)), await jobFiles(only, ''))
  const name = title ?? `Service of ${countOf(jobs.length, 'job')}`
  const placed = jobs.map(({ project, options }, i): Job => {
    const whole = toSheet(project)
    const folder = `${i + 1}-${toFileName(project.procedure.title, 'procedure')}`
    const sheet = selected(whole, options)
    return { title: jobTitle(whole), sheet, notices: toNotices(whole, options), folder, seconds: lengthOf(project) }
  })
  const folders: PublishedFile[][] = []
  for (const [i, job] of jobs.entries()) folders.push([...(await jobFiles(job, placed[i]?.folder ?? `${i + 1}`))])
  const notes: PublishedFile = { path: 'service.md', type: 'text/markdown', content: toServiceNotes(name, placed) }
  const groups = folders.map((files, i) => ({
    title: placed[i]?.title ?? '',
    files,
    steps: placed[i]?.sheet.steps.map(({ mark }) => toLine(mark.text)) ?? [],
  }))
  const contents = toContents(name, serviceContents(placed), [{ title: 'Service', files: [notes] }, ...groups])
  return withManifest(name, [{ path: 'index.html', type: 'text/html', content: contents }, notes, ...folders.flat()])
}
