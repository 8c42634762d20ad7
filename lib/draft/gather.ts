import { keyOfThing } from './thing-name'

/** A thing named somewhere: where (index of the sentence), what it is called, and how likely it belongs on the list. */
export type Named = { readonly sentence: number; readonly name: string; readonly head: string; readonly odds: number }

/** A thing on a list: its fullest name, where it was named first with conviction, every place, and the best odds. */
export type Gathered = {
  readonly name: string
  readonly sentence: number
  readonly head: string
  readonly places: readonly number[]
  readonly odds: number
}

const wordsOf = (name: string): readonly string[] => keyOfThing(name).split(' ')
const isSize = (word: string): boolean => /\d/.test(word)

/** Whether two names may mean one thing: the same head, and all words of one are in the other. */
const isSame = (a: readonly string[], b: readonly string[]): boolean => {
  if (a.at(-1) !== b.at(-1)) return false
  const [short, long] = a.length <= b.length ? [a, b] : [b, a]
  return (
    short.every(word => long.includes(word)) &&
    !(short.some(isSize) && long.some(word => isSize(word) && !short.includes(word)))
  )
}

/**
 * Things once each: synonyms, spellings and plurals folded, a bare name joined to the fuller one, the fullest name kept.
 *
 * @param least log odds from which a mention can bring a thing on the list
 */
export const gatherThings = (named: readonly Named[], least: number): readonly Gathered[] => {
  const groups: { words: readonly string[]; members: Named[] }[] = []
  const byHead = new Map<string, typeof groups>()
  for (const one of named) {
    const words = wordsOf(one.name)
    const head = words.at(-1) ?? ''
    const near = byHead.get(head) ?? []
    const group = near.find(other => isSame(other.words, words))
    if (group === undefined) {
      const fresh = { words, members: [one] }
      groups.push(fresh)
      byHead.set(head, [...near, fresh])
    } else {
      group.members.push(one)
      if (words.length > group.words.length && words.length <= 5) group.words = words
    }
  }
  return groups.flatMap(({ members }) => {
    const odds = Math.max(...members.map(member => member.odds))
    if (odds < least) return []
    const sure = members.filter(member => member.odds >= least - 1)
    const fullest = sure.reduce((best, member) =>
      wordsOf(member.name).length > wordsOf(best.name).length && wordsOf(member.name).length <= 5 ? member : best,
    )
    const first = members.find(member => member.odds >= least) ?? members[0]
    return first === undefined
      ? []
      : [
          {
            name: fullest.name,
            sentence: first.sentence,
            head: first.head,
            places: members.map(member => member.sentence),
            odds,
          },
        ]
  })
}
