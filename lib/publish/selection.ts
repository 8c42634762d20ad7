import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Project } from '@/lib/procedure/project'
import { type Sheet, toSheet } from '@/lib/procedure/sheet'
import type { PublishOptions } from './publication'

/** @returns every mark of a sheet, step by step. */
export const marksOf = (sheet: Sheet): readonly Mark[] => [
  ...sheet.loose,
  ...sheet.steps.flatMap(s => [
    s.mark,
    ...s.cautions,
    ...s.tools,
    ...s.materials,
    ...s.specs,
    ...s.checks,
    ...s.reasons,
    ...s.symptoms,
  ]),
]

/** @returns the sheet without the marks nobody has kept; what stood under a step that goes stands where its time puts it. */
const keptOnly = (sheet: Sheet): Sheet => {
  const empty = emptyProject()
  const { footage } = sheet
  const project: Project = {
    ...empty,
    procedure: sheet.heading,
    recording: { ...empty.recording, footage: footage === null ? null : { ...footage, bytes: 0, fingerprint: '' } },
    marks: marksOf(sheet).filter(mark => mark.pencilled === undefined),
    waivers: sheet.waivers,
  }
  return toSheet(project)
}

/** @returns the part of a sheet that is published. */
export const selected = (sheet: Sheet, options: PublishOptions): Sheet =>
  options.pencilled === 'leave-out' && sheet.pencilled > 0 ? keptOnly(sheet) : sheet
