import { readFileSync } from 'node:fs'
import { expect, type Page, test } from '@playwright/test'
import { unzipSync } from 'fflate'
import { lay, listenForTrouble, openDemo, saved, sheetOf, talkOf, tempFile, vtt } from './bench'

const save = async (page: Page, name: RegExp): Promise<Buffer> => {
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name }).first().click()
  return readFileSync(await (await download).path())
}

test('every publication of the demo is previewed and saved, without trouble', async ({ page }) => {
  const trouble = listenForTrouble(page)
  await openDemo(page)
  await page.getByRole('button', { name: 'Publish' }).click()
  const wanted: readonly (readonly [RegExp, RegExp, string])[] = [
    [/^Sheet/, /^Save .*\.sheet\.md$/, '## Steps'],
    [/^Handout/, /^Save .*\.handout\.html$/, '<!doctype html>'],
    [/^Show notes/, /^Save .*\.notes\.md$/, 'Chapters'],
    [/^Captions/, /^Save .*\.captions\.vtt$/, 'WEBVTT'],
    [/^Chapters/, /^Save .*\.chapters\.json$/, '"chapters"'],
    [/^Web page/, /^Save .*\.html$/, 'application/ld+json'],
    [/^DITA/, /^Save .*\.dita$/, '<task'],
    [/^Packet/, /^Save .*\.zip$/, 'PK'],
  ]
  for (const [publication, file, part] of wanted) {
    await page.getByRole('radio', { name: publication }).click()
    const content = (await save(page, file)).toString('latin1')
    expect(content.toLowerCase(), String(publication)).toContain(part.toLowerCase())
    if (part.startsWith('<!doctype')) expect(content).not.toMatch(/<script/i)
  }
  // The test runner puts a script of its own into every frame; the preview's sandbox blocks it, as it should.
  expect(trouble.filter(line => !line.startsWith("Blocked script execution in 'blob:"))).toEqual([])
})

test('a sheet edited by hand is read back: what changed is shown, and taken over where it is kept', async ({
  page,
}) => {
  await lay(page, tempFile('lid.vtt', vtt('Take the lid off.', 'Mind the spring.')))
  await talkOf(page).focus()
  await page.keyboard.press('Shift+Space')
  for (let n = 0; n < 3; n++) await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('s')
  await page.getByRole('button', { name: 'Publish' }).click()
  const markdown = (await save(page, /^Save .*\.md$/)).toString('utf8')
  expect(markdown).toContain('Take the lid off')
  const edited = tempFile('lid.md', markdown.replaceAll('Take the lid off', 'Lift the lid off'))
  await page.getByRole('button', { name: 'Read an edited sheet back…' }).click()
  await page.getByLabel('File of the edited sheet').setInputFiles(edited)
  await page.getByRole('button', { name: /^Take over 1 of 1/ }).click()
  await expect(sheetOf(page).locator('[data-kind="step"]')).toContainText('Lift the lid off')
  await page.keyboard.press('Control+z')
  await expect(sheetOf(page).locator('[data-kind="step"]')).toContainText('Take the lid off')
})

test('an edited sheet that is not UTF-8, is none, or lacks most marks says so, and nothing is taken over unasked', async ({
  page,
}) => {
  const lines = [
    'Take the lid off.',
    'Unplug the fan.',
    'Lift out the filter.',
    'Wash it in water.',
    'Refit the filter.',
  ]
  await lay(page, tempFile('fan.vtt', vtt(...lines)))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await expect.poll(() => sheetOf(page).locator('[data-kind="step"]').count()).toBeGreaterThan(3)
  await page.getByRole('button', { name: 'Publish' }).click()
  const markdown = (await save(page, /^Save .*\.md$/)).toString('utf8')
  await page.getByRole('button', { name: 'Read an edited sheet back…' }).click()
  const dialog = page.getByRole('dialog')
  const give = (content: string | Uint8Array) =>
    page.getByLabel('File of the edited sheet').setInputFiles(tempFile('fan.md', content))
  const windows = markdown.replace('Unplug the fan', 'Unplug the fan at 20 °C').replaceAll('–', '-')
  await give(Uint8Array.from(windows, letter => letter.charCodeAt(0)))
  await expect(dialog).toContainText('read as Windows-1252')
  await expect(dialog).toContainText('“Unplug the fan at 20 °C.”')
  await give('')
  await expect(dialog.getByRole('alert')).toContainText('this file is empty')
  await expect(dialog.getByRole('button', { name: /^Take over/ })).toHaveCount(0)
  await give(`${markdown.slice(0, markdown.indexOf('## Steps'))}colour green\n`)
  await expect(dialog).toContainText('are not in this file: see that it is a sheet of this recording')
  await expect(dialog.getByRole('button', { name: /^Take over 0 of/ })).toBeDisabled()
})

test('a release takes the next letter; an open stop finding prevents it', async ({ page }) => {
  await openDemo(page)
  await page.getByRole('button', { name: 'Publish' }).click()
  const release = page.getByRole('button', { name: 'Release as revision A' })
  await expect(release).toBeEnabled()
  const packet = await save(page, /^Release as revision A$/)
  expect(packet.subarray(0, 2).toString()).toBe('PK')
  await expect(page.getByRole('button', { name: 'Release as revision B' })).toBeVisible()
  await expect(page.getByText(/^Released as revision A: saved as \S+-A\.zip\.$/)).toBeVisible()
  await page.keyboard.press('Escape')
  await saved(page)
  // Without the step that puts the knives back, they are never refitted.
  await sheetOf(page)
    .getByRole('button', { name: /refit it on its seat/ })
    .click()
  await page.getByRole('button', { name: 'Rub this mark out' }).click()
  await expect(page.getByRole('button', { name: /\d stop/ })).toBeVisible()
  await page.getByRole('button', { name: 'Publish' }).click()
  await expect(page.getByRole('button', { name: 'Release as revision B' })).toBeDisabled()
  const inside = Object.entries(unzipSync(packet)).find(([name]) => name.endsWith('.sheet.md'))
  const earlier = tempFile('earlier.md', inside?.[1] ?? '')
  await page.getByRole('button', { name: 'What changed since an earlier sheet…' }).click()
  await page.getByLabel('File of the earlier sheet').setInputFiles(earlier)
  await expect(page.getByRole('status').filter({ hasText: 'What changed since revision A:' })).toBeVisible()
  await expect(page.getByRole('dialog').getByRole('listitem').first()).toContainText(/^Took out the /)
  const list = (await save(page, /^Save this list$/)).toString('utf8')
  expect(list).toContain('what changed since revision A')
  await page.keyboard.press('Escape')
  await page.getByRole('button', { name: 'Publish' }).click()
  await page.getByRole('button', { name: 'Go to it' }).click()
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await expect(page.locator('aside[data-level="stop"][data-chosen="true"]')).toBeInViewport()
})

test('the times of the talk and of its marks are shifted together, and back', async ({ page }) => {
  await lay(page, tempFile('lid.vtt', vtt('Take the lid off.', 'Mind the spring.')))
  await talkOf(page).focus()
  await page.keyboard.press('Shift+Space')
  await page.keyboard.press('s')
  await page.getByRole('button', { name: 'Times…' }).click()
  await page.getByLabel('Seconds later (negative: earlier)').fill('75')
  await page.getByLabel('Seconds later (negative: earlier)').press('Enter')
  await page.getByRole('button', { name: 'Shift by 75 s' }).click()
  await expect(talkOf(page).getByRole('button', { name: '1:15' })).toBeVisible()
  await expect(sheetOf(page).locator('[data-kind="step"]')).toContainText('1:15')
  await page.keyboard.press('Control+z')
  await expect(talkOf(page).getByRole('button', { name: '0:00' })).toBeVisible()
})

test('choices for a publication are there again when it is published again; captions are not said to tell of stops', async ({
  page,
}) => {
  await lay(page, tempFile('guard.vtt', vtt('Take off the belt guard.', 'Tighten the belt.', 'Run the planer.')))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await expect(sheetOf(page).locator('aside[data-level="stop"]').first()).toBeVisible()
  const publish = page.getByRole('button', { name: 'Publish', exact: true })
  await publish.click()
  await page.getByLabel('Units').selectOption('metric')
  await page.getByLabel('only kept marks').check()
  await page.getByLabel(/^Address of the footage/).fill('https://example.org/guard')
  await expect(page.getByRole('note').first()).toContainText('the publication says so at its head')
  await page.getByRole('radio', { name: /^Captions/ }).check()
  await expect(page.getByRole('note').first()).toContainText('nothing in these files says so')
  // Only choices that change something here are offered.
  await expect(page.getByLabel('Units')).toBeHidden()
  await expect(page.getByLabel(/^Address of the footage/)).toBeHidden()
  await expect(page.getByLabel('findings and waivers at the end')).toBeHidden()
  await expect(page.getByLabel('only kept marks')).toBeChecked()
  await page.keyboard.press('Escape')
  await publish.click()
  await expect(page.getByLabel('Units')).toHaveValue('metric')
  await expect(page.getByLabel('only kept marks')).toBeChecked()
  await expect(page.getByLabel(/^Address of the footage/)).toHaveValue('https://example.org/guard')
})
