import { expect, test } from 'vitest'
import { readSentence } from '@/lib/draft/feature'
import { wordStep } from '@/lib/draft/wording'
import { withTorque } from '@/lib/draft/wording-torqued'

// That what has a torque told is tightened to it: common practice, no source.
test.each([
  ['Burner in, nuts by turns, and 12 newton metres.', 'Fit the burner and torque the nuts.'],
  ['Wheels on, lugs in a star, 76 foot-pounds.', 'Fit the wheels and torque the lugs in a star.'],
  ['Lock nut up, 60 newton metres.', 'Torque the lock nut.'],
  ['Cap on, 12 newton metres.', 'Fit and torque the cap.'],
  ['Nuts to sixty newton metres and I go round with a chalk mark.', 'Torque the nuts and go round with a chalk mark.'],
  ['Pull it to eighty-five foot-pounds.', 'Torque it to eighty-five foot-pounds.'],
])('[D16] %s: a torque told is torqued to', (text, expected) => {
  expect(wordStep(readSentence(text)).text).toBe(expected)
})

test.each([
  // Said already, refused, of another time, or of nothing named.
  ['tighten the nuts', 'Tighten the nuts, 12 newton metres.'],
  ['fit the cover', 'Cover on, was it 12 newton metres on the nuts?'],
  ['fit the cover', 'Cover on, and if the bolts are old, 12 newton metres.'],
  ['fit the cover', 'Cover on, 12 newton metres.'],
  ['fit the nuts', 'Nuts on, 12 millimetres proud.'],
])('[D16] "%s" of "%s" stays', (order, text) => {
  expect(withTorque(order, readSentence(text))).toBe(order)
})

test('[D16] no step grows past 20 words', () => {
  const order = 'fit the long grey cover over the two green pins at the back of the left side panel under the tray'
  expect(withTorque(order, readSentence('Cover on, four screws, 12 newton metres.'))).toBe(order)
})

test.each([
  ['Put the gloves on before your hands went in.', 'Put the gloves on before your hands go in.'],
  ['Wind it up until the needle came round.', 'Wind it up until the needle comes round.'],
  ['Soak it until it was soft.', 'Soak it until it is soft.'],
  ['Lock it off before you put a hand in.', 'Lock it off before you put a hand in.'],
])('[D1] %s: a condition told of the one time filmed holds each time', (text, expected) => {
  expect(wordStep(readSentence(text)).text).toBe(expected)
})

test.each([
  ['Put the filler cap back on, finger tight.', 'Put the filler cap back on finger tight.'],
  ['Cover on, four screws, hand tight.', 'Fit the cover and tighten four screws hand tight.'],
  ['Four screws, hand tight.', 'Tighten four screws hand tight.'],
  ['Switch off and pull the plug.', 'Switch off and pull the plug.'],
  ['Plug in, switch on.', 'Plug in and switch on.'],
])('[D1] %s: how tight is no finger to tighten, and no switch is switched off', (text, expected) => {
  expect(wordStep(readSentence(text)).text).toBe(expected)
})

test.each([
  ['Never, ever, ever touch that.', 'Do not touch that.'],
  ["Don't, lift it by the eye.", 'Do not lift it by the eye.'],
  ['No, lift it by the eye.', 'Lift it by the eye.'],
  ["It is hot and it won't, so lift it by the eye.", 'Lift it by the eye.'],
])('[D1] %s: what is refused is never ordered', (text, expected) => {
  expect(wordStep(readSentence(text)).text).toBe(expected)
})
