import { expect, test } from 'vitest'
import { applyEdit, type Edit } from '@/lib/procedure/edit'
import { toSheet } from '@/lib/procedure/sheet'
import { compareSheet } from '@/lib/publish/compare'
import { toSheetMarkdown } from '@/lib/publish/markdown'
import { parseSheetMarkdown } from '@/lib/publish/read-markdown'
import { changesSince, toSinceMarkdown } from '@/lib/publish/since'
import { step } from '../../builders'
import { exampleProject } from './example'

const earlier = exampleProject()
const read = parseSheetMarkdown(toSheetMarkdown(toSheet(earlier)))
if (!read.ok) throw new Error('the example reads back')

const EDITS: readonly Edit[] = [
  { do: 'change-heading', to: { revision: 'C' } },
  { do: 'change-mark', id: 'step-1', to: { text: 'Pull the plug' } },
  { do: 'change-mark', id: 'spec-2', to: { quantity: { nominal: 27, unit: 'N.m' } } },
  { do: 'drop-marks', ids: ['reason-1'] },
  { do: 'add-marks', marks: [step(93, 95, 'Wipe the pulleys', { id: 'wipe', place: 2.5 })] },
]
const now = EDITS.reduce(applyEdit, earlier)

test('[P18] what changed since an earlier sheet is told in words, as done', () => {
  const since = changesSince(now, read.value)
  expect(since.revision).toBe('B')
  expect(since.unread).toEqual([])
  expect([...since.changes].sort()).toEqual([
    expect.stringMatching(/^Added the step “Wipe the pulleys” at /),
    'Changed the revision from “B” to “C”',
    'Changed the text of the step “Pull the mains plug” to “Pull the plug”',
    'Changed the value of the spec “lock bolt torque” from 25 N·m to 27 N·m',
    'Took out the reason “A tight belt cannot be lifted over the pulley rim”',
  ])
  expect(toSinceMarkdown(now, since)).toMatch(
    /^# Yearly service of the pillar drill: what changed since revision B\n\n- /,
  )
})

test('[P18] nothing changed is told so', () => {
  const since = changesSince(earlier, read.value)
  expect(since.changes).toEqual([])
  expect(toSinceMarkdown(earlier, since)).toContain('Nothing.')
})

test('[P18] a sheet of an earlier revision, read back, is doubted in each of its changes', () => {
  const { changes } = compareSheet(now, read.value)
  expect(changes.length).toBeGreaterThan(4)
  for (const { doubt } of changes)
    expect(doubt).toBe(
      'This sheet is revision B, and this recording is at C: taken over, it would undo what was changed since.',
    )
})

const readBack = (text: string) => {
  const back = parseSheetMarkdown(text)
  if (!back.ok) throw new Error('the sheet reads back')
  return back.value
}

test('[P18] an earlier sheet that lost its links is still of the same marks', () => {
  const linkless = toSheetMarkdown(toSheet(earlier)).replace(/\[([^\]]*)\]\([^)]*#t=[^)]*\)/g, '$1')
  expect(linkless).not.toContain('#t=')
  expect(changesSince(earlier, readBack(linkless)).changes).toEqual([])
  expect(changesSince(now, readBack(linkless)).changes).toHaveLength(EDITS.length)
})

test('[P18] what nobody has kept yet is not told as added to a sheet that leaves it out', () => {
  expect(toSheet(earlier).pencilled).toBe(1)
  const kept = readBack(toSheetMarkdown(toSheet(earlier), { pencilled: 'leave-out' }))
  expect(changesSince(earlier, kept).changes).toEqual([])
})

test('[P18] a sheet of other footage is doubted', () => {
  expect(changesSince(earlier, read.value).doubt).toBeUndefined()
  const other = readBack(toSheetMarkdown(toSheet(earlier)).replaceAll('drill service', 'lathe service'))
  expect(changesSince(earlier, other).doubt).toMatch(
    /^This sheet is of “lathe service\.mp4”, but this recording is “drill/,
  )
})
