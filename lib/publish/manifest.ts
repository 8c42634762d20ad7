import { z } from 'zod'
import { sha256, toBytes } from './digest'
import type { PublishedFile } from './publication'

/** Name of the manifest inside a packet. */
export const MANIFEST = 'manifest.json'

/** What a packet holds: every file but the manifest, with its size in bytes and its SHA-256. */
export const manifestSchema = z.object({
  format: z.literal('tellwright-packet'),
  version: z.literal(1),
  title: z.string(),
  files: z
    .array(z.object({ path: z.string(), type: z.string(), bytes: z.number().min(0), sha256: z.string() }))
    .readonly(),
})
export type Manifest = z.infer<typeof manifestSchema>

/** @returns the manifest of these files, in their order. */
export const toManifest = async (title: string, files: readonly PublishedFile[]): Promise<Manifest> => ({
  format: 'tellwright-packet',
  version: 1,
  title,
  files: await Promise.all(
    files.map(async ({ path, type, content }) => {
      const bytes = toBytes(content)
      return { path, type, bytes: bytes.length, sha256: await sha256(bytes) }
    }),
  ),
})

/** @returns whether a path stays inside the folder it is unpacked in, on every system. */
export const isSafePath = (path: string): boolean =>
  path !== '' &&
  !/[\\:\p{Cc}]/u.test(path) &&
  path.split('/').every(part => part !== '' && part !== '.' && part !== '..')
