import { type ParseArgsConfig, parseArgs } from 'node:util'
import { type Result, refusal, success } from '@/lib/procedure/problem'

/** Options and positionals of a command. */
export type Arguments = {
  readonly options: Readonly<Record<string, string | boolean | readonly (string | boolean)[] | undefined>>
  readonly positionals: readonly string[]
}

/**
 * Splits a command's arguments with node:util's parseArgs.
 *
 * @returns options by name and positionals; problem `bad-arguments` for an unknown option or a missing value
 */
export const parseArguments = (
  args: readonly string[],
  options: NonNullable<ParseArgsConfig['options']>,
): Result<Arguments> => {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true, strict: true })
    return success({ options: values, positionals })
  } catch (error) {
    const message = error instanceof Error ? (error.message.split('. ')[0] ?? error.message) : String(error)
    return refusal({ code: 'bad-arguments', message })
  }
}
