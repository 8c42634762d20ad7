import { existsSync } from 'node:fs'
import { defineConfig } from '@playwright/test'
import { CHROMIUM, CHROMIUM_ARGS } from './tests/chromium'

/** Where tests that need a language model let one listen; nothing listens there otherwise. */
export const MODEL_PORT = 4399
const PORT = Number(process.env.TELLWRIGHT_TEST_PORT ?? 4317)
if (!existsSync(CHROMIUM))
  throw new Error(
    `No Chromium at ${CHROMIUM}: run \`npm test\`, which installs it, or set CHROMIUM to a browser's path.`,
  )

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
    launchOptions: { executablePath: CHROMIUM, args: CHROMIUM_ARGS },
    viewport: { width: 1440, height: 900 },
    acceptDownloads: true,
    // A trace costs half as much again as the journey: asked for where one is to be looked into.
    trace: process.env.TELLWRIGHT_TRACE === undefined ? 'off' : 'retain-on-failure',
    screenshot: 'only-on-failure',
  },
  webServer: {
    command: `NEXT_TELEMETRY_DISABLED=1 node_modules/.bin/next start --hostname 127.0.0.1 --port ${PORT}`,
    url: `http://127.0.0.1:${PORT}`,
    reuseExistingServer: process.env.CI === undefined,
    timeout: 60_000,
    env: { TELLWRIGHT_MODEL: `http://127.0.0.1:${MODEL_PORT}/v1/chat/completions` },
  },
})
