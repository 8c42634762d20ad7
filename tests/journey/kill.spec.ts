import { execFileSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, expect, test } from '@playwright/test'
import { lay, saved, sheetOf, talkOf, tempFile, vtt } from './bench'

/** Processes of this test's own browser: those whose command line names its profile folder. */
const processesOf = (profile: string): number[] =>
  readdirSync('/proc')
    .filter(name => /^\d+$/.test(name))
    .map(Number)
    .filter(pid => {
      try {
        return readFileSync(`/proc/${pid}/cmdline`, 'utf8').includes(profile)
      } catch {
        return false
      }
    })

test('the browser killed in the middle of editing: nothing confirmed is lost', async ({ baseURL, launchOptions }) => {
  test.skip(process.platform !== 'linux', 'finds its browser through /proc')
  const profile = mkdtempSync(join(tmpdir(), 'tellwright-profile-'))
  const options = { ...launchOptions, ...(baseURL === undefined ? {} : { baseURL }) }
  const first = await chromium.launchPersistentContext(profile, options)
  const page = first.pages()[0] ?? (await first.newPage())
  await lay(page, tempFile('lid.vtt', vtt('Take the two screws out of the lid.', 'Mind the spring behind it.')))
  await talkOf(page).focus()
  for (let n = 0; n < 5; n++) {
    await page.keyboard.press('Shift+Space')
    await page.keyboard.press('s')
    await page.keyboard.press('Escape')
    await page.keyboard.press('ArrowRight')
  }
  await saved(page)
  const address = page.url()
  await page.keyboard.press('Shift+Space')
  const pids = processesOf(profile)
  expect(pids.length).toBeGreaterThan(0)
  execFileSync('kill', ['-9', ...pids.map(String)])
  await first.close().catch(() => undefined)

  const second = await chromium.launchPersistentContext(profile, options)
  const again = second.pages()[0] ?? (await second.newPage())
  await again.goto(address)
  await expect(sheetOf(again).locator('[data-kind="step"]')).toHaveCount(5)
  await second.close()
})
