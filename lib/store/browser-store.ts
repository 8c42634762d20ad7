import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { Mark } from '@/lib/procedure/mark'
import { TellwrightError } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import { type Transcript, talkEnd } from '@/lib/procedure/recording'
import { openLastWords, type QuickStore, quickStore } from './last-words'
import { changedPieces, type Piece, toPieces } from './pieces'
import type { BenchEntry, FootageSource, ProjectStore } from './store'

type ProjectRow = BenchEntry & {
  /** The project without its transcript, which is large and seldom changes, and without its marks where it has `pieces`. */
  readonly project: Project
  /** Names of the pieces its marks are written in, in order; absent: written by an earlier Tellwright, the marks are in it. */
  readonly pieces?: readonly string[]
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
  /** Marks, by `project/first mark`: an edit writes those beside it, not thousands. */
  pieces: { key: string; value: readonly Mark[] }
}

/** Every still or piece of a project: its keys begin so. */
const allOfProject = (id: string): IDBKeyRange => IDBKeyRange.bound(`${id}/`, `${id}0`, false, true)

/** Stands for the marks of a piece that is not there: no mark, so that loading says where the damage is. */
const MISSING = null as unknown as Mark

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
  /** What was last written or read of each project's marks. */
  const savedPieces = new Map<string, readonly Piece[]>()
  const open = (): Promise<IDBPDatabase<Schema>> =>
    new Promise((resolve, reject) => {
      openDB<Schema>(name, 3, {
        upgrade(db, from) {
          if (from < 2) db.createObjectStore('stills')
          if (from < 3) db.createObjectStore('pieces')
          if (from > 0) return
          db.createObjectStore('projects', { keyPath: 'id' }).createIndex('changed', 'changed')
          db.createObjectStore('transcripts')
          db.createObjectStore('sources')
          db.createObjectStore('made')
        },
        terminated() {
          opened = undefined
        },
        // A later Tellwright in another tab brings its store up to date: it must not wait for this one.
        blocking() {
          void opened?.then(db => db.close())
          opened = undefined
        },
        blocked() {
          opened = undefined
          const message =
            'an earlier Tellwright is open in another tab and holds the store: close its tabs, then open this again.'
          reject(new TellwrightError('store-failed', message))
        },
      }).then(resolve, reject)
    })
  const database = (): Promise<IDBPDatabase<Schema>> => {
    opened ??= open()
    return opened
  }

  const save = async (id: string, project: Project): Promise<void> => {
    const saved = lastWords.beginSave(id)
    const db = await database()
    const { transcript } = project.recording
    const light = withoutTranscript(project)
    const tx = db.transaction(['projects', 'transcripts', 'pieces'], 'readwrite', { durability: 'strict' })
    const rows = tx.objectStore('projects')
    const sequence = (sequences.get(id) ?? (await rows.get(id))?.sequence ?? 0) + 1
    const pieces = toPieces(project.marks)
    const written = savedPieces.get(id)
    const marks = tx.objectStore('pieces')
    if (written === undefined) await marks.delete(allOfProject(id))
    const { put, gone } = changedPieces(written ?? [], pieces)
    for (const piece of gone) await marks.delete(`${id}/${piece}`)
    for (const piece of put) await marks.put(piece.marks, `${id}/${piece.name}`)
    const names = pieces.map(piece => piece.name)
    await rows.put({ ...entryOf(id, project, Date.now()), project: { ...light, marks: [] }, pieces: names, sequence })
    if (savedTranscripts.get(id) !== transcript) {
      if (transcript === null) await tx.objectStore('transcripts').delete(id)
      else await tx.objectStore('transcripts').put(transcript, id)
    }
    await tx.done
    savedTranscripts.set(id, transcript)
    sequences.set(id, sequence)
    savedPieces.set(id, pieces)
    saved()
  }

  const load = async (id: string) => {
    const db = await database()
    const tx = db.transaction(['projects', 'transcripts', 'pieces'])
    const [row, transcript, keys, pieces] = await Promise.all([
      tx.objectStore('projects').get(id),
      tx.objectStore('transcripts').get(id),
      tx.objectStore('pieces').getAllKeys(allOfProject(id)),
      tx.objectStore('pieces').getAll(allOfProject(id)),
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
    const byKey = new Map(keys.map((key, i) => [key, pieces[i]]))
    const marks = row.pieces?.flatMap(name => byKey.get(`${id}/${name}`) ?? [MISSING]) ?? row.project.marks
    const result = kept?.ok === true ? kept : whole({ ...row.project, marks })
    // What was parsed are other objects than those written: the first save writes them all.
    savedPieces.delete(id)
    if (result.ok) savedTranscripts.set(id, result.value.recording.transcript)
    return result
  }

  const remove = async (id: string): Promise<void> => {
    const db = await database()
    const tx = db.transaction(['projects', 'transcripts', 'sources', 'stills', 'pieces'], 'readwrite', {
      durability: 'strict',
    })
    await Promise.all([
      tx.objectStore('projects').delete(id),
      tx.objectStore('transcripts').delete(id),
      tx.objectStore('sources').delete(id),
      tx.objectStore('stills').delete(allOfProject(id)),
      tx.objectStore('pieces').delete(allOfProject(id)),
    ])
    await tx.done
    savedTranscripts.delete(id)
    sequences.delete(id)
    savedPieces.delete(id)
    lastWords.forget(id)
  }

  return {
    list: () =>
      guarded(async () => {
        const rows = await (await database()).getAllFromIndex('projects', 'changed')
        return rows.reverse().map(({ project: _, sequence: __, pieces: ___, ...entry }) => entry)
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
          tx.store.getAllKeys(allOfProject(id)),
          tx.store.getAll(allOfProject(id)),
        ])
        return new Map(
          keys.flatMap((key, i) => (pictures[i] === undefined ? [] : [[key.slice(id.length + 1), pictures[i]]])),
        )
      }),
    keepMade: (key, value) => guarded(async () => void (await (await database()).put('made', value, key))),
    madeOf: key => guarded(async () => (await database()).get('made', key)),
  }
}
