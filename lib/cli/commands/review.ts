import { basename } from 'node:path'
import { formatProblem, type Problem } from '@/lib/procedure/problem'
import { parseProject } from '@/lib/procedure/project-file'
import { formatReport, toReport } from '@/lib/review/report'
import { isAtLeast, reviewProject } from '@/lib/review/review'
import { FINDING_LEVELS, type FindingLevel } from '@/lib/review/rule'
import { toSarif } from '@/lib/review/sarif'
import { parseArguments } from '../arguments'
import { type Command, EXIT, type Io, readText } from '../command'
import { readShopFile } from '../shop-file'

const usage = `usage: tellwright review PROJECT [--json | --sarif] [--level stop|fix|consider] [--rules FILE]

Reads a project file as a careful foreman would and lists what is doubtful.

  --json          {findings, counts, coverage} on standard output:
                    findings: [{rule, level, message, place, remedy?, waived?}]
                      place: {at: "mark", mark, kind, step?, start, end, text} | {at: "talk", start, end}
                             | {at: "list", kind} | {at: "whole"}; step counts from 1, times are seconds
                    counts: {stop, fix, consider, waived}
                    coverage: {share, instructing, covered, left: [{start, end, text}]}; share of the
                      instructing talk that marks account for, 0 to 1
  --sarif         SARIF 2.1.0 (stop: error, fix: warning, consider: note)
  --level LEVEL   exit with 1 if a finding weighs this much or more (stop unless given); all are listed anyway
  --rules FILE    the shop's own rules (docs/rules/README.md); without it, tellwright-rules.json beside the project, if any

PROJECT may be - for standard input. Exit: 0 nothing at or over the level, 1 findings, 2 bad input or misuse.
Waived findings are listed and don't count. No findings does not mean that a procedure is safe.
`

const fail = (io: Io, problems: readonly Problem[]): number => {
  for (const problem of problems) io.err(`tellwright review: ${formatProblem(problem)}`)
  return EXIT.misuse
}

const isLevel = (text: string): text is FindingLevel => (FINDING_LEVELS as readonly string[]).includes(text)

const run = async (args: readonly string[], io: Io): Promise<number> => {
  const parsed = parseArguments(args, {
    json: { type: 'boolean' },
    sarif: { type: 'boolean' },
    level: { type: 'string' },
    rules: { type: 'string' },
  })
  if (!parsed.ok) return fail(io, parsed.problems)
  const { options, positionals } = parsed.value
  const [path, ...others] = positionals
  const misuse = (message: string): number => fail(io, [{ code: 'misuse', message }])
  if (path === undefined || others.length > 0)
    return misuse('give one project file (or - for standard input); --help shows how.')
  if (options.json === true && options.sarif === true) return misuse('choose --json or --sarif, not both.')
  const level = typeof options.level === 'string' ? options.level : 'stop'
  if (!isLevel(level)) return misuse(`--level is "${level}"; expected one of ${FINDING_LEVELS.join(', ')}.`)
  const rules = await readShopFile(typeof options.rules === 'string' ? options.rules : undefined, path, io)
  if (!rules.ok) return fail(io, rules.problems)
  const project = parseProject(await readText(io, path), basename(path))
  if (!project.ok) return fail(io, project.problems)
  const findings = reviewProject(project.value, { rules: rules.value })
  const report = toReport(project.value, findings)
  if (options.json === true) io.out(`${JSON.stringify(report, null, 1)}\n`)
  else if (options.sarif === true) io.out(`${JSON.stringify(toSarif(findings, project.value, path), null, 1)}\n`)
  else io.out(formatReport(report))
  return findings.some(finding => finding.waived === undefined && isAtLeast(finding, level)) ? EXIT.findings : EXIT.done
}

/** `tellwright review`: what a careful foreman would doubt. */
export const command: Command = { verb: 'review', about: 'list what is doubtful in a project', usage, run }
