import { ENGLISH_ONLY, isForeign } from '@/lib/draft/language'
import { draftProject } from '@/lib/draft/project'
import { countOf } from '@/lib/procedure/count'
import { KINDS } from '@/lib/procedure/kinds'
import { stepsInOrder } from '@/lib/procedure/place'
import { formatProblem } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import { formatProject } from '@/lib/procedure/project-file'
import { titleOfFile } from '@/lib/procedure/title'
import { readTranscript } from '@/lib/transcript/read'
import { parseArguments } from '../arguments'
import { type Command, EXIT } from '../command'

const usage = `usage: tellwright draft TRANSCRIPT [--title T] [--json] [-o FILE]

Pencils in a procedure from a transcript of any form that \`tellwright read\` takes: steps, cautions, specs, tools, materials,
checks, reasons and symptoms, each with the words it comes from, a reason and a confidence. Nothing leaves this machine.
Read every pencilled mark before you keep it: a draft can be wrong, and the maker's manual comes first. English only.
A file named - is standard input.

  --title T  title of the procedure; else the file's name
  --json     the project file on standard output; without it and -o a short list for reading
  -o FILE    writes the project file there (- for standard output)

Exit: 0 drafted, 2 nothing could be read or misuse.`

const listing = (project: Project): string => {
  const counts = KINDS.map(kind => countOf(project.marks.filter(mark => mark.kind === kind).length, kind))
  const steps = stepsInOrder(project.marks).map((step, i) => `${String(i + 1).padStart(3)}  ${step.text}`)
  return `${[`pencilled: ${counts.join(', ')}`, '', ...steps].join('\n')}\n`
}

/** `tellwright draft`: transcript in, project file with pencilled marks out. */
export const command: Command = {
  verb: 'draft',
  about: 'pencil in a procedure from a transcript',
  usage,
  run: async (args, io) => {
    const parsed = parseArguments(args, {
      json: { type: 'boolean' },
      title: { type: 'string' },
      output: { type: 'string', short: 'o' },
    })
    const [path, ...more] = parsed.ok ? parsed.value.positionals : []
    if (!parsed.ok || path === undefined || more.length > 0) {
      io.err(
        `tellwright draft: ${parsed.ok ? 'expected one transcript' : parsed.problems.map(formatProblem).join('\n')}`,
      )
      io.err(usage)
      return EXIT.misuse
    }
    const { options } = parsed.value
    const name = path === '-' ? 'standard input' : (path.split(/[\\/]/).at(-1) ?? path)
    const read = readTranscript(await io.read(path), name)
    if (!read.ok) {
      for (const problem of read.problems) io.err(`tellwright draft: ${formatProblem(problem)}`)
      return EXIT.misuse
    }
    const byName = path === '-' ? '' : titleOfFile(name)
    const project = draftProject(read.value.transcript, typeof options.title === 'string' ? options.title : byName)
    if (typeof options.output === 'string') await io.write(options.output, formatProject(project))
    else io.out(options.json === true ? formatProject(project) : listing(project))
    for (const problem of read.value.problems) io.err(formatProblem(problem))
    if (isForeign(read.value.transcript)) io.err(`tellwright draft: ${name}: ${ENGLISH_ONLY}`)
    return EXIT.done
  },
}
