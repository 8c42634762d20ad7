import { countOf } from '@/lib/procedure/count'
import { formatProblem } from '@/lib/procedure/problem'
import { verifyPacket } from '@/lib/publish/verify'
import { parseArguments } from '../arguments'
import { type Command, EXIT } from '../command'

const usage = `usage: tellwright verify PACKET

Checks a packet that \`tellwright publish --as packet\` wrote: every file of its manifest is there, with the size and the
SHA-256 the manifest says, and nothing else is. A file named - is standard input.

Exit: 0 whole, 1 something is missing, altered or added, 2 no packet or misuse.`

/** Problems that mean this is no packet at all. */
const NO_PACKET = new Set(['not-a-packet', 'no-manifest'])

/** `tellwright verify`: is this packet as it was published? */
export const command: Command = {
  verb: 'verify',
  about: 'check a packet against its manifest',
  usage,
  run: async (args, io) => {
    const parsed = parseArguments(args, {})
    const [path, ...more] = parsed.ok ? parsed.value.positionals : []
    if (!parsed.ok || path === undefined || more.length > 0) {
      io.err(`tellwright verify: ${parsed.ok ? 'expected one packet' : parsed.problems.map(formatProblem).join('\n')}`)
      io.err(usage)
      return EXIT.misuse
    }
    const result = await verifyPacket(await io.read(path))
    if (result.ok) {
      const { title, files } = result.value
      io.out(`whole: ${title}, ${countOf(files.length, 'file')} as the manifest says\n`)
      return EXIT.done
    }
    for (const problem of result.problems) io.err(`tellwright verify: ${formatProblem(problem)}`)
    return result.problems.some(({ code }) => NO_PACKET.has(code)) ? EXIT.misuse : EXIT.findings
  },
}
