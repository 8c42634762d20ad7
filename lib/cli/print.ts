import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { TellwrightError } from '@/lib/procedure/problem'
import { QUIET_CHROMIUM } from './quiet-chromium'

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome']

/** Quiet, offline, with a profile of its own that is thrown away. */
const FLAGS = ['--headless', ...QUIET_CHROMIUM, '--no-pdf-header-footer']

const findBrowser = (): string => {
  const given = process.env.CHROMIUM
  const found = (given === undefined || given === '' ? PLACES : [given]).find(existsSync)
  if (found !== undefined) return found
  const message =
    'no Chromium to print the PDF with: install one (Debian: apt-get install chromium), or set CHROMIUM to its path; or leave --pdf out and print the HTML file'
  throw new TellwrightError('no-browser', message)
}

const runBrowser = (browser: string, args: readonly string[]): Promise<void> =>
  new Promise((resolve, reject) => {
    const child = spawn(browser, args, { stdio: ['ignore', 'ignore', 'pipe'], timeout: 120_000 })
    let complaint = ''
    child.stderr.on('data', chunk => {
      complaint = `${complaint}${chunk}`.slice(-2000)
    })
    child.on('error', cause => reject(new TellwrightError('no-pdf', `${browser} would not start`, { cause })))
    child.on('close', code => {
      if (code === 0) resolve()
      else reject(new TellwrightError('no-pdf', `${browser} failed to print (exit ${code}): ${complaint.trim()}`))
    })
  })

/**
 * Prints an HTML file as PDF with the Chromium of this machine.
 *
 * @throws TellwrightError `no-browser`, `no-pdf`
 */
export const printPdf = async (html: string): Promise<Uint8Array> => {
  const browser = findBrowser()
  const folder = await mkdtemp(join(tmpdir(), 'tellwright-'))
  try {
    const [page, pdf] = [join(folder, 'handout.html'), join(folder, 'handout.pdf')]
    await writeFile(page, html)
    const profile = `--user-data-dir=${join(folder, 'profile')}`
    await runBrowser(browser, [...FLAGS, profile, `--print-to-pdf=${pdf}`, pathToFileURL(page).href])
    if (!existsSync(pdf)) throw new TellwrightError('no-pdf', `${browser} printed nothing`)
    return await readFile(pdf)
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 3 })
  }
}
