import type { Mark } from '@/lib/procedure/mark'
import { formatTime } from '@/lib/procedure/time'
import { dimensionOf } from '@/lib/quantity/units'
import { disagree } from '../disagreeing'
import { grouped } from '../grouped'
import { quote } from '../late'
import { onceFor } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isOpposed } from '../thing'
import { contentStems, tokensOf } from '../words'

/** Words that say what is measured, not of what. */
const MEASURES = new Set(
  'torque pressure capacity volume level temperature gap clearance thickness length width height time limit value setting spec minimum maximum min max current voltage resistance speed interval depth tightness range'.split(
    ' ',
  ),
)
const STAGE =
  /\b(?:first|second|third|1st|2nd|3rd|final|initial|stage|pass|new|used|cold|hot|before|after|dry|oiled|front|rear|light|heavy|summer|winter|hours?|calendar|metric|unload|idle|load(?:ed)?)\b/i

const namesOf = (mark: Mark): readonly string[] => contentStems(mark.text)
const stagesOf = onceFor((mark: Mark): readonly string[] =>
  tokensOf(`${mark.text} ${mark.reference ?? ''}`).filter(token => STAGE.test(token)),
)

const isSubset = (a: readonly string[], b: readonly string[]): boolean => a.every(word => b.includes(word))

/** Whether two specs are about one thing. */
const isOneThing = (a: Mark, b: Mark): boolean => {
  const [one, other] = [namesOf(a), namesOf(b)]
  if (one.length === 0 || other.length === 0 || isOpposed(one, other)) return false
  const [stagesA, stagesB] = [stagesOf(a), stagesOf(b)]
  // Told for a stage here and for none there, they may still be meant for one.
  const isStaged = stagesA.length > 0 && stagesB.length > 0
  const isNamedAlike = isSubset(one, other) && isSubset(other, one) && a.text === b.text
  if ((isStaged || !isNamedAlike) && (!isSubset(stagesA, stagesB) || !isSubset(stagesB, stagesA))) return false
  if (isSubset(one, other) && isSubset(other, one)) return true
  const [short, long] = one.length < other.length ? [one, other] : [other, one]
  return isSubset(short, long) && short.filter(word => !MEASURES.has(word)).length >= 2
}

const conflictsIn = (specs: readonly Mark[]): readonly Found[] => {
  const byKind = grouped(specs, ({ quantity }) => dimensionOf(quantity?.unit ?? '') ?? quantity?.unit ?? '')
  return [...byKind.values()].flatMap(alike => {
    const byWord = new Map<string, Mark[]>()
    return alike.flatMap((mark): Found[] => {
      const kin = new Set(namesOf(mark).flatMap(word => byWord.get(word) ?? []))
      for (const word of namesOf(mark)) byWord.set(word, [...(byWord.get(word) ?? []), mark])
      const other = [...kin].find(
        earlier =>
          isOneThing(earlier, mark) &&
          earlier.quantity !== undefined &&
          mark.quantity !== undefined &&
          disagree(earlier.quantity, mark.quantity),
      )
      if (other === undefined) return []
      return [
        {
          place: atMark(mark),
          message: `${quote(mark)} has another value here than ${quote(other)} at ${formatTime(other.start)}. Find out which one holds, keep it, and drop the other.`,
        },
      ]
    })
  })
}

let last: { readonly specs: readonly Mark[]; readonly found: readonly Found[] } = { specs: [], found: [] }

/** Compares the specs with one another, unless they are the very ones compared last. */
const check = ({ project }: Subject): readonly Found[] => {
  const specs = project.marks.filter(({ kind, quantity }) => kind === 'spec' && quantity?.unit !== undefined)
  const isKnown = specs.length === last.specs.length && specs.every((spec, i) => spec === last.specs[i])
  if (!isKnown) last = { specs, found: conflictsIn([...specs].sort((a, b) => a.start - b.start)) }
  return last.found
}

/** Two values for one thing. */
export const specConflict: Rule = {
  id: 'spec-conflict',
  level: 'stop',
  about: 'Two specs give different values for one thing.',
  why: 'One of them is wrong, and nobody at the bench can tell which.',
  source: 'common practice, no source',
  trips: sample([
    ['step', 'Tighten the axle nut'],
    ['spec', 'axle nut torque', { quantity: { low: 90, high: 100, unit: 'N.m' } }],
    ['step', 'Recheck the axle nut'],
    ['spec', 'axle nut torque', { quantity: { low: 60, high: 70, unit: 'N.m' } }],
  ]),
  passes: sample([
    ['step', 'Tighten the axle nut'],
    ['spec', 'axle nut torque', { quantity: { low: 90, high: 100, unit: 'N.m' } }],
    ['spec', 'pinch bolt torque', { quantity: { low: 20, high: 25, unit: 'N.m' } }],
  ]),
  check,
}
