import { describe, expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import { type SampleMark, sample } from '@/lib/review/sample'
import { HAZARD_FAMILIES } from '@/lib/trade/hazard-families'
import { DEED_HAZARDS } from '@/lib/trade/hazards-deeds'

// What a deed on a kind of part brings: common practice, no source. Trades and wordings here are of the tests' own.

const findings = (marks: readonly SampleMark[], equipment = '', talk?: readonly string[]) =>
  reviewProject(sample(marks, { heading: { equipment }, ...(talk === undefined ? {} : { talk }) }))

/** Whether a hazard is asked for, by itself or, where `orKin`, by another of its family, of which one is asked for at a step. */
const asksFor = (hazard: string, marks: readonly SampleMark[], equipment: string, orKin = true): boolean => {
  const family = orKin ? HAZARD_FAMILIES.find(ids => ids.includes(hazard)) : undefined
  return (family ?? [hazard]).some(id =>
    findings(marks, equipment).some(
      ({ rule, message }) => rule === 'hazard-no-caution' && message.includes(`(${id.replaceAll('-', ' ')})`),
    ),
  )
}

const rulesOf = (marks: readonly SampleMark[], equipment = '', talk?: readonly string[]) =>
  findings(marks, equipment, talk).map(({ rule }) => rule)

/** Hazard, machine, step, a caution that answers it, and one of something near that does not. */
const DEEDS: readonly (readonly [hazard: string, machine: string, step: string, answer: string, near: string])[] = [
  [
    'dropping-part',
    'hydraulic stage lift, 400 V',
    'Set the safety bar under the raised platform',
    'The platform can sink and crush whoever is below; keep out until the bar is in',
    'Oil on the deck makes shoes slide; wipe it up',
  ],
  [
    'sprung-clip',
    'vineyard trailer winch',
    'Squeeze the circlip out of its groove',
    'The clip can jump into your eye; wear glasses',
    'The drum can roll; wedge it',
  ],
  [
    'tyre-filling',
    'two-wheeled market trailer',
    'Inflate the new tyre with the foot pump',
    'A tyre that bursts can break your arm; stand to the side',
    'The trailer can roll over your foot; chock it',
  ],
  [
    'climbing',
    'theatre fly bar with a lamp',
    'Go up the stepladder to the lamp clamp',
    'A fall from the ladder can break your back; have it held',
    'The lamp is hot and burns; let it cool',
  ],
  [
    'open-pit',
    'bowling alley pin deck',
    'Lift the floor hatch over the ball return',
    'Somebody could step into the hole and break a leg; rope it off',
    'The belt can drag a hand in; keep it off',
  ],
  [
    'back-strain',
    'letterpress proofing press',
    'Carry the 35 kg forme to the stone',
    'The forme is heavy and can hurt your back; take a second person',
    'Ink irritates the skin; wear gloves',
  ],
  [
    'cell-acid',
    'golf cart, lead-acid batteries',
    'Top the cells up to the ring',
    'Acid that splashes can blind you; wear goggles',
    'Hydrogen over the battery can explode; no sparks',
  ],
  [
    'acid-fumes',
    'stone facade washing set',
    'Dilute the muriatic acid in the tub',
    'The vapour burns the lungs; stand upwind',
    'It burns the skin; wear long gloves',
  ],
  [
    'solder-smoke',
    'church organ console, 24 V',
    'Solder the new contact wire to its pin',
    'Flux smoke can make you ill; open the window',
    'The iron is hot and burns; keep it in its stand',
  ],
  [
    'ash-embers',
    'bread oven fired with wood',
    'Shovel the ash into the pail',
    'Embers can set the shed on fire; use the metal pail',
    'Dust of ash hurts the lungs; wear a mask',
  ],
  [
    'drive-shaft',
    'potato spreader behind a tractor',
    'Slide the PTO shaft onto the stub',
    'A turning shaft winds up a sleeve and kills; take the key out',
    'The hitch can crush a hand; hold it by the ring',
  ],
  [
    'belt-nip',
    'rope walk winding machine',
    'Roll the belt over the edge of the pulley',
    'The pulley can trap fingers; keep them on the back of the belt',
    'The belt dust irritates; wear a mask',
  ],
  [
    'stored-charge',
    'microwave oven for a canteen',
    'Unscrew the machine cover',
    'The capacitor can shock you; discharge it first',
    'Sheet metal cuts; wear gloves',
  ],
  [
    'sparks-fire',
    'barn hinge on an oak door',
    'Heat the seized pin with the torch',
    'Hay can catch fire; have an extinguisher by',
    'The pin stays heavy; hold it',
  ],
  [
    'spill-underfoot',
    'brewhouse mash filter',
    'Hose the mash off the floor',
    'The wet floor can make you slip; wear boots',
    'The lid is heavy; lift it by two',
  ],
  [
    'lamp-glass',
    'sunbed, 230 V',
    'Twist the old tubes out of their holders',
    'A tube that breaks cuts and gives off mercury; hold it in a cloth',
    'Mains can kill; pull the plug',
  ],
]

const cautioned = (text: string): SampleMark => ['caution', text, { level: 'warning' }]

describe.each(DEEDS)('%s on a %s', (hazard, machine, step, answer, near) => {
  test('[R2] is asked for where nothing is said of it', () => {
    expect(asksFor(hazard, [['step', step]], machine)).toBe(true)
  })
  test('[R2] is asked for although a caution speaks of something near', () => {
    expect(asksFor(hazard, [cautioned(near), ['step', step]], machine)).toBe(true)
  })
  test('[R3] is not asked for where a caution speaks of just that', () => {
    expect(asksFor(hazard, [cautioned(answer), ['step', step]], machine, false)).toBe(false)
  })
})

/** What sounds like it and is nothing of the kind. */
const NOTHING: readonly (readonly [machine: string, step: string])[] = [
  ['folding market stall', 'Prop the price board against the leg'],
  ['harmonium with foot bellows', 'Pump the bellows until the reservoir is up'],
  ['road bicycle, carbon frame', 'Pump both tyres to 6 bar'],
  ['reading room lamp, 230 V', 'Set the lamp on the window sill'],
  ['school laboratory balance', 'Set the weights in their box'],
  ['garden bench', 'Spread the absorbent pad under the hinge'],
  ['weaving loom', 'Walk the shuttle through the shed'],
  ['slide projector', 'Wipe the lens with the soft cloth'],
]

test.each(NOTHING)('[R3] a %s: "%s" brings none of these', (machine, step) => {
  expect(DEED_HAZARDS.map(({ id }) => id).filter(id => asksFor(id, [['step', step]], machine, false))).toEqual([])
})

describe('what is put back in other words', () => {
  test.each([
    ['Draw the axle pin out of the swing arm', 'Slide the axle pin into the swing arm'],
    ['Lift the drum off its spindle', 'Lower the drum onto its spindle'],
    ['Take the shuttle spring off', 'Press the shuttle in until the spring clicks'],
    ['Pull the ladle shaft out of the bearing', 'Guide the ladle shaft through the bearing'],
    ['Lift the wetted felt off the roller', 'Roll the felt onto the roller'],
    ['Ease the pivot out of the gate leaf', 'Mount the gate leaf on its pivot'],
  ])('[R3] "%s" is made good by "%s"', (off, on) => {
    expect(
      rulesOf(
        [
          ['step', off],
          ['step', 'Clean the seat'],
          ['step', on],
        ],
        'loom',
      ),
    ).not.toContain('not-refitted')
  })

  test.each([
    ['Draw the axle pin out of the swing arm', 'Slide the axle cap into the hub'],
    ['Lift the drum off its spindle', 'Lower the drum onto the bench'],
    ['Pull the ladle shaft out of the bearing', 'Slide the ladle shaft out of the way'],
  ])('[R2] "%s" is not made good by "%s"', (off, on) => {
    expect(
      rulesOf(
        [
          ['step', off],
          ['step', 'Clean the seat'],
          ['step', on],
        ],
        'loom',
      ),
    ).toContain('not-refitted')
  })

  test.each([
    ['Run the lectern from its lowest stop to its highest'],
    ['Unwind the regulator until the needle rests on its pin'],
    ['Draw the shipping lock out of the new motor'],
    ['Trip the float switch with a finger'],
    ['Shut the valves for the night, gas valve last'],
    ['Grease the hinge again after the first week, power isolated'],
  ])('[R3] "%s" takes nothing apart', text => {
    const rules = rulesOf([['step', text]], 'lectern')
    expect(rules.filter(rule => /^(?:not-|power-not)/.test(rule))).toEqual([])
  })
})

describe('what the talk puts as it was', () => {
  const talk = (step: string, order: string) =>
    rulesOf(
      [
        ['step', step],
        ['step', 'Rinse the sieve'],
        ['step', 'Write the date in the book', { start: 15, end: 20 }],
      ],
      'still',
      [`${step}.`, 'Rinse the sieve.', order, 'Write the date in the book.'],
    )

  test('[R2] a thing named first is heard', () => {
    expect(talk('Shut both drum valves beside the sieve', 'Both drum valves, open again, gently.')).toContain(
      'not-reopened',
    )
  })
  test('[R2] a pin is drawn without a word of where', () => {
    expect(talk('Push the keeper pin through the frame', 'Draw the keeper pin.')).toContain('aid-left-in')
  })
  test('[R2] a stop button pushed in has to be let out', () => {
    expect(
      rulesOf(
        [
          ['step', 'Push the emergency stop button in'],
          ['step', 'Oil the chain'],
        ],
        'carousel',
      ),
    ).toContain('lock-not-removed')
    expect(
      rulesOf(
        [
          ['step', 'Push the emergency stop button in'],
          ['step', 'Oil the chain'],
          ['step', 'Pull the stop button out'],
        ],
        'carousel',
      ),
    ).not.toContain('lock-not-removed')
  })
})

describe('tools and values', () => {
  test('[R2] a tool listed in another size is not at hand', () => {
    const listed: SampleMark = ['tool', '10 mm socket']
    expect(rulesOf([['step', 'Back the bolt out with the 13 mm socket'], listed], 'loom')).toContain('tool-not-listed')
    expect(rulesOf([['step', 'Back the bolt out with the 10 mm socket'], listed], 'loom')).not.toContain(
      'tool-not-listed',
    )
    expect(
      rulesOf(
        [
          ['step', 'Back the bolt out with the 13 mm socket'],
          ['tool', 'socket set, 8 to 19 mm'],
        ],
        'loom',
      ),
    ).not.toContain('tool-not-listed')
  })
  test('[R2] one way both slackens and tightens', () => {
    const back: SampleMark = ['step', 'Turn the warp handle anticlockwise until the warp hangs loose']
    expect(rulesOf([back, ['step', 'Turn the warp handle anticlockwise up to warp tension']], 'loom')).toContain(
      'direction-disagrees',
    )
    expect(rulesOf([back, ['step', 'Turn the warp handle clockwise up to warp tension']], 'loom')).not.toContain(
      'direction-disagrees',
    )
  })
  test('[R2] pH ends at 14', () => {
    expect(rulesOf([['spec', 'pH of the dye bath', { quantity: { low: 45, high: 55, unit: '[pH]' } }]])).toContain(
      'spec-implausible',
    )
    expect(
      rulesOf([['spec', 'pH of the dye bath', { quantity: { low: 4.5, high: 5.5, unit: '[pH]' } }]]),
    ).not.toContain('spec-implausible')
  })
})

test('[R5] a pin that holds what turns holds no load up', () => {
  const pin = (where: string): readonly SampleMark[] => [
    ['step', `Push the locking pin through the hole in the ${where}`],
  ]
  expect(asksFor('dropping-part', pin('flywheel'), 'hay press, electric')).toBe(false)
  expect(asksFor('dropping-part', pin('lift arm'), 'hay press, electric')).toBe(true)
})

test('[R5] what is shifted by a hair is no load, and wiping up a spill is the care itself', () => {
  expect(
    asksFor('back-strain', [['step', 'Slide the anvil in until the feeler gauge just drags']], 'stamping mill'),
  ).toBe(false)
  expect(asksFor('back-strain', [['step', 'Slide the anvil off its bed']], 'stamping mill')).toBe(true)
  expect(asksFor('back-strain', [['step', 'Take the level plug out of the gearbox']], 'stamping mill')).toBe(false)
  expect(asksFor('back-strain', [['step', 'Lift the gearbox out']], 'stamping mill')).toBe(true)
  expect(asksFor('spill-underfoot', [['step', 'Wipe up the spilt oil']], 'stamping mill')).toBe(false)
})
