import type { Mark } from '@/lib/procedure/mark'
import type { Gold } from '../../../scripts/fit-draft/cases'
import { sameName } from '../../../scripts/fit-draft/names'
import { sameQuantity } from '../../../scripts/fit-draft/same-quantity'

type Spanned = { readonly start: number; readonly end: number }
/** Hits, found and wanted. */
export type Count = { readonly hit: number; readonly found: number; readonly gold: number }

const shareOf = (a: Spanned, b: Spanned): number => {
  const shared = Math.min(a.end, b.end) - Math.max(a.start, b.start)
  return shared <= 0 ? 0 : shared / (Math.max(a.end, b.end) - Math.min(a.start, b.start))
}

/** Pairs of found and wanted, each used once, best first. */
const pairs = <F, G>(found: readonly F[], gold: readonly G[], strength: (f: F, g: G) => number): number => {
  const all = found.flatMap((f, i) => gold.map((g, j) => ({ i, j, s: strength(f, g) }))).filter(({ s }) => s > 0)
  const [usedF, usedG] = [new Set<number>(), new Set<number>()]
  for (const { i, j } of all.sort((p, q) => q.s - p.s))
    if (!usedF.has(i) && !usedG.has(j)) {
      usedF.add(i)
      usedG.add(j)
    }
  return usedF.size
}

/** Counts the hits of a draft as the development cases' own scorer does. */
export const countHits = (marks: readonly Mark[], gold: Gold, kind: string): Count => {
  const found = marks.filter(mark => mark.kind === kind)
  if (kind === 'spec') {
    const hit = pairs(found, gold.specs, (f, g) =>
      sameQuantity(f.quantity ?? {}, g) && f.start < g.end + 6 && f.end > g.start - 6 ? 1 : 0,
    )
    return { hit, found: found.length, gold: gold.specs.length }
  }
  if (kind === 'tool' || kind === 'material') {
    const list = kind === 'tool' ? gold.tools : gold.materials
    return { hit: pairs(found, list, (f, g) => (sameName(f.text, g) ? 1 : 0)), found: found.length, gold: list.length }
  }
  const want = gold.marks.filter(mark => mark.kind === kind)
  const hit = pairs(found, want, (f, g) => (shareOf(f, g) >= 0.3 ? shareOf(f, g) : 0))
  return { hit, found: found.length, gold: want.length }
}

export const f1Of = (counts: readonly Count[]): number => {
  const sum = (key: keyof Count) => counts.reduce((n, count) => n + count[key], 0)
  return sum('found') + sum('gold') === 0 ? 1 : (2 * sum('hit')) / (sum('found') + sum('gold'))
}
