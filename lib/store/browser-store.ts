import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import { TellwrightError } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import { type Transcript, talkEnd } from '@/lib/procedure/recording'
import { openLastWords, type QuickStore, quickStore } from './last-words'
import type { BenchEntry, FootageSource, ProjectStore } from './store'

type ProjectRow = BenchEntry & {
  /** The project without its transcript, which is large and seldom changes. */
  readonly project: Project
  /** Grows by one with every save. */
  readonly sequence: number
}

interface Schema extends DBSchema {
  projects: { key: string; value: ProjectRow; indexes: { changed: number } }
  transcripts: { key: string; value: Transcript }
  sources: { key: string; value: FootageSource }
  made: { key: string; value: unknown }
  /** By `project/mark`. */
  stills: { key: string; value: Blob }
}

/** Every still of a project: its keys begin so. */
const stillsOfProject = (id: string): IDBKeyRange => IDBKeyRange.bound(`${id}/`, `${id}0`, false, true)

const failure = (cause: unknown): TellwrightError => {
  if (cause instanceof TellwrightError) return cause
  if (cause instanceof DOMException && cause.name === 'QuotaExceededError')
    return new TellwrightError(
      'disk-full',
      'the browser has no room left to save: free some disk space, or save the project to a file now',
      { cause },
    )
  const why = cause instanceof Error ? cause.message : String(cause)
  return new TellwrightError(
    'store-failed',
    `the browser could not save or load: ${why}. Save the project to a file.`,
    {
      cause,
    },
  )
}

const guarded = async <T>(work: () => Promise<T>): Promise<T> => {
  try {
    return await work()
  } catch (cause) {
    throw failure(cause)
  }
}

const withoutTranscript = (project: Project): Project => ({
  ...project,
  recording: { ...project.recording, transcript: null },
})

const entryOf = (id: string, project: Project, changed: number): BenchEntry => {
  const { footage, transcript } = project.recording
  return {
    id,
    title: project.procedure.title,
    equipment: project.procedure.equipment,
    changed,
    marks: project.marks.length,
    pencilled: project.marks.filter(mark => mark.pencilled !== undefined).length,
    seconds: footage?.seconds ?? talkEnd(transcript),
  }
}

/**
 * Projects in this browser's IndexedDB. A save is on the disk when it resolves (durability strict); the transcript is
 * written only when it changed.
 *
 * @param name of the database
 * @param quick where a page that goes can still write
 * @throws TellwrightError from every method: `disk-full`, `store-failed`
 */
export const openBrowserStore = (name = 'tellwright', quick: QuickStore | undefined = quickStore()): ProjectStore => {
  const lastWords = openLastWords(name, quick)
  let opened: Promise<IDBPDatabase<Schema>> | undefined
  const savedTranscripts = new Map<string, Transcript | null>()
  /** The sequence numbers last read or written: to read a row only for its number reads thousands of marks. */
  const sequences = new Map<string, number>()
  const database = (): Promise<IDBPDatabase<Schema>> => {
    opened ??= openDB<Schema>(name, 2, {
      upgrade(db, from) {
        if (from < 2) db.createObjectStore('stills')
        if (from > 0) return
        db.createObjectStore('projects', { keyPath: 'id' }).createIndex('changed', 'changed')
        db.createObjectStore('transcripts')
        db.createObjectStore('sources')
        db.createObjectStore('made')
      },
      terminated() {
        opened = undefined
      },
    })
    return opened
  }

  const save = async (id: string, project: Project): Promise<void> => {
    const saved = lastWords.beginSave(id)
    const db = await database()
    const { transcript } = project.recording
    const light = withoutTranscript(project)
    const tx = db.transaction(['projects', 'transcripts'], 'readwrite', { durability: 'strict' })
    const rows = tx.objectStore('projects')
    const sequence = (sequences.get(id) ?? (await rows.get(id))?.sequence ?? 0) + 1
    await rows.put({ ...entryOf(id, project, Date.now()), project: light, sequence })
    if (savedTranscripts.get(id) !== transcript) {
      if (transcript === null) await tx.objectStore('transcripts').delete(id)
      else await tx.objectStore('transcripts').put(transcript, id)
    }
    await tx.done
    savedTranscripts.set(id, transcript)
    sequences.set(id, sequence)
    saved()
  }

  const load = async (id: string) => {
    const db = await database()
    const tx = db.transaction(['projects', 'transcripts'])
    const [row, transcript] = await Promise.all([
      tx.objectStore('projects').get(id),
      tx.objectStore('transcripts').get(id),
    ])
    if (row === undefined) return undefined
    sequences.set(id, row.sequence)
    // The schema is fetched when a project is, not before the list can be shown.
    const { parseProject } = await import('@/lib/procedure/project-file')
    const whole = (light: Project) => {
      const recording = { ...light.recording, transcript: transcript ?? null }
      return parseProject(JSON.stringify({ ...light, recording }))
    }
    const last = lastWords.find(id)
    const kept = last === undefined ? undefined : whole(last as Project)
    const result = kept?.ok === true ? kept : whole(row.project)
    if (result.ok) savedTranscripts.set(id, result.value.recording.transcript)
    return result
  }

  const remove = async (id: string): Promise<void> => {
    const db = await database()
    const tx = db.transaction(['projects', 'transcripts', 'sources', 'stills'], 'readwrite', { durability: 'strict' })
    await Promise.all([
      tx.objectStore('projects').delete(id),
      tx.objectStore('transcripts').delete(id),
      tx.objectStore('sources').delete(id),
      tx.objectStore('stills').delete(stillsOfProject(id)),
    ])
    await tx.done
    savedTranscripts.delete(id)
    sequences.delete(id)
    lastWords.forget(id)
  }

  return {
    list: () =>
      guarded(async () => {
        const rows = await (await database()).getAllFromIndex('projects', 'changed')
        return rows.reverse().map(({ project: _, sequence: __, ...entry }) => entry)
      }),
    load: id => guarded(() => load(id)),
    save: (id, project) => guarded(() => save(id, project)),
    keepLast: (id, project) => lastWords.keep(id, withoutTranscript(project)),
    remove: id => guarded(() => remove(id)),
    keepSource: (id, source) => guarded(async () => void (await (await database()).put('sources', source, id))),
    sourceOf: id => guarded(async () => (await database()).get('sources', id)),
    keepStill: (id, mark, picture) =>
      guarded(async () => void (await (await database()).put('stills', picture, `${id}/${mark}`))),
    stillsOf: id =>
      guarded(async () => {
        const tx = (await database()).transaction('stills')
        const [keys, pictures] = await Promise.all([
          tx.store.getAllKeys(stillsOfProject(id)),
          tx.store.getAll(stillsOfProject(id)),
        ])
        return new Map(
          keys.flatMap((key, i) => (pictures[i] === undefined ? [] : [[key.slice(id.length + 1), pictures[i]]])),
        )
      }),
    keepMade: (key, value) => guarded(async () => void (await (await database()).put('made', value, key))),
    madeOf: key => guarded(async () => (await database()).get('made', key)),
  }
}
