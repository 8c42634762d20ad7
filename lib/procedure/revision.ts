/** Letters a revision may have: those that are not taken for a digit or another letter. @source ASME Y14.35 (from memory): I, O, Q, S, X and Z are left out */
const LETTERS = 'ABCDEFGHJKLMNPRTUVWY'

/**
 * The revision after this one, as drawing offices count: A, B, C … Y, AA, AB …
 *
 * @param revision letters; anything else (a number, a date, nothing) counts as none yet
 */
export const nextRevision = (revision: string): string => {
  const digits = [...revision.trim().toUpperCase()].map(letter => LETTERS.indexOf(letter))
  if (digits.length === 0 || digits.includes(-1)) return 'A'
  for (let i = digits.length - 1; i >= 0; i--) {
    const next = (digits[i] ?? 0) + 1
    if (next < LETTERS.length) {
      digits[i] = next
      return digits.map(digit => LETTERS[digit]).join('')
    }
    digits[i] = 0
  }
  return `A${digits.map(digit => LETTERS[digit]).join('')}`
}

/** @returns whether one revision comes before another as drawing offices count; never for what is no such letter. */
export const isEarlierRevision = (one: string, other: string): boolean => {
  const [a, b] = [one, other].map(revision => revision.trim().toUpperCase())
  if (a === undefined || b === undefined || ![a, b].every(each => /^[A-Z]+$/.test(each))) return false
  return a.length === b.length ? a < b : a.length < b.length
}
