import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Project } from '@/lib/procedure/project'

let count = 0

/** A mark of any kind: `mark('tool', 3, 4, '10 mm socket')`. Ids count up unless given. */
export const mark = (kind: Kind, start: number, end: number, text: string, more: Partial<Mark> = {}): Mark => ({
  id: `${kind}-${++count}`,
  kind,
  start,
  end,
  text,
  said: '',
  ...more,
})

const ofKind =
  (kind: Kind) =>
  (start: number, end: number, text: string, more: Partial<Mark> = {}): Mark =>
    mark(kind, start, end, text, more)

export const step = ofKind('step')
export const caution = ofKind('caution')
export const spec = ofKind('spec')
export const tool = ofKind('tool')
export const material = ofKind('material')
export const check = ofKind('check')
export const reason = ofKind('reason')
export const symptom = ofKind('symptom')

/** A project of these marks and nothing else. */
export const projectOf = (...marks: Mark[]): Project => ({ ...emptyProject(), marks })
