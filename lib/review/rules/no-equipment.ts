import { type Found, type Rule, WHOLE } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

const check = ({ sheet }: Subject): readonly Found[] =>
  sheet.heading.equipment.trim() === '' && sheet.steps.length > 0
    ? [
        {
          place: WHOLE,
          message:
            'Nothing says which equipment this is for. Name the make-independent type, the model or the range it holds for.',
        },
      ]
    : []

/** Which machine is it for? */
export const noEquipment: Rule = {
  id: 'no-equipment',
  level: 'fix',
  about: 'The head does not say which equipment the procedure is for.',
  why: 'Limits that are right for one model break another.',
  source: 'IEC/IEEE 82079-1:2019 on identifying the product (from memory)',
  trips: sample([['step', 'Grease the bearings']], { heading: { equipment: '' } }),
  passes: sample([['step', 'Grease the bearings']], { heading: { equipment: 'band saw, 350 mm wheels' } }),
  check,
}
