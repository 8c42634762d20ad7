// Fits the weights of lib/draft to walkthroughs with known marks and reports how well they hold on cases left out.
//   node scripts/fit-draft.mjs [--write] [--test FOLDER] FOLDER ...
// A FOLDER holds NAME.gold.json with NAME.vtt and NAME.raw.srt beside it. With --test the model fitted to all FOLDERs is
// also scored on that one. With --write the weights go to lib/draft/*.json.
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const outfile = join(mkdtempSync(join(tmpdir(), 'fit-draft-')), 'fit.mjs')
await build({
  entryPoints: ['scripts/fit-draft/main.ts'],
  outfile,
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  banner: { js: "import { createRequire as __c } from 'node:module'; const require = __c(import.meta.url);" },
})
const { fitDraft } = await import(pathToFileURL(outfile).href)
fitDraft(process.argv.slice(2))
