/**
 * Weights for many outcomes over many features, few of them set. Made by `scripts/fit-hazards.mjs`; see there how.
 * `hazards` names the outcomes by their ids; a row of `weights` is a feature, its blanks written `_`, then for each outcome
 * that it speaks for or against the outcome's index and the weight in tenths: "w:petrol 0 23 27 -4".
 */
export type HazardModel = { readonly hazards: readonly string[]; readonly weights: readonly string[] }

/**
 * Unpacks a model.
 *
 * @param ids the outcomes wanted
 * @returns for features by name the log odds of each of `ids`, in that order, to be summed
 */
export const toWeigher = (
  { hazards, weights }: HazardModel,
  ids: readonly string[],
): ((features: Iterable<string>) => Float64Array) => {
  const outcomes = hazards.map(id => ids.indexOf(id))
  const unpack = () =>
    new Map(
      weights.map(row => {
        const [name = '', ...numbers] = row.split(' ')
        return [name.replaceAll('_', ' '), Int16Array.from(numbers, Number)] as const
      }),
    )
  // Unpacked when first asked: most commands and pages that load the rules review nothing.
  let rows: ReturnType<typeof unpack> | undefined
  return features => {
    rows ??= unpack()
    const sums = new Float64Array(ids.length)
    for (const feature of features) {
      const row = rows.get(feature)
      if (row === undefined) continue
      for (let i = 0; i < row.length; i += 2) {
        const outcome = outcomes[row[i] ?? -1] ?? -1
        if (outcome >= 0) sums[outcome] = (sums[outcome] ?? 0) + (row[i + 1] ?? 0) / 10
      }
    }
    return sums
  }
}
