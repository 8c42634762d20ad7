import compromise from 'compromise'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { draftMarks } from '@/lib/draft/draft'
import { draftProject } from '@/lib/draft/project'
import { formatProject, parseProject } from '@/lib/procedure/project-file'
import { readText } from '../../transcripts'
import { draftOf, MOWER, talkOf } from './talks'

const FILLER = /\b(?:um|uh|er|erm|basically|actually|you know|i mean|kinda|sorta|go ahead and|gonna|wanna)\b/i

describe('steps', () => {
  const steps = draftOf('step', ...MOWER)

  test('[D1] begin with a base-form verb, hold no filler and at most 20 words', () => {
    expect(steps.length).toBeGreaterThan(6)
    for (const { text } of steps) {
      expect(text.split(/\s+/).length).toBeLessThanOrEqual(20)
      expect(text).not.toMatch(FILLER)
      // A bare imperative is taken for a noun now and then; "You must" in front settles it for the tagger.
      const tagged = compromise(`You must ${text.charAt(0).toLowerCase()}${text.slice(1)}`)
        .terms()
        .json()[2]
      expect(tagged?.terms[0]?.tags, text).toContain('Verb')
    }
  })

  test('[D1] a lead-in goes and the order stays', () => {
    expect(draftOf('step', "So what you're gonna do is go ahead and pull the cover off.")[0]?.text).toBe(
      'Pull the cover off.',
    )
  })

  test('[D1] particles alone become verbs', () => {
    const said = ['Pull the plug out of the wall.', 'Wheel off.', 'New gasket in.', 'Cap back on.']
    expect(draftOf('step', ...said).map(({ text }) => text)).toEqual([
      'Pull the plug out of the wall.',
      'Remove the wheel.',
      'Fit the new gasket.',
      'Refit the cap.',
    ])
  })

  test('[D6] are placed 1..n, and one told late comes before what it prepares and says why', () => {
    const order = [...steps].sort((a, b) => (a.place ?? 0) - (b.place ?? 0))
    expect(order.map(step => step.place)).toEqual(order.map((_, i) => i + 1))
    const tap = order.findIndex(step => /fuel tap/.test(step.text))
    const tip = order.findIndex(step => /^Tip the mower/.test(step.text))
    expect(tap).toBeGreaterThanOrEqual(0)
    expect(tap).toBeLessThan(tip)
    expect(order[tap]?.pencilled?.reason).toMatch(/^told late/)
  })

  test('[D6] pairs keep their order', () => {
    const order = [...steps].sort((a, b) => (a.place ?? 0) - (b.place ?? 0)).map(step => step.text)
    const off = order.findIndex(text => /^Lift the blade off/.test(text))
    const on = order.findIndex(text => /^Refit the blade/.test(text))
    expect(off).toBeGreaterThanOrEqual(0)
    expect(on).toBeGreaterThan(off)
  })

  test('[D8] what hands point at is named from nearby or asked about', () => {
    const [named] = draftOf('step', 'Turn this guy out, the drain screw, until it drips.')
    expect(named?.text).toContain('the drain screw')
    const open = draftOf('step', 'Take your time here.', 'Now push this little guy down until it clicks.').at(-1)
    expect(open?.text).toContain('the part shown')
    expect(open?.pencilled?.question).toMatch(/this little guy/)
  })

  test('[D1] what is refused is never turned around', () => {
    const texts = draftOf(
      'step',
      'Wipe both faces with a clean cloth.',
      'No grease on the faces, nothing.',
      'Then press the seal in.',
    )
      .map(({ text }) => text)
      .join(' ')
    expect(texts).not.toMatch(/(?<!not use )grease on the faces/i)
  })

  test('[D10] chatter, prices, stories and questions alone draft none', () => {
    const idle = [
      'Hello everybody, welcome back to the shed.',
      'I paid forty quid for this one in 1998.',
      'My uncle lost his hat in the harbour once.',
      'Is it heavy?',
      'Thanks for watching, see you next time.',
    ]
    expect(draftOf('step', ...idle)).toEqual([])
  })
})

describe('lists and limits', () => {
  test('[D7] tools once each, with their size, plurals folded', () => {
    const tools = draftOf(
      'tool',
      'Undo the two bolts with a ten mil socket.',
      'Wipe it down and take the socket off again.',
      'Then do up the bolts with the 10 mm socket.',
    ).map(({ text }) => text)
    expect(tools.filter(name => name.includes('socket'))).toEqual(['10 mm socket'])
  })

  test('[D9] the level of a caution follows the consequence said', () => {
    const levelOf = (said: string) => draftOf('caution', 'Open the cover.', said, 'Take the screw out.')[0]?.level
    expect(levelOf('Never touch those terminals, that is mains voltage and it will kill you.')).toBe('danger')
    expect(levelOf("Don't use a screwdriver, or you'll scratch the seal face and ruin it.")).toBe('notice')
  })

  test('[D9] a caution says how to avoid it first', () => {
    const [caution] = draftOf(
      'caution',
      'Open the cover.',
      "Don't use a screwdriver, or you'll scratch the seal face and ruin it.",
    )
    expect(caution?.text).toMatch(/^Do not use a screwdriver; .*scratch the seal face/)
  })
})

test('[D12] a drafted project is a project file', () => {
  const project = draftProject(talkOf(...MOWER), 'Sharpening a mower blade')
  const read = parseProject(formatProject(project))
  expect(read).toEqual({ ok: true, value: project })
  expect(project.procedure.title).toBe('Sharpening a mower blade')
})

const NUMBER_WORDS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty half quarter'.split(
    ' ',
  )
const sentence = fc.oneof(
  fc.constantFrom(...MOWER),
  fc
    .array(
      fc.constantFrom(
        ...NUMBER_WORDS,
        ...'take the cover off with a 10 mm socket and torque it to 25 newton metres if your hand it will burn you check that wipe clean new seal in don’t because um so this guy'.split(
          ' ',
        ),
      ),
      { minLength: 1, maxLength: 25 },
    )
    .map(words => `${words.join(' ')}.`),
  fc.string({ minLength: 1, maxLength: 60 }),
)

describe('whatever is said', () => {
  const talks = fc.array(sentence, { maxLength: 12 }).map(sentences => talkOf(...sentences))

  test('[D2] the draft is the same twice, every id once', () => {
    fc.assert(
      fc.property(talks, talk => {
        const marks = draftMarks(talk)
        expect(draftMarks(talk)).toEqual(marks)
        expect(new Set(marks.map(mark => mark.id)).size).toBe(marks.length)
      }),
      { numRuns: 40 },
    )
  })

  test('[D3] times are whole milliseconds', () => {
    const spoken = [...MOWER, 'Now pull the plug and lift the lid off, and then torque it to 20 newton metres.']
    const talk = talkOf(...spoken)
    const last = talk.cues.at(-1)?.end
    const times = draftMarks(talk).flatMap(({ start, end }) => [start, end])
    // Where the talk itself ends between two, no mark goes beyond it.
    for (const time of times.filter(each => each !== last)) expect(Number(time.toFixed(3))).toBe(time)
  })

  test('[D3] marks lie within the talk and apart within a kind', () => {
    fc.assert(
      fc.property(talks, talk => {
        const marks = draftMarks(talk)
        const end = Math.max(0, ...talk.cues.map(cue => cue.end))
        for (const mark of marks) {
          expect(mark.start).toBeGreaterThanOrEqual(0)
          expect(mark.end).toBeGreaterThanOrEqual(mark.start)
          expect(mark.end).toBeLessThanOrEqual(end + 1e-6)
          for (const other of marks)
            if (other !== mark && other.kind === mark.kind)
              expect(Math.min(mark.end, other.end) - Math.max(mark.start, other.start)).toBeLessThanOrEqual(1e-6)
        }
      }),
      { numRuns: 60 },
    )
  })

  test('[D5] every mark is pencilled, says why and carries the words spoken', () => {
    fc.assert(
      fc.property(talks, talk => {
        for (const mark of draftMarks(talk)) {
          expect(mark.pencilled?.confidence).toBeGreaterThanOrEqual(0)
          expect(mark.pencilled?.confidence).toBeLessThanOrEqual(1)
          expect(mark.pencilled?.reason).not.toBe('')
          expect(mark.said).not.toBe('')
        }
      }),
      { numRuns: 40 },
    )
  })

  test('[D1] words that every object knows are words like any other', () => {
    const lines = [
      'Fit the constructor.',
      'Tighten the toString to 5 mm.',
      'Pull the __proto__ off.',
      'valueOf hasOwnProperty',
    ]
    expect(draftOf('step', ...lines).length).toBeGreaterThan(0)
  })

  test('[D1] what does not fit into 20 words is a step of its own', () => {
    const said =
      'Slacken the idler with a 19 spanner, turn the drum by hand until the lacing comes round to the top, and pull the pin out with pliers.'
    expect(draftOf('step', 'Switch the conveyor off.', said, 'Lift the guard off.').map(({ text }) => text)).toEqual([
      'Switch the conveyor off.',
      'Slacken the idler with a 19 spanner.',
      'Turn the drum by hand until the lacing comes round to the top and pull the pin out with pliers.',
      'Lift the guard off.',
    ])
  })

  test('[D1] a title is no step', () => {
    const steps = draftOf(
      'step',
      'Changing the filter on the humidifier.',
      'Shut the water valve.',
      'Unscrew the bowl.',
    )
    expect(steps.map(({ text }) => text)).toEqual(['Shut the water valve.', 'Unscrew the bowl.'])
  })

  test('[D1] notes written as a list are drafted from, a list of tools is no step', () => {
    const lines = [
      'Isolate the blower and lock it off.',
      'Remove the six M8 nuts and pull the cover.',
      'Replace the belt if its width < 9 mm.',
      'Refit the cover and torque the nuts to 20 Nm.',
      'Tools: 13 mm socket, torque wrench, rag',
    ]
    const drafted = draftMarks(readText(lines.map((line, i) => `${i + 1}. ${line}`).join('\n')).transcript)
    const textsOf = (kind: string) => drafted.filter(mark => mark.kind === kind).map(({ text }) => text)
    expect(textsOf('step')).toEqual(expect.arrayContaining([lines[0], lines[1], lines[3]]))
    expect([...textsOf('step'), ...textsOf('check')]).toContain('Replace the belt if its width under 9 mm.')
    expect(textsOf('step').filter(text => /tools/i.test(text))).toEqual([])
    expect(textsOf('tool')).toEqual(expect.arrayContaining(['13 mm socket', 'torque wrench']))
  })

  test('[D1] steps keep to 20 words', () => {
    fc.assert(
      fc.property(fc.array(sentence, { maxLength: 8 }), sentences => {
        for (const { text } of draftOf('step', ...sentences)) expect(text.split(/\s+/).length).toBeLessThanOrEqual(20)
      }),
      { numRuns: 60 },
    )
  })

  test('[D4] no figure stands in a text that was not said', () => {
    fc.assert(
      fc.property(fc.array(sentence, { maxLength: 8 }), sentences => {
        const said = sentences.join(' ').toLowerCase()
        const inWords = NUMBER_WORDS.some(word => said.includes(word))
        for (const mark of draftMarks(talkOf(...sentences)))
          for (const [figure] of mark.text.matchAll(/\d+/g))
            expect(said.includes(figure) || inWords, `${mark.text} <= ${said}`).toBe(true)
      }),
      { numRuns: 60 },
    )
  })
})
