import { expect, test } from '@playwright/test'
import { lay, openDemo, saved, talkOf, tempFile, vtt } from './bench'

for (const width of [1440, 800, 390])
  test(`the list of recordings: no cell lies over another or outside its row, ${width} px wide`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 })
    await openDemo(page)
    await saved(page)
    await lay(page, tempFile('lid.vtt', vtt('Take the lid off.', 'Mind the spring.')))
    await expect(talkOf(page)).toBeVisible()
    await saved(page)
    await page.goto('/')
    const rows = page.getByRole('region', { name: 'On the bench' }).getByRole('listitem')
    await expect(rows).toHaveCount(2)
    const check = async () => {
      const shown = await rows.evaluateAll(all =>
        all.map(row => {
          const box = (element: Element) => {
            const { left, right, top, bottom } = element.getBoundingClientRect()
            return { name: (element.textContent ?? '').slice(0, 24) || element.tagName, left, right, top, bottom }
          }
          return { row: box(row), cells: [...row.children].map(box) }
        }),
      )
      for (const { row, cells } of shown) {
        for (const [i, a] of cells.entries()) {
          expect(a.left, a.name).toBeGreaterThanOrEqual(row.left - 9)
          expect(a.right, a.name).toBeLessThanOrEqual(row.right + 1)
          for (const b of cells.slice(i + 1)) {
            const isApart =
              a.right <= b.left + 1 || b.right <= a.left + 1 || a.bottom <= b.top + 1 || b.bottom <= a.top + 1
            expect(isApart, `${a.name} | ${b.name}`).toBe(true)
          }
        }
        // Wide, all of a row is one line of cells: none is squeezed into a tall column.
        if (width === 1440) expect(row.bottom - row.top).toBeLessThan(110)
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
    }
    await check()
    await page.getByRole('button', { name: 'Take off the bench: lid' }).click()
    await expect(page.getByRole('button', { name: 'Leave it' })).toBeFocused()
    if (width < 1440) await check()
  })
