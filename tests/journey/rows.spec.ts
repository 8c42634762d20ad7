import { expect, type Locator, test } from '@playwright/test'
import { noticeOf, openDemo, sheetOf } from './bench'

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
