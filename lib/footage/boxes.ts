/**
 * Boxes of MP4 and MOV: a size, a type of four letters, then content or further boxes.
 *
 * @source ISO/IEC 14496-12 (ISO base media file format), clause 4.2, and Apple's QuickTime File Format, atoms (from memory)
 */
export type Box = {
  readonly type: string
  /** Where it begins. */
  readonly start: number
  /** Where its content begins. */
  readonly content: number
  readonly end: number
}

/** Content of a box to be made. */
export type Part = Uint8Array | readonly number[]

export const u16 = (n: number): readonly number[] => [(n >> 8) & 255, n & 255]
export const u32 = (n: number): readonly number[] => [(n >>> 24) & 255, (n >>> 16) & 255, (n >>> 8) & 255, n & 255]
/** @param n at most 2^53 */
export const u64 = (n: number): readonly number[] => [...u32(Math.floor(n / 2 ** 32)), ...u32(n % 2 ** 32)]
export const letters = (text: string): readonly number[] => Array.from(text, letter => letter.charCodeAt(0))

export const joined = (...parts: readonly Part[]): Uint8Array<ArrayBuffer> => {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0))
  let at = 0
  for (const part of parts) {
    all.set(part, at)
    at += part.length
  }
  return all
}

/** @returns a box of this type around the parts; under 4 GB */
export const box = (type: string, ...parts: readonly Part[]): Uint8Array<ArrayBuffer> =>
  joined(u32(8 + parts.reduce((sum, part) => sum + part.length, 0)), letters(type), ...parts)

/** @returns a box that opens with a version and 24 bits of flags */
export const fullBox = (type: string, version: number, flags: number, ...parts: readonly Part[]) =>
  box(type, [version], u32(flags).slice(1), ...parts)

export const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)

/**
 * Reads one box's header.
 *
 * @param head up to 16 bytes from where the box begins
 * @param start where that is
 * @param limit end of what holds the box; a size of 0 means up to there
 * @returns undefined where no box can begin so; its end may lie beyond the limit, in a file that was cut short
 */
export const readHeader = (head: Uint8Array, start: number, limit: number): Box | undefined => {
  if (head.length < 8) return undefined
  const view = viewOf(head)
  const type = String.fromCharCode(...head.subarray(4, 8))
  const small = view.getUint32(0)
  if (small === 0) return { type, start, content: start + 8, end: limit }
  if (small !== 1) return small < 8 ? undefined : { type, start, content: start + 8, end: start + small }
  if (head.length < 16) return undefined
  const size = view.getUint32(8) * 2 ** 32 + view.getUint32(12)
  return size < 16 ? undefined : { type, start, content: start + 16, end: start + size }
}

/** @returns the boxes that fill [from, to) one after the other, and where they end: QuickTime closes some lists with zeros. */
export const childrenOf = (bytes: Uint8Array, from: number, to: number): { boxes: readonly Box[]; end: number } => {
  const boxes: Box[] = []
  let at = from
  while (to - at >= 8) {
    const next = readHeader(bytes.subarray(at, Math.min(to, at + 16)), at, to)
    if (next === undefined || next.end > to || (next.end === to && viewOf(bytes).getUint32(at) === 0)) break
    boxes.push(next)
    at = next.end
  }
  return { boxes, end: at }
}

/** @returns the first box down this path of types, looked for in [from, to) */
export const findBox = (bytes: Uint8Array, path: readonly string[], from = 0, to = bytes.length): Box | undefined => {
  const [first, ...rest] = path
  const found = childrenOf(bytes, from, to).boxes.find(({ type }) => type === first)
  return found === undefined || rest.length === 0 ? found : findBox(bytes, rest, found.content, found.end)
}
