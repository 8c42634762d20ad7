import { type Found, type Rule, WHOLE } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const check = ({ project, shop }: Subject): readonly Found[] => {
  if (shop.phrases.length === 0) return []
  const { title, equipment, scope } = project.procedure
  const all = [title, equipment, scope, ...project.marks.map(({ text }) => text)].join('\n').toLowerCase()
  return shop.phrases.flatMap(({ phrase, where, level, why }): Found[] => {
    if (all.includes(phrase.toLowerCase()) || (where !== undefined && !all.includes(where.toLowerCase()))) return []
    return [
      {
        place: WHOLE,
        level,
        message: `The shop’s rules ask for "${phrase}", which the sheet doesn’t have.${why === '' ? '' : ` ${why}`}`,
      },
    ]
  })
}

/** What the shop wants on its sheets. */
export const shopPhrase: Rule = {
  id: 'shop-phrase',
  level: 'fix',
  about: 'A phrase that the shop’s own rules ask for is missing.',
  why: 'The shop decided so.',
  source: 'the shop’s own rules file',
  shop: { phrases: [{ phrase: 'two-person lift', where: 'gearbox', level: 'fix', why: '' }] },
  trips: sample([['step', 'Lift out the gearbox']]),
  passes: sample([
    ['step', 'Lift out the gearbox'],
    ['caution', 'Heavy load strains backs; this is a two-person lift'],
  ]),
  check,
}
