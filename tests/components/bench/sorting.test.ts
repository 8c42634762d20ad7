import { expect, test } from 'vitest'
import { sortFile } from '@/components/bench/sorting'
import { emptyProject } from '@/lib/procedure/project'
import { formatProject } from '@/lib/procedure/project-file'
import { toSheet } from '@/lib/procedure/sheet'
import { toSheetMarkdown } from '@/lib/publish/markdown'
import { exampleProject } from '../../lib/publish/example'

const sort = async (name: string, text: string) => {
  const sorted = await sortFile({ file: new File([text], name) })
  return sorted.ok ? sorted.value.is : sorted.problems.map(({ code, message }) => `${code}: ${message}`).join('\n')
}

test('a project file is told by what it holds, and by its name too', async () => {
  expect(await sort('lid.tellwright.json', formatProject(emptyProject()))).toBe('project')
  expect(await sort('renamed.json', formatProject(emptyProject()))).toBe('project')
})

test.each(['not json', '[]', 'WEBVTT\n\n00:01.000 --> 00:02.000\nlift it\n'])(
  'a *.tellwright.json that is none is refused, with what was expected: %j',
  async text => {
    expect(await sort('lid.tellwright.json', text)).toMatch(
      /^not-(?:json|a-project): .*(?:Choose a \*\.tellwright\.json file|expected "format": "tellwright")/s,
    )
  },
)

test('text named as footage is refused, with what to do; the same text under a name of its own is read', async () => {
  expect(await sort('lid.mp4', 'hello')).toMatch(/^text-as-footage: .*ends in \.vtt, \.srt or \.txt/)
  expect(await sort('lid.txt', 'hello')).toBe('transcript')
  expect(await sort('lid', 'hello')).toBe('transcript')
})

test('a file that is neither text nor footage is refused, with what to do for a transcript', async () => {
  expect(await sort('lid.docx', 'PK\u0003\u0004\u0000\u0000')).toMatch(
    /^unknown-file: .*plain text \(\.txt\), WebVTT or SubRip/,
  )
  expect(await sort('lid.mp4', 'PK\u0003\u0004\u0000\u0000')).toMatch(/^not-media: /)
})

test('a transcript without a cue is refused', async () => {
  expect(await sort('lid.vtt', 'WEBVTT\n')).toMatch(/^no-cues: /)
})

test('a published sheet is no transcript: refused, with where it is read back', async () => {
  const sheet = toSheetMarkdown(toSheet(exampleProject()))
  expect(await sort('drill.sheet.md', sheet)).toMatch(/^sheet-as-transcript: .*Read an edited sheet back…/)
  expect(await sort('drill.sheet.md', sheet.replaceAll('\n', '\r\n'))).toMatch(/^sheet-as-transcript: /)
  expect(await sort('notes.md', '---\ntitle: A talk\n---\n\nTake the lid off.\n')).toBe('transcript')
})

test('what cannot be read, such as a folder, is refused by itself and loses no other file', async () => {
  const folder = new File(['x'], 'clips')
  folder.slice = () => {
    const blob = new Blob()
    blob.arrayBuffer = () => Promise.reject(new DOMException('A requested file or directory could not be found'))
    return blob
  }
  const sorted = await sortFile({ file: folder })
  expect(sorted.ok ? sorted.value.is : sorted.problems.map(({ code }) => code)).toEqual(['unreadable-file'])
})
