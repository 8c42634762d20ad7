import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  resolve: { alias: { '@': fileURLToPath(new URL('.', import.meta.url)).replace(/\/$/, '') } },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 30_000,
    // What is waited for comes in its own time on a busy machine; a second is too short.
    expect: { poll: { timeout: 15_000 } },
    maxWorkers: 2,
  },
})
