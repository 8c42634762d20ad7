import { rewrite } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&')

const check = ({ project, shop }: Subject): readonly Found[] =>
  shop.names.flatMap(({ use, not }) => {
    const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${not.map(escaped).join('|')})(?![\\p{L}\\p{N}])`, 'iu')
    return project.marks.flatMap((mark): Found[] => {
      const [found] = pattern.exec(mark.text) ?? []
      if (found === undefined) return []
      const message = `"${found}" is called "${use}" in this shop. Write that name, so that it is one thing on every sheet.`
      return [{ place: atMark(mark), message, remedy: rewrite(mark, mark.text.replace(pattern, use)) }]
    })
  })

/** The shop’s name for it. */
export const shopName: Rule = {
  id: 'shop-name',
  level: 'consider',
  about: 'A part or tool goes by a name that the shop’s own rules replace.',
  why: 'One name on every sheet, the label and the drawer.',
  source: 'the shop’s own rules file; ASD-STE100 on approved names (from memory)',
  shop: { names: [{ use: 'circlip pliers', not: ['snap ring pliers'] }] },
  trips: sample([['step', 'Open the ring with snap ring pliers']]),
  passes: sample([['step', 'Open the ring with circlip pliers']]),
  check,
}
