import { readFileSync } from 'node:fs'
import { expect, type Locator, test } from '@playwright/test'
import { lay, noticeOf, sheetOf, stayHome, talkOf, tempFile, vtt } from './bench'

test('bad input is refused with what was wrong, and nothing is lost', async ({ page }) => {
  const alert = page.locator('main [role="alert"]')
  await lay(page, tempFile('empty.vtt', ''))
  await expect(alert).toContainText('empty.vtt')
  await expect(alert).toContainText('empty')
  await lay(page, tempFile('picture.vtt', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13, 0, 1, 2, 3])))
  await expect(alert).toContainText('picture.vtt')
  await lay(
    page,
    tempFile(
      'noise.mp4',
      new Uint8Array(5000).map((_, i) => (i * 7919) % 256),
    ),
  )
  await expect(alert).toContainText('noise.mp4')
  await lay(page, tempFile('later.tellwright.json', JSON.stringify({ format: 'tellwright', version: 9 })))
  await expect(alert).toContainText('version 9')
  await expect(page.getByText('Nothing lies on the bench yet.')).toBeVisible()
})

test('lines that could not be read are named with their number', async ({ page }) => {
  await lay(page, tempFile('odd.vtt', `${vtt('Take the lid off.')}\n\n00:09.000 --> soon\nlost words\n`))
  await expect(talkOf(page)).toContainText('Take the lid off.')
  await expect(page.locator('p[role="status"]').last()).toContainText('line')
})

test('every answer carries a policy that lets nothing out, and no request goes elsewhere', async ({ page }) => {
  const strays = stayHome(page)
  const answer = await page.goto('/')
  const policy = answer?.headers()['content-security-policy'] ?? ''
  expect(policy).toContain("default-src 'none'")
  expect(policy).toContain("connect-src 'self' blob: data:")
  await page.waitForTimeout(1000)
  expect(strays).toEqual([])
})

test('footage is asked for again where the browser cannot reopen it, and another file is told apart', async ({
  page,
}) => {
  const project = readFileSync('public/demo/demo.tellwright.json', 'utf8')
  const film = Uint8Array.from(readFileSync('public/demo/demo.mp4'))
  await lay(page, tempFile('demo.tellwright.json', project))
  await expect(page.getByText("can't reopen it by itself")).toBeVisible()
  const field = page.getByLabel('Footage file')
  const other = film.slice()
  other.fill(7, other.length - 100)
  await field.setInputFiles(tempFile('demo.mp4', other))
  await expect(page.getByText('is not the file this project was made from')).toBeVisible()
  await field.setInputFiles(tempFile('demo.mp4', film))
  await expect(page.locator('video')).toBeVisible()
})

test('footage that the browser cannot read is told with what to do, and is taken once it can be', async ({ page }) => {
  await lay(page, tempFile('lid.vtt', vtt('Take the lid off.')))
  await expect(talkOf(page)).toBeVisible()
  // As of a file that was moved after it was chosen: the browser knows its name and fails to read it.
  await page.evaluate(() => {
    const { arrayBuffer } = Blob.prototype
    Blob.prototype.arrayBuffer = () => {
      Blob.prototype.arrayBuffer = arrayBuffer
      return Promise.reject(new DOMException('a permission or a file is gone', 'NotReadableError'))
    }
  })
  const film = tempFile('lid.mp4', Uint8Array.from(readFileSync('public/demo/demo.mp4')))
  const field = page.getByLabel('Footage file')
  await field.setInputFiles(film)
  const place = page.getByRole('region', { name: 'Place for the footage' })
  await expect(place.getByRole('alert')).toContainText('“lid.mp4” could not be read (a permission or a file is gone)')
  await expect(place.getByRole('alert')).toContainText('choose it again')
  await field.setInputFiles(film)
  await expect(page.locator('video')).toBeVisible()
})

test('what is no transcript, no footage and no project is refused, and nothing is opened', async ({ page }) => {
  const alert = page.locator('main [role="alert"]')
  for (const [name, text, told] of [
    ['silent.vtt', 'WEBVTT\n', 'no cue that can be read'],
    ['lid.tellwright.json', 'not json', 'Choose a *.tellwright.json file'],
    ['lid.mp4', 'hello', 'holds text'],
  ] as const) {
    await lay(page, tempFile(name, text))
    await expect(alert).toContainText(name)
    await expect(alert).toContainText(told)
  }
  await expect(page.getByText('Nothing lies on the bench yet.')).toBeVisible()
})

test('a talk in another language is drafted with a word of warning', async ({ page }) => {
  await lay(
    page,
    tempFile(
      'de.vtt',
      vtt('Zuerst den Deckel abnehmen und die Schrauben lösen.', 'Dann mit dem Schlüssel anziehen, aber Vorsicht!'),
    ),
  )
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await expect(page.locator('p[role="status"]').last()).toContainText('The draft reads English only')
})

test('text without times: each bracket stands by its words, and no time is made up', async ({ page }) => {
  const lines = ['Today we look at the lid.', 'Take the two screws out.', 'Wipe the seat with a clean rag.']
  await lay(page, tempFile('plain.txt', lines.join('\n')))
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  const brackets = talkOf(page).locator('[data-mark][data-kind="step"]')
  await expect(brackets).toHaveCount(2)
  const tops = await brackets.evaluateAll(all => all.map(one => one.getBoundingClientRect().top))
  expect(new Set(tops).size).toBe(2)
  await expect(page.locator('main')).not.toContainText(/\b0:00–0:00\b/)
  await expect(talkOf(page)).not.toContainText('0:00')
})

test('files dropped anywhere are taken: beside the card, and on an open bench; another transcript takes the place of the one there', async ({
  page,
}) => {
  const drop = async (place: Locator, name: string, text: string) => {
    const dataTransfer = await page.evaluateHandle(
      ([as, what]) => {
        const transfer = new DataTransfer()
        transfer.items.add(new File([what ?? ''], as ?? ''))
        return transfer
      },
      [name, text],
    )
    // Refused by the page, the browser would open the file in its place.
    expect(
      await place.evaluate((node, data) => {
        const over = new DragEvent('dragover', { dataTransfer: data, bubbles: true, cancelable: true })
        return !node.dispatchEvent(over)
      }, dataTransfer),
    ).toBe(true)
    await place.dispatchEvent('drop', { dataTransfer })
  }
  await page.goto('/')
  await expect(page.getByRole('button', { name: 'Choose files' })).toBeVisible()
  await drop(page.locator('footer'), 'lid.vtt', vtt('Take the lid off.'))
  await expect(talkOf(page)).toContainText('Take the lid off.')
  await drop(sheetOf(page), 'better.vtt', vtt('Take the lid off the drum.'))
  await expect(noticeOf(page)).toContainText('“better.vtt” was left aside')
  await page.getByRole('button', { name: 'Times…' }).click()
  await page.getByLabel('Transcript file').setInputFiles(tempFile('better.vtt', vtt('Take the lid off the drum.')))
  await expect(talkOf(page)).toContainText('Take the lid off the drum.')
  await expect(noticeOf(page)).toContainText('The talk is “better.vtt” now; Ctrl + Z takes it back.')
  // Words held in the new talk are let go of with it: by their numbers they would be others in the talk before.
  const held = page.getByText(/^held: /)
  await talkOf(page).focus()
  await page.keyboard.press('End')
  await page.keyboard.press('Shift+Space')
  await expect(held).toHaveText('held: drum.')
  await page.keyboard.press('Control+z')
  await expect(talkOf(page)).not.toContainText('drum')
  await expect(held).toBeHidden()
  await page.keyboard.press('s')
  await expect(sheetOf(page)).toContainText('Nothing is marked yet')
})

test('words held stay held while their line is corrected', async ({ page }) => {
  await lay(page, tempFile('lid.vtt', vtt('Take the lit off.', 'Mind the spring.')))
  await talkOf(page).focus()
  await page.keyboard.press('Shift+Space')
  await page.keyboard.press('F2')
  await page.getByLabel(/^Words from/).fill('Take the lid off.')
  await page.keyboard.press('Enter')
  await expect(talkOf(page)).toContainText('Take the lid off.')
  await expect(page.getByText(/^held: /)).toHaveText('held: Take')
})
