import { done, type Outcome, refused } from './outcome'

/** The full UCUM library, for codes that the table does not hold. */
export type Ucum = {
  /** @returns whether a code is valid UCUM, case sensitive */
  readonly isValid: (code: string) => boolean
  /** @returns the value in `to`, unrounded; problems `unknown-unit`, `not-comparable` */
  readonly convert: (value: number, from: string, to: string) => Outcome<number>
}

/**
 * Loads @lhncbc/ucum-lhc (about 60 kB compressed), which passes UCUM's functional tests: only when it is needed.
 *
 * @returns the library behind two functions that never throw
 */
export const loadUcum = async (): Promise<Ucum> => {
  const { UcumLhcUtils } = await import('@lhncbc/ucum-lhc')
  const library = UcumLhcUtils.getInstance()
  return {
    isValid: code => library.validateUnitString(code).status === 'valid',
    convert: (value, from, to) => {
      const result = library.convertUnitTo(from, value, to)
      if (result.status === 'succeeded' && typeof result.toVal === 'number') return done(result.toVal)
      const message = result.msg.join(' ')
      return refused(
        result.status === 'error' ? 'unknown-unit' : 'not-comparable',
        message === '' ? `${from} does not convert to ${to}.` : message,
      )
    },
  }
}
