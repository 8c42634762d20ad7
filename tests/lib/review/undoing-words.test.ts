import { describe, expect, test } from 'vitest'
import { toSheet } from '@/lib/procedure/sheet'
import { openItems } from '@/lib/review/ledger'
import { sample } from '@/lib/review/sample'
import { asked } from './asked'

// How people say that they undo a part and put it back: common speech, no source.

type Marks = Parameters<typeof sample>[0]
const leftOf = (marks: Marks) => openItems(toSheet(sample(marks))).map(({ undone, thing }) => `${undone} ${thing.name}`)
const left = (...steps: readonly string[]) => leftOf(steps.map(text => ['step', text] as const))

describe('undone in so many words, and put back in others', () => {
  test('[R2] what is unlatched is open until it is latched', () => {
    expect(left('Unlatch the chute')).toEqual(['opened chute'])
    expect(left('Unlatch the chute', 'Latch the chute')).toEqual([])
  })

  test.each([
    ['Unscrew the dosing cap', 'Turn the dosing cap on'],
    ['Slack off the chain tensioner', 'Let the tensioner up against the chain'],
    ['Roll the old belts off the sheaves', 'Work a matched pair of belts on'],
    ['Peel the scratched film off the screen', 'Stick a clear film on the screen'],
    ['Pull the worn sleeve out', 'Slip a fresh 25 mm sleeve in'],
    ['Uncover the inspection pit', 'Cover the inspection pit'],
    ['Unthread the starter rope', 'Reeve the starter rope'],
  ])('[R3] %s, %s', (undoes, restores) => {
    expect(left(undoes)).not.toEqual([])
    expect(left(undoes, restores)).toEqual([])
  })

  test('[R3] a lamp turned on is on no thread', () => {
    expect(left('Take the lamp off', 'Turn the lamp on')).not.toEqual([])
  })

  test('[R3] the material listed for a step is what came off, if the step calls it so', () => {
    const fitted = (text: string): Marks => [
      ['step', 'Slide the old sandpaper out'],
      ['step', text],
      ['material', 'sandpaper disc'],
    ]
    expect(leftOf(fitted('Clamp a fresh disc on the plate'))).toEqual([])
    expect(leftOf(fitted('Fit the dust skirt'))).toEqual(['removed sandpaper'])
  })

  test('[R3] oil let onto a part drains nothing', () => {
    expect(left('Dribble oil along the guide bar')).toEqual([])
    expect(left('Drip the oil into a pan')).toEqual(['drained oil'])
  })

  test('[R3] what a machine is tried on is no part of it', () => {
    expect(left('Split one billet')).toEqual([])
    expect(left('Split the coupling')).toEqual(['disconnected coupling'])
  })

  test('[R3] backed off by so much right after it was tightened, it is set', () => {
    expect(left('Snug the adjuster nut', 'Back the adjuster nut off a quarter turn')).toEqual([])
    expect(left('Back the adjuster nut off a quarter turn')).not.toEqual([])
  })

  test('[R3] a guard opened to see it stop is only tried', () => {
    expect(left('Raise the splash guard while the beater turns')).toEqual([])
    const tried: Marks = [
      ['step', 'Open the loading door with the drum running'],
      ['check', 'Drum stops within two turns'],
    ]
    expect(leftOf(tried)).toEqual([])
    expect(left('Raise the splash guard')).toEqual(['opened splash guard'])
  })

  test('[R3] signs and barriers come down when the work is over', () => {
    expect(left('Take down the barrier chains with the sign')).toEqual([])
  })
})

describe('what shows that it works', () => {
  const brakes = (...marks: Marks) =>
    asked('brakes-not-tested', marks, { heading: { title: 'Brake service of a hand cart' } })

  test('[R3] a brake put on and seen to hold', () => {
    const set: Marks = [['step', 'Screw the fork along the brake rod until the lever has its travel']]
    expect(brakes(...set)).toBe(1)
    expect(brakes(...set, ['step', 'Set the parking brake on the slope'], ['check', 'Cart stands still'])).toBe(0)
    expect(brakes(...set, ['step', 'Pull the brake on as a trial'])).toBe(0)
  })

  test('[R3] a guard goes up and the machine stops: the interlock is tried', () => {
    const interlock = (check: string) =>
      asked(
        'safety-device-not-tested',
        [
          ['step', 'Fit the bowl guard'],
          ['step', 'Start the mixer'],
          ['step', 'Lift the bowl guard while the hook turns'],
          ['check', check],
        ],
        { heading: { equipment: 'planetary mixer' } },
      )
    expect(interlock('Hook stands still within a second')).toBe(0)
    expect(interlock('Hinge moves freely')).toBe(1)
  })

  test('[R3] what only holds it for travel asks for no trial', () => {
    const end = (...texts: readonly string[]) =>
      asked(
        'no-function-test',
        ['Unbolt the pump', 'Bolt the pump on', 'Run the pump on water', ...texts].map(text => ['step', text] as const),
      )
    expect(end('Drop the transport pin in')).toBe(0)
    expect(end('Slip the sheath onto the bar')).toBe(0)
    expect(end('Bolt the valve on')).toBe(1)
  })

  test('[R3] leaks are looked for where the words about leaks say', () => {
    const leaks = (check: string) =>
      asked('no-leak-test', [
        ['step', 'Drain the oil'],
        ['step', 'Fit a new gasket to the pump'],
        ['check', check],
      ])
    expect(leaks('No drops under the pump and the fan spins with its arrow')).toBe(0)
    expect(leaks('The fan spins with its arrow')).toBe(1)
  })
})

describe('what a sheet may leave unsaid', () => {
  test('[R3] a left-hand nut says why it turns the other way, but not twice the same way', () => {
    const turns = (...texts: readonly string[]) =>
      asked(
        'direction-disagrees',
        texts.map(text => ['step', text] as const),
      )
    expect(turns('Undo the left-hand spindle nut clockwise')).toBe(0)
    expect(turns('Undo the spindle nut clockwise')).toBe(1)
    expect(turns('Undo the left-hand spindle nut clockwise', 'Tighten the left-hand spindle nut clockwise')).toBe(1)
  })

  test('[R3] a grade of oil is a name, a spanner nobody sizes was looked up', () => {
    const number = (text: string, talk: string) => asked('number-not-said', [['step', text]], { talk: [talk] })
    expect(number('Fill the case with ISO VG 46 oil', 'Fill the case with thin oil.')).toBe(0)
    expect(number('Undo the lead with the 10 mm spanner', 'Undo the lead with the spanner.')).toBe(0)
    expect(number('Undo the lead with the 10 mm spanner', 'Undo the lead with the thirteen mil spanner.')).toBe(1)
  })

  test('[R3] listed as one entry, or part of the machine', () => {
    const lists = (text: string, tool: string, equipment = '') =>
      asked(
        'tool-not-listed',
        [
          ['step', text],
          ['tool', tool],
        ],
        { heading: { equipment } },
      )
    expect(lists('Lock the panel with a tagged padlock', 'padlock and tag')).toBe(0)
    expect(lists('Haul the mast down with the mast winch', 'rag', 'tilting mast with hand winch')).toBe(0)
    expect(lists('Haul the mast down with the mast winch', 'rag')).toBe(1)
  })

  test('[R3] work kept for others by law needs no consequence', () => {
    const incomplete = (text: string) => asked('caution-incomplete', [['caution', text, { level: 'notice' }]])
    expect(incomplete('Gas work is regulated; leave the burner to a licensed fitter')).toBe(0)
    expect(incomplete('Gas work is special; leave the burner alone')).toBe(1)
  })

  test('[R3] a cover that locks a plug guards no machine', () => {
    const runs = (cover: string) =>
      asked('run-unready', [
        ['step', `Take the ${cover} off`],
        ['step', 'Run the saw for a minute'],
      ])
    expect(runs('lock cover')).toBe(0)
    expect(runs('belt cover')).toBe(1)
  })

  test('[R3] measured out, an acid is not spent', () => {
    const waste = (text: string) =>
      asked('no-disposal', [
        ['step', text],
        ['material', 'acid descaler'],
      ])
    expect(waste('Measure the dose into the jug')).toBe(0)
    expect(waste('Soak the spray arm in the tub')).toBe(1)
  })

  test('[R3] told that its vapour burns, whoever uses it knows that it is no water', () => {
    const chemical = (text: string) =>
      asked('hazard-no-caution', [
        ['caution', text, { level: 'warning', hazard: 'fire' }],
        ['step', 'Swish the nozzle in degreaser'],
      ])
    expect(chemical('Degreaser vapour could flash; keep flames away')).toBe(0)
    expect(chemical('Rags by the stove could flash; keep flames away')).toBe(1)
  })

  test('[R3] beside a marked limit, a rough turn is none', () => {
    const limits = (talk: string) =>
      asked(
        'limit-not-marked',
        [
          ['step', 'Turn the cap on'],
          ['spec', 'cap torque', { quantity: { low: 4, high: 6, unit: 'N.m' } }],
        ],
        { talk: [talk] },
      )
    expect(limits('By hand and a quarter turn, it must be four to six newton metres.')).toBe(0)
    expect(limits('It must be within two to three millimetres, and four to six newton metres.')).toBe(1)
  })

  test('[R3] what a caution wants before work is what its own step does', () => {
    const late = (step: string) =>
      asked('caution-late', [
        ['step', 'Read the visitor log'],
        ['step', 'Sign the permit'],
        ['step', 'Climb to the deck'],
        ['step', step],
        ['caution', 'A loose sail can swing and kill; lash it before you work', { level: 'danger' }],
      ])
    expect(late('Lash the sail to the post')).toBe(0)
    expect(late('Grease the hub')).toBe(1)
  })

  test('[R3] a machine that is stopped brings nothing', () => {
    const asks = (text: string) =>
      asked('hazard-no-caution', [['step', text]], { heading: { equipment: 'belt-driven extract fan, 400 V' } })
    expect(asks('Stop the fan at the panel')).toBe(0)
    expect(asks('Reach into the running fan')).toBeGreaterThan(0)
  })
})
