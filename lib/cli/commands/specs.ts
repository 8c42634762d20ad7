import { formatQuantity } from '@/lib/quantity/format'
import { type Reading, readQuantities } from '@/lib/quantity/read'
import { parseArguments } from '../arguments'
import { type Command, EXIT, readText } from '../command'

const USAGE = `usage: tellwright specs TEXTFILE|- [--json]

Reads the limits said or written in a text, line by line: ranges, tolerances, maxima and minima, sequences, limits
without a number such as "finger tight". Socket sizes, threads, oil grades, prices, dates and counts are left out.

  --json   an array with one entry a line of input: the list of quantities read there, each
           {low?, high?, nominal?, unit?, reference?, text, notes?}; unit is a UCUM code
  --help   this text

Without --json: one limit a line, after the number of its line in the input, with what was settled or is open.
Exit: 0 done, 2 bad input or misuse.
`

const toEntry = ({ quantity, reference, text, notes }: Reading) => ({
  ...quantity,
  ...(reference === undefined ? {} : { reference }),
  text,
  ...(notes.length === 0 ? {} : { notes: notes.map(note => note.text) }),
})

const toLine = ({ quantity, reference, qualitative, text, notes }: Reading, line: number): string => {
  const value = qualitative ?? [formatQuantity(quantity), reference].filter(part => part !== undefined).join(', ')
  const remarks = notes.map(note => `\n       ${note.text}`).join('')
  return `${String(line).padStart(5)}  ${value}   (${text})${remarks}\n`
}

const linesOf = (text: string): readonly string[] => {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/)
  if (lines.at(-1) === '') lines.pop()
  return lines
}

/** Reads limits from a text file or standard input. */
export const specs: Command = {
  verb: 'specs',
  about: 'read the limits in a text',
  usage: USAGE,
  run: async (args, io) => {
    const parsed = parseArguments(args, { json: { type: 'boolean' } })
    if (!parsed.ok) {
      for (const problem of parsed.problems) io.err(`tellwright specs: ${problem.message}`)
      return EXIT.misuse
    }
    const [path, ...more] = parsed.value.positionals
    if (path === undefined || more.length > 0) {
      io.err('tellwright specs: name one text file, or - for standard input. tellwright specs --help says more.')
      return EXIT.misuse
    }
    const text = await readText(io, path)
    const read = linesOf(text).map(line => readQuantities(line))
    if (parsed.value.options.json === true) io.out(`${JSON.stringify(read.map(readings => readings.map(toEntry)))}\n`)
    else
      read.forEach((readings, i) => {
        for (const reading of readings) io.out(toLine(reading, i + 1))
      })
    return EXIT.done
  },
}
