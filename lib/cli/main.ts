import { TellwrightError } from '@/lib/procedure/problem'
import { type Command, EXIT, type Io } from './command'
import { processIo } from './io'

/** Every verb, loaded only when it is asked for. One row a verb, in the order a job goes. */
const VERBS: Readonly<Record<string, { about: string; load: () => Promise<Command> }>> = {
  read: {
    about: 'show the sentences of a transcript and what could not be read',
    load: async () => (await import('./commands/read')).command,
  },
  specs: { about: 'read the limits in a text', load: async () => (await import('./commands/specs')).specs },
  align: {
    about: 'time a text against the sound in which it is spoken',
    load: async () => (await import('./commands/align')).command,
  },
  draft: {
    about: 'pencil in a procedure from a transcript',
    load: async () => (await import('./commands/draft')).command,
  },
  review: {
    about: 'list what is doubtful in a project',
    load: async () => (await import('./commands/review')).command,
  },
  publish: {
    about: 'write a project as a sheet, handout, notes, captions, chapters, page, task or packet',
    load: async () => (await import('./commands/publish')).command,
  },
  verify: {
    about: 'check a packet against its manifest',
    load: async () => (await import('./commands/verify')).command,
  },
}

const overview = (): string => {
  const rows = Object.entries(VERBS).map(([verb, { about }]) => `  ${verb.padEnd(9)} ${about}`)
  return [
    'usage: tellwright VERB ... (tellwright VERB --help says more)',
    '',
    ...rows,
    '',
    'A file named - is standard input or output. Results go to standard output, all else to standard error.',
    'Exit: 0 done, 1 findings at or over the level asked for, 2 bad input or misuse.',
    '',
  ].join('\n')
}

/**
 * Runs the command line.
 *
 * @param args without `node` and the script
 * @returns the exit code; a failure of the world is reported in one line, with exit code 2
 */
export const main = async (args: readonly string[], io: Io): Promise<number> => {
  const [verb, ...rest] = args
  if (verb === undefined || verb === '--help' || verb === '-h' || verb === 'help') {
    const wanted = verb !== undefined
    if (wanted) io.out(overview())
    else io.err(overview())
    return wanted ? EXIT.done : EXIT.misuse
  }
  const entry = Object.hasOwn(VERBS, verb) ? VERBS[verb] : undefined
  if (entry === undefined) {
    io.err(`tellwright: there is no verb "${verb}". Verbs: ${Object.keys(VERBS).join(', ')}.`)
    return EXIT.misuse
  }
  const command = await entry.load()
  if (rest.includes('--help') || rest.includes('-h')) {
    io.out(command.usage.endsWith('\n') ? command.usage : `${command.usage}\n`)
    return EXIT.done
  }
  try {
    return await command.run(rest, io)
  } catch (error) {
    if (!(error instanceof TellwrightError)) throw error
    io.err(`tellwright ${verb}: ${error.message}`)
    return EXIT.misuse
  }
}

process.stdout.on('error', error => {
  if ((error as NodeJS.ErrnoException).code === 'EPIPE') process.exit(0)
  throw error
})
process.exitCode = await main(process.argv.slice(2), processIo)
