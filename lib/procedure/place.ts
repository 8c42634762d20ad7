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
  const marks = project.marks.map(mark =>
    mark.kind === 'step' || mark.place === undefined ? mark : without(mark, ['place']),
  )
  return numbered({ ...project, marks }, placed)
}

/** Numbers steps 1..n in the order given; marks that are none of them stay as they are. */
export const numbered = (project: Project, steps: readonly Mark[]): Project => {
  const places = new Map(steps.map(({ id }, i) => [id, i + 1]))
  return {
    ...project,
    marks: project.marks.map(mark => {
      const place = places.get(mark.id)
      return place === undefined || mark.place === place ? mark : { ...mark, place }
    }),
  }
}

/** Moves a step to a place among the others, whose order stays. */
export const moveStep = (project: Project, id: string, place: number): Project => {
  const order = stepsInOrder(project.marks)
  const moved = order.find(step => step.id === id)
  if (moved === undefined) return project
  const rest = order.filter(step => step !== moved)
  rest.splice(Math.max(0, Math.min(rest.length, Math.round(place) - 1)), 0, moved)
  return numbered(project, rest)
}
