import { closeSync, fstatSync, openSync, readSync } from 'node:fs'

/** Bytes a stream reads at once. */
const PORTION = 1 << 18

/** A file as a Blob of any size: openAsBlob of Node 20 counts bytes modulo 4 GB (measured). Close it when done. */
export class FileBlob extends Blob {
  readonly #fd: number
  readonly #from: number
  readonly #size: number

  private constructor(fd: number, from: number, size: number) {
    super()
    this.#fd = fd
    this.#from = from
    this.#size = size
  }

  static open(path: string): FileBlob {
    const fd = openSync(path, 'r')
    return new FileBlob(fd, 0, fstatSync(fd).size)
  }

  override get size(): number {
    return this.#size
  }

  override slice(start = 0, end = this.#size): FileBlob {
    return new FileBlob(this.#fd, this.#from + start, Math.max(0, Math.min(end, this.#size) - start))
  }

  override async arrayBuffer(): Promise<ArrayBuffer> {
    const bytes = new Uint8Array(this.#size)
    for (let at = 0, read = 1; at < bytes.length && read > 0; at += read)
      read = readSync(this.#fd, bytes, at, bytes.length - at, this.#from + at)
    return bytes.buffer
  }

  override stream(): ReturnType<Blob['stream']> {
    let at = 0
    return new ReadableStream<Uint8Array<ArrayBuffer>>({
      pull: async controller => {
        const part = await this.slice(at, at + PORTION).arrayBuffer()
        at += part.byteLength
        if (part.byteLength > 0) controller.enqueue(new Uint8Array(part))
        if (at >= this.#size) controller.close()
      },
    })
  }

  override async text(): Promise<string> {
    return new TextDecoder().decode(await this.arrayBuffer())
  }

  close(): void {
    closeSync(this.#fd)
  }
}
