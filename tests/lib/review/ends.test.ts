import { describe, expect, test } from 'vitest'
import { reviewProject } from '@/lib/review/review'
import { type SampleMark, type SampleMore, sample } from '@/lib/review/sample'

/** Where a rule finds something: ids of marks, or `whole`. */
const at = (rule: string, marks: readonly SampleMark[], more: SampleMore = {}) =>
  reviewProject(sample(marks, more)).flatMap(finding =>
    finding.rule !== rule ? [] : [finding.place.at === 'mark' ? finding.place.mark : finding.place.at],
  )

describe('the way a motor turns', () => {
  const heading = { title: 'Drum seal change', equipment: 'three-phase drum washer with motor' }

  test('[R3] is nobody’s question where leads and motor stayed as they were', () => {
    expect(
      at(
        'no-rotation-check',
        [
          ['step', 'Press the new seal in'],
          ['step', 'Switch the isolator on'],
        ],
        { heading },
      ),
    ).toEqual([])
  })

  test('[R2] is missed at the leads that were connected', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Connect the three motor leads'],
      ['step', 'Switch the isolator on'],
    ]
    expect(at('no-rotation-check', marks, { heading })).toEqual(['step-1'])
    expect(
      at('no-rotation-check', [...marks, ['step', 'Swap two of the motor leads if it turns the wrong way']], {
        heading,
      }),
    ).toEqual([])
  })
})

describe('a brake', () => {
  const pads: readonly SampleMark[] = [
    ['step', 'Slide the old brake pads out'],
    ['step', 'Slide the new brake pads in'],
  ]

  test('[R3] pressed while the machine is pushed has been tried', () => {
    expect(at('brakes-not-tested', [...pads, ['step', 'Pull the rear brake while a helper pushes the cart']])).toEqual(
      [],
    )
  })

  test('[R3] is not worked on where its old parts are thrown away', () => {
    const marks: readonly SampleMark[] = [...pads, ['step', 'Throw the old brake pads in the scrap bin']]
    expect(at('brakes-not-tested', marks)).toEqual(['step-2'])
  })
})

describe('leaks', () => {
  test('[R2] of oxygen are looked for at its joints', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Unscrew the oxygen hose'],
      ['step', 'Tighten the oxygen hose on its outlet'],
    ]
    expect(at('no-leak-test', marks)).toEqual(['step-2'])
    expect(at('no-leak-test', [...marks, ['check', 'No bubbles in the leak fluid']])).toEqual([])
  })

  test('[R3] of what works under water are nobody’s to see', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Drain the oil'],
      ['step', 'Pour new oil in'],
    ]
    expect(at('no-leak-test', marks)).toEqual(['step-2'])
    expect(at('no-leak-test', marks, { heading: { equipment: 'submersible mixer' } })).toEqual([])
  })

  test('[R2] that the talk looks for and no mark does', () => {
    const marks: readonly SampleMark[] = [
      ['step', 'Draw the old hydraulic hose out'],
      ['step', 'Thread the new hydraulic hose in'],
      ['check', 'No oil drips from the hose'],
      ['step', 'Tighten both swivel nuts'],
    ]
    const talk = [
      'Old hose out.',
      'New hose in.',
      'No oil drips.',
      'Tighten both nuts.',
      'Run a bit of card along both ends of the hose.',
    ]
    expect(at('no-leak-test', marks, { talk: talk.slice(0, 4) })).toEqual([])
    expect(at('no-leak-test', marks, { talk })).toEqual(['step-4'])
  })
})

describe('a trial', () => {
  const marks: readonly SampleMark[] = [
    ['step', 'Take the relay out'],
    ['step', 'Fit the new relay'],
    ['step', 'Switch the breaker on'],
    ['check', 'Lamp is on'],
  ]
  const talk = ['Relay out.', 'New relay in.', 'Breaker on.', 'Lamp on.']

  test('[R2] that the talk orders and no mark holds', () => {
    expect(at('no-function-test', marks, { talk })).toEqual([])
    expect(
      at('no-function-test', marks, { talk: [...talk, 'Start the self-test and see that nothing drops out.'] }),
    ).toEqual(['step-3'])
  })

  test('[R3] of another machine is a story', () => {
    expect(
      at('no-function-test', marks, { talk: [...talk, "Run the other machine and you'd hear it, ignore that."] }),
    ).toEqual([])
  })
})

describe('when it is due again', () => {
  const marks: readonly SampleMark[] = [['step', 'Fit the new seal']]

  test('[R2] is on the sheet where the talk says it, whatever the job is called', () => {
    const talk = ['Fit the new seal.', 'We renew these every five years.']
    expect(at('no-interval', marks, { talk })).toEqual(['whole'])
    expect(at('no-interval', marks, { talk, heading: { interval: { months: 60 } } })).toEqual([])
    expect(at('no-interval', marks, { talk: ['Fit the new seal.', 'It broke last week.'] })).toEqual([])
  })
})

describe('waste', () => {
  test('[R3] goes to collectors, banks and those who grind again', () => {
    const drained: SampleMark = ['step', 'Drain the old oil']
    for (const text of [
      'Hand the old oil to the licensed collector',
      'Take the old oil to the oil bank',
      'Give the old oil to the waste contractor',
    ])
      expect(at('no-disposal', [drained, ['step', text]])).toEqual([])
    expect(at('no-disposal', [['step', 'Put the blunt blades in the crate for resharpening']])).toEqual([])
  })

  test('[R3] is not what is poured in fresh', () => {
    expect(at('no-disposal', [['step', 'Pour fresh frying oil in up to the line']])).toEqual([])
  })

  test('[R2] that the talk takes away and no step does', () => {
    const marks: readonly SampleMark[] = [['step', 'Draw the old packing out']]
    const talk = ['Old packing out.', 'The old grease and the dirty rags go in the lidded drum.']
    expect(at('no-disposal', marks, { talk })).toEqual(['whole'])
  })
})
