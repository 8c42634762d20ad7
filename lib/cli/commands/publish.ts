import { extname } from 'node:path'
import { formatProblem } from '@/lib/procedure/problem'
import { PUBLICATION_NAMES, type PublishedFile, type PublishOptions, UNIT_CHOICES } from '@/lib/publish/publication'
import { PUBLICATIONS, publicationOf } from '@/lib/publish/publications'
import { parseArguments } from '../arguments'
import { type Command, EXIT } from '../command'
import { apart, deliver, isFolder } from '../deliver'
import type { Input } from '../publish-input'

const usage = `usage: tellwright publish PROJECT... [--as NAME] [-o OUT] [options]

Writes what a project is exported as. Review runs first: findings of level stop are said at the head of what is published.

${PUBLICATIONS.map(({ name, about }) => `  --as ${name.padEnd(9)} ${about}`).join('\n')}
  (default: sheet)

  -o OUT             a folder, a file, or - for standard output (default). A publication of several files takes a
                     folder; a file's ending picks one of them (captions: .vtt or .srt).
  --footage ADDRESS  put before the times in links, instead of the footage's file name
  --units CHOICE     ${UNIT_CHOICES.join(', ')} (default as-said)
  --kept             leaves out pencilled marks; without it they are included, each flagged
  --findings         lists all findings, and those let stand, at the end
  --rules FILE       the shop's own rules for that review; without it, tellwright-rules.json beside the project, if any
  --least SECONDS    shortest chapter; shorter ones are joined (default 10)
  --paper SIZE       a4 or letter, for the handout and its PDF
  --pdf              with handout: a PDF too, printed by the Chromium of this machine ($CHROMIUM, or /usr/bin/chromium)
  --title TEXT       with packet and several projects: the name of the service

Several projects with --as packet make one packet in the order given, with one list of tools and materials, one safety
summary and due dates; with any other name each is published into the folder. A file named - is standard input.

Exit: 0 published, 2 bad input or misuse.`

const OPTIONS = {
  as: { type: 'string', default: 'sheet' },
  output: { type: 'string', short: 'o', default: '-' },
  footage: { type: 'string' },
  units: { type: 'string', default: 'as-said' },
  kept: { type: 'boolean' },
  findings: { type: 'boolean' },
  rules: { type: 'string' },
  least: { type: 'string' },
  paper: { type: 'string' },
  pdf: { type: 'boolean' },
  title: { type: 'string' },
} as const

type Wanted = {
  readonly name: string
  readonly output: string
  readonly isPdf: boolean
  readonly title: string | undefined
  readonly rules: string | undefined
  readonly options: PublishOptions
}

/** @returns what is wanted, or what is wrong with the arguments. */
const readWanted = (given: Readonly<Record<string, unknown>>): Wanted | string => {
  const text = (key: string) => (typeof given[key] === 'string' ? (given[key] as string) : undefined)
  const [name = '', output = '-', units, paper] = [text('as'), text('output'), text('units'), text('paper')]
  const least = text('least') === undefined ? undefined : Number(text('least'))
  const unitChoice = UNIT_CHOICES.find(choice => choice === units)
  if (publicationOf(name) === undefined) return `--as ${name}: expected one of ${PUBLICATION_NAMES.join(', ')}`
  if (unitChoice === undefined) return `--units ${units}: expected one of ${UNIT_CHOICES.join(', ')}`
  if (paper !== undefined && paper !== 'a4' && paper !== 'letter') return `--paper ${paper}: expected a4 or letter`
  if (least !== undefined && !(least >= 0)) return `--least ${text('least')}: expected seconds, 0 or more`
  const isPdf = given.pdf === true || (name === 'handout' && extname(output).toLowerCase() === '.pdf')
  if (isPdf && name !== 'handout') return '--pdf goes with --as handout only'
  const footage = text('footage')
  const sheetPaper = paper ?? (isPdf ? 'a4' : undefined)
  const options: PublishOptions = {
    units: unitChoice,
    ...(footage === undefined ? {} : { footageAddress: footage }),
    ...(given.kept === true ? { pencilled: 'leave-out' } : {}),
    ...(given.findings === true ? { listFindings: true } : {}),
    ...(least === undefined ? {} : { notes: { leastChapter: least } }),
    ...(sheetPaper === undefined ? {} : { paper: sheetPaper }),
  }
  return { name, output, isPdf, title: text('title'), rules: text('rules'), options }
}

const publishOne = async ({ project, options }: Input, wanted: Wanted): Promise<readonly PublishedFile[]> => {
  const files = (await publicationOf(wanted.name)?.files(project, options)) ?? []
  const [html] = files
  if (!wanted.isPdf || html === undefined) return files
  const { printPdf } = await import('../print')
  const content = await printPdf(String(html.content))
  return [...files, { path: html.path.replace(/\.html$/, '.pdf'), type: 'application/pdf', content }]
}

const publishPacket = async (inputs: readonly Input[], wanted: Wanted): Promise<readonly PublishedFile[]> => {
  const [{ packetFiles }, { toZip }, { toFileName }] = await Promise.all([
    import('@/lib/publish/packet'),
    import('@/lib/publish/zip'),
    import('@/lib/publish/text'),
  ])
  const title = wanted.title ?? (inputs.length === 1 ? inputs[0]?.project.procedure.title : undefined)
  const content = await toZip(await packetFiles(inputs, wanted.title))
  return [{ path: `${toFileName(title ?? 'service', 'packet')}.zip`, type: 'application/zip', content }]
}

/** `tellwright publish`: project files in, publications out. */
export const command: Command = {
  verb: 'publish',
  about: 'write a project as a sheet, handout, notes, captions, chapters, page, task or packet',
  usage,
  run: async (args, io) => {
    const refuse = (message: string): number => {
      io.err(`tellwright publish: ${message}`)
      return EXIT.misuse
    }
    const parsed = parseArguments(args, OPTIONS)
    if (!parsed.ok) return refuse(parsed.problems.map(formatProblem).join('\n'))
    const wanted = readWanted(parsed.value.options)
    if (typeof wanted === 'string') return refuse(wanted)
    const paths = parsed.value.positionals
    if (paths.length === 0) return refuse('expected a project file; see tellwright publish --help')
    const isPacket = wanted.name === 'packet'
    if (paths.length > 1 && !isPacket && (wanted.output === '-' || !isFolder(wanted.output)))
      return refuse(`${paths.length} projects: name a folder with -o, or make one packet of them with --as packet`)
    const { readFonts, readInput } = await import('../publish-input')
    const hasHandout = isPacket || wanted.name === 'handout'
    const shared = hasHandout ? { ...wanted.options, fonts: await readFonts(io) } : wanted.options
    const needs = {
      hasHead: wanted.name !== 'captions' && wanted.name !== 'chapters',
      hasTalk: isPacket || wanted.name === 'captions',
      ...(wanted.rules === undefined ? {} : { rules: wanted.rules }),
    }
    const inputs: Input[] = []
    for (const path of paths) {
      const input = await readInput(path, shared, needs, io)
      if (input === undefined) return EXIT.misuse
      inputs.push(input)
    }
    const groups = isPacket
      ? [await publishPacket(inputs, wanted)]
      : await Promise.all(inputs.map(input => publishOne(input, wanted)))
    const files = apart(groups)
    if (files.length === 0)
      return refuse(`there is nothing to publish as ${wanted.name}: the project has no transcript with times`)
    const wrong = await deliver(files, wanted.output, io)
    return wrong === undefined ? EXIT.done : refuse(wrong)
  },
}
