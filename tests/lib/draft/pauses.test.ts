import { describe, expect, test } from 'vitest'
import { readSentence } from '@/lib/draft/feature'
import { gatherThings } from '@/lib/draft/gather'
import { pausedTalk } from '@/lib/draft/pauses'
import { findLimits } from '@/lib/draft/spec-feature'

/** A talk as raw captions have it, and what is read of its last sentence. */
const readRaw = (...texts: readonly string[]) => {
  const readings = texts.map(readSentence)
  const sentences = texts.map((text, i) => ({ text, start: i * 4, end: i * 4 + 4, words: [] }))
  const limits = findLimits(sentences as never, readings).filter(({ sentence }) => sentence === texts.length - 1)
  return { limits, things: gatherThings(readings), paused: pausedTalk(readings)?.readings.at(-1)?.text }
}

/** Counts in metric units, before what is tried. */
const BEFORE = 'the loom stands two metres from the wall and takes a litre of oil'

describe('commas in captions without punctuation', () => {
  test.each([
    ['set the roller gap to four millimetres no more', { high: 4, unit: 'mm' }],
    ['leave the lid shut for twenty minutes no less', { low: 20, unit: 'min' }],
    ['the belt sags ten millimetres no bigger', { high: 10, unit: 'mm' }],
    ['the first bolt goes to thirty newton metres the next is done by eye', { nominal: 30, unit: 'N.m' }],
  ])('[D17] what bounds a figure is told by the comma before it: %s', (said, quantity) => {
    expect(readRaw(BEFORE, said).limits.map(one => one.quantity)).toContainEqual(quantity)
  })

  test.each([
    'tighten them in two stages forty five then sixty newton metres',
    'if the strap is thinner than three millimetres throw it out and fit a new one',
    'now take the cover off and then wipe the tray with a rag',
  ])('[D17] only commas are put in, and each place leads back to what was said: %s', said => {
    const readings = [BEFORE, said].map(readSentence)
    const paused = pausedTalk(readings)
    const [text = '', back] = [paused?.readings[1]?.text, paused?.backs[1]]
    expect(text.replaceAll(',', '')).toBe(said)
    for (const [i, sign] of [...text].entries()) if (sign !== ',') expect(said[back?.(i) ?? i]).toBe(sign)
  })

  test.each([
    ['it wants two and a half turns and a quarter', 'two and a half turns'],
    [
      'keep it between a hundred and ten and a hundred and twenty five degrees',
      'a hundred and ten and a hundred and twenty five',
    ],
    ['give it thirty five newton metres plus or minus two', 'thirty five newton metres'],
    ['wait at least one hundred and twenty seconds', 'at least one hundred and twenty seconds'],
  ])('[D17] no comma stands inside a figure: %s', (said, whole) => {
    expect(readRaw(BEFORE, said).paused).toContain(whole)
  })

  test('[D17] limits and things stand where they were said', () => {
    const said = 'grab a torque wrench a clean rag and the grease then set the roller gap to four millimetres no more'
    const { limits, things } = readRaw(BEFORE, said)
    for (const { limit } of limits) expect(said.slice(limit.at, limit.to)).toBe(limit.text)
    expect(limits[0]?.limit.text).toMatch(/^four millimetres/)
    const named = things.flatMap(({ mentions }) => mentions.filter(({ sentence }) => sentence === 1))
    expect(named.map(({ at, to }) => said.slice(at, to))).toEqual(
      expect.arrayContaining(['torque wrench', 'clean rag', 'grease']),
    )
  })

  test('[D17] a talk with punctuation of its own is left as it is', () => {
    expect(readRaw('Take the cover off.', 'Set the gap to four millimetres, no more.').paused).toBeUndefined()
  })

  test('[D17] a question without its mark stays one', () => {
    const readings = [BEFORE, 'should we take the belt off and clean the tray'].map(readSentence)
    expect(pausedTalk(readings)?.readings[1]?.isQuestion).toBe(true)
  })
})
