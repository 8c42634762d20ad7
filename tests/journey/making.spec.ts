import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, type Page, test } from '@playwright/test'
import { unzipSync } from 'fflate'
import { lay, openDemo, saved, sheetOf, talkOf, tempFile, vtt } from './bench'

const download = async (page: Page, act: () => Promise<void>): Promise<string> => {
  const event = page.waitForEvent('download', { timeout: 180_000 })
  await act()
  const got = await event
  const path = join(mkdtempSync(join(tmpdir(), 'tellwright-made-')), got.suggestedFilename())
  writeFileSync(path, readFileSync(await got.path()))
  return path
}

const probe = (path: string, ...show: string[]): string =>
  execFileSync('ffprobe', ['-v', 'error', ...show, '-of', 'json', path], { encoding: 'utf8' })

test('a clip of a step is cut and is as long as the step; a copy has the chapters inside (seen by ffprobe)', async ({
  page,
}) => {
  test.setTimeout(300_000)
  await openDemo(page)
  await expect(page.locator('video')).toBeVisible()
  await sheetOf(page).locator('[data-kind="step"] button').first().click()
  await page.getByRole('button', { name: 'Clips…' }).click()
  await page.getByRole('radio', { name: /^exact/ }).check()
  const clip = await download(page, () => page.getByRole('button', { name: 'Cut a clip of step 1' }).click())
  expect(clip).toContain('01-pull-the-plug')
  const { format } = JSON.parse(probe(clip, '-show_format'))
  expect(Math.abs(Number(format.duration) - 2.6)).toBeLessThan(0.6)
  const copy = await download(page, () => page.getByRole('button', { name: 'Save the copy' }).click())
  const { chapters } = JSON.parse(probe(copy, '-show_chapters'))
  expect(chapters.length).toBeGreaterThan(2)
  expect(Number(chapters[0].start_time)).toBe(0)
})

const clipsOf = (path: string) => Object.keys(unzipSync(readFileSync(path))).filter(name => name.startsWith('clips/'))

test('cutting the clips of a packet can be stopped; the packet is then without them', async ({ page }) => {
  test.setTimeout(180_000)
  await openDemo(page)
  await expect(page.locator('video')).toBeVisible()
  await page.getByRole('button', { name: 'Publish' }).click()
  await page.getByRole('radio', { name: /^Packet/ }).click()
  const tick = page.getByRole('checkbox', { name: /^with clips/ })
  const save = page.getByRole('button', { name: /^Save this file: .*\.zip$/ })
  await tick.check()
  await expect(save).toBeHidden()
  await page.getByRole('button', { name: 'Stop', exact: true }).click()
  await expect(tick).not.toBeChecked()
  await expect(page.getByText('Stopped; the packet is without clips.')).toBeVisible()
  expect(clipsOf(await download(page, () => save.click()))).toEqual([])
})

test('a packet takes clips of the steps with it, named in its manifest and as long as the steps', async ({ page }) => {
  test.setTimeout(300_000)
  await lay(page, 'public/demo/demo.mp4', tempFile('two.vtt', vtt('Pull the plug out.', 'Take the lid off.')))
  await expect(page.locator('video')).toBeVisible()
  await talkOf(page).focus()
  await page.keyboard.press('Shift+Space')
  for (let n = 0; n < 3; n++) await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('s')
  await expect(sheetOf(page).locator('[data-kind="step"]')).toHaveCount(1)
  await page.getByRole('button', { name: 'Publish' }).click()
  await page.getByRole('radio', { name: /^Packet/ }).click()
  await page.getByRole('checkbox', { name: /^with clips of 1 step$/ }).check()
  await expect(page.getByText('1 of 1 clip is in the packet.')).toBeVisible({ timeout: 200_000 })
  const path = await download(page, () => page.getByRole('button', { name: /^Save this file: .*\.zip$/ }).click())
  expect(clipsOf(path)).toEqual(['clips/001-pull-the-plug-out.mp4'])
  const said = execFileSync('node', ['bin/tellwright.mjs', 'verify', path], { encoding: 'utf8' })
  expect(said).toContain('whole: ')
  const clip = join(mkdtempSync(join(tmpdir(), 'tellwright-clip-')), 'first.mp4')
  writeFileSync(clip, unzipSync(readFileSync(path))['clips/001-pull-the-plug-out.mp4'] ?? '')
  const { format } = JSON.parse(probe(clip, '-show_format'))
  expect(Math.abs(Number(format.duration) - 4)).toBeLessThan(0.6)
})

test('a still is proposed, drawn on, described, kept over a reload, and stands in the handout', async ({ page }) => {
  test.setTimeout(180_000)
  await openDemo(page)
  await expect(page.locator('video')).toBeVisible()
  const step = sheetOf(page).locator('[data-kind="step"]').first()
  await step.getByRole('button').first().click()
  const propose = page.getByRole('button', { name: 'Propose stills for this step' })
  await propose.focus()
  await page.keyboard.press('Enter')
  await expect(page.getByRole('button', { name: /sharpness/ }).first()).toBeVisible({ timeout: 60_000 })
  await expect(propose).toBeFocused()
  await page
    .getByRole('button', { name: /^Frame at/ })
    .first()
    .click({ timeout: 60_000 })
  await page.getByRole('button', { name: 'Draw a ring' }).click()
  await page.getByRole('button', { name: 'ring 1', exact: true }).focus()
  await page.keyboard.press('ArrowRight')
  await page.getByLabel('What the picture shows (alternative text)').fill('The plug beside its socket')
  await page.getByRole('button', { name: 'Take this still' }).click()
  await expect(page.getByRole('dialog')).toBeHidden()
  await expect(step.getByAltText('The plug beside its socket')).toBeVisible()
  await saved(page)
  await page.reload()
  await expect(talkOf(page)).toBeVisible()
  await sheetOf(page).locator('[data-kind="step"] button').first().click()
  await expect(sheetOf(page).getByAltText('The plug beside its socket')).toBeVisible()
  await page.getByRole('button', { name: 'Publish' }).click()
  await page.getByRole('radio', { name: /^Handout/ }).click()
  const path = await download(page, () => page.getByRole('button', { name: /^Save .*handout\.html$/ }).click())
  const html = readFileSync(path, 'utf8')
  expect(html).toContain('alt="The plug beside its socket"')
  expect(html).toMatch(/src="data:image\/jpeg;base64,/)
})

test('the still of upright footage is seen whole, with its description and what is done with it', async ({ page }) => {
  const path = tempFile('upright.mp4', '')
  const from = ['-f', 'lavfi', '-i', 'testsrc2=s=540x960:r=10:d=4', '-f', 'lavfi', '-i', 'sine=d=4']
  execFileSync('ffmpeg', ['-y', '-v', 'error', ...from, '-c:v', 'libx264', '-pix_fmt', 'yuv420p', path])
  await lay(page, path, tempFile('upright.vtt', vtt('Take the cover off.')))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await sheetOf(page).locator('[data-kind="step"] button').first().click()
  await page.getByRole('button', { name: 'Take the frame shown now' }).click()
  const dialog = page.getByRole('dialog')
  const picture = dialog.getByRole('img').first()
  await expect(picture).toBeInViewport({ ratio: 1 })
  await expect(dialog.getByRole('button', { name: 'Take this still' })).toBeInViewport({ ratio: 1 })
  const box = await picture.boundingBox()
  expect(Math.round((100 * (box?.width ?? 0)) / (box?.height ?? 1))).toBe(56)
})

test('sound alone is offered clips, and no stills or choice of how the picture is cut', async ({ page }) => {
  const sound = tempFile('lid.m4a', '')
  execFileSync('ffmpeg', ['-v', 'error', '-y', '-f', 'lavfi', '-i', 'sine=d=9', '-c:a', 'aac', sound])
  await lay(page, sound, tempFile('lid.vtt', vtt('Take the lid off.', 'Pull the plug out.')))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await sheetOf(page).locator('[data-kind="step"] button').first().click()
  await expect(page.getByRole('button', { name: /^Play this span/ })).toBeVisible()
  await expect(page.getByRole('button', { name: 'Propose stills for this step' })).toHaveCount(0)
  await page.getByRole('button', { name: 'Clips…' }).click()
  await expect(page.getByRole('radio')).toHaveCount(0)
  const clip = await download(page, () => page.getByRole('button', { name: /^Cut a clip of step/ }).click())
  await expect(page.getByText(`Saved as ${clip.split('/').at(-1)}.`)).toBeVisible()
})
