import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cue, problemCodes, readText } from '../../transcripts'

const srt =
  '1\n00:00:01,000 --> 00:00:02,500\n<i>Take</i> it off.\n\n2\n00:00:02,500 --> 00:00:04,000\nNow the\nnew one.\n'

describe('recognising', () => {
  test.each([
    ['webvtt', 'WEBVTT\n\n00:01.000 --> 00:02.000\nhi'],
    ['subrip', srt],
    ['subrip', '00:01.000 --> 00:02.000\nno signature'],
    ['timed-text', '[0:23]\nTake it off.'],
    ['timed-text', 'Talk of Tuesday\n\n0:05 Take it off.\n0:09 Put it on.'],
    ['timed-text', '(1:02:03) Take it off.'],
    ['timed-text', '00:23 - 00:41\nTake it off.'],
    ['timed-text', '[00:23.400 --> 00:41.000]  Take it off.'],
    ['recogniser-json', '{"segments":[{"start":0,"end":1,"text":"hi"}]}'],
    ['recogniser-json', ' [ {"start":0,"end":1,"text":"hi"} ]'],
    ['table', 'start\tend\ttext\n0\t1.5\thi'],
    ['table', '0.0,1.5,"Off, then on"\n1.5,3,Good'],
    ['untimed', 'Take it off.\nAt 0:23 you see it.'],
    ['untimed', '[Music]\nTake it off.'],
  ] as const)('[T1] finds %s by content', (form, text) => {
    expect(readText(text, 'wrong.name').transcript.form).toBe(form)
  })
})

describe('SubRip', () => {
  test('[T4] reads counters, comma times, lines and tags', () => {
    const { transcript, problems } = readText(srt)
    expect(transcript.cues).toEqual([cue(1, 2.5, 'Take it off.'), cue(2.5, 4, 'Now the\nnew one.')])
    expect(problems).toEqual([])
  })

  test('[T4] copes with missing counters and gaps, empty lines inside, hours left out and a hundred hours', () => {
    const text =
      '00:01,000 --> 00:02,000\none\n00:02,000 --> 00:03,000\ntwo\n\nstill two\n\n7\n100:00:00,000 --> 100:00:01,000\nlate'
    expect(readText(text).transcript.cues).toEqual([
      cue(1, 2, 'one'),
      cue(2, 3, 'two\n\nstill two'),
      cue(360_000, 360_001, 'late'),
    ])
  })

  test('[T4] keeps a < that is no tag', () => {
    expect(readText('1\n00:00:01,000 --> 00:00:02,000\ngap < 2 mm, {x} &amp; <b>ok</b>').transcript.cues).toEqual([
      cue(1, 2, 'gap < 2 mm, {x} & ok'),
    ])
  })

  test('[T10] reports lines before the first time and broken time lines with their text', () => {
    const { transcript, problems } = readText(
      'by nobody\n\n1\n00:00:01,000 --> 00:00:02,000\none\n\n2\n00:00:xx --> 3\nlost\n',
    )
    expect(transcript.cues).toEqual([cue(1, 2, 'one')])
    expect(problems.map(({ code, place }) => [code, place?.line])).toEqual([
      ['untimed-block', 1],
      ['bad-time-line', 8],
    ])
    expect(problems[1]?.message).toContain('"lost"')
  })
})

describe('text headed by times', () => {
  test('[T5] ends a paragraph at the next time and the last by speaking rate', () => {
    const { transcript } = readText('[0:00]\nTake it off.\nSlowly.\n\n[0:20]\nOne two three four five six seven eight.')
    expect(transcript.cues).toEqual([
      cue(0, 20, 'Take it off.\nSlowly.'),
      cue(20, 20 + 8 / 2.7, 'One two three four five six seven eight.'),
    ])
  })

  test('[T5] takes an end that is given, and times out of order', () => {
    const { transcript } = readText('00:23 - 00:41 Second.\n00:05 - 00:20 First.')
    expect(transcript.cues).toEqual([cue(23, 41, 'Second.'), cue(5, 20, 'First.')])
    expect(readText('0:30 b\n0:10 a').transcript.cues).toEqual([cue(30, 31, 'b'), cue(10, 30, 'a')])
  })

  test('[T5] reads a name before the time', () => {
    expect(readText('Bea  0:00\nIs it off?\n\nOrrin  0:04\nIt is.').transcript.cues).toEqual([
      cue(0, 4, 'Is it off?', { speaker: 'Bea' }),
      cue(4, 5, 'It is.', { speaker: 'Orrin' }),
    ])
  })

  test('[T10] reports text before the first time and times without text', () => {
    const { problems } = readText('Talk of Tuesday\n[0:05]\n[0:09]\nPut it on.')
    expect(problems.map(({ code, place }) => [code, place?.line])).toEqual([
      ['text-before-first-time', 1],
      ['time-without-text', 2],
    ])
    expect(problems[0]?.message).toContain('Talk of Tuesday')
  })

  const line = fc.stringMatching(/^[A-Za-z][a-z ,.]{0,30}[a-z.]$/)
  test('[T5] gives back what was written in any of the styles', () => {
    const style = fc.constantFrom(
      (t: string) => `[${t}]\n`,
      (t: string) => `(${t}) `,
      (t: string) => `${t} `,
      (t: string) => `${t}\n`,
    )
    const clock = (s: number) => {
      const tail = `${String(Math.floor(s / 60) % 60).padStart(2, '0')}:${String(s % 60).padStart(2, '0')}`
      return s >= 3600 ? `${Math.floor(s / 3600)}:${tail}` : tail
    }
    fc.assert(
      fc.property(
        style,
        fc.uniqueArray(fc.integer({ min: 0, max: 20_000 }), { minLength: 2, maxLength: 9 }),
        line,
        (head, times, text) => {
          const sorted = [...times].sort((a, b) => a - b)
          const { transcript } = readText(sorted.map(time => `${head(clock(time))}${text}\n`).join('\n'))
          expect(transcript.form).toBe('timed-text')
          expect(transcript.cues.map(({ start, text: held }) => [start, held])).toEqual(
            sorted.map(time => [time, text]),
          )
          transcript.cues.slice(0, -1).forEach(({ end }, i) => void expect(end).toBe(sorted[i + 1]))
        },
      ),
    )
  })
})

describe('tables', () => {
  test('[T7] finds columns by their heading, in any order', () => {
    const text = 'Speaker,Text,Start (ms),End (ms)\nBea,"Off, then on",1000,2500\n'
    expect(readText(text).transcript.cues).toEqual([cue(1, 2.5, 'Off, then on', { speaker: 'Bea' })])
  })

  test('[T7] reads tabs, clock times, and takes the next start as end', () => {
    expect(readText('0:05\tTake it off.\n0:09\tPut it on.').transcript.cues).toEqual([
      cue(5, 9, 'Take it off.'),
      cue(9, 9 + 3 / 2.7, 'Put it on.'),
    ])
  })

  test('[T7] takes whole numbers that are far too slow for seconds as milliseconds, and says so', () => {
    const { transcript, problems } = readText('start\tend\ttext\n0\t4200\ttake the cover off\n4200\t6000\tput it on')
    expect(transcript.cues).toEqual([cue(0, 4.2, 'take the cover off'), cue(4.2, 6, 'put it on')])
    expect(problems.map(({ code }) => code)).toEqual(['assumed-scale'])
  })

  test('[T10] reports rows without time or text by line, also after a quoted line end', () => {
    const { transcript, problems } = readText('start,end,text\n0,1,"two\nlines"\nsoon,2,lost\n3,4,\n')
    expect(transcript.cues).toEqual([cue(0, 1, 'two\nlines')])
    expect(problems.map(({ code, place }) => [code, place?.line])).toEqual([
      ['unread-row', 4],
      ['unread-row', 5],
    ])
    expect(problems[0]?.message).toContain('lost')
  })

  test('[T7] takes quotation marks that never close as text', () => {
    const { transcript, problems } = readText('0:05\t"this guy\n0:09\tgood')
    expect(transcript.cues.map(({ text }) => text)).toEqual(['"this guy', 'good'])
    expect(problems.map(({ code }) => code)).toEqual(['stray-quote'])
  })

  const cell = fc
    .string({ minLength: 1, maxLength: 30 })
    .filter(text => text.trim() !== '' && !/^[\d.,:s ]+$/.test(text.trim()))
  test('[T7] gives back what was written with RFC 4180 quoting', () => {
    fc.assert(
      fc.property(
        fc.array(cell, { minLength: 1, maxLength: 8 }),
        fc.constantFrom(',', ';', '\t'),
        (texts, delimiter) => {
          const rows = texts.map((text, i) => [i * 2, i * 2 + 2, `"${text.replaceAll('"', '""')}"`].join(delimiter))
          const { transcript } = readText(`start${delimiter}end${delimiter}text\n${rows.join('\n')}`)
          expect(transcript.form).toBe('table')
          expect(transcript.cues).toEqual(texts.map((text, i) => cue(i * 2, i * 2 + 2, text.trim())))
        },
      ),
    )
  })
})

describe('untimed text', () => {
  test('[T8] makes each line a cue at nought', () => {
    const { transcript, problems } = readText('Take it off.\n\n  Put it on. \n')
    expect(transcript).toEqual({
      name: 'talk.txt',
      form: 'untimed',
      cues: [cue(0, 0, 'Take it off.'), cue(0, 0, 'Put it on.')],
    })
    expect(problems).toEqual([])
  })
})

describe('names before the text', () => {
  test('[T16] become speakers where they recur, and speak on until the next name', () => {
    const text = '[0:00] Bea: Is it off?\n[0:03] Orrin: It is.\n[0:05] Now the bolt.\n[0:08] Bea: Good.'
    expect(readText(text).transcript.cues.map(({ speaker, text: held }) => [speaker, held])).toEqual([
      ['Bea', 'Is it off?'],
      ['Orrin', 'It is.'],
      ['Orrin', 'Now the bolt.'],
      ['Bea', 'Good.'],
    ])
  })

  test('[T16] are not seen in words that open with a colon', () => {
    const text = 'Warning: hot.\nWarning: sharp.\nTorque: 20.\nTorque: 25.\nRemember: slowly.'
    expect(readText(text).transcript.cues.every(({ speaker }) => speaker === undefined)).toBe(true)
  })
})

test('[T1] mark-up is refused with what to do', () => {
  expect(problemCodes('<?xml version="1.0"?><tt/>')).toEqual(['mark-up'])
})
