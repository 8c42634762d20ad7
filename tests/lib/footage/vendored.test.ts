import { readFile } from 'node:fs/promises'
import { expect, test } from 'vitest'
import { VENDORED, vendored } from '@/lib/footage/vendored'

test('[F2] addresses of vendored files carry the versions that are installed', async () => {
  const installed = await Promise.all(
    Object.keys(VENDORED).map(async name => {
      const { version } = JSON.parse(await readFile(`node_modules/${name}/package.json`, 'utf8')) as { version: string }
      return [name, version] as const
    }),
  )
  expect(Object.fromEntries(installed)).toEqual(VENDORED)
  expect(vendored('@ffmpeg/core', 'ffmpeg-core.js')).toBe('/vendor/ffmpeg-core@0.12.10/ffmpeg-core.js')
})
