import { expect, test } from 'vitest'
import { nameDeed, toNameDeed } from '@/lib/draft/deed'
import { type Course, deedFeatures, deedOf, furtherCourse, isOpenDeed } from '@/lib/draft/deed-feature'
import { withDeed } from '@/lib/draft/deed-text'
import { readSentence } from '@/lib/draft/feature'
import { wordStep } from '@/lib/draft/wording'

const START: Course = { share: 0, undone: new Set(), before: '' }

/** A step of a sentence as it is worded, then by the verb chosen for it. */
const said = (text: string, course: Course = START): string => {
  const reading = readSentence(text)
  return nameDeed(wordStep(reading), reading, course).text
}
const near = (undone: string): Course => ({ share: 0.8, undone: new Set([undone]), before: 'fit' })

test.each([
  ['Cover on, four screws.', 'Refit the cover.', near('cover')],
  ['Guard on, three bolts.', 'Refit the guard.', near('guard')],
  ['Knife bolts, 80 newton metres.', 'Torque the knife bolts to 80 newton metres.', near('bolt')],
])('[D16] %s: a step that names no action gets the verb a writer would use', (text, expected, course) => {
  expect(said(text, course)).toBe(expected)
})

test.each([
  // Spoken verbs are the speaker's.
  ['Pull the cover off.', 'Pull the cover off.'],
  ['Slacken the two bolts.', 'Slacken the two bolts.'],
  ['Put them in a cup.', 'Put them in a cup.'],
])('[D16] %s stays as it is said', (text, expected) => {
  expect(said(text, near('cover'))).toBe(expected)
})

test.each([
  ['Put a smear of grease on the teeth.', 'grease', 'grease the teeth with a smear'],
  ['Put grease on the teeth.', 'grease', 'grease the teeth'],
  ['Put the white grease on the teeth.', 'grease', 'grease the teeth with the white grease'],
  ['Put the wire brush over the fins.', 'brush', 'brush the fins with the wire brush'],
  ['Put a spanner on the nut and lean on it.', 'undo', 'undo the nut with a spanner and lean on it'],
  ['Lower the clamps to forty inch-pounds.', 'torque', undefined],
  ['Put two knobs on the front.', 'undo', 'undo two knobs on the front'],
  ['Put the knobs back on the front.', 'undo', undefined],
  [
    'Fit the cover, fit the clip and fit the new seal.',
    'refit',
    'refit the cover, refit the clip and fit the new seal',
  ],
  ['Remove the lid.', 'refit', undefined],
  ['Fit the lid.', 'remove', undefined],
  ['Lower the lid.', 'close', 'close the lid'],
  ['Put the alcohol on a cloth.', 'clean', undefined],
  ['Switch off the pump.', 'pull', undefined],
  ['Remove the key.', 'unplug', undefined],
  // Refused, or not yet: no other verb.
  ['Put no grease on the rim.', 'grease', undefined],
  ['Put the lid not on yet.', 'refit', undefined],
  ['Put the spring back off.', 'refit', undefined],
  ['Put the starter not longer than 15 seconds.', 'run', 'run the starter not longer than 15 seconds'],
])('[D16] %s by "%s": %s', (text, deed, expected) => {
  const reading = readSentence(text)
  const found = withDeed(text, deed, reading)
  expect(found).toBe(expected)
})

test('[D16] what is done is open only where no verb, or one that says nothing, was spoken', () => {
  expect(isOpenDeed('Fit the cover.', readSentence('Cover on.'))).toBe(true)
  expect(isOpenDeed('Put the cover on.', readSentence('I put the cover on.'))).toBe(true)
  expect(isOpenDeed('Lift the cover.', readSentence('You lift the cover.'))).toBe(false)
  expect(isOpenDeed('Slacken the bolts.', readSentence('Bolts slack.'))).toBe(false)
  expect(isOpenDeed('Do not fit the cover.', readSentence('No cover on.'))).toBe(false)
  expect(deedOf('Do this: cover.')).toBe('')
})

test('[D16] what was taken off is known when it comes again', () => {
  const further = furtherCourse({ ...START, undone: new Set() }, 'Remove the cover and lift the lid.')
  expect([...further.undone]).toEqual(['cover'])
  expect(further.before).toBe('remove')
  const reading = readSentence('Cover on.')
  expect(deedFeatures('Fit the cover.', reading, further)).toContain('again:1')
  expect(deedFeatures('Fit the cover.', reading, START)).toContain('again:0')
})

test('[D16] a verb is chosen by weights alone, asked about where it is not sure, and not at all where nothing tells', () => {
  const model = (weight: number) => ({
    features: 'thing:cover any',
    weights: { refit: `${weight} 0` },
    calibration: {},
    thresholds: {},
  })
  const reading = readSentence('Cover on.')
  const worded = { text: 'Fit the cover.' }
  expect(toNameDeed(model(200))(worded, reading, START)).toEqual({ text: 'Refit the cover.' })
  expect(toNameDeed(model(-100))(worded, reading, START).question).toMatch(/^Is this what is done\?/)
  expect(toNameDeed(model(-300))(worded, reading, START)).toBe(worded)
  expect(toNameDeed({ ...model(200), weights: {} })(worded, reading, START)).toBe(worded)
})
