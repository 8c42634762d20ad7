import { expect, test } from 'vitest'
import { openSession } from '@/components/bench/session'
import { emptyProject, type Project } from '@/lib/procedure/project'
import type { ProjectStore } from '@/lib/store/store'

/** A disk that answers when told to. */
const slowDisk = () => {
  const written: Project[] = []
  const waiting: ((error?: Error) => void)[] = []
  const store = {
    save: (_: string, project: Project) =>
      new Promise<void>((resolve, reject) => {
        waiting.push(error => {
          if (error !== undefined) return reject(error)
          written.push(project)
          resolve()
        })
      }),
  } as Pick<ProjectStore, 'save'> as ProjectStore
  const answer = async (error?: Error) => {
    waiting.shift()?.(error)
    await new Promise(resolve => setTimeout(resolve))
  }
  return { store, written, answer, waiting }
}

const title = (text: string) => ({ do: 'change-heading', to: { title: text } }) as const

test('one save at a time, and the newest is what lies on the disk in the end', async () => {
  const { store, written, answer, waiting } = slowDisk()
  const session = openSession('a', emptyProject(), store)
  session.perform(title('one'))
  session.perform(title('two'))
  session.perform(title('three'))
  expect(waiting.length).toBe(1)
  expect(session.get().saved).toEqual({ is: 'saving' })
  await answer()
  await answer()
  expect(written.map(project => project.procedure.title)).toEqual(['one', 'three'])
  expect(session.get().saved).toEqual({ is: 'saved' })
})

test('a failed save says why, keeps the work, and can be tried again', async () => {
  const { store, written, answer } = slowDisk()
  const session = openSession('a', emptyProject(), store)
  session.perform(title('one'))
  await answer(new Error('the disk is full'))
  expect(session.get().saved).toEqual({ is: 'failed', why: 'the disk is full' })
  expect(session.get().history.present.procedure.title).toBe('one')
  session.save()
  await answer()
  expect(written.map(project => project.procedure.title)).toEqual(['one'])
})

test('undo is saved too; a session without a store saves nothing', async () => {
  const { store, written, answer } = slowDisk()
  const session = openSession('a', emptyProject(), store)
  session.perform(title('one'))
  await answer()
  session.undo()
  await answer()
  expect(written.map(project => project.procedure.title)).toEqual(['one', ''])
  const guest = openSession('a', emptyProject(), undefined)
  guest.perform(title('two'))
  expect(guest.get().saved).toEqual({ is: 'saved' })
})

test('what is typed into a field is one change, however often it is saved on the way', async () => {
  const session = openSession('a', emptyProject(), undefined)
  session.perform(title('before'))
  const typing = (text: string, key: string) => session.during(key, () => session.perform(title(text)))
  typing('on', 'first visit')
  typing('one', 'first visit')
  typing('two', 'second visit')
  session.undo()
  expect(session.get().history.present.procedure.title).toBe('one')
  session.undo()
  expect(session.get().history.present.procedure.title).toBe('before')
  session.redo()
  expect(session.get().history.present.procedure.title).toBe('one')
})

test('what a change made possible joins it; what came between keeps typing apart', () => {
  const session = openSession('a', emptyProject(), undefined)
  const author = { do: 'change-heading', to: { author: 'Ida' } } as const
  session.during('visit', () => session.perform(title('one')))
  session.during(undefined, () => session.perform(author))
  expect(session.get().history.past.length).toBe(1)
  session.perform(title('by a remedy'))
  session.during('visit', () => session.perform(title('two')))
  session.during(undefined, () => session.perform(title('three')))
  expect(session.get().history.past.map(project => project.procedure.title)).toEqual(['', 'one', 'by a remedy'])
})
