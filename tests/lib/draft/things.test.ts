import { describe, expect, test } from 'vitest'
import { readSentence } from '@/lib/draft/feature'
import { gatherThings } from '@/lib/draft/gather'
import { draftOf } from './talks'

/** Names of the things of a talk that a list may take; which it takes the fitted weights tell. */
const thingsOf = (...said: string[]): readonly string[] => gatherThings(said.map(readSentence)).map(({ name }) => name)

describe('names of things', () => {
  test.each([
    ['I put a new gasket in, the cooked gasket was stuck on.', 'gasket'],
    ['Fit the fresh O-ring.', 'o-ring'],
    ['Pour in the clean oil.', 'oil'],
    ['Wipe the ledge with a clean rag.', 'clean rag'],
    ['Add 25 millilitres gear oil.', 'gear oil'],
  ])('[D7] what state a thing is in is no part of its name: %s', (said, name) => {
    expect(thingsOf(said)).toContain(name)
  })

  test.each([
    ['Muffs on, please.', 'ear muffs'],
    ['Put your specs on.', 'safety glasses'],
    ['Then the torque key, and slowly.', 'torque wrench'],
    ['I use a small torque driver.', 'torque screwdriver'],
    ['Lay a straight edge on it.', 'straightedge'],
    ['Clean it with meths.', 'methylated spirit'],
    ['Wash it all in kero.', 'kerosene'],
    ['Put a drop of thread glue on it.', 'threadlock'],
    ['Dry it with kitchen roll.', 'kitchen roll'],
    ['Use zip ties.', 'zip ties'],
  ])('[D7] shop words go by their full names: %s', (said, name) => {
    expect(thingsOf(said)).toContain(name)
  })

  test.each([
    ['Use a two and a half hex key.', '2.5 mm hex key'],
    ['Use the five-thirty-second hex key.', '5/32-inch hex key'],
    ['An inch-and-an-eighth wrench fits it.', '1-1/8-inch wrench'],
    ['Dress it with a mill file.', 'mill file'],
    ['Wear a half mask.', 'half mask'],
    ['Use the 19 mil spanner.', '19 mm spanner'],
    ['Use two wire brushes.', 'wire brush'],
    ['Wear gloves though.', 'gloves'],
  ])('[D7] sizes as they are mostly written: %s', (said, name) => {
    expect(thingsOf(said)).toContain(name)
  })

  test('[D7] who says spanner lists spanners', () => {
    expect(thingsOf('Undo the nut.', 'The spanner slips.')).toEqual(['spanner'])
    expect(thingsOf('Undo the nut.')).toEqual(['wrench'])
  })

  test('fasteners call for their tool in a sentence without a verb too, and beside another tool', () => {
    expect(thingsOf('Grille off, four screws.')).toContain('screwdriver')
    expect(thingsOf('Hold the hook and back out the screw.')).toContain('screwdriver')
  })

  test.each([
    ['Two bolts, 14s, and hang it up.', '14 mm wrench'],
    ['The bucket comes out after five bolts, which are tens.', '10 mm wrench'],
    ['Minus lead off, ten mil.', '10 mm wrench'],
    ["Two screws each, they're a quarter-inch.", '1/4-inch nut driver'],
    ['The nuts are seven-sixteenths.', '7/16-inch wrench'],
    ['Two nuts, 13 key, on the flange.', '13 mm spanner'],
    ['Undo the counter nut with key 10.', '10 mm spanner'],
    ['Four bolts, key of six.', '6 mm hex key'],
    ['Two bolts, socket 12.', '12 mm socket'],
    ['Guard off, two screws, Torx 25.', 'T25 torx driver'],
    ['It is held by five clips and a T25.', 'T25 torx driver'],
    ['Cap off, two screws, PH1.', 'PH1 screwdriver'],
    ['Take out the two crosshead screws.', 'crosshead screwdriver'],
    ['A fourteen spanner on the nut and a ten to hold the pipe.', '10 mm spanner'],
  ])('sizes said of a fastener or after the tool: %s', (said, name) => {
    expect(thingsOf(said)).toContain(name)
  })

  test.each([
    'The gap is 12 mm at the flange.',
    'Tighten the three bolts to 14 newton metres.',
    'The bracket has a slot of 10 mm.',
  ])('no tool of a size that is no size of a fastener: %s', said => {
    expect(thingsOf(said).filter(name => /\d/.test(name))).toEqual([])
  })

  test.each([
    ['Isolator off, and I hang my lock on it.', 'padlock'],
    ['The isolator is off and locked.', 'padlock'],
    ['The wheels are blocked.', 'wheel chocks'],
    ['Tape over the handle, and a note.', 'tape'],
    ['Drift on the nut, and round it goes.', 'drift'],
    ['Give the grease nipple two pumps.', 'grease gun'],
    ['Pull the split pin.', 'pliers'],
    ['Shine a light on the groove.', 'flashlight'],
  ])('what a deed calls for: %s', (said, name) => {
    expect(thingsOf(said)).toContain(name)
  })

  test('a lock that is worked on is none for the isolator', () => {
    expect(thingsOf('Take the lock out of the door.', 'Lock the door.')).not.toContain('padlock')
  })

  test('what is renewed may be a material', () => {
    expect(thingsOf('Now I replace the roller.')).toEqual(['roller'])
    expect(thingsOf('Now I look at the roller.')).toEqual([])
  })
})

describe('what a talk opens with', () => {
  const TALK = [
    'Morning all, today I am doing the drive belt on this lathe.',
    'You will need a six millimetre hex key, a torque wrench, and some isopropyl alcohol.',
    'Undo the two motor bolts and slide the caliper off.',
    'Lift the old belt out.',
    'Wipe both pulleys with the alcohol.',
    'Put the new belt on and torque the bolts to thirty newton metres.',
    'Bolt the caliper back on.',
  ]

  test('what is needed is listed and is no step', () => {
    expect(draftOf('step', ...TALK).filter(({ said }) => said?.includes('You will need'))).toEqual([])
    const tools = draftOf('tool', ...TALK).map(({ text }) => text)
    expect(tools).toContain('6 mm hex key')
    expect(tools).toContain('torque wrench')
    expect(draftOf('material', ...TALK).map(({ text }) => text)).toContain('isopropyl alcohol')
  })

  test('a material is marked where it is used, not where the talk says what it is about', () => {
    const [belt] = draftOf('material', ...TALK).filter(({ text }) => text.includes('belt'))
    expect(belt?.said).toBeDefined()
    expect(belt?.said).not.toContain('drive belt')
  })

  test('what is taken off and bolted on again is no tool', () => {
    expect(draftOf('tool', ...TALK).map(({ text }) => text)).not.toContain('caliper')
  })
})

describe('tools that a torque calls for', () => {
  const toolsOf = (...said: string[]): readonly string[] => draftOf('tool', ...said).map(({ text }) => text)

  test('a torque screwdriver for small screws, a torque wrench for the rest', () => {
    expect(toolsOf('Put the lid on.', 'Tighten the lid screws to 1.5 newton metres.')).toContain('torque screwdriver')
    const bolts = toolsOf('Put the lid on.', 'Tighten the lid bolts to 40 newton metres.')
    expect(bolts).toContain('torque wrench')
    expect(bolts).not.toContain('torque screwdriver')
    expect(toolsOf('Put the lid on.', 'Tighten the lid screws to 40 newton metres.')).toContain('torque wrench')
  })

  test('none beside one that is named', () => {
    const tools = toolsOf('Tighten the lid screws to 1.5 newton metres with a torque screwdriver.')
    expect(tools.filter(name => name.includes('torque'))).toEqual(['torque screwdriver'])
  })
})

test('[D5] what only the deed calls for is not said to be named', () => {
  const tools = draftOf(
    'tool',
    'Take the plug out of the wall.',
    'Back out the four screws and lift the lid off.',
    'Snip the cable tie.',
    'Torque the four bolts to 25 newton metres.',
    'Torque the two nuts to 30 newton metres.',
  )
  const reasons = Object.fromEntries(tools.map(({ text, pencilled }) => [text, pencilled?.reason]))
  expect(reasons).toMatchObject({ 'torque wrench': 'called for by what is done, not named' })
  expect(draftOf('tool', 'Tighten it to 40 newton metres with a torque wrench.')[0]?.pencilled?.reason).toBe(
    'named as something used',
  )
})

test('[D7] the size told of a bolt is that of what turns it, wing nuts take none, a named tool is marked where it is named', () => {
  const tools = (...said: readonly string[]) =>
    draftOf('tool', 'Switch the mixer off.', ...said, 'Lift the guard off.').map(({ text, said: from }) => [text, from])
  expect(tools('Take out the four 13 mil bolts on the guard.')).toEqual([['13 mm wrench', 'four 13 mil bolts']])
  expect(tools('Undo the two wing nuts on the guard.')).toEqual([])
  expect(tools('Undo the two nuts on the guard.', 'Slacken the idler with a 17 spanner.')).toEqual([
    ['17 mm spanner', '17 spanner.'],
  ])
})
