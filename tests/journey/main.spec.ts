import { readFileSync } from 'node:fs'
import { expect, test } from '@playwright/test'
import { lay, listenForTrouble, noticeOf, openDemo, saved, sheetOf, stayHome, talkOf, tempFile, vtt } from './bench'

const LINES = [
  'Take the two screws out of the lid.',
  'Mind the spring behind it, it can jump out at you.',
  'You want twelve to fifteen newton metres on those.',
  'A five millimetre hex key does it.',
  'A dab of white grease on the pivot.',
  'It should swing back without a click.',
  'The grease keeps the damp out.',
  'If it grinds the bushing is worn.',
]

const KINDS = [
  ['s', 'step'],
  ['c', 'caution'],
  ['q', 'spec'],
  ['t', 'tool'],
  ['m', 'material'],
  ['e', 'check'],
  ['r', 'reason'],
  ['y', 'symptom'],
] as const

test('one mark of each kind by keyboard alone, published, reloaded, and nothing left the machine', async ({ page }) => {
  const strays = stayHome(page)
  const trouble = listenForTrouble(page)
  await lay(page, tempFile('lid.vtt', vtt(...LINES)))
  await expect(talkOf(page)).toBeVisible()
  await talkOf(page).focus()
  for (const [i, [key]] of KINDS.entries()) {
    const words = LINES[i]?.split(' ').length ?? 0
    await page.keyboard.press('Shift+Space')
    for (let n = 1; n < words; n++) await page.keyboard.press('Shift+ArrowRight')
    await page.keyboard.press(key)
    await page.keyboard.press('Escape')
    // Choosing a mark sets the caret on its first word; walk past it.
    for (let n = 0; n < words; n++) await page.keyboard.press('ArrowRight')
  }
  await expect(sheetOf(page).locator('[data-item]')).toHaveCount(8)
  for (const [, kind] of KINDS) await expect(sheetOf(page).locator(`[data-kind="${kind}"]`)).toHaveCount(1)
  await expect(sheetOf(page).locator('[data-kind="spec"]')).toContainText('12 to 15 N·m')
  await saved(page)

  await page.getByRole('button', { name: 'Publish' }).click()
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: /^Save .*\.md$/ }).click()
  const markdown = readFileSync(await (await download).path(), 'utf8')
  for (const line of LINES.filter((_, i) => i !== 2 && i !== 3 && i !== 4))
    expect(markdown).toContain(line.replace(/\.$/, ''))
  expect(markdown).toContain('12 to 15 N·m')
  expect(markdown).toContain('#t=0,4')
  expect(markdown.indexOf('Mind the spring')).toBeLessThan(markdown.indexOf('Take the two screws'))
  await page.keyboard.press('Escape')

  await page.reload()
  await expect(sheetOf(page).locator('[data-item]')).toHaveCount(8)
  expect(strays).toEqual([])
  expect(trouble).toEqual([])
})

test('the demo opens by one click, plays, and the talk follows and leads', async ({ page }) => {
  const trouble = listenForTrouble(page)
  await openDemo(page)
  const video = page.locator('video')
  await expect(video).toBeVisible()
  await expect.poll(() => video.evaluate((element: HTMLVideoElement) => element.readyState)).toBeGreaterThan(1)
  await talkOf(page).focus()
  for (let i = 0; i < 12; i++) await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Enter')
  await expect.poll(() => video.evaluate((element: HTMLVideoElement) => element.currentTime)).toBeGreaterThan(1)
  await page.keyboard.press('k')
  await expect.poll(() => video.evaluate((element: HTMLVideoElement) => element.paused)).toBe(false)
  await page.keyboard.press('k')
  await expect.poll(() => video.evaluate((element: HTMLVideoElement) => element.paused)).toBe(true)
  expect(trouble).toEqual([])
})

test('words are corrected in place, the original kept; a speaker is named; both can be taken back', async ({
  page,
}) => {
  await lay(page, tempFile('lid.vtt', vtt('Torque it to twelve new to meters.', 'Then let go.')))
  await talkOf(page).focus()
  await page.keyboard.press('F2')
  const field = page.getByLabel(/^Words from/)
  await field.fill('Torque it to twelve newton metres.')
  await page.getByRole('button', { name: 'Correct these words' }).click()
  await expect(talkOf(page)).toContainText('twelve newton metres')
  await page.keyboard.press('F2')
  await expect(page.getByText('As the file had it:')).toContainText('new to meters')
  await page.keyboard.press('Escape')

  await page.getByRole('button', { name: 'who?' }).first().click()
  await page.getByLabel('Who speaks here').fill('Wanda')
  await page.getByRole('button', { name: 'Name the speaker' }).click()
  await expect(page.getByRole('button', { name: 'Wanda' }).first()).toBeVisible()
  await page.keyboard.press('Control+z')
  await page.keyboard.press('Control+z')
  await expect(talkOf(page)).toContainText('new to meters')
})

test('a misheard word is corrected by mouse in every line and in the marks made of them, as one change', async ({
  page,
}) => {
  await lay(
    page,
    tempFile('deck.vtt', vtt('Grease the spin dulls on the deck.', 'Spin dulls turn freely.', 'Wipe the rest.')),
  )
  await page.getByRole('button', { name: 'Draft marks from the talk' }).click()
  await expect(sheetOf(page)).toContainText('Grease the spin dulls')
  const text = talkOf(page).locator('p').first()
  const box = await text.boundingBox()
  await page.mouse.dblclick((box?.x ?? 0) + 8, (box?.y ?? 0) + 14)
  await page.getByRole('button', { name: 'correct', exact: true }).click()
  const field = page.getByLabel(/^Words from/)
  await field.fill('Grease the spindles on the deck.')
  await page.getByLabel('“spin dulls” to “spindles” in 1 other line too').check()
  await expect(page.getByRole('button', { name: 'Correct these words' })).toBeInViewport({ ratio: 1 })
  await field.press('Enter')
  await expect(field).toHaveCount(0)
  await expect(noticeOf(page)).toHaveText(/^Corrected in 2 lines and \d+ marks?\.$/)
  await expect(talkOf(page)).toContainText('Spindles turn freely.')
  await expect(sheetOf(page)).toContainText('Grease the spindles')
  await expect(sheetOf(page)).not.toContainText(/spin dulls/i)
  await page.keyboard.press('Control+z')
  await expect(talkOf(page)).toContainText('Spin dulls turn freely.')
  await expect(sheetOf(page)).toContainText('Grease the spin dulls')
})

test('marking by mouse: words held by dragging, an edge dragged in the talk', async ({ page }) => {
  await lay(page, tempFile('lid.vtt', vtt(...LINES)))
  const text = page.locator('[data-paragraph="0"]')
  const box = await text.boundingBox()
  if (box === null) throw new Error('the talk has no box')
  await page.mouse.move(box.x + 4, box.y + 14)
  await page.mouse.down()
  await page.mouse.move(box.x + 120, box.y + 14, { steps: 6 })
  await page.mouse.up()
  await page.keyboard.press('s')
  const chosen = page.locator('[data-edge="end"]')
  const said = page.locator('section[aria-label="Fields of this step"]')
  await expect(said).toBeVisible()
  const before = await page.getByLabel('To', { exact: true }).inputValue()
  const edge = await chosen.boundingBox()
  if (edge === null) throw new Error('no edge to drag')
  await page.mouse.move(edge.x + 8, edge.y + 6)
  await page.mouse.down()
  await page.mouse.move(edge.x + 8, edge.y + 40, { steps: 5 })
  await page.mouse.up()
  await expect.poll(() => page.getByLabel('To', { exact: true }).inputValue()).not.toBe(before)
})

test('a step is moved in the procedure, its footage stays where it is', async ({ page }) => {
  await lay(page, tempFile('lid.vtt', vtt(...LINES)))
  await talkOf(page).focus()
  for (let n = 0; n < 3; n++) {
    await page.keyboard.press('Shift+Space')
    await page.keyboard.press('s')
    await page.keyboard.press('Escape')
    await page.keyboard.press('ArrowRight')
  }
  const order = () =>
    sheetOf(page)
      .locator('[data-kind="step"]')
      .evaluateAll(all => all.map(one => one.textContent?.match(/[A-Z][a-z]+/)?.[0]))
  expect(await order()).toEqual(['Take', 'The', 'Two'])
  await page.keyboard.press('n')
  await page.keyboard.press('n')
  await page.keyboard.press('Alt+ArrowDown')
  await expect.poll(order).not.toEqual(['Take', 'The', 'Two'])
  await page.keyboard.press('Control+z')
  await expect.poll(order).toEqual(['Take', 'The', 'Two'])
})

test('the draft pencils marks, keeping and dropping are one key each', async ({ page }) => {
  await openDemo(page)
  const before = await sheetOf(page).locator('[data-item]').count()
  await page.getByRole('button', { name: /Draft/ }).first().click()
  await expect(noticeOf(page)).toContainText('pencilled')
  const pencilled = sheetOf(page).locator('[data-pencilled="true"]')
  await expect.poll(() => pencilled.count()).toBeGreaterThan(0)
  const count = await pencilled.count()
  await pencilled.first().getByRole('button').first().click()
  await talkOf(page).focus()
  await page.keyboard.press('a')
  await expect(pencilled).toHaveCount(count - 1)
  await pencilled.first().getByRole('button').first().click()
  await page.keyboard.press('Delete')
  await expect(pencilled).toHaveCount(count - 2)
  expect(before).toBeGreaterThan(0)
})
