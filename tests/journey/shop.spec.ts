import { readFileSync } from 'node:fs'
import { expect, test } from '@playwright/test'
import { unzipSync } from 'fflate'
import { lay, openDemo, sheetOf, talkOf, tempFile, vtt } from './bench'

test('several recordings become one packet in the order given', async ({ page }) => {
  await lay(page, tempFile('lid.vtt', vtt('Take the lid off.')))
  await expect(talkOf(page)).toBeVisible()
  await openDemo(page)
  await page.goto('/')
  await page.getByRole('checkbox', { name: /lid into/ }).check()
  await page.getByRole('checkbox', { name: /Turn the knives/ }).check()
  await page.getByRole('button', { name: 'One packet of these 2 jobs' }).click()
  await page.getByLabel('Title of the service').fill('Spring service')
  // In the order of the ticks, not of the list: the demo, changed last, stands first in that.
  await expect(page.getByRole('dialog').locator('ol > li').first()).toContainText('lid')
  await expect(page.getByRole('dialog').locator('ol > li').first()).toContainText('no marks yet')
  const [earlier, later] = ['earlier', 'later'].map(word => page.getByRole('button', { name: `lid: ${word}` }))
  if (earlier === undefined || later === undefined) throw new Error('no buttons')
  await later.focus()
  await page.keyboard.press('Enter')
  await expect(later).toBeDisabled()
  await expect(earlier).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(earlier).toBeDisabled()
  await expect(later).toBeFocused()
  await page.getByLabel('Units').selectOption('US')
  await page.getByLabel('findings and waivers at the end').check()
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save one packet of 2 jobs' }).click()
  const got = await download
  expect(got.suggestedFilename()).toBe('spring-service.zip')
  await expect(page.getByText('Saved as spring-service.zip.')).toBeVisible()
  const files = unzipSync(readFileSync(await got.path()))
  const names = Object.keys(files)
  expect(names.filter(name => name.startsWith('1-lid/')).length).toBeGreaterThan(0)
  expect(names).toContain('service.md')
  const sheet = names.find(name => /^2-turn-the-knives.*sheet\.md$/.test(name)) ?? ''
  const text = new TextDecoder().decode(files[sheet])
  expect(text).toContain('lbf')
  expect(text).toMatch(/^## (Findings|Let stand)/m)
})

test('the shop’s own rules hold for reviews here; a faulty file is refused with its path', async ({ page }) => {
  await page.goto('/')
  const field = page.getByLabel('Rules file')
  await field.setInputFiles(
    tempFile(
      'rules.json',
      JSON.stringify({ format: 'tellwright-rules', version: 1, levels: { 'spec-no-tolerance': 'loud' } }),
    ),
  )
  await expect(page.locator('[role="alert"]').first()).toContainText('levels')
  const rules = {
    format: 'tellwright-rules',
    version: 1,
    phrases: [{ phrase: 'zebra stripes', level: 'stop', why: 'house rule' }],
  }
  await field.setInputFiles(tempFile('rules.json', JSON.stringify(rules)))
  await expect(page.getByText('Reviews here go by rules.json as well.')).toBeVisible()
  await openDemo(page)
  await expect(sheetOf(page).getByText(/zebra stripes/)).toBeVisible()
})

test('a rules file to begin with is saved, taken as it is, and said not to be used once it can’t be read any more', async ({
  page,
}) => {
  await page.goto('/')
  const place = page.getByRole('region', { name: "The shop's own rules" })
  await place.getByText('What stands in a rules file').click()
  await expect(place.getByText('words that must stand on the sheet', { exact: false })).toBeVisible()
  const download = page.waitForEvent('download')
  await place.getByRole('button', { name: 'Save one to begin with' }).click()
  const text = readFileSync(await (await download).path(), 'utf8')
  expect(JSON.parse(text).levels['spec-no-basis']).toBe('fix')
  await page.getByLabel('Rules file').setInputFiles(tempFile('house.json', text))
  await expect(place.getByText('Reviews here go by house.json as well.')).toBeVisible()
  await page.evaluate(
    text =>
      new Promise(resolve => {
        const opening = indexedDB.open('tellwright')
        opening.onsuccess = () => {
          const store = opening.result.transaction('made', 'readwrite').objectStore('made')
          store.put({ name: 'house.json', text }, 'shop-rules').onsuccess = resolve
        }
      }),
    text.replace('"spec-no-basis"', '"spec-of-old"'),
  )
  await page.reload()
  await expect(place.getByText('reviews go without it', { exact: false })).toBeVisible()
  await expect(place.getByRole('alert')).toContainText('there is no rule "spec-of-old"')
  await place.getByRole('button', { name: 'Do without' }).click()
  await expect(place.getByRole('alert')).toHaveCount(0)
})
