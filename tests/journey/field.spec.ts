import { expect, type Page, test } from '@playwright/test'
import { lay, saved, sheetOf, talkOf, tempFile, vtt } from './bench'

/** Marks the first words of a talk by a kind's key and opens the fields of the mark. */
const writeMark = async (page: Page, key: string, words: number, ...lines: string[]) => {
  await lay(page, tempFile('lid.vtt', vtt(...lines, 'Then let go.')))
  await talkOf(page).focus()
  await page.keyboard.press('Shift+Space')
  for (let n = 1; n < words; n++) await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press(key)
  await page.keyboard.press('w')
}

/** @returns the field of a step's text, to be written */
const writeStep = async (page: Page) => {
  await writeMark(page, 's', 4, 'Take the two screws out of the lid.')
  const field = page.getByLabel('What the sheet says')
  await expect(field).toBeFocused()
  return field
}

test('Escape finishes a field, and one Undo brings back what stood there', async ({ page }) => {
  const field = await writeStep(page)
  await field.fill('Take both screws')
  await field.press('End')
  await page.keyboard.press('Escape')
  await expect(sheetOf(page).locator('[data-kind="step"]')).toContainText('Take both screws')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(field).toHaveValue('Take the two screws')
})

test('what is typed is saved in the pauses as one change, and the header tells until it is', async ({ page }) => {
  const field = await writeStep(page)
  await saved(page)
  await field.press('End')
  await field.pressSequentially(' out ')
  await expect(page.locator('[data-saved]')).toHaveText('not saved yet: a field is being written')
  await saved(page)
  // The blank typed last is no part of the text, and stays in the field while it is written.
  await field.pressSequentially('now')
  await saved(page)
  await page.reload()
  await expect(sheetOf(page)).toContainText('Take the two screws out now')
})

test('what is typed and left in the same moment is there when the page is opened again', async ({ page }) => {
  const field = await writeStep(page)
  await saved(page)
  await field.fill('Take the lid off')
  await page.reload()
  await expect(sheetOf(page)).toContainText('Take the lid off')
})

test('typing is taken back as one change, whatever was saved on the way', async ({ page }) => {
  const field = await writeStep(page)
  await field.press('End')
  for (const more of [' off', ' the', ' lid']) {
    await field.pressSequentially(more)
    await saved(page)
  }
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(field).toHaveValue('Take the two screws')
})

test('a limit that was refused is tried again when the others change, and what the fields read the sheet has', async ({
  page,
}) => {
  await writeMark(page, 'q', 9, 'You want twelve to fifteen newton metres on those.')
  const spec = sheetOf(page).locator('[data-kind="spec"]')
  const [low, aim, high] = ['At least', 'Aim at', 'At most'].map(name => page.getByLabel(name, { exact: true }))
  if (low === undefined || aim === undefined || high === undefined) throw new Error('fields of a spec are missing')
  await high.fill('')
  await aim.fill('14')
  await low.focus()
  const before = await low.inputValue()
  await low.fill('700')
  await aim.focus()
  await expect(page.getByText('the least, 700, is over')).toBeVisible()
  const tops = await Promise.all([low, aim, high].map(async field => Math.round((await field.boundingBox())?.y ?? 0)))
  expect(new Set(tops).size).toBe(1)
  await expect(page.locator('[data-saved]')).toHaveText('not saved yet: a field is being written')
  await aim.fill('750')
  await high.focus()
  await expect(page.getByText('the least, 700, is over')).toBeHidden()
  await high.fill('800')
  await high.press('Enter')
  await expect(spec).toContainText('750 ± 50 N·m')
  expect([await low.inputValue(), await aim.inputValue(), await high.inputValue()]).toEqual(['700', '750', '800'])
  await saved(page)
  await page.getByRole('button', { name: 'Undo' }).click()
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(low).toHaveValue(before)
})
