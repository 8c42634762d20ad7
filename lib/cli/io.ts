import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { dirname } from 'node:path'
import { TellwrightError } from '@/lib/procedure/problem'
import type { Io } from './command'

const readStandardInput = async (): Promise<Uint8Array> => {
  const chunks: Uint8Array[] = []
  for await (const chunk of process.stdin) chunks.push(chunk as Uint8Array)
  return Buffer.concat(chunks)
}

const reasonOf = (error: unknown): string => {
  const code = (error as NodeJS.ErrnoException).code
  if (code === 'ENOENT') return 'there is no such file; check the path'
  if (code === 'EACCES' || code === 'EPERM') return 'permission denied'
  if (code === 'EISDIR') return 'it is a folder, not a file'
  if (code === 'ENOSPC') return 'the disk is full'
  return error instanceof Error ? error.message : String(error)
}

/** The real files and streams of this process. */
export const processIo: Io = {
  out: text => void process.stdout.write(text),
  err: text => void process.stderr.write(text.endsWith('\n') ? text : `${text}\n`),
  read: async path => {
    if (path === '-') return readStandardInput()
    try {
      return await readFile(path)
    } catch (cause) {
      throw new TellwrightError('cannot-read', `cannot read ${path}: ${reasonOf(cause)}`, { cause })
    }
  },
  write: async (path, content) => {
    if (path === '-') {
      process.stdout.write(content)
      return
    }
    try {
      await mkdir(dirname(path), { recursive: true })
      await writeFile(path, content)
    } catch (cause) {
      throw new TellwrightError('cannot-write', `cannot write ${path}: ${reasonOf(cause)}`, { cause })
    }
  },
}
