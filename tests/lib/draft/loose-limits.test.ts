import { describe, expect, test } from 'vitest'
import { readTold } from '@/lib/draft/told-limits'

/** The limits without a number of a sentence, in their words. */
const looseOf = (text: string): readonly string[] =>
  readTold(text, {}).flatMap(({ qualitative }) => (qualitative === undefined ? [] : [qualitative]))

describe('limits without a number, as people put them', () => {
  test.for([
    ['Cover plate on, four screws, until they sit and that’s it.', 'until they sit'],
    ['The butterflies only so strong as fingers can.', 'only so strong as fingers can'],
    ['Oil in the little window, somewhere in the top half.', 'top half'],
    ['The sight glass ought to show oil between the two black lines.', 'between the two black lines'],
    ['Oil on the stick between the two notches, cold.', 'between the two notches'],
    ['The rope must be just taut, not humming.', 'just taut'],
    ['Grease it till you see fresh stuff coming out.', 'till you see fresh stuff coming out'],
    ['Screws only handtight, it is thin metal.', 'handtight'],
    ['Lens screws, finger and thumb, and no more.', 'finger and thumb'],
    ['Top it with chain oil to the seam.', 'to the seam'],
    ['Stop when it’s dead center in the window.', 'dead center in the window'],
    ['Grease, pack the rollers full and the housing a third.', 'a third'],
    ['Salt back in, up to no more than two-thirds of the way.', 'up to no more than two-thirds of the way'],
    ['Leave room for a playing card.', 'a playing card'],
    ['Gaps between the webs, no wider than the web itself.', 'no wider than the web itself'],
    ['Tighten until the two arrows kiss.', 'until the two arrows kiss'],
    ['The nut is only as tight as a jam jar.', 'only as tight as a jam jar'],
    ['Do it up till it is stiff but turns.', 'stiff but turns'],
  ] as const)('[D11] %s', ([said, limit]) => {
    expect(looseOf(said)).toEqual([limit])
  })
})
