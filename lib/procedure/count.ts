/** @returns `1 step`, `3 steps`; `many` where that is not the word with an s. */
export const countOf = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`
