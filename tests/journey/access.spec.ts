import { AxeBuilder } from '@axe-core/playwright'
import { expect, type Page, test } from '@playwright/test'
import { openDemo, sheetOf, talkOf } from './bench'

/** Violations of WCAG 2.2 A and AA that axe-core finds. */
const faults = async (page: Page) => {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(node => node.target.join(' ')).join(', ')}`)
}

for (const scheme of ['light', 'dark'] as const)
  for (const width of [1440, 800])
    test(`every screen is clean for axe, ${scheme}, ${width} px wide`, async ({ page }) => {
      // Six looks by axe at whole screens: slow on a busy machine.
      test.setTimeout(240_000)
      await page.emulateMedia({ colorScheme: scheme })
      await page.setViewportSize({ width, height: 900 })
      await page.goto('/')
      await expect(page.getByRole('button', { name: 'Open the demo' })).toBeVisible()
      expect(await faults(page)).toEqual([])
      await openDemo(page)
      await expect(page.locator('video')).toBeAttached()
      expect(await faults(page)).toEqual([])
      if (width < 900) await page.getByRole('button', { name: 'Sheet', exact: true }).click()
      await sheetOf(page).locator('[data-kind="spec"] button').first().click()
      expect(await faults(page)).toEqual([])
      if (width < 900) await page.getByRole('button', { name: 'Footage', exact: true }).click()
      expect(await faults(page)).toEqual([])
      await page.getByRole('button', { name: 'Keys in use' }).click()
      expect(await faults(page)).toEqual([])
      await page.keyboard.press('Escape')
      await page.getByRole('button', { name: 'Publish' }).click()
      await expect(page.getByRole('button', { name: /^Save / }).first()).toBeVisible()
      expect(await faults(page)).toEqual([])
    })

test('every control of the bench is reached by Tab, and shows that it is', async ({ page }) => {
  await openDemo(page)
  await page.keyboard.press('Tab')
  const seen = new Set<string>()
  for (let i = 0; i < 40; i++) {
    const focus = await page.evaluate(() => {
      const element = document.activeElement
      if (element === null || element === document.body) return undefined
      const style = getComputedStyle(element)
      return { name: element.getAttribute('aria-label') ?? element.textContent ?? '', outline: style.outlineStyle }
    })
    if (focus !== undefined) {
      seen.add(focus.name)
      expect(focus.outline, focus.name).not.toBe('none')
    }
    await page.keyboard.press('Tab')
  }
  expect(seen.size).toBeGreaterThan(15)
  await expect(talkOf(page)).toBeVisible()
})
