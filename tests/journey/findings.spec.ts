import { expect, type Page, test } from '@playwright/test'
import { lay, listenForTrouble, noticeOf, saved, sheetOf, stayHome, talkOf, tempFile } from './bench'

type Row = readonly [kind: string, text: string, more?: object]

const ROWS: readonly Row[] = [
  ['step', 'Switch off the isolator of the planer and lock it'],
  ['caution', 'The cutter block is sharp and can cut deep; wear gloves', { level: 'caution', hazard: 'sharp' }],
  ['caution', 'A live planer can kill; keep the key', { level: 'danger', hazard: 'electric-shock' }],
  ['step', 'Take off the belt guard'],
  ['step', 'Tighten the cover screws with the hex key'],
  ['spec', 'Cover screw torque', { quantity: { low: 3, high: 5 }, basis: 'manual', citation: 'page 9' }],
  ['tool', 'Hex key'],
  ['tool', 'Torque wrench'],
  ['step', 'Take the lock off the isolator'],
  ['step', 'Switch on the isolator'],
  ['step', 'Run the planer and listen'],
]

/** A job with faults in it and a talk of which one order is left over. */
const job = (): string => {
  const marks = ROWS.map(([kind, text, more], i) => ({
    id: `${kind}-${i}`,
    kind,
    text,
    said: text,
    start: i * 5,
    end: i * 5 + 4,
    ...more,
  }))
  const cues = [...marks.map(({ start, end, text }) => ({ start, end, text: `${text}.` }))]
  cues.push({ start: 60, end: 64, text: 'Then brush the shavings out of the chute.' })
  return JSON.stringify({
    format: 'tellwright',
    version: 1,
    procedure: {
      title: 'Planer drive',
      equipment: 'Bench planer',
      scope: '',
      revision: '',
      author: '',
      references: [],
    },
    recording: { footage: null, transcript: { name: 'planer.vtt', form: 'webvtt', cues } },
    marks,
    waivers: [],
  })
}

const chosen = (page: Page) => page.locator('aside[data-chosen="true"]')
const open = (page: Page) => page.locator('aside[data-rule]')
const layJob = async (page: Page) => {
  await lay(page, tempFile('planer.tellwright.json', job()))
  await expect(talkOf(page)).toBeVisible()
  await expect(open(page).first()).toBeVisible()
  await talkOf(page).focus()
}
const ruleOf = (page: Page) => chosen(page).getAttribute('data-rule')

/** Presses F until the finding of a rule is chosen. */
const walkTo = async (page: Page, rule: string) => {
  for (let i = 0; i < 20; i++) {
    await page.keyboard.press('f')
    await expect(noticeOf(page)).toContainText(/Finding \d+ of \d+/)
    if ((await ruleOf(page)) === rule) return
  }
  throw new Error(`no finding of ${rule} in the walk`)
}

test('by the keyboard alone, findings are walked through both ways, mended, and the walk goes on', async ({ page }) => {
  const strays = stayHome(page)
  const trouble = listenForTrouble(page)
  await layJob(page)
  await page.keyboard.press('f')
  await expect(noticeOf(page)).toContainText('Finding 1 of ')
  const first = await chosen(page).textContent()
  await page.keyboard.press('f')
  await expect(noticeOf(page)).toContainText('Finding 2 of ')
  expect(await chosen(page).textContent()).not.toBe(first)
  await page.keyboard.press('Shift+F')
  await expect(noticeOf(page)).toContainText('Finding 1 of ')
  expect(await chosen(page).textContent()).toBe(first)

  await walkTo(page, 'not-refitted')
  await page.keyboard.press('f')
  const following = await ruleOf(page)
  await page.keyboard.press('Shift+F')
  expect(await ruleOf(page)).toBe('not-refitted')
  await page.keyboard.press('x')
  await expect(sheetOf(page)).toContainText('Refit the belt guard')
  await expect(page.locator('aside[data-rule="not-refitted"]')).toHaveCount(0)
  // On to the one that came next, not back to the first.
  await page.keyboard.press('f')
  await expect(chosen(page)).toHaveAttribute('data-rule', following ?? '')
  await page.keyboard.press('f')
  await expect(chosen(page)).not.toHaveAttribute('data-rule', following ?? '')
  await page.keyboard.press('Control+z')
  await expect(page.locator('aside[data-rule="not-refitted"]')).toHaveCount(1)
  expect([strays, trouble]).toEqual([[], []])
})

test('a finding is let stand by key with a reason, stays on the sheet, and the walk passes it over', async ({
  page,
}) => {
  await layJob(page)
  await walkTo(page, 'spec-no-unit')
  await page.keyboard.press('v')
  await page.keyboard.type('the dial has no unit')
  await page.keyboard.press('Enter')
  const waived = page.locator('aside[data-level="waived"]')
  await expect(waived).toContainText('the dial has no unit')
  await saved(page)
  await page.reload()
  await expect(waived).toContainText('the dial has no unit')
  await talkOf(page).focus()
  const walked = new Set<string | null>()
  for (let i = 0; i < 12; i++) {
    await page.keyboard.press('f')
    await expect(chosen(page)).toHaveCount(1)
    walked.add(await ruleOf(page))
  }
  expect(walked.has('spec-no-unit')).toBe(false)
  expect(walked.size).toBeGreaterThan(1)
})

test('findings follow what is written, and come back with what is taken away', async ({ page }) => {
  await layJob(page)
  await expect(page.locator('aside[data-rule="spec-no-unit"]')).toHaveCount(1)
  await sheetOf(page)
    .getByRole('button', { name: /Take off the belt guard/ })
    .press('Enter')
  await page.keyboard.press('w')
  await page.keyboard.press('Control+a')
  await page.keyboard.type('Look at the belt guard')
  await page.keyboard.press('Tab')
  await expect(page.locator('aside[data-rule="not-refitted"]')).toHaveCount(0)
  await page.keyboard.press('Shift+Tab')
  await page.keyboard.press('Control+a')
  await page.keyboard.type('Take off the belt guard')
  await page.keyboard.press('Tab')
  await expect(page.locator('aside[data-rule="not-refitted"]')).toHaveCount(1)
})

test('what the marks leave over of the talk is walked through, marked, and then covered', async ({ page }) => {
  await layJob(page)
  const next = page.getByRole('button', { name: /Next of \d+ left over/ })
  await expect(next).toBeVisible()
  await expect(next).toHaveText(/Next of 1 left over/)
  await next.focus()
  await page.keyboard.press('Enter')
  await expect(noticeOf(page)).toContainText('no mark covers')
  await page.keyboard.press('s')
  await expect(sheetOf(page)).toContainText('brush the shavings out of the chute')
  await expect(next).toHaveCount(0)
  await expect(page.getByText('marks cover 100 % of the instructing talk')).toBeVisible()
})
