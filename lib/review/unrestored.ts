import { openItems } from './ledger'
import type { Open } from './open'
import { addStep, placeToMend } from './remedy'
import { atMark, type FindingLevel, type Found } from './rule'
import type { Subject } from './subject'
import { toldOpen } from './told'
import type { Undone } from './undone'
import { vagueIn } from './vague'

/** How a rule of this family words its findings. */
export type Restoration = {
  readonly undone: Undone
  /** Past participle: "removed". */
  readonly was: string
  /** What is missing: "put back". */
  readonly never: string
  /** What the added step says, `{}` standing for the thing. */
  readonly step: string
  readonly level?: (open: Open) => FindingLevel | undefined
  /** What a later step says that makes it good without a verb for it. */
  readonly redoneBy?: (text: string) => boolean
}

/** What lives on its charger; a laptop or a bike is unplugged from it for the day. */
const STAYS_ON_CHARGE =
  /\b(?:lifts?|alarms?|panels?|gates?|scrubbers?|forklifts?|trucks?|standby|backup|ups|emergency|mobility|stair|pallet)\b/i

const nameOf = ({ thing }: Open): string => `the ${thing.name}`

/** @returns the check for what is undone in one way and never made good. */
export const unrestored =
  ({ undone, was, never, step, level, redoneBy }: Restoration) =>
  (subject: Subject): readonly Found[] => {
    const { sheet } = subject
    return [...openItems(sheet), ...toldOpen(subject)]
      .filter(
        ({ thing }) =>
          thing.head !== 'charger' || STAYS_ON_CHARGE.test(`${sheet.heading.title} ${sheet.heading.equipment}`),
      )
      .filter(open => open.undone === undone && vagueIn(open.step.text) === undefined)
      .filter(
        ({ number }) =>
          redoneBy === undefined ||
          !sheet.steps
            .slice(number - 1)
            .some(({ mark, checks }, i) => (i > 0 && redoneBy(mark.text)) || checks.some(({ text }) => redoneBy(text))),
      )
      .map(open => {
        const own = level?.(open)
        const { thing, number, step: mark } = open
        return {
          place: atMark(mark),
          message: `Step ${number}: ${nameOf(open)} ${thing.isPlural ? 'are' : 'is'} ${was} and never ${never}. Add the step that does it, or say that it stays so.`,
          remedy: addStep(
            `${undone}-${thing.words.join('-')}`,
            step.replace('{}', nameOf(open)),
            placeToMend(sheet, number),
            mark,
          ),
          ...(own === undefined ? {} : { level: own }),
        }
      })
  }
