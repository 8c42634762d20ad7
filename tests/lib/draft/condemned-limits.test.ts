import { describe, expect, test } from 'vitest'
import { readSentence } from '@/lib/draft/feature'
import { findLimits } from '@/lib/draft/spec-feature'

const METRIC = 'The grey one by the kerb, two metres out, takes a litre.'
const US = 'Four quarts and a gallon, five inches deep, in the color you like.'

/** Limits of a talk's last sentence that have a figure, without the words they were read from. Invented talks. */
const lastOf = (...talk: readonly string[]) => {
  const sentences = talk.map((text, i) => ({ text, start: i * 4, end: i * 4 + 4, words: [] }))
  return findLimits(
    sentences as never,
    sentences.map(({ text }) => readSentence(text)),
  )
    .filter(({ sentence, shape }) => sentence === talk.length - 1 && shape !== 'qualitative')
    .map(({ quantity }) => quantity)
}
const mm = (quantity: object) => [{ ...quantity, unit: 'mm' }]

describe('what condemns is beyond the limit', () => {
  test.for([
    ['When the shoe has less than 12 millimetres it goes on the scrap heap.', { low: 12 }],
    ['Once the gauge shows under 4 millimetres I quit on it.', { low: 4 }],
    ['Less than 8 millimetres left on the facing and the machine doesn’t leave here.', { low: 8 }],
    ['8 millimetres or less and they’re landfill.', { low: 8 }],
    ['Scrap under 6 millimetres.', { low: 6 }],
    ['The moment play is more than 2 millimetres, that’s a new bush.', { high: 2 }],
    ['The belt gets tossed once the slack passes 25 millimetres.', { high: 25 }],
    ['If a 6 millimetre drill slips in, it’s used up.', { high: 6 }],
    ['If the gap is more than 0.4 millimetres, shim it.', { high: 0.4 }],
    ['The cable’s bend is to be no tighter than 90 millimetres.', { low: 90 }],
    ['Any groove deeper than 3 millimetres, mark it with chalk.', { high: 3 }],
    ['Thinner than 4 millimetres and it’s a trip to the store.', { low: 4 }],
    ['A swing of more than 12 millimetres is reason for an overhaul.', { high: 12 }],
  ] as const)('[D11] %s', ([text, quantity]) => {
    expect(lastOf(METRIC, text)).toEqual(mm(quantity))
  })

  test('[D11] what stands written and must not be undercut is the least', () => {
    expect(lastOf(METRIC, 'The tag says 16 bar, so the new one can’t be for anything less.')).toEqual([
      { low: 16, unit: 'bar' },
    ])
  })
})

describe('how far a thing may go, told by what follows', () => {
  test.for([
    ['The drum is finished once there’s 2 millimetres left on it.', { low: 2, unit: 'mm' }],
    ['At 5 millimetres they go in the bin.', { low: 5, unit: 'mm' }],
    ['9 millimetres of slack and I’m reaching for the tensioner.', { high: 9, unit: 'mm' }],
    ['2 millimetres of lip, any more and I turn it.', { high: 2, unit: 'mm' }],
    ['If the pump can’t make six bar, look at the valves.', { low: 6, unit: 'bar' }],
    ['It has to see 70 Celsius or the yeast survives.', { low: 70, unit: 'Cel' }],
    ['I’d be unhappy with more than 2 millimetres.', { high: 2, unit: 'mm' }],
    ['It’s got forty seconds to build pressure, otherwise stop.', { high: 40, unit: 's' }],
    ['You must still be able to slide a 0.3 millimetre feeler in there.', { low: 0.3, unit: 'mm' }],
    ['The carbon can wear down to 7 millimetres, then it gets swapped.', { low: 7, unit: 'mm' }],
    ['Unless it shows 12.5 volts, it goes on the charger.', { low: 12.5, unit: 'V' }],
    ['It floods if you go below 700 revs.', { low: 700, unit: '{rev}/min' }],
    ['It must have stopped by ten seconds.', { high: 10, unit: 's' }],
    ['Once mixed it’s only good for an hour.', { high: 1, unit: 'h' }],
    [
      'The stroke is 300 millimetres, and I allow four over or under.',
      { low: 296, high: 304, nominal: 300, unit: 'mm' },
    ],
  ] as const)('[D11] %s', ([text, quantity]) => {
    expect(lastOf(METRIC, text)).toEqual([quantity])
  })
})

describe('what is asked for or praised is no fault', () => {
  test.for([
    ['Under 0.4 millimetres and you can leave it.', { high: 0.4 }],
    ['Stay under 3 millimetres, or you throw it away.', { high: 3 }],
    ['Get it below 0.1 millimetres, otherwise it’s scrap.', { high: 0.1 }],
    ['It must be over 6 millimetres or it goes in the bin.', { low: 6 }],
    ['If it isn’t over 6 millimetres it goes in the bin.', { low: 6 }],
    ['Unless it’s under 0.2 millimetres, do it again.', { high: 0.2 }],
    ['If it’s not under 0.2 millimetres, do it again.', { high: 0.2 }],
    ['I don’t put it back unless there’s more than 6 millimetres.', { low: 6 }],
    ['It needs more than 5 millimetres of clearance, and it comes off easily.', { low: 5 }],
    ['When you have less than 0.2 millimetres, carry on.', { high: 0.2 }],
    ['I am content if it moves no more than 0.2 millimetres.', { high: 0.2 }],
    ['Under 3 millimetres is the rule, I don’t want a bolt in there before that.', { high: 3 }],
    ['Anything under 3 millimetres is fine by me.', { high: 3 }],
  ] as const)('[D11] %s', ([text, quantity]) => {
    expect(lastOf(METRIC, text)).toEqual(mm(quantity))
  })

  test('[D11] a current asked for stays the most', () => {
    expect(lastOf(METRIC, 'Clip on the feed, under twenty amps, that’s on the label.')).toEqual([
      { high: 20, unit: 'A' },
    ])
    expect(lastOf(METRIC, 'The trickle should be under 3 milliamps.')).toEqual([{ high: 3, unit: 'mA' }])
  })
})

describe('bounds and ranges in people’s order', () => {
  test.for([
    ['90 newton metres as most.', { high: 90, unit: 'N.m' }],
    ['Three seconds is maximum.', { high: 3, unit: 's' }],
    ['Twenty bar’s the most it should see.', { high: 20, unit: 'bar' }],
    ['Six hundredths is all the play you’re allowed.', { high: 0.06, unit: 'mm' }],
    ['Eighth of an inch is all I’ll allow.', { high: 0.125, unit: '[in_i]' }],
    ['The longest you may hold it is five seconds.', { high: 5, unit: 's' }],
    ['Leave it half an hour, better more.', { low: 0.5, unit: 'h' }],
    ['It should hold for a good thirty seconds.', { low: 30, unit: 's' }],
    ['Don’t touch it before an hour has gone by.', { low: 1, unit: 'h' }],
    ['Ten millimetres would be my low, twenty’s my high.', { low: 10, high: 20, unit: 'mm' }],
    ['It’s 14 millimetres, 13 at the bottom of it and 15 at the top.', { low: 13, high: 15, nominal: 14, unit: 'mm' }],
    ['Eight millimetres, one up or one down.', { low: 7, high: 9, nominal: 8, unit: 'mm' }],
    ['11 bar, you can be half a bar off.', { low: 10.5, high: 11.5, nominal: 11, unit: 'bar' }],
    ['Not less than twenty minutes but not past an hour.', { low: 20, high: 60, unit: 'min' }],
    ['Give it from ten minutes to a quarter of an hour.', { low: 10, high: 15, unit: 'min' }],
    ['More than thirty psi running and less than ninety.', { low: 30, high: 90, unit: '[psi]' }],
    ['I never go under 20 newton metres or over 35.', { low: 20, high: 35, unit: 'N.m' }],
    ['The minimum thickness is cast on it, 22 millimetres.', { low: 22, unit: 'mm' }],
    ['I would stop at fifty newton metres.', { high: 50, unit: 'N.m' }],
    ['Grease it every 300 hours, maybe 350.', { low: 300, high: 350, unit: 'h' }],
    ['Hold it four, five inches off.', { low: 4, high: 5, unit: '[in_i]' }],
    ['It must drain in less than a minute, bucket or no bucket.', { high: 1, unit: 'min' }],
  ] as const)('[D11] %s', ([text, quantity]) => {
    expect(lastOf(METRIC, text)).toEqual([quantity])
  })

  test('[D11] figures of two things stay two', () => {
    expect(
      lastOf(METRIC, 'The gauge reads up to two hundred bar, and it must not fall under one hundred eighty.'),
    ).toEqual([
      { high: 200, unit: 'bar' },
      { low: 180, unit: 'bar' },
    ])
    expect(lastOf(METRIC, 'One, two, three inches, and so on.').length).toBeGreaterThan(0)
    expect(lastOf(METRIC, 'One, two, three inches, and so on.')).not.toContainEqual({ low: 2, high: 3, unit: '[in_i]' })
  })

  test('[D11] a figure and the time before it are two', () => {
    expect(lastOf(METRIC, 'Half an hour, then infrared on the hub, it shouldn’t see more than sixty.')).toEqual([
      { nominal: 0.5, unit: 'h' },
      { high: 60, unit: 'Cel' },
    ])
  })
})

describe('an instrument tells what its figure counts in', () => {
  test.for([
    [METRIC, 'Put the meter in the outlet and you should have between 220 and 240.', 'V'],
    [METRIC, 'Clamp meter on the feed, no more than 14.', 'A'],
    [US, 'Point the infrared gun at the bearing, no more than 160.', '[degF]'],
    [METRIC, 'Tacho on it and it should be 2,900.', '{rev}/min'],
    [US, 'Clean them and pull those to eighty.', '[ft_i].[lbf_av]'],
  ] as const)('[D11] %s %s', ([system, text, unit]) => {
    expect(lastOf(system, text).map(quantity => quantity.unit)).toEqual([unit])
  })

  test('[D11] two places of a pair have a limit each', () => {
    expect(lastOf(US, 'Air the tires, twelve pounds in front and fifteen behind.')).toEqual([
      { nominal: 12, unit: '[psi]' },
      { nominal: 15, unit: '[psi]' },
    ])
  })
})

describe('intervals in other words', () => {
  test.for([
    ['80 hours or one time in the year.', [80, 'h', 1, 'a']],
    ['Twice in the year.', [6, 'mo']],
    ['Grease each second week.', [2, 'wk']],
    ['You do this every year or every 20,000 kilometres.', [1, 'a', 20000, 'km']],
  ] as const)('[D11] %s', ([text, said]) => {
    expect(lastOf(METRIC, text).flatMap(({ nominal, unit }) => [nominal, unit])).toEqual(said)
  })
})
