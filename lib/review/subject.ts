import type { Project } from '@/lib/procedure/project'
import { type Sheet, toSheet } from '@/lib/procedure/sheet'

/** What a check may look at. */
export type Subject = {
  readonly project: Project
  readonly sheet: Sheet
}

/** @returns everything the rules look at, computed once for all of them. */
export const toSubject = (project: Project): Subject => ({ project, sheet: toSheet(project) })
