// `npm run rules`: writes docs/rules from the rules themselves. A test fails where a page is not current.
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { importBundled } from './bundled.mjs'

const { rulePages } = await importBundled('lib/review/pages.ts')

const folder = 'docs/rules'
mkdirSync(folder, { recursive: true })
const pages = rulePages()
for (const old of readdirSync(folder)) if (!pages.some(({ name }) => name === old)) rmSync(`${folder}/${old}`)
for (const { name, text } of pages) writeFileSync(`${folder}/${name}`, text)
console.log(`${pages.length} pages in ${folder}`)
