import { describe, expect, test } from 'vitest'
import { bringsPower, cutsPower } from '@/lib/review/power'
import { reviewProject } from '@/lib/review/review'
import { type SampleMark, sample } from '@/lib/review/sample'

// What steps bring and which machines are known for it: common practice, no source. Levels of signal words: ANSI Z535.6, from memory.

const findings = (marks: readonly SampleMark[], equipment = '', talk?: readonly string[]) =>
  reviewProject(sample(marks, { heading: { equipment }, ...(talk === undefined ? {} : { talk }) }))

/** Rules found at a mark, or in the talk or of the whole. */
const rulesOf = (marks: readonly SampleMark[], equipment = '', talk?: readonly string[]) =>
  findings(marks, equipment, talk).map(({ rule }) => rule)

const asksFor = (hazard: string, marks: readonly SampleMark[], equipment: string): boolean =>
  findings(marks, equipment).some(
    ({ rule, message }) => rule === 'hazard-no-caution' && message.includes(hazard.replaceAll('-', ' ')),
  )

describe('a warning of the talk that no caution holds', () => {
  const talk = [
    'Hot tallow takes the skin off your arm, so gauntlets on before the lid moves.',
    'Lift the lid of the tallow pot.',
    'And the tallow fumes can knock you out and kill you in a closed shed, so the big door stays open.',
    'Stir the tallow.',
  ]
  const lid: SampleMark = ['step', 'Lift the lid of the tallow pot']
  const stir: SampleMark = ['step', 'Stir the tallow']
  const scald: SampleMark = [
    'caution',
    'Hot tallow burns the arms badly; wear gauntlets',
    { level: 'warning', hazard: 'hot-surface', start: 0, end: 4 },
  ]

  test('[R2] is found beside a caution of its own that speaks of the same stuff', () => {
    expect(rulesOf([scald, lid, stir], 'tallow pot', talk)).toContain('warning-not-marked')
  })

  test('[R2] is not asked for where a caution says it in other words', () => {
    const fumes: SampleMark = [
      'caution',
      'Tallow fumes can knock you out and kill you in a closed shed; keep the door open',
      { level: 'warning', start: 0, end: 1 },
    ]
    expect(rulesOf([fumes, scald, lid, stir], 'tallow pot', talk)).not.toContain('warning-not-marked')
  })
})

describe('steps that bring no danger of their own', () => {
  const hot: SampleMark = [
    'caution',
    'The hot sterilizer can burn your hands badly; wear gloves',
    { level: 'warning', hazard: 'hot-surface' },
  ]

  test('[R2] a caution after the waiting and before the opening is in time', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Wait until the sterilizer has cooled'],
      hot,
      ['step', 'Open the sterilizer door'],
    ]
    expect(rulesOf(marks, 'steam sterilizer')).not.toContain('caution-late')
  })

  test('[R2] after the opening it is late', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Open the sterilizer door'],
      ['step', 'Write the date in the book'],
      hot,
      ['step', 'Sign the book'],
    ]
    expect(rulesOf(marks, 'steam sterilizer')).toContain('caution-late')
  })

  test.each([['Hang your lock and tag on the switch'], ['Take the lock and tag away from the switch']])(
    '[R2] nobody gets a shock from "%s"',
    text => {
      expect(asksFor('electric-shock', [['step', text]], '230 V ceiling fan')).toBe(false)
    },
  )
})

test.each([
  ['Take the level plug out', false, false],
  ['Pull the mains plug', true, false],
  ['Turn each blade over and refit it on its seat', false, false],
  ['Turn the isolator back on', false, true],
  ['Switch on the pump', false, true],
  ['Take your lock and tag off', false, true],
  ['Hang a padlock on the switch', true, false],
] as const)('[R2] "%s" cuts the power: %s, brings it: %s', (text, isCut, isPowered) => {
  expect([cutsPower(text), bringsPower(text)]).toEqual([isCut, isPowered])
})

describe('hazards by class of machine and deed', () => {
  test.each([
    ['lithium', 'Slip the battery out of the down tube', 'electric folding bike'],
    ['chemical', 'Unscrew the injection valve from the pipe', 'hypochlorite dosing station'],
    ['chemical', 'Soak the grate in caustic cleaner', 'charcoal grill'],
    ['flammable-liquid', 'Wipe the cylinder down with roller wash', 'duplicator'],
    ['pinch', 'Crank the drum round until the gripper shows', 'sheet-fed offset press'],
    ['crush', 'Bring the ramp lip down onto the lorry bed', 'hydraulic dock leveller'],
    ['height', 'Prise the manhole cover up', 'pumping station, 3 m well'],
    ['dust', 'Knock the worn shoes off the backing plate', 'drum brake of a horse box'],
  ])('[R2] %s: "%s" (%s)', (hazard, step, equipment) => {
    expect(asksFor(hazard, [['step', step]], equipment)).toBe(true)
    expect(asksFor(hazard, [['step', step]], 'wooden chair')).toBe(
      hazard === 'chemical' || hazard === 'flammable-liquid' ? /cleaner|wash/.test(step) : false,
    )
  })
})

test('[R2] a caution against heat is none against the poison in the same stuff', () => {
  const marks: readonly SampleMark[] = [
    [
      'caution',
      'Hot antifreeze under pressure scalds badly; leave the cap on while it is hot',
      { level: 'warning', hazard: 'hot-fluid' },
    ],
    ['step', 'Drain the antifreeze into the pan'],
  ]
  expect(asksFor('chemical', marks, 'greenhouse heating loop')).toBe(true)
})

test.each([
  ['Never scrape it with steel; it scratches the sealing face'],
  ['A tight clamp dents the tube; nip it up by hand only'],
])('[R2] harm to a thing is a notice: %s', text => {
  expect(
    rulesOf([
      ['caution', text, { level: 'notice' }],
      ['step', 'Clean the face'],
    ]),
  ).not.toContain('signal-word')
})

// How people point at parts and own up to having forgotten something: common speech, no source.

test.each([
  ['Then you turn these two rogues by the frame until it sits level.'],
  ['Knock that ugly lump out with the drift.'],
  ['Hold yer man there with the other spanner.'],
])('[R2] only pointed at: %s', line => {
  expect(rulesOf([['step', 'Adjust the two hanger bolts']], '', [line])).toContain('vague-thing')
})

test.each([
  ['Slide the yoke back onto the shaft.'],
  ['Wipe the devil’s claw chain.'],
  ['The customer wants it by Friday.'],
])('[R2] named well enough: %s', line => {
  expect(rulesOf([['step', 'Slide the yoke onto the shaft']], '', [line])).not.toContain('vague-thing')
})

test.each([
  ['Ear plugs, they must be in before the hammer starts, silly me.', true],
  ['Ear plugs must be in before the hammer starts.', false],
  ['I clean forgot the ear plugs, put them in.', true],
  ['Put the ear plugs in.', false],
])('[R2] told late: %s (%s)', (line, isLate) => {
  const marks: readonly SampleMark[] = [
    ['step', 'Start the hammer'],
    ['step', 'Put the ear plugs in'],
  ]
  expect(rulesOf(marks, 'breaker hammer', ['Start the hammer.', line]).includes('told-late')).toBe(isLate)
})

test('[R2] what a step does to "it" is done to the thing it names', () => {
  const marks: readonly SampleMark[] = [
    ['step', 'Undo the two screws of the organ bellows and lift it out'],
    ['step', 'Dust the wind chest'],
    ['step', 'Chalk the seam before lifting the bellows out'],
  ]
  expect(rulesOf(marks)).toContain('step-late')
})

test('[R2] a caution that only says what can happen, twice, lacks what to do', () => {
  const marks = (text: string): readonly SampleMark[] => [
    ['caution', text, { level: 'warning', hazard: 'pinch' }],
    ['step', 'Reach into the flap box'],
  ]
  expect(rulesOf(marks('The flap can drop and crush your thumb'))).toContain('caution-incomplete')
  expect(rulesOf(marks('The flap can drop and crush your thumb; prop it up'))).not.toContain('caution-incomplete')
})

test('[R2] a main switch turned to zero wants a lock', () => {
  const marks: readonly SampleMark[] = [
    ['step', 'Turn the main switch to zero'],
    ['step', 'Open the flap box'],
    ['step', 'Replace the flap motor'],
  ]
  expect(rulesOf(marks)).toContain('no-lockout')
})

test.each([
  ['Die edges are keen and can nick your fingers; wear gloves', 'caution'],
  ['A hob that looks dead can still burn your hand; let it stand', 'caution'],
] as const)('[R2] nobody dies of dies or of what looks dead: %s', (text, level) => {
  const marks: readonly SampleMark[] = [
    ['caution', text, { level }],
    ['step', 'Wipe it'],
  ]
  expect(rulesOf(marks)).not.toContain('signal-word')
})

test('[R2] a lock told off without a verb is off', () => {
  const marks: readonly SampleMark[] = [
    ['step', 'Lock the isolator off with your padlock and tag'],
    ['step', 'Change the lamp'],
    ['step', 'Turn the isolator on, your padlock and tag off'],
  ]
  expect(rulesOf(marks)).not.toContain('lock-not-removed')
})
