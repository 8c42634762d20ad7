import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** Tests that change the world of all others: IndexedDB put into globalThis. */
const APART = 'tests/lib/store/**'

export default defineConfig({
  resolve: { alias: { '@': fileURLToPath(new URL('.', import.meta.url)).replace(/\/$/, '') } },
  test: {
    testTimeout: 30_000,
    // What is waited for comes in its own time on a busy machine; a second is too short.
    expect: { poll: { timeout: 15_000 } },
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        // One load of lexicons, grammars and models a worker, not one a file: they are values, nothing changes them.
        test: { name: 'together', include: ['tests/**/*.test.{ts,tsx}'], exclude: [APART], isolate: false },
      },
      { extends: true, test: { name: 'apart', include: [`${APART}/*.test.ts`], sequence: { groupOrder: 1 } } },
    ],
  },
})
