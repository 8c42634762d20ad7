import { describe, expect, test } from 'vitest'
import { correctionEdits, correctionWords, elsewhere, replacedWords, replaceWords } from '@/components/talk/correction'
import { applyEdit } from '@/lib/procedure/edit'
import { emptyProject, type Project } from '@/lib/procedure/project'
import type { Cue } from '@/lib/procedure/recording'
import { step } from '../../builders'

/** A talk of these lines, four seconds each. */
const cuesOf = (...lines: string[]): Cue[] => lines.map((text, i) => ({ start: i * 4, end: i * 4 + 4, text }))
const talkOf = (cues: readonly Cue[], ...marks: Project['marks'][number][]): Project => ({
  ...emptyProject(),
  recording: { footage: null, transcript: { name: 'talk.vtt', form: 'webvtt', cues } },
  marks,
})

describe('what a correction replaces', () => {
  test('is what differs, without the words alike at both ends and without stops', () => {
    expect(replacedWords('greasing the spin dulls and the one', 'greasing the spindles and the one')).toEqual({
      from: 'spin dulls',
      to: 'spindles',
    })
    expect(replacedWords('grease the spin dulls.', 'grease the spindles.')).toEqual({
      from: 'spin dulls',
      to: 'spindles',
    })
    expect(replacedWords('the the belt', 'the belt belt')).toEqual({ from: 'the', to: 'belt' })
  })

  test('is nothing where words were only put in, taken out, or left', () => {
    expect(replacedWords('grease the nipple', 'grease the upper nipple')).toBeUndefined()
    expect(replacedWords('grease the the nipple', 'grease the nipple')).toBeUndefined()
    expect(replacedWords('grease it', 'grease it')).toBeUndefined()
    expect(replacedWords('grease it', 'grease it.')).toBeUndefined()
  })
})

test('words are replaced where they stand whole, in any case, also next to signs a pattern would take for its own', () => {
  const spindles = { from: 'spin dulls', to: 'spindles' }
  expect(replaceWords('Spin  dulls, spin dulls and spin dullsville', spindles)).toBe(
    'Spindles, spindles and spin dullsville',
  )
  expect(replaceWords('about $5 (five) here', { from: '$5 (five)', to: '$& each' })).toBe('about $& each here')
})

test('words that are part of a figure or of another word stay, and a capital at the start of a line is none within one', () => {
  expect(replaceWords('turn 14.5 times to 14, then 3.14', { from: '14', to: '40' })).toBe(
    'turn 14.5 times to 40, then 3.14',
  )
  expect(replaceWords("you can't, you can", { from: 'can', to: 'should' })).toBe("you can't, you should")
  expect(replaceWords('Bold it, the bold nut', { from: 'Bold', to: 'Bolt' })).toBe('Bolt it, the bolt nut')
  expect(replaceWords('the pee tfe tape', { from: 'Pee tfe', to: 'PTFE' })).toBe('the PTFE tape')
})

describe('the edits of a correction', () => {
  const cues = cuesOf('grease the spin dulls', 'spin dulls turn', 'wipe it', 'the spin dulls are dry')
  const first = step(0, 4, 'Grease the spin dulls.', { said: 'grease the spin dulls' })
  const last = step(12, 16, 'Oil what is dry.', { said: 'the spin dulls are dry' })
  const project = talkOf(cues, first, last)
  const corrected = (isEverywhere: boolean) =>
    correctionEdits(project, 0, 'grease the spindles', isEverywhere).reduce(applyEdit, project)

  test('change the line, and the mark made of it', () => {
    const { recording, marks } = corrected(false)
    expect(recording.transcript?.cues.map(cue => cue.corrected)).toEqual([
      'grease the spindles',
      undefined,
      undefined,
      undefined,
    ])
    expect(marks).toEqual(
      [{ ...first, text: 'Grease the spindles.', said: 'grease the spindles', place: 1 }, last].map((mark, i) => ({
        ...mark,
        place: i + 1,
      })),
    )
  })

  test('change every line that holds the words where asked for, with the marks made of them', () => {
    expect(elsewhere(cues, 0, { from: 'spin dulls', to: 'spindles' })).toEqual([
      { cue: 1, text: 'spindles turn' },
      { cue: 3, text: 'the spindles are dry' },
    ])
    const { recording, marks } = corrected(true)
    expect(recording.transcript?.cues.map(cue => cue.corrected ?? cue.text)).toEqual([
      'grease the spindles',
      'spindles turn',
      'wipe it',
      'the spindles are dry',
    ])
    expect(marks.map(({ text, said }) => [text, said])).toEqual([
      ['Grease the spindles.', 'grease the spindles'],
      ['Oil what is dry.', 'the spindles are dry'],
    ])
    expect(correctionWords(correctionEdits(project, 0, 'grease the spindles', true))).toBe(
      'Corrected in 3 lines and 2 marks.',
    )
  })

  test('leave a mark alone that is made of another line too, where the words stay', () => {
    const both = step(0, 8, 'Grease the spin dulls, which turn.', { said: 'grease the spin dulls spin dulls turn' })
    const edits = correctionEdits(talkOf(cues, both), 0, 'grease the spindles', false)
    expect(edits).toEqual([{ do: 'correct-cue', cue: 0, text: 'grease the spindles' }])
  })

  test('of a line that is not there are none', () => {
    expect(correctionEdits(project, 9, 'x', true)).toEqual([])
  })
})
