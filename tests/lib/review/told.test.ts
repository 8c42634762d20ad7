import { expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import { type SampleMark, sample } from '@/lib/review/sample'

/** Findings of the rules given, at marks, for steps with a talk of which the last lines have no mark. */
const found = (marks: readonly SampleMark[], talk: readonly string[], ...rules: readonly string[]) =>
  reviewProject(sample(marks, { talk })).flatMap(({ rule, place }) =>
    rules.includes(rule) && place.at === 'mark' ? [`${rule} ${place.mark}`] : [],
  )

const AID: readonly SampleMark[] = [
  ['step', 'Drive an oak peg between the two gears'],
  ['step', 'Change the key of the shaft'],
]

test('[R2] an aid that the talk orders out again, and no mark does, was left in', () => {
  const talk = ['Drive an oak peg between the gears.', 'Change the key.', 'Then knock the peg back out.']
  expect(found(AID, talk, 'aid-left-in')).toEqual(['aid-left-in step-1'])
  expect(found([...AID, ['step', 'Knock the peg out']], talk, 'aid-left-in')).toEqual([])
})

test('[R2] an order without a verb counts too', () => {
  const talk = ['Drive an oak peg between the gears.', 'Change the key.', 'Peg out of the gears.']
  expect(found(AID, talk, 'aid-left-in')).toEqual(['aid-left-in step-1'])
})

test('[R2] what the talk fills again and the sheet does not is found where it was let out', () => {
  const marks: readonly SampleMark[] = [
    ['step', 'Back out the radiator drain screw'],
    ['step', 'Turn the radiator drain screw in'],
    ['check', 'Level stands at the mark'],
  ]
  const talk = ['Back out the drain screw.', 'Turn it in.', 'Level at the mark.', 'Pour in four litres of coolant.']
  expect(found(marks, talk, 'not-refilled')).toEqual(['not-refilled step-1'])
})

test('[R3] an order that a later step carries out in plain words opens nothing', () => {
  const marks: readonly SampleMark[] = [
    ['step', 'Take the belt cover off'],
    ['step', 'Fit the new belt'],
    ['step', 'Put the belt cover back on'],
  ]
  const talk = ['Belt cover off.', 'New belt on.', 'Cover on.', 'And the cover goes back on, put it back on now.']
  expect(found(marks, talk, 'not-refitted', 'aid-left-in')).toEqual([])
})
