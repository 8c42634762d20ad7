import nlp from 'compromise'
import { readQuantities } from '@/lib/quantity/read'
import { type Bench, type BenchRow, fastest } from './row'

const SENTENCES = [
  'Then nip the four cover screws up to nine newton metres, in a cross pattern.',
  'Mind the spring, it has a habit of jumping out when you lift the plate.',
  'You want between one and three quarters and two millimetres of play, no more than that.',
  'I did one of these for a neighbour last winter and it was seized solid.',
  'Wipe the seat with a clean rag and look for any wear on the lip.',
  'Set the regulator to thirty-five psi, give or take three, with the line shut.',
  'Grab the thirteen millimetre spanner and back the locknut off half a turn.',
  'So now put the guard back on and run it for five minutes with no load.',
]

const talk = (words: number): readonly string[] => {
  const lines: string[] = []
  for (let count = 0, i = 0; count < words; i++) {
    const line = SENTENCES[i % SENTENCES.length] ?? ''
    lines.push(line)
    count += line.split(' ').length
  }
  return lines
}

const rows = async (): Promise<readonly BenchRow[]> => {
  const [long, tenth, short] = [talk(100_000), talk(10_000), talk(2000)]
  const readAll = (lines: readonly string[]) => () => lines.map(line => readQuantities(line))
  const whole = await fastest(5, readAll(long))
  const part = await fastest(5, readAll(tenth))
  const [one, two] = [tenth.join(' '), [...tenth, ...tenth].join(' ')]
  const single = await fastest(3, () => readQuantities(one))
  const double = await fastest(3, () => readQuantities(two))
  const dull = '10 mm, no, '.repeat(3300)
  const [ours, peer] = [
    await fastest(3, readAll(short)),
    await fastest(3, () => short.map(line => nlp(line).numbers().json())),
  ]
  return [
    { what: 'limits of 100,000 words of talk, line by line', value: whole, unit: 'ms', against: 'under 1,000 ms' },
    { what: 'a tenth of it, times ten', value: (part * 10) / whole, unit: 'x', against: 'linear = 1' },
    { what: '10,000 words in one piece, doubled', value: double / single, unit: 'x', against: 'linear = 2' },
    {
      what: '10,000 words of corrections and nothing else',
      value: await fastest(3, () => readQuantities(dull)),
      unit: 'ms',
      against: 'under 500 ms',
    },
    {
      what: '2,000 words against the numbers of compromise',
      value: ours / peer,
      unit: 'x',
      against: 'compromise in the same run = 1',
    },
  ]
}

/** Speed of reading limits. */
export const bench: Bench = { name: 'quantity', run: rows }
