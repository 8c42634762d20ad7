import type { Mark } from '@/lib/procedure/mark'
import type { Sheet } from '@/lib/procedure/sheet'

/** A tool or material as the sheet lists it: once, with the other marks of the same name. */
export type Thing = { readonly mark: Mark; readonly again: readonly Mark[] }

const nameOf = ({ text }: Mark): string => text.trim().toLowerCase()

/** @returns the tools or materials of a sheet, each name once, in order of time. */
export const thingsOf = (sheet: Sheet, kind: 'tool' | 'material'): readonly Thing[] => {
  const listed = kind === 'tool' ? sheet.tools : sheet.materials
  const all = [
    ...sheet.loose.filter(mark => mark.kind === kind),
    ...sheet.steps.flatMap(step => (kind === 'tool' ? step.tools : step.materials)),
  ]
  const byName = new Map<string, Mark[]>()
  for (const mark of all) {
    const name = nameOf(mark)
    const alike = byName.get(name)
    if (alike === undefined) byName.set(name, [mark])
    else alike.push(mark)
  }
  return listed.map(mark => ({
    mark,
    again: (byName.get(nameOf(mark)) ?? []).filter(other => other.id !== mark.id).toSorted((a, b) => a.start - b.start),
  }))
}
