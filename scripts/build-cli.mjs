// Bundles the command line (TypeScript, which Node 20 cannot run) into dist/cli. Runs on `npm ci` through `prepare`.
import { readFile } from 'node:fs/promises'
import { build } from 'esbuild'

const { dependencies } = JSON.parse(await readFile(new URL('../package.json', import.meta.url), 'utf8'))

/** Small pure-JavaScript packages: bundling them saves the loader hundreds of file reads at start. */
const BUNDLED = new Set(['zod', 'yaml', 'client-zip', 'unist-util-visit', 'remark', 'remark-gfm', 'remark-frontmatter'])

await build({
  entryPoints: ['lib/cli/main.ts'],
  outdir: 'dist/cli',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  outExtension: { '.js': '.mjs' },
  // Bundled for a fast start, but for what carries data files or native parts of its own.
  external: Object.keys(dependencies).filter(name => !BUNDLED.has(name)),
  banner: {
    js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
  },
  logLevel: 'warning',
})
