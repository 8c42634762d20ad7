import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, type Page } from '@playwright/test'

/** Fails the test on any request that leaves this machine's own origin. */
export const stayHome = (page: Page): string[] => {
  const strays: string[] = []
  page.on('request', request => {
    const { protocol, hostname } = new URL(request.url())
    if (protocol.startsWith('http') && hostname !== '127.0.0.1') strays.push(request.url())
  })
  return strays
}

/** Collects what the page complains of: exceptions and console errors. */
export const listenForTrouble = (page: Page): string[] => {
  const trouble: string[] = []
  page.on('pageerror', error => trouble.push(error.message))
  page.on('console', message => {
    if (message.type() === 'error') trouble.push(message.text())
  })
  return trouble
}

export const talkOf = (page: Page) => page.getByRole('application')
export const sheetOf = (page: Page) => page.getByRole('article', { name: 'The sheet' })
export const noticeOf = (page: Page) => page.locator('p[role="status"]').last()

/** Opens the demo from the start page and waits for its talk. */
export const openDemo = async (page: Page): Promise<void> => {
  await page.goto('/')
  await page.getByRole('button', { name: 'Open the demo' }).click()
  await expect(talkOf(page)).toBeVisible()
}

/** Writes a file for the test. @returns its path */
export const tempFile = (name: string, content: string | Uint8Array): string => {
  const path = join(mkdtempSync(join(tmpdir(), 'tellwright-')), name)
  writeFileSync(path, content)
  return path
}

/** Lays files on the bench by the start page's file field. */
export const lay = async (page: Page, ...paths: string[]): Promise<void> => {
  await page.goto('/')
  await page.getByLabel('Footage, transcript or project file').setInputFiles(paths)
}

/** Waits until the last change is on the disk. */
export const saved = (page: Page) => expect(page.locator('[data-saved]')).toHaveText('saved in this browser')

/** A short talk: one line a cue, four seconds each. */
export const vtt = (...lines: string[]): string =>
  ['WEBVTT', ...lines.map((line, i) => `${stamp(i * 4)} --> ${stamp(i * 4 + 4)}\n${line}`)].join('\n\n')

const stamp = (seconds: number): string =>
  `${String(Math.floor(seconds / 60)).padStart(2, '0')}:${String(seconds % 60).padStart(2, '0')}.000`
