import { quote } from '../late'
import { addCaution } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const check = ({ sheet, project, shop }: Subject): readonly Found[] =>
  shop.hazards.flatMap(({ id, words, caution, level }): Found[] => {
    const isIn = (text: string) => words.some(word => text.toLowerCase().includes(word.toLowerCase()))
    const step = sheet.steps.find(({ mark, tools, materials }) =>
      [mark, ...tools, ...materials].some(({ text }) => isIn(text)),
    )
    if (step === undefined) return []
    const isWarned = project.marks.some(
      mark => mark.kind === 'caution' && (mark.hazard === id || mark.text.includes(caution) || isIn(mark.text)),
    )
    if (isWarned) return []
    const message = `Step ${step.number}, ${quote(step.mark)}, brings a hazard of the shop’s own list (${id}) without its caution: ${caution}`
    return [{ place: atMark(step.mark), message, remedy: addCaution(step.mark, id, level, caution) }]
  })

/** What this shop was burnt by before. */
export const shopHazard: Rule = {
  id: 'shop-hazard',
  level: 'stop',
  about: 'A hazard of the shop’s own list is present without its caution.',
  why: 'The shop knows its machines.',
  source: 'the shop’s own rules file',
  shop: {
    hazards: [
      {
        id: 'overhead-crane',
        words: ['bay 3'],
        caution: 'The crane may pass over bay 3; stay out while it moves',
        level: 'warning',
      },
    ],
  },
  trips: sample([['step', 'Wheel the stand into bay 3']]),
  passes: sample([
    ['step', 'Wheel the stand into bay 3'],
    ['caution', 'The crane may pass over bay 3; stay out while it moves'],
  ]),
  check,
}
