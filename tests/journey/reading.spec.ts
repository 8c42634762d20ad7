import { expect, test } from '@playwright/test'
import { lay, sheetOf, tempFile, vtt } from './bench'

test('in the reading view times stand in one column, beside findings or not', async ({ page }) => {
  const lines = ['Loosen the two bolts.', 'Torque the bolts to about 20.', 'Take the lid off.', 'Lift the drum out.']
  await lay(page, tempFile('lid.vtt', vtt(...lines)))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await expect(sheetOf(page).locator('[data-kind="step"]').nth(2)).toBeVisible()
  await page.getByRole('button', { name: 'Read the sheet' }).click()
  const items = sheetOf(page).locator('[data-kind="step"]')
  await expect(items.locator('aside').first()).toBeVisible()
  const edges = await items.evaluateAll(all =>
    all.map(item => Math.round(item.querySelector('[title="Play this span"]')?.getBoundingClientRect().right ?? 0)),
  )
  expect(edges.length).toBeGreaterThan(2)
  expect(new Set(edges).size, edges.join(' ')).toBe(1)
})
