import { expect, type Page, test } from '@playwright/test'
import { openDemo, talkOf } from './bench'

/** The brackets of the talk that are drawn, each with its glyph, by paragraph. */
const drawn = (page: Page) =>
  talkOf(page)
    .locator('[data-mark]')
    .evaluateAll(all =>
      all.map(bracket => {
        const box = (element: Element) => {
          const { left, right, top, bottom } = element.getBoundingClientRect()
          return { left, right, top, bottom }
        }
        const glyph = bracket.firstElementChild
        return { name: bracket.getAttribute('aria-label') ?? '', ...box(bracket), glyph: glyph && box(glyph) }
      }),
    )

for (const width of [1440, 800, 390])
  test(`no bracket of the demo lies over another, and each glyph stays in its lane, ${width} px wide`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 900 })
    await openDemo(page)
    if (width < 900) await page.getByRole('button', { name: 'Talk', exact: true }).click()
    await expect.poll(async () => (await drawn(page)).length).toBeGreaterThan(15)
    const brackets = await drawn(page)
    for (const [i, a] of brackets.entries()) {
      if (a.glyph !== null) expect(a.glyph.right, a.name).toBeLessThanOrEqual(a.right)
      expect(a.right, a.name).toBeLessThanOrEqual(width)
      for (const b of brackets.slice(i + 1)) {
        const isApart = a.right <= b.left + 0.5 || b.right <= a.left + 0.5 || a.bottom <= b.top || b.bottom <= a.top
        expect(isApart, `${a.name} | ${b.name}`).toBe(true)
      }
    }
  })
