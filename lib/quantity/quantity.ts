/**
 * A quantity with limits, as read or entered. All values are in `unit`, unrounded.
 *
 * `low` and `high` are the limits, both included; one alone is a one-sided limit. `nominal` is the aimed-at value; alone
 * it has no tolerance. A quantity without unit was said without one.
 */
export type Quantity = {
  readonly low?: number
  readonly high?: number
  readonly nominal?: number
  /** UCUM code, case sensitive, such as `N.m`, `[psi]`, `circ`. @source UCUM */
  readonly unit?: string
}

/** @returns whether the quantity carries any number. */
export const hasNumber = (quantity: Quantity): boolean =>
  quantity.low !== undefined || quantity.high !== undefined || quantity.nominal !== undefined

/** @returns whether the quantity has a limit on at least one side (range, ±, maximum or minimum). */
export const isToleranced = (quantity: Quantity): boolean => quantity.low !== undefined || quantity.high !== undefined
