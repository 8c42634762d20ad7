/** Why a request was refused, as a value: the same shape as the Problem of the domain, so that it passes for one. */
export type Refusal = { readonly code: string; readonly message: string }

/** Outcome of a computation that can be refused; passes for a Result of the domain. Never an exception. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Refusal[] }

/** @returns a successful outcome holding `value`. */
export const done = <T>(value: T): Outcome<T> => ({ ok: true, value })

/** @returns a refused outcome with one problem. */
export const refused = (code: string, message: string): Outcome<never> => ({ ok: false, problems: [{ code, message }] })
