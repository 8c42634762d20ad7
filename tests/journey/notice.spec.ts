import { readFileSync } from 'node:fs'
import { expect, test } from '@playwright/test'
import { lay, noticeOf, openDemo, saved, sheetOf, talkOf, tempFile, vtt } from './bench'

const LINES = ['Take the lid off.', 'Pull the plug out.', 'Lift the drum out of the housing.'] as const

test('what was said before does not stay: keeping, undoing and letting stand say what they did', async ({ page }) => {
  await lay(page, tempFile('lid.vtt', vtt(...LINES)))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await expect(noticeOf(page)).toContainText('pencilled')
  await page.getByRole('slider').fill('0')
  await page.getByRole('button', { name: /^Keep \d+ pencilled marks?$/ }).click()
  await expect(noticeOf(page)).toHaveText(/^\d+ marks kept\.$/)
  // F before the first review says that there is none yet; its answer comes from a worker.
  await expect(page.getByRole('button', { name: 'not reviewed yet' })).toHaveCount(0)
  await page.keyboard.press('f')
  await expect(noticeOf(page)).toHaveText(/^Finding 1 of/)
  await page.keyboard.press('v')
  await page.getByLabel('Why it may stand').fill('Done on another sheet')
  await page.getByRole('button', { name: 'Let it stand', exact: true }).click()
  await expect(noticeOf(page)).toHaveText('Finding let stand: “Done on another sheet”.')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(noticeOf(page)).toHaveText(/^Undone: finding let stand/)
})

test('undoing shows the mark it is about', async ({ page }) => {
  await openDemo(page)
  const step = sheetOf(page).locator('[data-kind="step"]').nth(3)
  const id = await step.getAttribute('data-item')
  await step.getByRole('button').first().click()
  await page.keyboard.press('Delete')
  await expect(sheetOf(page).locator(`[data-item="${id}"]`)).toHaveCount(0)
  await page.keyboard.press('Control+z')
  await expect(noticeOf(page)).toHaveText(/^Undone: step “.+” taken out\./)
  await expect(sheetOf(page).locator(`[data-item="${id}"]`)).toHaveAttribute('data-chosen', 'true')
})

test('Ctrl + S saves to a file while a field is written, with what was typed', async ({ page }) => {
  await lay(page, tempFile('lid.vtt', vtt(...LINES)))
  await talkOf(page).focus()
  await page.keyboard.press('Shift+Space')
  await page.keyboard.press('s')
  await page.keyboard.press('w')
  await page.getByLabel('What the sheet says').fill('Lift the lid off')
  const download = page.waitForEvent('download')
  await page.keyboard.press('Control+s')
  expect(readFileSync(await (await download).path(), 'utf8')).toContain('Lift the lid off')
  await expect(page.getByLabel('What the sheet says')).toBeFocused()
  await saved(page)
})

test('pencilled cautions say so in the safety summary', async ({ page }) => {
  await lay(page, tempFile('hot.vtt', vtt('Careful, the pipe is hot and it will burn you.', 'Take the lid off.')))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  const summary = sheetOf(page).locator('section', { has: page.getByRole('heading', { name: 'Safety first' }) })
  await expect(summary.getByRole('listitem').first()).toContainText('pencilled')
})

test('Arabic stands from right to left in the talk and on the sheet', async ({ page }) => {
  await lay(page, tempFile('rtl.vtt', vtt('افصل القابس عن المقبس', 'ارفع الغطاء')))
  await talkOf(page).focus()
  await page.keyboard.press('Shift+Space')
  await page.keyboard.press('s')
  const direction = (selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate(element => getComputedStyle(element).direction)
  expect(await direction('[role="application"] p')).toBe('rtl')
  expect(await direction('article [data-kind="step"] [dir="auto"]')).toBe('rtl')
})

test('drafting again counts what is pencilled, not what is kept already; focus stays by the draft', async ({
  page,
}) => {
  await lay(page, tempFile('lid.vtt', vtt(...LINES)))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).focus()
  await page.keyboard.press('Enter')
  await expect(noticeOf(page)).toContainText('pencilled')
  const again = page.getByRole('button', { name: 'Draft again' })
  await expect(again).toBeFocused()
  const pencilled = sheetOf(page).locator('[data-pencilled="true"]')
  const all = await pencilled.count()
  await page.keyboard.press('n')
  await page.keyboard.press('a')
  await expect(pencilled).toHaveCount(all - 1)
  await again.click()
  await expect(noticeOf(page)).toHaveText(new RegExp(`^${all - 1} marks? (is|are) pencilled`))
  await page.getByRole('slider').fill('0')
  await page.getByRole('button', { name: /^Keep \d+ pencilled marks?$/ }).click()
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await expect(noticeOf(page)).toHaveText(/^Nothing new was found/)
})

test('Escape in the fields of a mark leaves the focus on its line', async ({ page }) => {
  await openDemo(page)
  const step = sheetOf(page).locator('[data-kind="step"]').nth(3)
  await step.getByRole('button').first().click()
  await page.getByRole('button', { name: /^Play this span/ }).focus()
  await page.keyboard.press('Escape')
  await expect(step.getByRole('button').first()).toBeFocused()
})

test('what a remedy adds comes into view on a telephone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await lay(
    page,
    tempFile('oil.vtt', vtt('Take the lid off.', 'Jack the mower up.', 'Crawl under it and undo the bolts.')),
  )
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await expect(noticeOf(page)).toContainText('pencilled')
  await page.getByRole('button', { name: 'Sheet', exact: true }).click()
  const remedy = page.getByRole('button', { name: /^Add the usual caution/ }).first()
  await remedy.scrollIntoViewIfNeeded()
  const before = await sheetOf(page).locator('[data-kind="caution"]').count()
  await remedy.click()
  await expect(sheetOf(page).locator('[data-kind="caution"]')).toHaveCount(before + 1)
  await expect(sheetOf(page).locator('[data-kind="caution"]').last()).toBeInViewport()
})

test('a step that a remedy adds far down a long sheet comes into view and stays there', async ({ page }) => {
  const wiped = Array.from(
    { length: 40 },
    (_, i) => `Wipe the ${['left', 'right', 'upper', 'lower'][i % 4]} rail of table ${i}`,
  )
  const deeds = [
    'Take off the belt guard',
    'Tighten the cover screws with the hex key',
    ...wiped,
    'Run the planer and listen',
  ]
  const marks = deeds.map((text, i) => ({ id: `s${i}`, kind: 'step', text, said: text, start: i * 5, end: i * 5 + 4 }))
  const cues = marks.map(({ start, end, text }) => ({ start, end, text: `${text}.` }))
  const transcript = { name: 'planer.vtt', form: 'webvtt', cues }
  const procedure = { title: 'Planer', equipment: 'Planer', scope: '', revision: '', author: '', references: [] }
  const recording = { footage: null, transcript }
  const project = { format: 'tellwright', version: 1, procedure, recording, marks, waivers: [] }
  await lay(page, tempFile('planer.tellwright.json', JSON.stringify(project)))
  const remedy = sheetOf(page)
    .locator('aside[data-rule="not-refitted"]')
    .getByRole('button', { name: /^Add "Refit the belt guard"/ })
  await remedy.click()
  const added = sheetOf(page).locator('[data-kind="step"]', { hasText: 'Refit the belt guard' })
  await expect(added).toBeInViewport({ ratio: 0.9 })
  await expect(page.locator('aside[data-rule="not-refitted"]')).toHaveCount(0)
  await expect(page.locator('[data-saved]')).toHaveText('saved in this browser')
  await expect(added).toBeInViewport({ ratio: 0.9 })
})

test('the focus stays where work goes on: after keeping all marks, closing the head, and at the end of words to be written on', async ({
  page,
}) => {
  await lay(page, tempFile('lid.vtt', vtt(...LINES)))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await page.getByRole('slider').press('Home')
  await page.getByRole('button', { name: /^Keep \d+ pencilled/ }).press('Enter')
  await expect(page.getByRole('button', { name: 'Draft marks from the talk' })).toBeFocused()
  await page.getByRole('button', { name: 'Write the head' }).press('Enter')
  await sheetOf(page).getByRole('button', { name: 'Done' }).press('Enter')
  await expect(page.getByRole('button', { name: 'Write the head' })).toBeFocused()
  await talkOf(page).focus()
  await page.keyboard.press('n')
  await page.keyboard.press('w')
  const field = page.locator('[data-editor] textarea').first()
  const before = await field.inputValue()
  await page.keyboard.type(' now')
  await expect(field).toHaveValue(`${before} now`)
})
