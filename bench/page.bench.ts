import { spawn } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Page } from '@playwright/test'
import { QUIET_CHROMIUM } from '@/lib/cli/quiet-chromium'
import type { Bench, BenchRow } from './row'
import { longTalk } from './talk'

const PORT = 4329
const ADDRESS = `http://127.0.0.1:${PORT}`

const serve = async (): Promise<() => void> => {
  const server = spawn('node_modules/.bin/next', ['start', '--hostname', '127.0.0.1', '--port', String(PORT)], {
    stdio: 'ignore',
  })
  for (let i = 0; i < 100; i++) {
    const isUp = await fetch(ADDRESS).then(
      answer => answer.ok,
      () => false,
    )
    if (isUp) return () => void server.kill()
    await new Promise(resolve => setTimeout(resolve, 100))
  }
  server.kill()
  throw new Error('the built app does not start: run `npm run build` first')
}

/** Longest task over 50 ms since the last call, ms; 0 for none. */
const longestTask = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const holder = window as unknown as { tasks?: number[] }
    const longest = Math.max(0, ...(holder.tasks ?? []))
    holder.tasks = []
    return longest
  })

const watchTasks = (page: Page) =>
  page.addInitScript(() => {
    const holder = window as unknown as { tasks?: number[] }
    holder.tasks = []
    new PerformanceObserver(list => holder.tasks?.push(...list.getEntries().map(entry => entry.duration))).observe({
      type: 'longtask',
      buffered: true,
    })
  })

const transferred = async (page: Page): Promise<number> => {
  const bytes = await page.evaluate(() =>
    [...performance.getEntriesByType('resource'), ...performance.getEntriesByType('navigation')]
      .filter(entry =>
        /\.js|\.css|document|bench/.test(`${entry.name} ${(entry as PerformanceResourceTiming).initiatorType}`),
      )
      .filter(entry => entry.name.includes('.js'))
      .reduce((sum, entry) => sum + (entry as PerformanceResourceTiming).encodedBodySize, 0),
  )
  return bytes / 1000
}

/** The bench in a real browser, with a talk of three hours: 4,000 cues, about 27,000 words. */
export const bench: Bench = {
  name: 'page',
  run: async () => {
    const stop = await serve()
    const browser = await chromium.launch({
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
      args: [...QUIET_CHROMIUM],
    })
    const rows: BenchRow[] = []
    try {
      const page = await browser.newPage({ viewport: { width: 1440, height: 900 } })
      await watchTasks(page)
      const path = join(mkdtempSync(join(tmpdir(), 'tellwright-bench-')), 'long.vtt')
      writeFileSync(path, longTalk(4000, 7))
      await page.goto(ADDRESS)
      await page.getByLabel('Footage, transcript or project file').setInputFiles(path)
      const talk = page.getByRole('application')
      await talk.waitFor()
      await page.waitForTimeout(1500)
      await page.reload({ waitUntil: 'commit' })
      await talk.locator('[data-paragraph="0"]').waitFor()
      const opened = await page.evaluate(() => performance.now())
      rows.push({
        what: 'reload to the talk of 4,000 cues on screen',
        value: opened,
        unit: 'ms',
        against: 'under 1,000 ms',
      })
      await page.waitForTimeout(2500)
      rows.push({ what: 'longest task while opening', value: await longestTask(page), unit: 'ms' })
      rows.push({
        what: 'scripts of the bench, compressed',
        value: await transferred(page),
        unit: 'count',
        against: 'at most 220 kB',
      })
      await talk.hover()
      for (let i = 0; i < 60; i++) {
        await page.mouse.wheel(0, 900)
        await page.waitForTimeout(30)
      }
      rows.push({
        what: 'longest task while scrolling',
        value: await longestTask(page),
        unit: 'ms',
        against: 'none over 50 ms',
      })
      await talk.focus()
      for (let i = 0; i < 25; i++) {
        await page.keyboard.press('Shift+Space')
        await page.keyboard.press('Shift+ArrowRight')
        await page.keyboard.press('s')
        await page.keyboard.press('Escape')
        for (let n = 0; n < 4; n++) await page.keyboard.press('ArrowRight')
      }
      await page.waitForTimeout(500)
      rows.push({
        what: 'longest task while making 25 marks',
        value: await longestTask(page),
        unit: 'ms',
        against: 'none over 50 ms',
      })
      return rows
    } finally {
      await browser.close()
      stop()
    }
  },
}
