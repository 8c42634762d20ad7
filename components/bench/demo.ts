import { TellwrightError } from '@/lib/procedure/problem'
import { benchStore } from './laying'

/** The demo that ships with Tellwright: its files in public/demo/. See the README there for how it was made. */
const DEMO = { project: '/demo/demo.tellwright.json', footage: '/demo/demo.mp4' }

/**
 * Lays the demo on the bench, a fresh copy each time.
 *
 * @returns the id of the new project
 * @throws TellwrightError `demo-missing` when its files are not served
 */
export const openDemo = async (): Promise<string> => {
  const answer = await fetch(DEMO.project)
  if (!answer.ok) throw new TellwrightError('demo-missing', `the demo is not here (${DEMO.project}: ${answer.status})`)
  const { parseProject } = await import('@/lib/procedure/project-file')
  const parsed = parseProject(await answer.text(), DEMO.project)
  if (!parsed.ok) throw new TellwrightError('demo-missing', 'the demo project is damaged; install Tellwright again')
  const id = crypto.randomUUID()
  await benchStore().save(id, parsed.value)
  await benchStore().keepSource(id, { address: DEMO.footage })
  return id
}
