import type { Mark } from './mark'
import type { Project } from './project'
import { without } from './without'

/** Steps in procedure order: by place, then by time. Steps without a place stand where they were said. */
export const stepsInOrder = (marks: readonly Mark[]): readonly Mark[] =>
  marks
    .filter(mark => mark.kind === 'step')
    .sort(
      (a, b) =>
        (a.place ?? Number.POSITIVE_INFINITY) - (b.place ?? Number.POSITIVE_INFINITY) ||
        a.start - b.start ||
        a.end - b.end,
    )

/** Numbers every step 1..n; a step that has no place yet goes where its time puts it among the others. */
export const renumber = (project: Project): Project => {
  const placed = [...stepsInOrder(project.marks.filter(mark => mark.place !== undefined))]
  const unplaced = stepsInOrder(project.marks.filter(mark => mark.place === undefined))
  for (const step of unplaced) {
    let at = placed.length
    while (at > 0 && (placed[at - 1]?.start ?? 0) > step.start) at--
    placed.splice(at, 0, step)
  }
  const places = new Map(placed.map((step, i) => [step.id, i + 1]))
  return {
    ...project,
    marks: project.marks.map(mark => {
      const place = places.get(mark.id)
      if (place === undefined) return mark.place === undefined ? mark : without(mark, ['place'])
      return mark.place === place ? mark : { ...mark, place }
    }),
  }
}

/** Moves a step to a place among the others, whose order stays. */
export const moveStep = (project: Project, id: string, place: number): Project => {
  const order = stepsInOrder(project.marks).map(step => step.id)
  if (!order.includes(id)) return project
  const rest = order.filter(other => other !== id)
  rest.splice(Math.max(0, Math.min(rest.length, Math.round(place) - 1)), 0, id)
  const places = new Map(rest.map((step, i) => [step, i + 1]))
  return {
    ...project,
    marks: project.marks.map(mark => {
      const to = places.get(mark.id)
      return to === undefined || mark.place === to ? mark : { ...mark, place: to }
    }),
  }
}
