import { unzipSync } from 'fflate'
import { countOf } from '@/lib/procedure/count'
import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import { sha256 } from './digest'
import { isSafePath, MANIFEST, type Manifest, manifestSchema } from './manifest'

const unpack = (bytes: Uint8Array): Record<string, Uint8Array> | undefined => {
  try {
    return unzipSync(bytes)
  } catch {
    return undefined
  }
}

const readManifest = (bytes: Uint8Array): Manifest | undefined => {
  try {
    const parsed = manifestSchema.safeParse(JSON.parse(new TextDecoder().decode(bytes)))
    return parsed.success ? parsed.data : undefined
  } catch {
    return undefined
  }
}

const problem = (code: string, path: string, message: string): Problem => ({ code, message, place: { path } })

/**
 * Checks a packet against its manifest.
 *
 * @returns the manifest; or problems, one a file: `not-a-packet`, `no-manifest`, `unsafe-path`, `missing-file`,
 *   `altered-file`, `unlisted-file`. Never throws.
 */
export const verifyPacket = async (bytes: Uint8Array): Promise<Result<Manifest>> => {
  const files = unpack(bytes)
  if (files === undefined)
    return refusal({
      code: 'not-a-packet',
      message: 'this is not a ZIP file, or it is damaged. Choose a packet that Tellwright published.',
    })
  const raw = files[MANIFEST]
  const manifest = raw === undefined ? undefined : readManifest(raw)
  if (manifest === undefined) {
    const message =
      raw === undefined
        ? `this ZIP holds no ${MANIFEST}, so it is no packet, or it was taken out`
        : `the ${MANIFEST} is not one of a packet: expected format "tellwright-packet", version 1, with a list of files`
    return refusal(problem('no-manifest', MANIFEST, message))
  }
  const listed = new Set([MANIFEST, ...manifest.files.map(({ path }) => path)])
  const problems: Problem[] = []
  for (const path of Object.keys(files)) {
    if (!isSafePath(path))
      problems.push(
        problem('unsafe-path', path, 'this path would leave the folder it is unpacked in; do not unpack this file'),
      )
    else if (!listed.has(path))
      problems.push(problem('unlisted-file', path, 'this file is not in the manifest; it was added afterwards'))
  }
  for (const { path, bytes: size, sha256: wanted } of manifest.files) {
    const content = Object.hasOwn(files, path) ? files[path] : undefined
    if (content === undefined)
      problems.push(problem('missing-file', path, 'the manifest lists this file, but it is not in the ZIP'))
    else if (content.length !== size)
      problems.push(
        problem(
          'altered-file',
          path,
          `it is ${countOf(content.length, 'byte')}; the manifest says ${size}. It was changed afterwards`,
        ),
      )
    else if ((await sha256(content)) !== wanted)
      problems.push(
        problem('altered-file', path, 'its SHA-256 is not the one in the manifest. It was changed afterwards'),
      )
  }
  return problems.length === 0 ? success(manifest) : { ok: false, problems }
}
