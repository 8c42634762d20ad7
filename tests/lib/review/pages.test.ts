import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { rulePages } from '@/lib/review/pages'

test('[R11] docs/rules holds the page of every rule, as `npm run rules` writes it, and nothing else', () => {
  const pages = rulePages()
  const stale = pages.filter(
    ({ name, text }) => !existsSync(`docs/rules/${name}`) || readFileSync(`docs/rules/${name}`, 'utf8') !== text,
  )
  expect(stale.map(({ name }) => name)).toEqual([])
  expect(readdirSync('docs/rules').sort()).toEqual(pages.map(({ name }) => name).sort())
})
