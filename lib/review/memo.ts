import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Found } from './rule'
import type { Subject } from './subject'

export { onceForText } from '@/lib/trade/memo'

/**
 * Remembers what was computed from a value that never changes. Marks and transcripts are immutable, and an edit shares all it
 * didn't touch, so only what an edit changed is computed again.
 */
export const onceFor = <K extends object, V>(compute: (key: K) => V): ((key: K) => V) => {
  const known = new WeakMap<K, { readonly value: V }>()
  return key => {
    const hit = known.get(key)
    if (hit !== undefined) return hit.value
    const value = compute(key)
    known.set(key, { value })
    return value
  }
}

/** Remembers what was computed from the last value only: for what every edit makes anew, such as a sheet. */
export const onceForLast = <K extends object, V>(compute: (key: K) => V): ((key: K) => V) => {
  let last: { readonly key: K; readonly value: V } | undefined
  return key => {
    if (last === undefined || last.key !== key) last = { key, value: compute(key) }
    return last.value
  }
}

/** What a rule needs that looks at one mark of the given kinds at a time and at nothing else; the engine asks each mark once. */
export const eachMark = (
  kinds: readonly Kind[],
  check: (mark: Mark) => readonly Found[],
): { readonly checkMark: (mark: Mark) => readonly Found[]; readonly check: (subject: Subject) => readonly Found[] } => {
  const wanted = new Set<Kind>(kinds)
  const checkMark = (mark: Mark) => (wanted.has(mark.kind) ? check(mark) : NOTHING)
  return { checkMark, check: ({ project }) => project.marks.flatMap(checkMark) }
}

const NOTHING: readonly Found[] = []
