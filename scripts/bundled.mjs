import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

/** Bundles a TypeScript file of the project for Node and imports it. */
export const importBundled = async entry => {
  const outfile = join(mkdtempSync(join(tmpdir(), 'bundled-')), 'main.mjs')
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    banner: { js: "import { createRequire as __c } from 'node:module'; const require = __c(import.meta.url);" },
  })
  return import(pathToFileURL(outfile).href)
}
