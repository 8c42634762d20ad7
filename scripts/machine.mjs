// What both of the README's commands need of the machine: packages of this project, and Debian's for the tests.
import { spawnSync } from 'node:child_process'
import { existsSync, statSync } from 'node:fs'
import { delimiter, join } from 'node:path'

/** Runs a command with its output shown. @returns its exit code */
export const run = (command, args, options = {}) => {
  const { status, error } = spawnSync(command, args, { stdio: 'inherit', ...options })
  if (error) throw new Error(`could not run ${command}: ${error.message}`)
  return status ?? 1
}

/** Runs a command and ends this process where it fails. */
export const mustRun = (command, args, options) => {
  const code = run(command, args, options)
  if (code !== 0) {
    console.error(`\n${command} ${args.join(' ')} failed with exit code ${code}.`)
    process.exit(code)
  }
}

const hasProgram = name => (process.env.PATH ?? '').split(delimiter).some(folder => existsSync(join(folder, name)))

/** Installs the project's packages where they are missing or older than the lock file. */
export const installPackages = () => {
  const [major = 0] = process.versions.node.split('.').map(Number)
  if (major < 20) {
    console.error(`Tellwright needs Node 20 or newer; this is ${process.versions.node}.`)
    process.exit(2)
  }
  const mark = 'node_modules/.package-lock.json'
  if (existsSync(mark) && statSync(mark).mtimeMs >= statSync('package-lock.json').mtimeMs) return
  mustRun('npm', ['ci', '--no-audit', '--no-fund'])
}

/** Programs the tests use: name of the program, Debian's package. */
const PROGRAMS = [
  ['chromium', 'chromium'],
  ['ffmpeg', 'ffmpeg'],
  ['espeak-ng', 'espeak-ng'],
  ['sox', 'sox'],
  ['unzip', 'unzip'],
  ['pdftotext', 'poppler-utils'],
  ['xmllint', 'libxml2-utils'],
]

/** Installs what the tests need from Debian's packages, or says what to do. */
export const installPrograms = () => {
  const hasBrowser = process.env.CHROMIUM !== undefined && existsSync(process.env.CHROMIUM)
  const missing = PROGRAMS.filter(([program]) => !(hasProgram(program) || (program === 'chromium' && hasBrowser)))
  if (missing.length === 0) return
  const packages = missing.map(([, name]) => name)
  const command = `apt-get update && apt-get install -y --no-install-recommends ${packages.join(' ')}`
  if (process.getuid?.() !== 0 || !hasProgram('apt-get')) {
    console.error(`The tests need ${packages.join(', ')}. Install them and try again, on Debian as root:\n  ${command}`)
    process.exit(2)
  }
  mustRun('apt-get', ['update', '-qq'])
  mustRun('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], {
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  })
}
