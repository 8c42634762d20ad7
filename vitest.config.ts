import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  resolve: { alias: { '@': fileURLToPath(new URL('.', import.meta.url)).replace(/\/$/, '') } },
  test: { include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'], testTimeout: 30_000, maxWorkers: 2 },
})
