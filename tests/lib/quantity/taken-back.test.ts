import { describe, expect, test } from 'vitest'
import { findTakenBack } from '@/lib/quantity/taken-back'

/** The text with what was taken back cut out. */
const cut = (text: string): string =>
  findTakenBack(text).reduceRight((said, { at, to }) => said.slice(0, at) + said.slice(to), text)

describe('[Q2] the words taken back, up to the value that stands', () => {
  test.for([
    ['Turn it to 45, no, sorry, 35 newton metres.', 'Turn it to 35 newton metres.'],
    ['Turn it to 45, no, 40, no, 35 newton metres.', 'Turn it to 35 newton metres.'],
    ['Grab a ten mil, no, twelve mil socket.', 'Grab a twelve mil socket.'],
    ['Pour in four litres, I mean five litres of oil.', 'Pour in five litres of oil.'],
    ['Run it for 5 minutes, no more.', 'Run it for 5 minutes, no more.'],
  ] as const)('%s', ([said, stands]) => {
    expect(cut(said)).toBe(stands)
  })

  test('a unit said with the old value alone goes with the new one', () => {
    expect(findTakenBack('Twelve newton metres, no, wait, nine.')).toEqual([
      { at: 0, to: 32, until: 36, unit: 'newton metres', between: ', no, wait,' },
    ])
  })
})
