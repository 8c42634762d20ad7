/** When two names of a tool or material are taken as the same; as ../shared/cases/score.mjs does it. */
const STOP = new Set(
  'a an the of to and or with for in on at it its your our this that these those from by into onto off up out then until all any so is are be new old'.split(
    ' ',
  ),
)

const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9./ -]/g, ' ')
    .split(/[\s-]+/)
    .filter(word => word !== '' && !STOP.has(word))
    .map(word => word.replace(/(?<=[a-z]{3})s$/, ''))

/** How much of their words two names share, 0 to 1. */
export const overlapOf = (a: string, b: string): number => {
  const [x, y] = [wordsOf(a), wordsOf(b)]
  if (x.length === 0 || y.length === 0) return 0
  return (2 * x.filter(word => y.includes(word)).length) / (x.length + y.length)
}

export const sameName = (a: string, b: string): boolean => {
  const [x, y] = [wordsOf(a), wordsOf(b)]
  if (x.length === 0 || y.length === 0) return false
  return (
    overlapOf(a, b) >= 0.6 ||
    (x.at(-1) === y.at(-1) && (x.every(word => y.includes(word)) || y.every(word => x.includes(word))))
  )
}
