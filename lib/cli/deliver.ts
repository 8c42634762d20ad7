import { existsSync, statSync } from 'node:fs'
import { basename, dirname, extname, join } from 'node:path'
import type { PublishedFile } from '@/lib/publish/publication'
import type { Io } from './command'

/** Whether the user means a folder: it is one, its name ends in a slash, or there is nothing there and its name has no ending. */
export const isFolder = (path: string): boolean =>
  /[\\/]$/.test(path) || (existsSync(path) ? statSync(path).isDirectory() : extname(basename(path)) === '')

/** Two projects of one title must not write over each other. */
export const apart = (groups: readonly (readonly PublishedFile[])[]): readonly PublishedFile[] => {
  const taken = new Set<string>()
  return groups.flatMap(files => {
    const clashes = files.some(({ path }) => taken.has(path))
    let n = 2
    while (clashes && files.some(({ path }) => taken.has(`${n}/${path}`))) n++
    const placed = files.map(file => (clashes ? { ...file, path: `${n}/${file.path}` } : file))
    for (const { path } of placed) taken.add(path)
    return placed
  })
}

/** Writes one file of a publication to a file the user named, its pictures beside it. @returns what is wrong, if anything */
const writeFile = async (files: readonly PublishedFile[], output: string, io: Io): Promise<string | undefined> => {
  const main = files.filter(({ path }) => !path.includes('/'))
  const ending = extname(output).toLowerCase()
  const chosen = main.find(({ path }) => extname(path) === ending) ?? (main.length === 1 ? main[0] : undefined)
  if (chosen === undefined) {
    const endings = main.map(({ path }) => extname(path)).join(', ')
    return `-o ${output}: this publication is ${main.length} files; name a folder, or a file that ends in one of ${endings}`
  }
  await io.write(output, chosen.content)
  for (const file of files) if (file.path.includes('/')) await io.write(join(dirname(output), file.path), file.content)
  return undefined
}

/** Writes files to standard output, a file or a folder. @returns what is wrong, if anything */
export const deliver = async (files: readonly PublishedFile[], output: string, io: Io): Promise<string | undefined> => {
  for (const { path, notices = [] } of files)
    for (const notice of notices) io.err(`tellwright publish: ${path}: ${notice}`)
  if (output === '-') {
    const [first, ...others] = files
    if (first !== undefined) io.out(first.content)
    const more = others.map(({ path }) => path).join(', ')
    if (more !== '') io.err(`tellwright publish: not written to standard output: ${more}; use -o FOLDER for all of it`)
    return undefined
  }
  if (!isFolder(output)) return writeFile(files, output, io)
  for (const file of files) {
    await io.write(join(output, file.path), file.content)
    io.err(`tellwright publish: wrote ${join(output, file.path)}`)
  }
  return undefined
}
