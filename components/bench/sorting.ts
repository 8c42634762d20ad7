import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import { parseProject } from '@/lib/procedure/project-file'
import type { Footage, Transcript } from '@/lib/procedure/recording'
import { readTranscript } from '@/lib/transcript/read'
import type { GivenFile } from './given'

/** What a given file turned out to be. */
export type Sorted =
  | { readonly is: 'project'; readonly project: Project }
  | { readonly is: 'transcript'; readonly transcript: Transcript; readonly problems: readonly Problem[] }
  | {
      readonly is: 'footage'
      readonly footage: Footage
      readonly given: GivenFile
      readonly problems: readonly Problem[]
    }

/** Bytes looked at to tell text from footage. */
const HEAD = 4096
const WORDY = /\.(vtt|srt|txt|json|csv|tsv|md)$/i
/** Names of footage and sound; `.ts` is a program's text as often. */
const FILMY =
  /\.(mp4|m4v|mov|qt|webm|mkv|avi|mpe?g|mts|m2ts|wmv|flv|3gp|ogv|wav|mp3|m4a|aac|og[ga]|opus|flac|wma|aiff?)$/i
const OURS = /\.tellwright\.json$/i

/** Text has no zero bytes, unless it is UTF-16, which says so in its first two. */
const isText = (head: Uint8Array): boolean => {
  const isUtf16 = (head[0] === 0xff && head[1] === 0xfe) || (head[0] === 0xfe && head[1] === 0xff)
  return isUtf16 || !head.includes(0)
}

const asFootage = async (given: GivenFile): Promise<Result<Sorted>> => {
  const { file } = given
  const [{ openFootage }, { fingerprintOf }] = await Promise.all([
    import('@/lib/footage/open'),
    import('@/lib/footage/fingerprint'),
  ])
  const opened = await openFootage(file, file.name)
  if (!opened.ok) return opened
  const { seconds, notices, close } = opened.value
  close()
  const footage = { name: file.name, bytes: file.size, seconds, fingerprint: await fingerprintOf(file) }
  return success({ is: 'footage', footage, given, problems: notices })
}

const textAsFootage = (name: string): Result<Sorted> =>
  refusal({
    code: 'text-as-footage',
    message:
      'this is named as footage but holds text. Choose the recording itself; if it is the transcript, give it a name that ends in .vtt, .srt or .txt first.',
    place: { file: name },
  })

/** Neither text nor anything that opens as footage, by a name that promises neither: a text processor's file, a picture. */
const unknownFile = (name: string): Result<Sorted> =>
  refusal({
    code: 'unknown-file',
    message:
      'this is neither footage, sound, transcript nor project file. If it holds the transcript, save it there as plain text (.txt), WebVTT or SubRip; if it is the recording, save it as MP4.',
    place: { file: name },
  })

/** A folder, or a file that went away meanwhile. */
const unreadable = (name: string): Result<Sorted> =>
  refusal({
    code: 'unreadable-file',
    message:
      'this could not be read: it is a folder, or was moved or locked meanwhile. Choose the file itself once more.',
    place: { file: name },
  })

/** A sheet as it is published: front matter that opens with its title, then its steps or links to times. */
const isSheet = (text: string): boolean =>
  /^\uFEFF?---\r?\ntitle:/.test(text) && /^## Steps\s*$|\]\([^)\s]*#t=\d/m.test(text)

const sheetAsTranscript = (name: string): Result<Sorted> =>
  refusal({
    code: 'sheet-as-transcript',
    message:
      'this is a published sheet, no transcript. To take over what was edited in it, open its recording and choose Publish, then “Read an edited sheet back…”.',
    place: { file: name },
  })

/**
 * Tells by its content what a file is: a project, a transcript or footage.
 *
 * @returns what was read; problems say what was found, where and what to do. The file is never changed.
 */
export const sortFile = async (given: GivenFile): Promise<Result<Sorted>> => {
  const { file } = given
  const place = { file: file.name }
  if (file.size === 0)
    return refusal({ code: 'empty-file', message: 'this file is empty. Choose another, or copy it again.', place })
  const head = await file
    .slice(0, HEAD)
    .arrayBuffer()
    .catch(() => undefined)
  if (head === undefined) return unreadable(file.name)
  const isTextual = isText(new Uint8Array(head))
  if (FILMY.test(file.name) || !(isTextual || WORDY.test(file.name))) {
    const footage = await asFootage(given)
    if (footage.ok) return footage
    if (isTextual) return textAsFootage(file.name)
    return FILMY.test(file.name) ? footage : unknownFile(file.name)
  }
  const bytes = new Uint8Array(await file.arrayBuffer())
  const text = new TextDecoder().decode(bytes)
  if (OURS.test(file.name) || (/^\s*\{/.test(text) && /"format"\s*:\s*"tellwright"/.test(text.slice(0, 400)))) {
    const parsed = parseProject(text, file.name)
    return parsed.ok ? success({ is: 'project', project: parsed.value }) : parsed
  }
  if (isSheet(text)) return sheetAsTranscript(file.name)
  const read = readTranscript(bytes, file.name)
  return read.ok
    ? success({ is: 'transcript', transcript: read.value.transcript, problems: read.value.problems })
    : read
}
