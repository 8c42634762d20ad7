import { emptyProject, type Project } from '@/lib/procedure/project'
import type { Transcript } from '@/lib/procedure/recording'
import { draftMarks } from './draft'

/**
 * A project drafted from a transcript alone: heading with the title, recording without footage, pencilled marks.
 *
 * @param title of the procedure; empty until the user gives one
 */
export const draftProject = (transcript: Transcript, title = ''): Project => {
  const project = emptyProject()
  return {
    ...project,
    procedure: { ...project.procedure, title },
    recording: { footage: null, transcript },
    marks: draftMarks(transcript),
  }
}
