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

// Typed to break it, not heard in a talk.
test.each([
  ["Don't you ever lift it by the eye.", 'Do not lift it by the eye.'],
  ['Never take the bolts to twenty newton metres.', 'Do not take the bolts to twenty newton metres.'],
  ["Don't go past five newton metres on those screws.", 'Do not go past five newton metres on those screws.'],
  ['Fit the caps, no torque on them, 9 newton metres is for the bolts.', 'Fit the caps and do not torque on them.'],
  ['Put the wrench on the nut, 25 newton metres.', 'Put the wrench on the nut and torque it.'],
  ['Lift the cap off the bolts, eight newton metres on those bolts.', 'Lift the cap off the bolts and torque them.'],
  ['The nuts came off at sixty newton metres.', 'Remove the nuts at sixty newton metres.'],
  ["Pull the plug, that's 12 newton metres going back.", 'Pull the plug.'],
  ['Bolts in, not tight, 10 newton metres is later.', 'Fit the bolts, not tight.'],
  ['Bolts in, leave them loose, 10 newton metres comes after.', 'Fit the bolts and leave them loose.'],
  ['Nuts on, without torque, 60 newton metres later.', 'Fit the nuts.'],
  ['Drain plug out, 40 newton metres when it goes back.', 'Remove the drain plug.'],
  ['Old plug out, new plug in, 12 newton metres.', 'Remove the old plug and fit the new plug, and torque it.'],
  ['Take the nuts round in a star, 20 newton metres.', 'Torque the nuts round in a star.'],
])('[D16] %s: a torque refused or of another time is no order, and an order keeps its verb', (text, expected) => {
  expect(wordStep(readSentence(text)).text).toBe(expected)
})

test.each([
  ["The bolts don't want twenty newton metres, they want ten.", /^Do this:/],
  ['I never do the nuts at 60 newton metres, I do 50.', /^Do this:/],
  ['Never more than ten newton metres on the bolts.', /\bten\b/],
])('[D1] %s: nothing told as wrong is ordered', (text, expected) => {
  expect(wordStep(readSentence(text)).text).toMatch(expected)
})

test.each([
  ['You never, ever file those.', 'Do not file those.'],
  ['Do not, ever, open it.', 'Do not open it.'],
  ["Don't open it or lift it.", 'Do not open it and do not lift it.'],
  ['Rather than pull it, twist it.', 'Twist it.'],
  ['Twist it rather than pull it.', 'Twist it rather than pull it.'],
  ['You must never, ever touch the coil.', 'Do not touch the coil.'],
  ["You don't, lift it by the frame.", 'Lift it by the frame.'],
  ['You do not use your finger, well, you don’t, but you watch the level.', /watch the level/],
  ['Twenty-five foot-pounds, it’s a tapered thread so it don’t take much.', 'Tighten to twenty-five foot-pounds.'],
  [
    'Hanger bolts, don’t just feel them, put the wrench on, twenty-five newton metres.',
    'Do not just feel them and put the wrench on, and torque the hanger bolts.',
  ],
])('[D1] %s: only what is refused is', (text, expected) => {
  const said = wordStep(readSentence(text)).text
  if (typeof expected === 'string') expect(said).toBe(expected)
  else expect(said).toMatch(expected)
  expect(said).not.toMatch(/not watch/)
})
