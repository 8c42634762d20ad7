import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

/** The project's own modules the demo is made with, bundled so that Node can load them. */
export const loadOurs = async (root, folder) => {
  const file = join(folder, 'ours.mjs')
  const contents = [
    "export { fingerprintOf } from '@/lib/footage/fingerprint'",
    "export { formatProject, parseProject } from '@/lib/procedure/project-file'",
    "export { readTranscript } from '@/lib/transcript/read'",
    "export { toSentences } from '@/lib/transcript/sentence'",
  ].join('\n')
  await build({
    stdin: { contents, resolveDir: root, loader: 'ts' },
    outfile: file,
    bundle: true,
    platform: 'node',
    format: 'esm',
    alias: { '@': root },
    logLevel: 'error',
  })
  return import(pathToFileURL(file).href)
}
