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

/** Length of what closes a ZIP, bytes, and its signature. @source PKWARE APPNOTE 4.3.16, end of central directory record */
const CLOSE = 22
const CLOSE_SIGNATURE = 0x06054b50
/** Stands where a number has its place in the ZIP64 record. @source PKWARE APPNOTE 4.4.1.4 */
const IN_ZIP64 = 0xffffffff

/** @returns how many bytes stand in the file beside the ZIP itself: before it, behind it or as its comment. */
const strayBytes = (bytes: Uint8Array): number => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  for (let at = bytes.length - CLOSE; at >= 0; at--) {
    if (view.getUint32(at, true) !== CLOSE_SIGNATURE) continue
    const [size, offset] = [view.getUint32(at + 12, true), view.getUint32(at + 16, true)]
    const before = size === IN_ZIP64 || offset === IN_ZIP64 ? 0 : Math.abs(at - size - offset)
    return bytes.length - CLOSE - at + before
  }
  return 0
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
 *   `altered-file`, `unlisted-file`, `added-bytes`. Never throws.
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
  const stray = strayBytes(bytes)
  if (stray > 0)
    problems.push({
      code: 'added-bytes',
      message: `${countOf(stray, 'byte stands', 'bytes stand')} in this file beside the ZIP, which the manifest does not know; added afterwards`,
    })
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
