import { expect, test } from 'vitest'
import { readTranscript } from '@/lib/transcript/read'
import { BAD_TRANSCRIPTS } from '../../samples/bad-transcripts'

test.each(BAD_TRANSCRIPTS)(
  '[T9] $name is refused as $code, by name and in plain words',
  ({ name, make, code, says }) => {
    const read = readTranscript(make(), name)
    if (read.ok) throw new Error(`${name} was read as ${read.value.transcript.form}`)
    expect(read.problems[0]?.code).toBe(code)
    expect(read.problems[0]?.message).toMatch(says)
    expect(read.problems[0]?.place?.file).toBe(name)
  },
)

test('[T10] a table of which no line could be read is called so, with what to do', () => {
  const read = readTranscript(new TextEncoder().encode('start,end,text\n'), 'bare.csv')
  expect(read.ok ? '' : read.problems[0]?.message).toBe(
    'this looks like a table, but no line of it could be read. Export it again, or choose another.',
  )
})
