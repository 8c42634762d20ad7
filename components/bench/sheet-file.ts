import { formatProblem } from '@/lib/procedure/problem'
import type { ReadBack } from '@/lib/publish/read-back'

const SHEET = { text: 'choose a sheet in Markdown that Tellwright published.' }

/**
 * Reads a sheet from its file.
 *
 * @param use what is wanted of the sheet
 * @returns that, and what was found in reading; whatever failed is refused in words that name the file
 */
export const readSheetFile = async <T>(
  file: File,
  use: (read: ReadBack) => Promise<T>,
): Promise<
  | { readonly ok: true; readonly value: T; readonly notices: readonly string[] }
  | { readonly ok: false; readonly why: string }
> => {
  try {
    const [{ parseSheetMarkdown }, { decodeText }] = await Promise.all([
      import('@/lib/publish/read-markdown'),
      import('@/lib/transcript/decode'),
    ])
    const decoded = decodeText(new Uint8Array(await file.arrayBuffer()), file.name, SHEET)
    if (!decoded.ok) return { ok: false, why: decoded.problems.map(formatProblem).join(' ') }
    const read = parseSheetMarkdown(decoded.value.text)
    if (!read.ok) return { ok: false, why: `${file.name}: ${read.problems.map(formatProblem).join(' ')}` }
    return { ok: true, value: await use(read.value), notices: decoded.value.problems.map(formatProblem) }
  } catch (error) {
    return {
      ok: false,
      why: `${file.name} could not be read: ${error instanceof Error ? error.message : String(error)}`,
    }
  }
}
