import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const folder = process.env.TELLWRIGHT_SUITES ?? '../shared/suites'

/** A file of the shared suites, or undefined where they are not at hand: the test is then skipped with a notice. */
export const suite = (path: string): string | undefined => {
  const file = join(folder, path)
  if (existsSync(file)) return readFileSync(file, 'utf8')
  console.info(`skipped: ${path} is not at hand (set TELLWRIGHT_SUITES to the folder of the public suites)`)
  return undefined
}
