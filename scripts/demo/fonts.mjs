import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'

/**
 * Unpacks a WOFF font to the OpenType file inside it.
 *
 * @source W3C WOFF File Format 1.0: header of 44 bytes, then per table tag, offset, packed and plain length, checksum
 */
const unpackWoff = woff => {
  const count = woff.readUInt16BE(12)
  const tables = Array.from({ length: count }, (_, i) => {
    const at = 44 + i * 20
    const [offset, packed, plain] = [4, 8, 12].map(field => woff.readUInt32BE(at + field))
    const data = woff.subarray(offset, offset + packed)
    return { entry: woff.subarray(at, at + 20), data: packed < plain ? inflateSync(data) : data }
  })
  const log = Math.floor(Math.log2(count))
  const head = Buffer.alloc(12 + count * 16)
  woff.copy(head, 0, 4, 8)
  head.writeUInt16BE(count, 4)
  head.writeUInt16BE(16 * 2 ** log, 6)
  head.writeUInt16BE(log, 8)
  head.writeUInt16BE(count * 16 - 16 * 2 ** log, 10)
  const parts = [head]
  let offset = head.length
  tables.forEach(({ entry, data }, i) => {
    entry.copy(head, 12 + i * 16, 0, 4)
    entry.copy(head, 12 + i * 16 + 4, 16, 20)
    head.writeUInt32BE(offset, 12 + i * 16 + 8)
    head.writeUInt32BE(data.length, 12 + i * 16 + 12)
    const padded = Buffer.alloc(Math.ceil(data.length / 4) * 4)
    data.copy(padded)
    parts.push(padded)
    offset += padded.length
  })
  return Buffer.concat(parts)
}

/** Lays the page's own fonts out where the drawing library finds them. Call before that library is loaded. */
export const prepareFonts = async (root, folder) => {
  await mkdir(folder, { recursive: true })
  for (const [family, weight] of [
    ['atkinson-hyperlegible', 400],
    ['atkinson-hyperlegible', 700],
    ['b612-mono', 400],
  ]) {
    const name = `${family}-latin-${weight}-normal`
    const woff = await readFile(join(root, 'node_modules/@fontsource', family, 'files', `${name}.woff`))
    await writeFile(join(folder, `${name}.ttf`), unpackWoff(woff))
  }
  const conf = `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${folder}</dir><cachedir>${folder}/cache</cachedir></fontconfig>`
  await writeFile(join(folder, 'fonts.conf'), conf)
  process.env.FONTCONFIG_FILE = join(folder, 'fonts.conf')
}
