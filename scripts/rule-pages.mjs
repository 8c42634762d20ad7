// `npm run rules`: writes docs/rules from the rules themselves. A test fails where a page is not current.
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { build } from 'esbuild'

const bundled = new URL('../dist/rule-pages.mjs', import.meta.url)
await build({
  entryPoints: ['lib/review/pages.ts'],
  outfile: bundled.pathname,
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  packages: 'external',
  logLevel: 'warning',
})
const { rulePages } = await import(bundled.href)

const folder = 'docs/rules'
mkdirSync(folder, { recursive: true })
const pages = rulePages()
for (const old of readdirSync(folder)) if (!pages.some(({ name }) => name === old)) rmSync(`${folder}/${old}`)
for (const { name, text } of pages) writeFileSync(`${folder}/${name}`, text)
console.log(`${pages.length} pages in ${folder}`)
