import { WebVTT } from 'vtt.js'
import { readTranscript } from '@/lib/transcript/read'
import { toSentences } from '@/lib/transcript/sentence'
import { type Bench, type BenchRow, fastest } from './row'
import { longTalk } from './talk'

const readOurs = (text: string) => {
  const read = readTranscript(new TextEncoder().encode(text), 'talk.vtt')
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value.transcript
}

/** Another parser of the same form, as a peer. @source vtt.js 0.13 */
const readPeer = (text: string): number => {
  let count = 0
  class VTTCue {
    startTime: number
    endTime: number
    text: string
    constructor(startTime: number, endTime: number, held: string) {
      this.startTime = startTime
      this.endTime = endTime
      this.text = held
    }
  }
  const parser = new WebVTT.Parser({ VTTCue }, WebVTT.StringDecoder())
  parser.oncue = () => {
    count++
  }
  parser.parse(text)
  parser.flush()
  return count
}

const withoutPoints = (text: string): string =>
  text.replace(/^(?!WEBVTT|\d).*$/gm, line => line.toLowerCase().replaceAll('.', ''))

const rows = async (): Promise<readonly BenchRow[]> => {
  const [short, long] = [longTalk(1300, 7), longTalk(13_000, 7)]
  const [ours, peer] = [await fastest(5, () => readOurs(long)), await fastest(5, () => readPeer(long))]
  const spoken = readOurs(long)
  const bare = readOurs(withoutPoints(long))
  const tenth = readOurs(short)
  const whole = await fastest(5, () => toSentences(spoken))
  const part = await fastest(5, () => toSentences(tenth))
  return [
    { what: 'read a WebVTT talk of 91,000 words', value: ours, unit: 'ms' },
    { what: 'the same against vtt.js', value: ours / peer, unit: 'x', against: 'vtt.js in the same run = 1' },
    { what: 'sentences of it', value: whole, unit: 'ms', against: 'well under 500 ms' },
    { what: 'sentences of a tenth of it, times ten', value: (part * 10) / whole, unit: 'x', against: 'linear = 1' },
    {
      what: 'sentences of it without points and capitals',
      value: await fastest(5, () => toSentences(bare)),
      unit: 'ms',
      against: 'well under 500 ms',
    },
  ]
}

/** Speed of reading a transcript and of reflowing it. */
export const bench: Bench = { name: 'transcript', run: rows }
