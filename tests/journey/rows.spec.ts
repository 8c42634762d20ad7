import { execFileSync } from 'node:child_process'
import { expect, type Locator, test } from '@playwright/test'
import { lay, noticeOf, openDemo, sheetOf, tempFile, vtt } from './bench'

/** @returns the height of the tallest thing in a row, and the row's own without its padding, in px */
const heights = (row: Locator) =>
  row.evaluate(element => {
    const { paddingTop, paddingBottom, borderBottomWidth } = getComputedStyle(element)
    const around = [paddingTop, paddingBottom, borderBottomWidth].reduce((sum, px) => sum + Number.parseFloat(px), 0)
    const inside = [...element.children].map(child => child.getBoundingClientRect().height)
    return {
      row: Math.round(element.getBoundingClientRect().height - around),
      tallest: Math.round(Math.max(...inside)),
    }
  })

test('at 1440 px the draft row, the transport and a walked-to finding take one row each', async ({ page }) => {
  await openDemo(page)
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await expect(page.getByRole('slider', { name: /^sure to/ })).toBeVisible()
  const draftRow = page.locator('div', { has: page.locator('> button', { hasText: 'Draft again' }) }).last()
  await expect(draftRow).toContainText('of the instructing talk')
  const draft = await heights(draftRow)
  expect(draft.row).toBe(draft.tallest)
  const transport = await heights(page.getByRole('group', { name: 'Transport' }))
  expect(transport.row).toBe(transport.tallest)

  await expect(page.getByRole('button', { name: 'not reviewed yet' })).toHaveCount(0)
  const before = (await noticeOf(page).boundingBox())?.height
  await page.keyboard.press('f')
  // Read aloud in full; in sight it stands in the sheet's margin.
  await expect(noticeOf(page)).toHaveText(/^Finding 1 of \d+, (stop|fix|consider): \S/)
  expect((await noticeOf(page).boundingBox())?.height).toBe(before)
})

test('at 1280 px the transport and the draft row take one row each', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 })
  await openDemo(page)
  const transport = await heights(page.getByRole('group', { name: 'Transport' }))
  expect(transport.row).toBe(transport.tallest)
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await expect(page.getByRole('slider', { name: /^sure to/ })).toBeVisible()
  const draft = await heights(page.locator('div', { has: page.locator('> button', { hasText: 'Draft again' }) }).last())
  expect(draft.row).toBe(draft.tallest)
})

test('a window made narrower cuts nothing off the sheet, in view or not', async ({ page }) => {
  await openDemo(page)
  await page.getByRole('button', { name: 'Read the sheet' }).click()
  const last = sheetOf(page).locator('[data-kind="step"]').last()
  await last.scrollIntoViewIfNeeded()
  await page.getByRole('banner').locator('button[aria-pressed="true"]').click()
  for (const width of [1440, 1280, 950]) {
    await page.setViewportSize({ width, height: 600 })
    const room = () => page.locator('[data-surface-name="sheet"]').evaluate(pane => pane.scrollWidth - pane.clientWidth)
    await expect.poll(room).toBe(0)
  }
})

test('printed, a signal word is black in a box, whether backgrounds are printed or not', async ({ page }) => {
  await openDemo(page)
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
  const words = sheetOf(page).locator('[data-level]', { hasText: /^(danger|warning|caution|notice)$/i })
  const looks = await words.evaluateAll(all =>
    all.map(word => [getComputedStyle(word).color, getComputedStyle(word).backgroundColor].join(' on ')),
  )
  expect([...new Set(looks)]).toEqual(['rgb(0, 0, 0) on rgba(0, 0, 0, 0)'])
})

test('printed, the word of a stop finding is black in a box, whether backgrounds are printed or not', async ({
  page,
}) => {
  await lay(page, tempFile('guard.vtt', vtt('Take off the belt guard.', 'Tighten the belt.', 'Run the planer.')))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  const note = sheetOf(page).locator('aside[data-level="stop"]').first()
  await expect(note).toContainText('never put back')
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
  const look = await note
    .locator('b')
    .first()
    .evaluate(word => {
      const { color, backgroundColor, borderTopStyle } = getComputedStyle(word)
      return [color, backgroundColor, borderTopStyle]
    })
  expect(look).toEqual(['rgb(0, 0, 0)', 'rgba(0, 0, 0, 0)', 'solid'])
})

test('printed with a dialog open, the sheet is what is printed', async ({ page }) => {
  await openDemo(page)
  await page.getByRole('button', { name: 'Publish' }).click()
  const dialog = page.locator('dialog[open]')
  await expect(dialog).toBeVisible()
  await page.emulateMedia({ media: 'print' })
  await expect(dialog).toBeHidden()
  await expect(sheetOf(page).getByRole('heading').first()).toBeVisible()
})

test('upright footage stands beside its transport and strip, and is as tall as lying footage with both', async ({
  page,
}) => {
  const path = tempFile('upright.mp4', '')
  const from = ['-f', 'lavfi', '-i', 'testsrc2=s=180x320:r=10:d=4', '-f', 'lavfi', '-i', 'sine=d=4']
  execFileSync('ffmpeg', ['-y', '-v', 'error', ...from, '-c:v', 'libx264', '-pix_fmt', 'yuv420p', path])
  await lay(page, path, tempFile('upright.vtt', vtt('Take the cover off.')))
  const video = page.locator('video')
  await expect(video).toHaveAttribute('data-upright', '')
  const boxOf = async (locator: Locator) => (await locator.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 }
  await expect.poll(async () => (await boxOf(video)).height).toBeGreaterThan(400)
  const [picture, transport] = [await boxOf(video), await boxOf(page.getByRole('group', { name: 'Transport' }))]
  const strip = await boxOf(page.getByRole('button', { name: 'Closer' }))
  expect(Math.round((100 * picture.width) / picture.height)).toBe(56)
  expect(transport.x).toBeGreaterThan(picture.x + picture.width)
  expect(strip.y + strip.height).toBeLessThanOrEqual(picture.y + picture.height)
  for (const width of [1440, 1024]) {
    await page.setViewportSize({ width, height: 900 })
    const pane = page.locator('[data-surface-name="footage"]')
    expect(await pane.evaluate(element => element.scrollWidth - element.clientWidth)).toBe(0)
  }
  await page.setViewportSize({ width: 800, height: 900 })
  await page.getByRole('button', { name: 'Footage', exact: true }).click()
  const [above, below] = [await boxOf(video), await boxOf(page.getByRole('group', { name: 'Transport' }))]
  expect(below.y).toBeGreaterThanOrEqual(above.y + above.height - 1)
})
