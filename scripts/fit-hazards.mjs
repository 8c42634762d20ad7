// Fits the weights by which the review tells which step brings which hazard and which caution answers which.
//   node scripts/fit-hazards.mjs [--write]
// It reads scripts/fit-hazards/sheets and lines, prints what is found and what is found wrongly on sheets left out, and with
// --write puts the weights into lib/review/hazard-model.json and caution-model.json.
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const outfile = join(mkdtempSync(join(tmpdir(), 'fit-hazards-')), 'fit.mjs')
await build({
  entryPoints: ['scripts/fit-hazards/main.ts'],
  outfile,
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  banner: { js: "import { createRequire as __c } from 'node:module'; const require = __c(import.meta.url);" },
})
const { fitHazards } = await import(pathToFileURL(outfile).href)
fitHazards(process.argv.slice(2))
