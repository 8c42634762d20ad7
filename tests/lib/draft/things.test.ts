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
