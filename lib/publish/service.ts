import { LEVELS } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Sheet } from '@/lib/procedure/sheet'
import { formatTime } from '@/lib/procedure/time'
import type { Notice } from './head'
import { stepNumbers } from './standing'
import { toLine } from './text'
import { cautionKey, stepsPhrase, type Thing, toSameCautions, toThings } from './things'
import { formatInterval } from './words'

/** One job of a service: what is published of it, what its head says, the folder its files are in. */
export type Job = {
  readonly title: string
  readonly sheet: Sheet
  readonly notices: readonly Notice[]
  readonly folder: string
  /** How long its footage runs, or its talk where there is no footage; undefined where neither has a length. */
  readonly seconds: number | undefined
}

/** A tool or material of the whole service, once, with where it is used: `Belt service: steps 2, 4`. */
export type SharedThing = {
  readonly name: string
  readonly prices: readonly string[]
  readonly uses: readonly string[]
  /** Nobody has kept it in any job yet. */
  readonly isPencilled: boolean
}

/** @returns a shared thing as a line. */
export const thingWords = ({ name, prices, uses, isPencilled }: SharedThing): string =>
  `${name}${prices.length === 0 ? '' : ` (${prices.join('; ')})`} – ${uses.join('; ')}${isPencilled ? ' (pencilled)' : ''}`

const usesOf = (job: Job, { steps }: Thing): string => [job.title, stepsPhrase(steps)].filter(Boolean).join(': ')

/** @returns tools or materials of all jobs, each name once, in the order first needed. */
export const sharedThings = (jobs: readonly Job[], kind: 'tool' | 'material'): readonly SharedThing[] => {
  const byName = new Map<string, { name: string; prices: string[]; uses: string[]; isPencilled: boolean }>()
  for (const job of jobs)
    for (const thing of toThings(job.sheet, kind)) {
      const key = thing.name.toLowerCase()
      const entry = byName.get(key) ?? { name: thing.name, prices: [], uses: [], isPencilled: true }
      if (thing.price !== undefined && !entry.prices.includes(thing.price)) entry.prices.push(thing.price)
      entry.uses.push(usesOf(job, thing))
      if (thing.mark.pencilled === undefined) entry.isPencilled = false
      byName.set(key, entry)
    }
  return [...byName.values()]
}

/** A caution of the whole service, with where it holds. */
export type SharedCaution = { readonly mark: Mark; readonly where: string }

const gravity = (mark: Mark): number => LEVELS.indexOf(mark.level ?? 'caution')

/** @returns the cautions of all jobs, gravest first, then in the order of the jobs; those that say the same once, with every place. */
export const sharedCautions = (jobs: readonly Job[]): readonly SharedCaution[] => {
  const shared = new Map<string, { mark: Mark; places: string[] }>()
  for (const { title, sheet } of jobs) {
    const numbers = stepNumbers(sheet)
    for (const { mark, all } of toSameCautions(sheet.safety)) {
      const entry = shared.get(cautionKey(mark)) ?? { mark, places: [] }
      entry.places.push(
        [title, stepsPhrase(all.flatMap(each => numbers.get(each.id) ?? []))].filter(Boolean).join(', '),
      )
      shared.set(cautionKey(mark), entry)
    }
  }
  return [...shared.values()]
    .map(({ mark, places }) => ({ mark, where: places.join('; ') }))
    .sort((a, b) => gravity(a.mark) - gravity(b.mark))
}

/** When a job is due, and how long it runs, counted through the service. */
export type JobTime = { readonly title: string; readonly startsAt: string; readonly runs: string; readonly due: string }

/** @returns each job's running time, where it starts if all are shown in order, and when it is due. */
export const jobTimes = (jobs: readonly Job[]): readonly JobTime[] => {
  let at: number | undefined = 0
  const clock = (seconds: number | undefined) => (seconds === undefined ? 'not known' : formatTime(seconds))
  return jobs.map(({ title, sheet, seconds }) => {
    const due = formatInterval(sheet.heading.interval) ?? 'not stated'
    const row = { title, startsAt: clock(at), runs: clock(seconds), due }
    at = at === undefined || seconds === undefined ? undefined : at + seconds
    return row
  })
}

/** @returns a job's title as a line. */
export const jobTitle = (sheet: Sheet): string => toLine(sheet.heading.title) || 'Untitled procedure'
