// Copies what packages carry as files of their own (WebAssembly, speech model) to public/vendor/<package>@<version>/,
// so that it is served from our origin and can be cached for good. Runs before `dev` and `build`; git ignores the copies.
// Addresses are made by lib/footage/vendored.ts. A scoped name loses its @ and slash: @ffmpeg/core -> ffmpeg-core.
import { cp, mkdir, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))
const target = join(root, 'public/vendor')

/** Package -> files or folders in it -> name in the copy. */
const WANTED = {
  '@ffmpeg/core': { 'dist/esm': '.' },
  '@ffmpeg/ffmpeg': { 'dist/esm': '.' },
  '@echogarden/fvad-wasm': { 'fvad.js': 'fvad.js', 'fvad.wasm': 'fvad.wasm', LICENSE: 'LICENSE' },
  soundswallower: {
    'soundswallower.web.js': 'soundswallower.web.js',
    'soundswallower.web.wasm': 'soundswallower.web.wasm',
    'model/en-us': 'model/en-us',
  },
}

/** The browser build imports a polyfill for Blob, which every browser we support has; a bare name can't be resolved here. */
const withoutPolyfill = async path => {
  const text = await readFile(path, 'utf8')
  const plain = text.replace(/^import \{ Blob \} from "blob-polyfill";\s*/, '')
  if (plain === text)
    throw new Error(`vendor: ${path} no longer begins with the import of blob-polyfill; look at it anew`)
  await writeFile(path, plain)
}

const isThere = path =>
  stat(path).then(
    () => true,
    () => false,
  )

await mkdir(target, { recursive: true })
const current = new Set()
for (const [name, files] of Object.entries(WANTED)) {
  const from = join(root, 'node_modules', name)
  const { version } = JSON.parse(await readFile(join(from, 'package.json'), 'utf8'))
  const folder = `${name.replace('@', '').replace('/', '-')}@${version}`
  current.add(folder)
  const done = join(target, folder, '.complete')
  if (await isThere(done)) continue
  await rm(join(target, folder), { recursive: true, force: true })
  for (const [path, as] of Object.entries(files)) {
    const to = join(target, folder, as)
    await mkdir(dirname(to), { recursive: true })
    await cp(join(from, path), to, { recursive: true })
  }
  if (name === 'soundswallower') await withoutPolyfill(join(target, folder, 'soundswallower.web.js'))
  await writeFile(done, '')
  console.log(`vendor: ${folder}`)
}
for (const folder of await readdir(target)) {
  if (!current.has(folder)) await rm(join(target, folder), { recursive: true, force: true })
}
