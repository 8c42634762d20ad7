import { afterAll, beforeAll, expect, test } from 'vitest'
import { type FootagePage, footagePage } from '../../lib/footage/browser'
import { ffmpeg, makeTalk, sampleFolder } from '../../lib/footage/samples'

let folder: Awaited<ReturnType<typeof sampleFolder>>
let page: FootagePage

beforeAll(async () => {
  folder = await sampleFolder()
  await makeTalk(folder.path)
  await ffmpeg('-i', folder.path('end.mp4'), '-an', '-c', 'copy', folder.path('silent.mp4'))
  page = await footagePage('tests/components/footage/page.tsx')
  await page.page.setViewportSize({ width: 800, height: 800 })
}, 60_000)

afterAll(async () => {
  await page.close()
  await folder.remove()
})

const MARKS = `[
  { id: 'a', kind: 'step', label: 'step 1', start: 0.2, end: 2.6 },
  { id: 'b', kind: 'step', label: 'step 2', start: 3.1, end: 7.5 },
  { id: 'c', kind: 'spec', label: 'length', start: 4, end: 5, isPencilled: true },
]`

const show = async (name: string) => {
  const again = "bench.log.length = 0; document.querySelector('main')?.remove()"
  const seconds = await page.on<number>(folder.path(name), `${again}; return bench.show(file, ${MARKS})`)
  await page.page.waitForFunction('controller?.current && document.querySelector("video")?.readyState > 2')
  return seconds
}
const log = () => page.page.evaluate('bench.log') as Promise<unknown[][]>

test('[F6] edges of the chosen mark move from the keyboard, in tenths, seconds and to the next pause', async () => {
  await show('end.mp4')
  const end = page.page.getByRole('slider', { name: 'End of step 1' })
  await end.focus()
  await page.page.keyboard.press('ArrowLeft')
  await page.page.keyboard.press('Shift+ArrowLeft')
  await page.page.keyboard.press('Control+ArrowRight')
  const [one, two, three] = await log()
  expect([one, two]).toEqual([
    ['edge', 'a', 'end', 2.5],
    ['edge', 'a', 'end', 1.5],
  ])
  expect(three?.slice(0, 3)).toEqual(['edge', 'a', 'end'])
  expect(three?.[3]).toBeGreaterThan(1.5)
})

test('[F6] edges are dragged with the mouse and snap to a pause nearby, unless Alt is held', async () => {
  await show('end.mp4')
  const drag = async (seconds: number) => {
    const box = await page.page.getByRole('slider', { name: 'End of step 1' }).boundingBox()
    if (box === null) throw new Error('the edge is not on the page')
    await page.page.mouse.move(box.x + box.width / 2, box.y + 20)
    await page.page.mouse.down()
    await page.page.mouse.move((800 * seconds) / 8.03, box.y + 20, { steps: 4 })
    await page.page.mouse.up()
  }
  await drag(2.85)
  await page.page.keyboard.down('Alt')
  await drag(2.9)
  await page.page.keyboard.up('Alt')
  const edges = (await log()).filter(([what]) => what === 'edge')
  expect(edges[0]).toEqual(['edge', 'a', 'end', 3])
  expect(edges[1]?.[3]).toBeCloseTo(2.9, 1)
})

test('[F6] a click on a bracket chooses its mark, a click into the sound seeks', async () => {
  await show('end.mp4')
  const strip = await page.page.getByRole('region', { name: 'Sound' }).boundingBox()
  if (strip === null) throw new Error('no strip')
  await page.page.mouse.click(600, strip.y + 4)
  await page.page.mouse.click(400, strip.y + 90)
  const said = await log()
  expect(said[0]).toEqual(['choose', 'b'])
  expect(said[1]?.[0]).toBe('seek')
  expect(said[1]?.[1]).toBeCloseTo(4, 1)
  await expect.poll(() => page.page.evaluate('controller.current.time()')).toBeCloseTo(4, 1)
})

test('[F6] footage without sound has a strip too: marks, edges, seeking', async () => {
  await show('silent.mp4')
  await page.page.getByRole('button', { name: 'On 5 seconds' }).click()
  await expect.poll(() => page.page.evaluate('controller.current.time()')).toBeCloseTo(5, 3)
  await page.page.getByRole('button', { name: 'Back one frame' }).click()
  await expect.poll(() => page.page.evaluate('controller.current.time()')).toBeCloseTo(5 - 1 / 25, 3)
  expect(await page.page.getByRole('slider', { name: 'Start of step 1' }).count()).toBe(1)
})

test('[F6] sound alone plays, without an empty picture', async () => {
  await show('talk.wav')
  expect(await page.page.locator('video').isVisible()).toBe(false)
  await page.page.getByRole('button', { name: 'Play' }).click()
  await expect.poll(() => page.page.evaluate('controller.current.time()')).toBeGreaterThan(0.3)
  await page.page.getByRole('button', { name: 'Pause' }).click()
})
