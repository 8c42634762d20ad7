import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { draftMarks } from '@/lib/draft/draft'
import type { Cue, Transcript } from '@/lib/procedure/recording'
import { toVtt } from '@/lib/publish/caption-files'
import { readTalks } from '../scripts/fit-draft/talks'
import { type Bench, type BenchRow, fastest } from './row'

/** Words an hour of calm explanation has. */
const WORDS_AN_HOUR = 9_000

/** Talks of the fitting set one after another, over and over, until there are `hours` of them. */
const joined = (form: string, hours: number): Transcript => {
  const parts = readTalks('scripts/fit-draft/talks').filter(one => one.form === form)
  const cues: Cue[] = []
  let [at, words] = [0, 0]
  for (let i = 0; words < hours * WORDS_AN_HOUR; i++) {
    const own = parts[i % parts.length]?.transcript.cues ?? []
    for (const cue of own) {
      if (words >= hours * WORDS_AN_HOUR) break
      cues.push({ ...cue, start: cue.start + at, end: cue.end + at })
      words += cue.text.split(' ').length
    }
    at = (cues.at(-1)?.end ?? 0) + 2
  }
  return { name: `${hours} h`, form: form === 'vtt' ? 'webvtt' : 'subrip', cues }
}

const rowsOf = async (form: string, called: string): Promise<readonly BenchRow[]> => {
  const [one, three, ten] = [joined(form, 1), joined(form, 3), joined(form, 10)]
  const times: number[] = []
  for (const talk of [one, three, ten]) times.push(await fastest(2, () => draftMarks(talk)))
  const [first = 0, second = 0, third = 0] = times
  return [
    { what: `draft of 10 h of talk (90,000 words), ${called}`, value: third, unit: 'ms', against: 'under 2,000 ms' },
    {
      what: `the same against ten times 1 h, ${called}`,
      value: third / (first * 10),
      unit: 'x',
      against: 'linear = 1',
    },
    { what: `3 h against three times 1 h, ${called}`, value: second / (first * 3), unit: 'x', against: 'linear = 1' },
  ]
}

/** Prints the most memory a process ever had, in KB, as its last line of errors. */
const TELL_MEMORY =
  'data:text/javascript,process.on("exit",()=>process.stderr.write("\\n"+process.resourceUsage().maxRSS))'

/** Most memory of `tellwright draft` on 10 h of talk, in a process of its own that does nothing else. */
const memoryRow = async (): Promise<BenchRow> => {
  execFileSync(process.execPath, ['scripts/build-cli.mjs'], { stdio: 'ignore' })
  const folder = await mkdtemp(join(tmpdir(), 'tellwright-bench-'))
  try {
    const file = join(folder, 'ten-hours.vtt')
    await writeFile(
      file,
      toVtt(
        joined('vtt', 10).cues.map(({ start, end, text, speaker = '' }) => ({ start, end, speaker, lines: [text] })),
      ),
    )
    const { status, stderr } = spawnSync(
      process.execPath,
      ['--import', TELL_MEMORY, 'bin/tellwright.mjs', 'draft', '--json', file],
      { encoding: 'utf8', maxBuffer: 1 << 28 },
    )
    if (status !== 0) throw new Error(`tellwright draft failed: ${stderr}`)
    const most = Number(stderr.trim().split('\n').at(-1)) / 1024
    return {
      what: 'tellwright draft of 10 h, most memory of its process',
      value: most,
      unit: 'MB',
      against: 'under 300 MB',
    }
  } finally {
    await rm(folder, { recursive: true })
  }
}

const rows = async (): Promise<readonly BenchRow[]> => [
  ...(await rowsOf('vtt', 'punctuated')),
  ...(await rowsOf('raw.srt', 'raw captions')),
  await memoryRow(),
]

/** Speed of drafting, that it is linear in the talk's length, and the memory it takes. The bench's own process holds all talks besides. */
export const bench: Bench = { name: 'draft', run: rows }
