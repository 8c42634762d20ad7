// `npm run screenshots`: docs/screenshots from the demo, at 1440 and 800 px wide and as printed. Needs `npm run build`.
import { spawn } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { chromium } from '@playwright/test'

// Nothing this project starts calls home.
process.env.NEXT_TELEMETRY_DISABLED = '1'

const PORT = 4328
const ADDRESS = `http://127.0.0.1:${PORT}`
const FOLDER = process.argv[2] ?? 'docs/screenshots'
const ARGS =
  '--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync'

mkdirSync(FOLDER, { recursive: true })
const server = spawn('node_modules/.bin/next', ['start', '--hostname', '127.0.0.1', '--port', String(PORT)], {
  stdio: 'ignore',
})
const isUp = () =>
  fetch(ADDRESS).then(
    answer => answer.ok,
    () => false,
  )
for (let i = 0; i < 100 && !(await isUp()); i++) await new Promise(resolve => setTimeout(resolve, 100))

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ARGS.split(' '),
})
const shot = (page, name) => page.screenshot({ path: `${FOLDER}/${name}.png` })

try {
  for (const width of [1440, 800]) {
    const page = await browser.newPage({ viewport: { width, height: 900 } })
    await page.goto(ADDRESS)
    await page.getByRole('button', { name: 'Open the demo' }).waitFor()
    await page.waitForTimeout(400)
    await shot(page, `start-${width}`)
    await page.getByRole('button', { name: 'Open the demo' }).click()
    await page.getByRole('application').waitFor()
    await page.waitForTimeout(3500)
    await page.getByRole('application').focus()
    await page.keyboard.press('n')
    await page.keyboard.press('n')
    await page.waitForTimeout(400)
    await shot(page, `bench-${width}`)
    if (width < 900) {
      for (const surface of ['Footage', 'Sheet']) {
        await page.getByRole('navigation', { name: 'Surfaces' }).getByRole('button', { name: surface }).click()
        await page.waitForTimeout(300)
        await shot(page, `bench-${surface.toLowerCase()}-${width}`)
      }
    }
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Read the sheet' }).click()
    await page.waitForTimeout(300)
    await shot(page, `sheet-${width}`)
    if (width === 1440) await page.pdf({ path: `${FOLDER}/sheet-print.pdf`, format: 'A4', printBackground: true })
    await page.getByRole('button', { name: 'Read the sheet' }).click()
    await page.getByRole('button', { name: 'Publish' }).click()
    await page.waitForTimeout(1200)
    await shot(page, `publish-${width}`)
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Keys in use' }).click()
    await page.waitForTimeout(300)
    await shot(page, `keys-${width}`)
    await page.close()
  }
  const dark = await browser.newPage({ viewport: { width: 1440, height: 900 }, colorScheme: 'dark' })
  await dark.goto(ADDRESS)
  await dark.getByRole('button', { name: 'Open the demo' }).click()
  await dark.getByRole('application').waitFor()
  await dark.waitForTimeout(2500)
  await shot(dark, 'bench-dark-1440')
} finally {
  await browser.close()
  server.kill()
}
