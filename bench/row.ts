/** One thing measured. A ratio to a peer in the same run says more than a time on some machine. */
export type BenchRow = {
  readonly what: string
  /** Measured, in `unit`. */
  readonly value: number
  readonly unit: 'ms' | 's' | 'MB' | 'x' | 'count'
  /** What it is held against: a bound of the issue, or a peer measured in the same run. */
  readonly against?: string
}

/** One file of the benchmark. */
export type Bench = { readonly name: string; readonly run: () => Promise<readonly BenchRow[]> }

/** @returns milliseconds of the fastest of `times` runs, after one to warm up. */
export const fastest = async (times: number, work: () => unknown): Promise<number> => {
  await work()
  let best = Number.POSITIVE_INFINITY
  for (let i = 0; i < times; i++) {
    const begun = performance.now()
    await work()
    best = Math.min(best, performance.now() - begun)
  }
  return best
}
