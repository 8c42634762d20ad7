import 'fake-indexeddb/auto'
import { openDB } from 'idb'
import { expect, test } from 'vitest'
import { emptyProject, type Project } from '@/lib/procedure/project'
import { openBrowserStore } from '@/lib/store/browser-store'
import { projectOf, step } from '../../builders'

const transcript = {
  name: 'a.vtt',
  form: 'webvtt' as const,
  cues: [{ start: 0, end: 9, text: 'so pull the cover off' }],
}
const withTalk = (project: Project): Project => ({ ...project, recording: { ...project.recording, transcript } })

test('[S1] what was saved is loaded the same, by another opening of the store too', async () => {
  const project = withTalk(projectOf(step(1, 2, 'Pull the cover off')))
  await openBrowserStore('one').save('a', project)
  expect(await openBrowserStore('one').load('a')).toEqual({ ok: true, value: project })
})

test('[S1] saving again without a change of transcript keeps the transcript; taking it away removes it', async () => {
  const store = openBrowserStore('two')
  const project = withTalk(emptyProject())
  await store.save('a', project)
  const edited = { ...project, procedure: { ...project.procedure, title: 'Cover' } }
  await store.save('a', edited)
  expect(await openBrowserStore('two').load('a')).toEqual({ ok: true, value: edited })
  const bare = { ...edited, recording: { footage: null, transcript: null } }
  await store.save('a', bare)
  expect(await openBrowserStore('two').load('a')).toEqual({ ok: true, value: bare })
})

test('[S2] the list is newest first and says what each holds', async () => {
  const store = openBrowserStore('three')
  await store.save('old', emptyProject())
  await new Promise(resolve => setTimeout(resolve, 3))
  await store.save('new', withTalk(projectOf(step(1, 2, 'Do', { pencilled: { confidence: 0.5, reason: '' } }))))
  const list = await store.list()
  expect(list.map(({ changed: _, ...entry }) => entry)).toEqual([
    { id: 'new', title: '', equipment: '', marks: 1, pencilled: 1, seconds: 9 },
    { id: 'old', title: '', equipment: '', marks: 0, pencilled: 0, seconds: 0 },
  ])
})

test('[S3] a removed project is gone with its source', async () => {
  const store = openBrowserStore('four')
  await store.save('a', withTalk(emptyProject()))
  await store.keepSource('a', { address: '/demo/x.mp4' })
  await store.remove('a')
  expect([await store.load('a'), await store.sourceOf('a'), await store.list()]).toEqual([undefined, undefined, []])
})

test('[S5] stills are kept by project and mark, and go with their project', async () => {
  const store = openBrowserStore('six')
  await store.save('a', emptyProject())
  await store.keepStill('a', 'm1', new Blob(['one']))
  await store.keepStill('ab', 'm1', new Blob(['other']))
  await store.keepStill('a', 'm1', new Blob(['two']))
  const texts = async (id: string) =>
    Promise.all(
      [...(await openBrowserStore('six').stillsOf(id))].map(async ([mark, blob]) => [mark, await blob.text()]),
    )
  expect(await texts('a')).toEqual([['m1', 'two']])
  await store.remove('a')
  expect([await texts('a'), await texts('ab')]).toEqual([[], [['m1', 'other']]])
})

test('[S4] a damaged row is refused with the path of what is wrong', async () => {
  const store = openBrowserStore('five')
  await store.save('a', projectOf(step(1, 2, 'Do')))
  const db = await openDB('five')
  const [key] = await db.getAllKeys('pieces')
  const [piece] = await db.getAll('pieces')
  await db.put('pieces', [{ ...piece[0], start: 'soon' }], key)
  const loaded = await store.load('a')
  expect(loaded?.ok === false && loaded.problems.map(problem => problem.place?.path)).toEqual(['marks[0].start'])
})

/** A quick store in memory, as the browser's. */
const quickStore = () => {
  const kept = new Map<string, string>()
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  }
}
const titled = (title: string): Project => {
  const project = withTalk(emptyProject())
  return { ...project, procedure: { ...project.procedure, title } }
}

test('[S6] what a page kept when it went is loaded, also over a save that had begun before', async () => {
  const quick = quickStore()
  const store = openBrowserStore('seven', quick)
  await store.save('a', titled('one'))
  const saving = store.save('a', titled('two'))
  store.keepLast('a', titled('three'))
  await saving
  expect(await openBrowserStore('seven', quick).load('a')).toEqual({ ok: true, value: titled('three') })
  await store.save('a', titled('four'))
  expect(quick.kept.size).toBe(0)
  expect(await openBrowserStore('seven', quick).load('a')).toEqual({ ok: true, value: titled('four') })
})

test('[S6] what was kept and is damaged is passed over; no room and no quick store lose no more than that', async () => {
  const quick = quickStore()
  const store = openBrowserStore('eight', quick)
  await store.save('a', titled('one'))
  for (const damaged of ['{', '[]', '{"format":"tellwright"}']) {
    quick.kept.set('eight/last/a', damaged)
    expect(await store.load('a')).toEqual({ ok: true, value: titled('one') })
  }
  await store.remove('a')
  expect(quick.kept.size).toBe(0)
  const full = {
    ...quick,
    setItem: () => {
      throw new DOMException('full', 'QuotaExceededError')
    },
  }
  expect(() => openBrowserStore('eight', full).keepLast('a', titled('two'))).not.toThrow()
})

/** Counts what is written into the store's pieces. */
const piecesWritten = async (work: () => Promise<void>): Promise<number> => {
  const { put } = IDBObjectStore.prototype
  let count = 0
  IDBObjectStore.prototype.put = function (...given) {
    if (this.name === 'pieces') count++
    return put.apply(this, given)
  }
  try {
    await work()
  } finally {
    IDBObjectStore.prototype.put = put
  }
  return count
}

test('[S1] of thousands of marks a save writes those beside the change, and all are loaded again in their order', async () => {
  const marks = Array.from({ length: 3000 }, (_, i) => step(i, i + 1, `Do ${i}`, { id: `mark ${i}` }))
  let project = projectOf(...marks)
  const store = openBrowserStore('many')
  await store.save('a', project)
  const change = async (next: readonly (typeof marks)[number][]) => {
    project = { ...project, marks: next }
    const written = await piecesWritten(() => store.save('a', project))
    expect(await openBrowserStore('many').load('a')).toEqual({ ok: true, value: project })
    return written
  }
  const changed = marks.map((mark, i) => (i === 1500 ? { ...mark, text: 'Otherwise' } : mark))
  expect(await change(changed)).toBe(1)
  expect(await change(changed.filter((_, i) => i !== 1500))).toBeLessThanOrEqual(2)
  const moved = changed.toReversed()
  await change(moved)
  expect(await change([])).toBe(0)
  expect(await change(moved.slice(7))).toBeGreaterThan(0)
})

test('[S1] what lies from before is not mixed in: a project opened again writes all its marks anew', async () => {
  const [one, two] = [step(1, 2, 'one'), step(2, 3, 'two')]
  await openBrowserStore('anew').save('a', projectOf(one, two))
  await openBrowserStore('anew').save('a', projectOf(two))
  expect(await openBrowserStore('anew').load('a')).toEqual({ ok: true, value: projectOf(two) })
})

test('[S1] a project of an earlier Tellwright, its marks in one, is loaded', async () => {
  const project = projectOf(step(1, 2, 'Do'))
  await openBrowserStore('early').save('a', emptyProject())
  const db = await openDB('early')
  const { pieces: _, ...row } = await db.get('projects', 'a')
  await db.put('projects', { ...row, project })
  db.close()
  expect(await openBrowserStore('early').load('a')).toEqual({ ok: true, value: project })
})

test('[S4] marks that are gone from the disk are told, not passed over', async () => {
  await openBrowserStore('holes').save('a', projectOf(step(1, 2, 'Do')))
  const db = await openDB('holes')
  await db.clear('pieces')
  db.close()
  const loaded = await openBrowserStore('holes').load('a')
  expect(loaded?.ok === false && loaded.problems.map(({ place }) => place?.path)).toEqual(['marks[0]'])
})

test('[S1] a later Tellwright in another tab is not kept from bringing the store up to date', async () => {
  await openBrowserStore('later').save('a', emptyProject())
  const later = await openDB('later', 99)
  expect(later.version).toBe(99)
  later.close()
})

test('[S4] an earlier Tellwright in another tab, which holds the store, is told with what to do; once it is closed, all goes', async () => {
  const early = await openDB('held', 2, {
    upgrade: db => {
      for (const name of ['projects', 'transcripts', 'sources', 'made', 'stills']) db.createObjectStore(name)
    },
  })
  const store = openBrowserStore('held')
  await expect(store.list()).rejects.toThrow(/an earlier Tellwright is open in another tab.*close its tabs/)
  early.close()
  await expect.poll(() => store.madeOf('x').then(() => 'open', String)).toBe('open')
})
