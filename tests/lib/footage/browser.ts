import { execFile } from 'node:child_process'
import { createReadStream } from 'node:fs'
import { readdir } from 'node:fs/promises'
import { createServer, type Server } from 'node:http'
import { extname, join, normalize } from 'node:path'
import { promisify } from 'node:util'
import { type Browser, chromium, type Page } from '@playwright/test'
import { build } from 'esbuild'
import { CHROMIUM, CHROMIUM_ARGS } from '../../chromium'
import type { Footage } from './page'

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.ts': 'text/javascript',
  '.wasm': 'application/wasm',
  '.css': 'text/css',
}

const FLAGS = [...CHROMIUM_ARGS, '--autoplay-policy=no-user-gesture-required']

/** Bundles the entry and the workers of lib/footage in memory: address -> text. */
const bundle = async (entry: string): Promise<Map<string, string>> => {
  const workers = (await readdir('lib/footage')).filter(name => name.endsWith('.worker.ts'))
  const { outputFiles } = await build({
    entryPoints: [
      { in: entry, out: 'page' },
      ...workers.map(name => ({ in: join('lib/footage', name), out: name.slice(0, -3) })),
    ],
    bundle: true,
    format: 'esm',
    write: false,
    outdir: '/',
    jsx: 'automatic',
    loader: { '.woff': 'dataurl', '.woff2': 'dataurl' },
    define: { 'process.env.NODE_ENV': '"production"' },
    alias: { '@': '.' },
    logLevel: 'error',
  })
  return new Map(outputFiles.map(file => [file.path.replace(/\.worker\.js$/, '.worker.ts'), file.text]))
}

const serve = async (entry: string): Promise<Server> => {
  const files = await bundle(entry)
  files.set(
    '/',
    '<!doctype html><meta charset="utf-8"><title>footage</title><link rel="stylesheet" href="/page.css"><body><script type="module" src="/page.js"></script>',
  )
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://x').pathname))
    const text = files.get(path)
    response.setHeader(
      'content-type',
      TYPES[extname(path)] ?? (path === '/' ? 'text/html' : 'application/octet-stream'),
    )
    if (text !== undefined) response.end(text)
    else
      createReadStream(join('public', path))
        .on('error', () => response.writeHead(404).end())
        .pipe(response)
  })
  return new Promise(resolve => server.listen(0, '127.0.0.1', () => resolve(server)))
}

/** A page in a real Chromium with lib/footage loaded (see page.ts) and the user's files chosen by the test. */
export type FootagePage = {
  readonly page: Page
  /** Runs in the page with the chosen file and everything lib/footage exports. */
  readonly on: <T>(path: string, run: string) => Promise<T>
  /** Closes the tab whatever it does, and opens another in its place; `page` stays the first. */
  readonly reopen: () => Promise<void>
  readonly close: () => Promise<void>
}

declare global {
  var footage: Footage
}

/** Starts Chromium on a page that has lib/footage; the site's vendored files are served from public/. */
export const footagePage = async (entry = 'tests/lib/footage/page.ts'): Promise<FootagePage> => {
  await promisify(execFile)(process.execPath, ['scripts/vendor.mjs'])
  const server = await serve(entry)
  const address = server.address()
  const port = typeof address === 'object' && address !== null ? address.port : 0
  const browser: Browser = await chromium.launch({
    executablePath: CHROMIUM,
    args: FLAGS,
  })
  const context = await browser.newContext()
  const open = async (): Promise<Page> => {
    const page = await context.newPage()
    page.on('pageerror', error => console.error('page:', error.message))
    await page.goto(`http://127.0.0.1:${port}/`)
    await page.waitForFunction('globalThis.footage !== undefined')
    return page
  }
  const page = await open()
  let shown = page
  return {
    page,
    on: async (path, run) => {
      await shown.evaluate(
        "document.querySelector('input')?.remove(); document.body.innerHTML = '<input type=\"file\">'",
      )
      await shown.setInputFiles('input', path)
      return shown.evaluate(
        `(async () => { const file = document.querySelector('input').files[0]; ${run} })()`,
      ) as Promise<never>
    },
    reopen: async () => {
      await shown.close()
      shown = await open()
    },
    close: async () => {
      await browser.close()
      server.close()
    },
  }
}
