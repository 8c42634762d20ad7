import { existsSync } from 'node:fs'
import { defineConfig } from '@playwright/test'

/** Where tests that need a language model let one listen; nothing listens there otherwise. */
export const MODEL_PORT = 4399
const PORT = Number(process.env.TELLWRIGHT_TEST_PORT ?? 4317)
const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium'
if (!existsSync(executablePath))
  throw new Error(
    `No Chromium at ${executablePath}: run \`npm test\`, which installs it, or set CHROMIUM to a browser's path.`,
  )

/** What keeps a headless Chromium quiet: no calls home, no sandbox where tests run as root. */
const ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

export default defineConfig({
  testDir: 'tests/journey',
  testMatch: '**/*.spec.ts',
  timeout: 90_000,
  expect: { timeout: 15_000 },
  fullyParallel: false,
  workers: 2,
  retries: 0,
  forbidOnly: process.env.CI !== undefined,
  reporter: [['list'], ['json', { outputFile: 'test-results/journey.json' }]],
  outputDir: 'test-results/journey',
  use: {
    baseURL: `http://127.0.0.1:${PORT}`,
    launchOptions: { executablePath, args: ARGS },
    viewport: { width: 1440, height: 900 },
    acceptDownloads: true,
    trace: 'retain-on-failure',
  },
  webServer: {
    command: `NEXT_TELEMETRY_DISABLED=1 node_modules/.bin/next start --hostname 127.0.0.1 --port ${PORT}`,
    url: `http://127.0.0.1:${PORT}`,
    reuseExistingServer: process.env.CI === undefined,
    timeout: 60_000,
    env: { TELLWRIGHT_MODEL: `http://127.0.0.1:${MODEL_PORT}/v1/chat/completions` },
  },
})
