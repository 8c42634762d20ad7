import { readdirSync, readFileSync } from 'node:fs'
import { type Alignment, align } from '@/lib/footage/align'
import { detectorOn } from '@/lib/footage/detector'
import { loadFvad, loadRecogniser } from '@/lib/footage/engines-node'
import type { Recogniser } from '@/lib/footage/recogniser'
import { speechFinder } from '@/lib/footage/speech'
import type { Span } from '@/lib/procedure/time'
import { makeSpeech, NOISES, random, type Talk, withNoise } from '../tests/lib/footage/talk'
import type { Bench, BenchRow } from './row'

/** Invented talks by many hands, one sentence a line; here only what is said. */
const TALKS = 'scripts/fit-draft/talks/'
const VOICES = ['en-us', 'en-gb', 'en-us+f3', 'en-us+m3', 'en-gb+f2', 'en-gb-scotland']
const CASES = 6

const linesOf = (name: string): readonly string[] =>
  readFileSync(TALKS + name, 'utf8')
    .split('\n')
    .filter(line => !line.startsWith('#'))
    .map(line =>
      line
        .replaceAll(/\{\{.*?\}\}/g, '')
        .replace(/^[A-Z][\w' ]*: /, '')
        .trim(),
    )
    .filter(line => line.includes(' ') && /^[\x20-\x7e]*$/.test(line))

/** A text as it is written down: each line with the sentence of the talk it is, or -1 for one that was never said. */
type Written = readonly { readonly text: string; readonly from: number }[]

type Case = { readonly talk: Talk; readonly written: Written; readonly left: ReadonlySet<number> }

const makeCase = async (number: number, share: number): Promise<Case> => {
  const names = readdirSync(TALKS).filter(name => name.endsWith('.talk'))
  const next = random(100 + number)
  const pick = <T>(all: readonly T[]): T => all[Math.floor(next() * all.length)] as T
  const texts = linesOf(names[(7 * number) % names.length] ?? '').slice(0, 40)
  const others = linesOf(names[(7 * number + 3) % names.length] ?? '')
  const pauses = (
    [
      [0.3, 1.6],
      [0.15, 0.8],
      [0.4, 2.5],
    ] as const
  )[number % 3] ?? [0.3, 1.6]
  const voice = VOICES[number % VOICES.length] ?? 'en-us'
  const talk = await makeSpeech(texts, { voice, speed: 150 + (number % 4) * 12, pauses, seed: number })
  const count = Math.round(texts.length * share)
  const left = new Set<number>()
  while (left.size < count) left.add(Math.floor(next() * texts.length))
  const written = texts.map((text, from) => ({ text, from })).filter(({ from }) => !left.has(from))
  for (let i = 0; i < count; i++)
    written.splice(Math.floor(next() * (written.length + 1)), 0, { text: pick(others), from: -1 })
  return { talk, written, left }
}

const common = (a: Span, b: Span): number => Math.max(0, Math.min(a.end, b.end) - Math.max(a.start, b.start))

/** What a run of several talks came to. */
class Tally {
  readonly errors: number[] = []
  readonly counts = { left: 0, leftTold: 0, added: 0, addedTold: 0, lines: 0, falseLines: 0, falseSpans: 0 }
  seconds = 0
  cpu = 0

  add({ talk, written, left }: Case, { lines, unwritten }: Alignment): void {
    const { counts } = this
    for (const { line, start, isHeard } of lines) {
      const spoken = talk.sentences[written[line]?.from ?? -1]
      if (spoken === undefined) {
        counts.added++
        if (!isHeard) counts.addedTold++
      } else {
        this.errors.push(Math.abs(start - spoken.start))
        counts.lines++
        if (!isHeard) counts.falseLines++
      }
    }
    const missing = [...left].flatMap(i => talk.sentences[i] ?? [])
    counts.left += missing.length
    counts.leftTold += missing.filter(one =>
      unwritten.some(span => common(span, one) > 0.3 * (one.end - one.start)),
    ).length
    counts.falseSpans += unwritten.filter(
      span => !missing.some(one => common(span, one) > 0.2 * (span.end - span.start)),
    ).length
  }

  rows(what: string, mean: string): readonly BenchRow[] {
    const sorted = this.errors.sort((a, b) => a - b)
    const { counts } = this
    const told = (count: number, all: number) => ({ value: count, unit: 'count', against: `${all}` }) as const
    return [
      {
        what: `${what}: mean error of sentence starts`,
        value: (1000 * sorted.reduce((sum, error) => sum + error, 0)) / sorted.length,
        unit: 'ms',
        against: mean,
      },
      { what: `${what}: 95th percentile`, value: 1000 * (sorted[Math.floor(sorted.length * 0.95)] ?? 0), unit: 'ms' },
      ...(counts.added === 0
        ? []
        : [
            { what: `${what}: left-out sentences pointed out`, ...told(counts.leftTold, counts.left) },
            { what: `${what}: added sentences pointed out`, ...told(counts.addedTold, counts.added) },
          ]),
      { what: `${what}: sentences said not to be heard that were`, ...told(counts.falseLines, counts.lines) },
      { what: `${what}: spans said not to be written that were, or weren't speech`, ...told(counts.falseSpans, 0) },
      { what: `${what}: times real time of CPU`, value: this.seconds / this.cpu, unit: 'x', against: 'at least 10' },
    ]
  }
}

const runCase = async (made: Case, recogniser: Recogniser, tally: Tally): Promise<void> => {
  const { samples, rate } = made.talk
  const finder = speechFinder(detectorOn(await loadFvad(), 1))
  finder.push(samples)
  const speech = finder.end()
  const begun = process.cpuUsage()
  const hear = (from: number, to: number) => samples.slice(Math.round(from * rate), Math.round(to * rate))
  const texts = made.written.map(({ text }) => text)
  tally.add(made, await align(texts, speech, hear, recogniser))
  tally.cpu += process.cpuUsage(begun).user / 1e6
  tally.seconds += samples.length / rate
}

/** Timing texts of several talks, voices, paces and pauses: clean, in noise, with sentences left out and added. */
export const bench: Bench = {
  name: 'align',
  run: async () => {
    const recogniser = await loadRecogniser('node_modules/soundswallower/model/')
    const rows: BenchRow[] = []
    const noises = Object.keys(NOISES) as (keyof typeof NOISES)[]
    for (const kind of ['clean', 'a tenth left out, a tenth added', ...noises] as const) {
      const tally = new Tally()
      for (let number = 0; number < CASES; number++) {
        const made = await makeCase(number, kind.startsWith('a ') ? 0.1 : 0)
        const noise = noises.find(name => name === kind)
        await runCase(noise ? { ...made, talk: withNoise(made.talk, noise, 10) } : made, recogniser, tally)
      }
      const bound = kind === 'clean' ? 'under 150' : kind.startsWith('a ') ? 'under 500' : 'under 300'
      rows.push(...tally.rows(noises.some(name => name === kind) ? `${kind} at -10 dB` : kind, bound))
    }
    recogniser.free()
    return rows
  },
}
