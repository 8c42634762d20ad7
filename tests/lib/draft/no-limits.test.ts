import { describe, expect, test } from 'vitest'
import { draftOf } from './talks'

describe('figures that are no limits of the job', () => {
  test.for([
    'The bearing is a 6204, two of them.',
    'There are eight bolts around the flange.',
    'I paid forty-five quid for that in 2019.',
    'It’s a Model 350, the one before the 400.',
    'These are size 8.8, stamped on the heads.',
    'We do about two hundred of these a season.',
    'Three of us used to lift it.',
    'My grandfather ran one for thirty years.',
    'The M8 by twenty-five goes in the short hole.',
    'Grab the half-inch drive and a six-inch extension.',
    'Door opens at nine, so we’ve an hour.',
    'That’s a 22 mm copper elbow.',
    'I charge sixty an hour plus parts.',
    'He’s on the 14th floor and the lift’s out.',
    'Take the four corner screws out first.',
    'There’s a 2003 plate on the gearbox.',
    'It’s the 60-litre version, the small one.',
    'They sent me a box of a hundred washers.',
    'About half of these come back.',
    'Bay forty-two, second shelf.',
    'She was born in sixty-eight.',
    'It’s ten past four already.',
    'Chapter three has the picture.',
    'I need about six volunteers.',
    'The 10 mm spanner is in the left drawer.',
  ])('[D10] %s', said => {
    expect(
      draftOf('spec', 'Morning all, today the old mower gets a sharp blade.', said).map(mark => mark.text),
    ).toEqual([])
  })
})
