import { basename, dirname, join } from 'node:path'
import { type Result, success, TellwrightError } from '@/lib/procedure/problem'
import { RULES } from '@/lib/review/rules/index'
import { NO_SHOP_RULES, type ShopRules } from '@/lib/review/shop'
import { parseShopRules } from '@/lib/review/shop-rules'
import { type Io, readText } from './command'

/** The shop's rules stand beside the project under this name, unless another file is given. */
const RULES_FILE = 'tellwright-rules.json'

const isMissing = (error: unknown): boolean =>
  error instanceof TellwrightError && (error.cause as NodeJS.ErrnoException | undefined)?.code === 'ENOENT'

const besideOf = async (project: string, io: Io): Promise<string | undefined> => {
  try {
    return project === '-' ? undefined : await readText(io, join(dirname(project), RULES_FILE))
  } catch (error) {
    if (isMissing(error)) return undefined
    throw error
  }
}

/**
 * The shop's own rules for a project: those of the file given, else those beside the project, else none.
 *
 * @param given path of a rules file
 * @param project path of the project, or - for standard input, which has nothing beside it
 * @returns the problems of a rules file that can't be followed. @throws TellwrightError `cannot-read`
 */
export const readShopFile = async (given: string | undefined, project: string, io: Io): Promise<Result<ShopRules>> => {
  const text = given === undefined ? await besideOf(project, io) : await readText(io, given)
  if (text === undefined) return success(NO_SHOP_RULES)
  const known = RULES.map(({ id }) => id)
  return parseShopRules(text, known, given === undefined ? RULES_FILE : basename(given))
}
