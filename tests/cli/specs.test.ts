import { describe, expect, test } from 'vitest'
import type { Io } from '@/lib/cli/command'
import { specs } from '@/lib/cli/commands/specs'
import { processIo } from '@/lib/cli/io'

const run = async (input: string, ...args: string[]) => {
  const seen = { out: '', err: '' }
  const io: Io = {
    ...processIo,
    read: async () => new TextEncoder().encode(input),
    out: text => {
      seen.out += String(text)
    },
    err: text => {
      seen.err += `${text}\n`
    },
  }
  return { code: await specs.run(args, io), ...seen }
}

describe('tellwright specs', () => {
  test('[Q1] --json gives an array with one entry a line of input, empty lines too', async () => {
    const { code, out } = await run(
      'fifteen to eighteen newton metres\n\r\nhand tight\na 13 mm socket\n',
      '-',
      '--json',
    )
    expect(code).toBe(0)
    expect(JSON.parse(out)).toEqual([
      [{ low: 15, high: 18, unit: 'N.m', text: 'fifteen to eighteen newton metres' }],
      [],
      [{ reference: 'hand tight', text: 'hand tight' }],
      [],
    ])
  })

  test('[Q2] --json carries what was settled or is open', async () => {
    const { out } = await run('nine pounds', '-', '--json')
    expect(JSON.parse(out)).toEqual([
      [{ nominal: 9, text: 'nine pounds', notes: ['“pounds” of what: foot-pounds, psi, or weight?'] }],
    ])
  })

  test('[Q1] without --json it prints a limit a line for people', async () => {
    const { out } = await run('one\nset it to twelve bar, cold', '-')
    expect(out).toBe('    2  12 bar, cold   (twelve bar)\n')
  })

  test('[Q1] misuse is told in words, with exit code 2', async () => {
    expect(await run('', '--nonsense')).toMatchObject({ code: 2, out: '' })
    const { code, err } = await run('')
    expect([code, err]).toEqual([
      2,
      'tellwright specs: name one text file, or - for standard input. tellwright specs --help says more.\n',
    ])
  })
})
