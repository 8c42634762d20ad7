// `npm run bench [NAME ...]`: measures speed and memory. Bundles bench/*.bench.ts and runs each in a process of its own.
import { spawnSync } from 'node:child_process'
import { mkdirSync, readdirSync } from 'node:fs'
import { build } from 'esbuild'

const wanted = process.argv.slice(2)
const names = readdirSync('bench')
  .filter(name => name.endsWith('.bench.ts'))
  .map(name => name.replace('.bench.ts', ''))
  .filter(name => wanted.length === 0 || wanted.includes(name))

mkdirSync('dist/bench', { recursive: true })
await build({
  entryPoints: names.map(name => `bench/${name}.bench.ts`),
  outdir: 'dist/bench',
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  packages: 'external',
  outExtension: { '.js': '.mjs' },
  logLevel: 'warning',
})

const runner = `
const { bench } = await import(process.argv[1])
const rows = await bench.run()
for (const { what, value, unit, against } of rows)
  console.log('  ' + String(Math.round(value * 100) / 100).padStart(10) + ' ' + unit.padEnd(6) + what + (against === undefined ? '' : '   [' + against + ']'))
console.log('  ' + String(Math.round(process.resourceUsage().maxRSS / 1024)).padStart(10) + ' MB    most memory of this process')
process.exit(0)
`
let failed = 0
for (const name of names) {
  console.log(`\n${name}`)
  const { status } = spawnSync(
    process.execPath,
    ['--input-type=module', '-e', runner, new URL(`../dist/bench/${name}.bench.mjs`, import.meta.url).href],
    {
      stdio: 'inherit',
    },
  )
  if (status !== 0) failed++
}
process.exit(failed === 0 ? 0 : 1)
