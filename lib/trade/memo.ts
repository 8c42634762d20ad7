const MOST_TEXTS = 20_000

/** Remembers what was computed from a text; forgets everything once 20,000 texts are held. */
export const onceForText = <V>(compute: (text: string) => V): ((text: string) => V) => {
  const known = new Map<string, V>()
  return text => {
    const hit = known.get(text)
    if (hit !== undefined) return hit
    // A computed undefined counts as known.
    if (known.has(text)) return hit as V
    if (known.size >= MOST_TEXTS) known.clear()
    const value = compute(text)
    known.set(text, value)
    return value
  }
}
