/** Where a problem lies: a line or byte of a file, or a path inside a structured file. */
export type Place = {
  /** File name as the user gave it. */
  readonly file?: string
  /** Line number, counted from 1. */
  readonly line?: number
  /** Path inside a structured file, such as `marks[3].start`. */
  readonly path?: string
}

/** Why input was refused, as a value. The message says what was found, what was expected and what to do. */
export type Problem = {
  /** Stable kebab-case name, such as `not-a-transcript`. */
  readonly code: string
  readonly message: string
  readonly place?: Place
}

/** Outcome of handling input: bad input is a value, never an exception. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** @returns a successful Result holding `value`. */
export const success = <T>(value: T): Result<T> => ({ ok: true, value })

/** @returns a refused Result with one problem or several. */
export const refusal = (...problems: Problem[]): Result<never> => ({ ok: false, problems })

/** @returns the problem in one line: place first, then what was wrong and what to do. */
export const formatProblem = ({ message, place }: Problem): string => {
  const at = [place?.file, place?.line === undefined ? undefined : `line ${place.line}`, place?.path]
  const where = at.filter(part => part !== undefined).join(', ')
  return where === '' ? message : `${where}: ${message}`
}

/**
 * Problems for people, one a line.
 *
 * @param most lines; what is left out is counted
 */
export const formatProblems = (problems: readonly Problem[], most = 6): string => {
  if (problems.length <= most) return problems.map(formatProblem).join('\n')
  const shown = problems.slice(0, most - 1).map(formatProblem)
  return [...shown, `and ${problems.length - shown.length} more such problems.`].join('\n')
}

/** The world failed: disk full, decoder gone. Thrown only for that, caught only at the edges. */
export class TellwrightError extends Error {
  readonly code: string
  /**
   * @param code stable kebab-case name, such as `disk-full`
   * @param message what failed and what to do
   * @param options the `cause`, where there is one
   */
  constructor(code: string, message: string, options?: ErrorOptions) {
    super(message, options)
    this.name = 'TellwrightError'
    this.code = code
  }
}
