import type { Project } from '@/lib/procedure/project'
import { toSheet } from '@/lib/procedure/sheet'
import type { Publication, PublishedFile } from './publication'
import { toFileName } from './text'

/** Media types of what is published. @source IANA media types; text/plain where none is registered */
const TYPES = {
  md: 'text/markdown',
  html: 'text/html',
  txt: 'text/plain',
  vtt: 'text/vtt',
  srt: 'application/x-subrip',
  json: 'application/json',
  ffmeta: 'text/plain',
  dita: 'application/dita+xml',
} as const

const file = (
  { procedure }: Project,
  ending: string,
  content: string,
  notices: readonly string[] = [],
): PublishedFile => {
  const type = TYPES[(ending.split('.').at(-1) ?? 'txt') as keyof typeof TYPES]
  const path = `${toFileName(procedure.title, 'procedure')}.${ending}`
  return { path, type, content, ...(notices.length === 0 ? {} : { notices }) }
}

/** Every publication of one project but the packet, which holds them. Each loads its writer only when it is asked for. */
export const SINGLES: readonly Publication[] = [
  {
    name: 'sheet',
    about: 'The job sheet in Markdown: every mark with its time; can be edited by hand and read back.',
    heeds: ['units', 'footageAddress', 'pencilled', 'listFindings'],
    files: async (project, options) => {
      const [{ toSheetMarkdown }, { toPictures }, { selected }] = await Promise.all([
        import('./markdown'),
        import('./pictures'),
        import('./selection'),
      ])
      const sheet = toSheet(project)
      const marks = selected(sheet, options).steps.map(step => step.mark)
      const { files, paths } = toPictures(marks, options.stills)
      return [file(project, 'sheet.md', toSheetMarkdown(sheet, options, paths)), ...files]
    },
  },
  {
    name: 'handout',
    about: 'One HTML file to print on A4 or Letter: cautions as panels, boxes to tick, room for measured values.',
    heeds: ['units', 'footageAddress', 'pencilled', 'listFindings'],
    files: async (project, options) => {
      const { toHandout } = await import('./handout')
      return [file(project, 'handout.html', toHandout(toSheet(project), options))]
    },
  },
  {
    name: 'notes',
    about: 'Show notes in Markdown and plain text: summary, chapters, safety, tools, materials, values.',
    heeds: ['units', 'footageAddress', 'pencilled', 'leastChapter'],
    files: async (project, options) => {
      const { writeNotes } = await import('./notes')
      const notes = writeNotes(toSheet(project), options)
      return [file(project, 'notes.md', notes.markdown), file(project, 'notes.txt', notes.text, notes.notices)]
    },
  },
  {
    name: 'captions',
    about: 'Captions from the corrected transcript, broken at phrases, in WebVTT and SubRip.',
    heeds: ['pencilled'],
    files: async (project, options) => {
      const { transcript } = project.recording
      if (transcript === null) return []
      const [{ toSpoken, withFigures }, { toCaptions, captionNotices }, { toVtt, toSubrip }] = await Promise.all([
        import('./spoken'),
        import('./captions'),
        import('./caption-files'),
      ])
      const isKeptOnly = options.pencilled === 'leave-out'
      const marks = project.marks.filter(mark => !isKeptOnly || mark.pencilled === undefined)
      const spoken = withFigures(toSpoken(transcript, options.sentences), marks)
      const captions = toCaptions(spoken, options.captions)
      if (captions.length === 0) return []
      const notices = captionNotices(captions, options.captions)
      return [
        file(project, 'captions.vtt', toVtt(captions), notices),
        file(project, 'captions.srt', toSubrip(captions)),
      ]
    },
  },
  {
    name: 'chapters',
    about: 'Chapters from the steps, in WebVTT, JSON chapters and ffmetadata.',
    heeds: ['pencilled', 'leastChapter'],
    files: async (project, options) => {
      const [{ toChapters }, files, { selected }, { toLine }] = await Promise.all([
        import('./chapters'),
        import('./chapter-files'),
        import('./selection'),
        import('./text'),
      ])
      const chapters = toChapters(selected(toSheet(project), options), options.notes?.leastChapter)
      const title = toLine(project.procedure.title)
      return [
        file(project, 'chapters.vtt', files.toChaptersVtt(chapters)),
        file(project, 'chapters.json', files.toChaptersJson(chapters, title)),
        file(project, 'chapters.ffmeta', files.toFfmetadata(chapters, title)),
      ]
    },
  },
  {
    name: 'page',
    about: 'A schema.org HowTo as JSON-LD, in a script element to put into a web page.',
    heeds: ['units', 'footageAddress', 'pencilled'],
    files: async (project, options) => {
      const { toPage } = await import('./page')
      return [file(project, 'howto.html', toPage(toSheet(project), options))]
    },
  },
  {
    name: 'task',
    about: 'A DITA 1.3 task, for systems that keep procedures in that standard.',
    heeds: ['units', 'footageAddress', 'pencilled', 'listFindings'],
    files: async (project, options) => {
      const { toTask } = await import('./task')
      return [file(project, 'dita', toTask(toSheet(project), options))]
    },
  },
]
