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
  const row = await db.get('projects', 'a')
  row.project.marks[0].start = 'soon'
  await db.put('projects', row)
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
