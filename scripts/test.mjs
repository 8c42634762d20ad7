// `npm test`: installs what the tests need and runs them all. Ends with one line that counts them.
import { readFileSync, rmSync } from 'node:fs'
import { installPackages, installPrograms, run } from './machine.mjs'

// Nothing this project starts calls home.
process.env.NEXT_TELEMETRY_DISABLED = '1'

installPackages()
installPrograms()

const bin = name => `node_modules/.bin/${name}`
const [UNIT, JOURNEY] = ['test-results/unit.json', 'test-results/journey.json']
rmSync('test-results', { recursive: true, force: true })

const stages = [
  ['command line', 'npm', ['run', '--silent', 'build:cli']],
  ['build', 'npm', ['run', '--silent', 'build']],
  ['types', bin('tsc'), ['--noEmit']],
  ['lint', bin('biome'), ['check', '.']],
  ['dead code', bin('knip'), []],
  ['unit', bin('vitest'), ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${UNIT}`]],
  ['journey', bin('playwright'), ['test']],
]

const failed = []
for (const [name, command, args] of stages) {
  const begun = Date.now()
  console.log(`\n== ${name}`)
  if (run(command, args) !== 0) failed.push(name)
  console.log(
    `== ${name}: ${failed.includes(name) ? 'FAILED' : 'done'} in ${Math.round((Date.now() - begun) / 1000)} s`,
  )
}

const readCounts = (path, pick) => {
  try {
    return pick(JSON.parse(readFileSync(path, 'utf8')))
  } catch {
    return { passed: 0, failed: 1, skipped: 0 }
  }
}
const unit = readCounts(UNIT, r => ({
  passed: r.numPassedTests,
  failed: r.numFailedTests + (r.numFailedTests === 0 ? r.testResults.filter(t => t.status === 'failed').length : 0),
  skipped: r.numPendingTests + r.numTodoTests,
}))
const journey = readCounts(JOURNEY, ({ stats }) => ({
  passed: stats.expected + stats.flaky,
  failed: stats.unexpected,
  skipped: stats.skipped,
}))
const sum = key => unit[key] + journey[key]

if (failed.length > 0) console.log(`\nfailed: ${failed.join(', ')}`)
console.log(`\ntests: ${sum('passed')} passed, ${sum('failed')} failed, ${sum('skipped')} skipped`)
process.exit(failed.length === 0 ? 0 : 1)
