/** The part of @lhncbc/ucum-lhc that is used; the package ships no types. */
declare module '@lhncbc/ucum-lhc' {
  export type Validation = { readonly status: 'valid' | 'invalid' | 'error'; readonly msg: readonly string[] }
  export type Conversion = {
    readonly status: 'succeeded' | 'failed' | 'error'
    readonly toVal: number | null
    readonly msg: readonly string[]
  }
  export type Utilities = {
    validateUnitString(code: string): Validation
    convertUnitTo(from: string, value: number, to: string): Conversion
  }
  export const UcumLhcUtils: { getInstance(): Utilities }
}
