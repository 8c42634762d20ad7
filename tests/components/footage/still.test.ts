import { afterAll, beforeAll, expect, test } from 'vitest'
import { cropBox } from '@/components/footage/still-drawing'
import { type FootagePage, footagePage } from '../../lib/footage/browser'
import { makeTalk, sampleFolder } from '../../lib/footage/samples'

let folder: Awaited<ReturnType<typeof sampleFolder>>
let page: FootagePage

beforeAll(async () => {
  folder = await sampleFolder()
  await makeTalk(folder.path)
  page = await footagePage('tests/components/footage/still-page.tsx')
  await page.page.setViewportSize({ width: 900, height: 900 })
}, 120_000)

afterAll(async () => {
  await page.close()
  await folder.remove()
})

test('[F33] a crop is a box of the picture, whichever way it was dragged; a slip of the hand is none', () => {
  const crop = { from: { x: 0.75, y: 0.5 }, to: { x: 0.25, y: 0 } }
  expect(cropBox({ crop, signs: [] }, 400, 200)).toEqual({ left: 100, top: 0, width: 200, height: 100 })
  const slip = { from: { x: 0.5, y: 0.5 }, to: { x: 0.51, y: 0.52 } }
  expect(cropBox({ crop: slip, signs: [] }, 400, 200)).toEqual({ left: 0, top: 0, width: 400, height: 200 })
})

test('[F33] three frames are proposed; one is cropped by mouse, ringed from the keyboard, and asked for its text', async () => {
  await page.on(folder.path('end.mp4'), 'return show(file)')
  const { page: tab } = page
  const proposals = tab.locator('main button[aria-pressed]')
  await expect.poll(() => proposals.count(), { timeout: 20_000 }).toBe(3)
  await proposals.first().click()
  await tab.getByLabel('Crop').check()
  const board = tab.getByRole('application')
  const box = await board.boundingBox()
  if (box === null) throw new Error('no board')
  await tab.mouse.move(box.x + box.width * 0.25, box.y + box.height * 0.25)
  await tab.mouse.down()
  await tab.mouse.move(box.x + box.width * 0.75, box.y + box.height * 0.75, { steps: 3 })
  await tab.mouse.up()
  await tab.getByLabel('Ring').check()
  await board.focus()
  for (const key of ['ArrowLeft', 'Enter', 'Shift+ArrowRight', 'Shift+ArrowDown', 'Enter'])
    await tab.keyboard.press(key)
  if (process.env.SHOTS !== undefined) await tab.screenshot({ path: `${process.env.SHOTS}/still.png` })
  const take = tab.getByRole('button', { name: 'Take this still' })
  await take.click()
  expect(await tab.getByRole('alert').textContent()).toMatch(/what the still shows/)
  await tab.getByLabel('What it shows').fill('The test card')
  await take.click()
  await expect.poll(() => tab.evaluate('globalThis.taken')).toMatchObject({ alt: 'The test card' })
  const taken = (await tab.evaluate('globalThis.taken')) as { time: number; width: number; height: number }
  expect(Math.abs(taken.width - 320)).toBeLessThanOrEqual(4)
  expect(Math.abs(taken.height - 180)).toBeLessThanOrEqual(4)
  expect(taken.time).toBeGreaterThanOrEqual(1)
  expect(taken.time).toBeLessThanOrEqual(6)
}, 60_000)

test('[F33] any other frame can be taken: the one the player shows', async () => {
  await page.page.getByRole('button', { name: 'The frame shown now' }).click()
  await page.page.getByRole('button', { name: 'Take this still' }).click()
  await expect.poll(() => page.page.evaluate('globalThis.taken')).toMatchObject({ time: 3, width: 640, height: 360 })
}, 30_000)
