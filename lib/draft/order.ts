import type { Mark } from '@/lib/procedure/mark'

/** A drafted step with what it was worded from. */
export type Step = { readonly mark: Mark; readonly sentence: number }

/** "before you open it", "should have said", "before any of this": done earlier than told. */
const LATE =
  /\b(?:should(?:'ve| have) (?:said|told|mentioned|done|put)|forgot to (?:say|mention|tell)|before (?:any of this|anything|you (?:start|begin|do any|even|touch|do that|open)|we (?:start|even|started)|all (?:of )?(?:this|that)|any of that)|by the way|i meant to say|one thing i (?:skipped|missed|forgot)|go(?:es)? on first|come(?:s)? first|first of all|oh,? (?:and|yeah|um)?)\b/i
const BEFORE = /\bbefore (?:you|we|i|they|it|the|any|anything|opening|removing|starting|touching|taking)\b(.*)$/i
const ALL =
  /\bbefore (?:any of this|anything|you (?:start|begin|even start)|we (?:start|begin|even)|all (?:of )?(?:this|that)|any of that)\b/i

const STOP = new Set(
  'the a an you your it that this them we any anything all of and or to in on off out up do did have had get got start before should said'.split(
    ' ',
  ),
)
const contentOf = (text: string): ReadonlySet<string> =>
  new Set(
    (text.toLowerCase().match(/[a-z]+/g) ?? [])
      .filter(word => !STOP.has(word) && word.length > 2)
      .map(word => word.replace(/(?:ing|ed|s)$/, '')),
  )

/** Words after "before you" that may name what comes after. */
const NAMING = 6

/** How many steps back one that was told late may belong. */
const REACH = 200

/** Indices of the steps so far, ascending, by the words that tell of them. */
type Telling = Map<string, number[]>

const noteStep = (telling: Telling, { mark }: Step, i: number): void => {
  for (const word of contentOf(`${mark.text} ${mark.said}`)) {
    const list = telling.get(word)
    if (list === undefined) telling.set(word, [i])
    else list.push(i)
  }
}

/** The first step from `from` on that most of the words tell of, if at least `least` do. */
const mostTold = (words: ReadonlySet<string>, telling: Telling, from: number, least: number): number | undefined => {
  const counts = new Map<number, number>()
  for (const word of words) {
    const list = telling.get(word) ?? []
    for (let k = list.length - 1; k >= 0 && (list[k] ?? 0) >= from; k--) {
      const i = list[k] ?? 0
      counts.set(i, (counts.get(i) ?? 0) + 1)
    }
  }
  let best: number | undefined
  let most = least - 1
  for (const [i, n] of [...counts].sort((one, other) => one[0] - other[0]))
    if (n > most) {
      most = n
      best = i
    }
  return best
}

/** Index of the step that steps[at] has to come before, by what is said after "before"; undefined where nothing points back. */
const targetOf = (steps: readonly Step[], at: number, telling: Telling): number | undefined => {
  const said = steps[at]?.mark.said ?? ''
  const tail = BEFORE.exec(said)?.[1]
  if (at === 0 || tail === undefined) return undefined
  const isLate = LATE.test(said)
  if (isLate && ALL.test(said)) return 0
  const clause = (tail.split(/[,;.]/)[0] ?? '').trim().split(/\s+/).slice(0, NAMING).join(' ')
  const named = contentOf(clause)
  // What is named has been told already: then this was told late, even where nobody says so.
  return mostTold(named, telling, Math.max(0, at - REACH), isLate ? 1 : 2)
}

/** Puts steps in the order they are done: as told, but for those told late. Says why where it moved one. */
export const placeSteps = (steps: readonly Step[]): readonly Mark[] => {
  const order: Mark[] = []
  const telling: Telling = new Map()
  steps.forEach((step, i) => {
    const target = targetOf(steps, i, telling)
    noteStep(telling, step, i)
    const before = target === undefined ? undefined : steps[target]?.mark.id
    const at = before === undefined ? -1 : order.findLastIndex(mark => mark.id === before)
    if (at < 0) order.push(step.mark)
    else {
      const { pencilled } = step.mark
      const reason = `told late; it has to be done before “${order[at]?.text ?? ''}”`
      order.splice(at, 0, { ...step.mark, ...(pencilled === undefined ? {} : { pencilled: { ...pencilled, reason } }) })
    }
  })
  return order.map((mark, i) => ({ ...mark, place: i + 1 }))
}
