import { describe, expect, test } from 'vitest'
import { findLooseQualities } from '@/lib/quantity/loose-qualities'
import { readQuantities } from '@/lib/quantity/read'

const kept = (text: string) => readQuantities(text, { keepsDoubtful: true })

describe('doubtful readings, kept on request', () => {
  // Invented sentences.
  test.for([
    ['Bale door rollers next, twenty-six.', { nominal: 26 }, 'a number without a unit'],
    ['My uncle ran his at 30 psi for years.', { nominal: 30, unit: '[psi]' }, 'about another time, machine or person'],
    ['It took forty minutes.', { nominal: 40, unit: 'min' }, 'time already spent'],
  ] as const)('[Q2] “%s” is kept with its doubt', ([text, quantity, doubt]) => {
    expect(readQuantities(text)).toEqual([])
    const reading = kept(text).find(one => one.doubt === doubt)
    expect(reading?.quantity).toEqual(quantity)
  })

  test('[Q2] counts, years, withdrawn values and sizes of tools stay out all the same', () => {
    for (const text of [
      'There are six bolts.',
      'This press is from 1968.',
      'Take the 13 millimetre spanner.',
      'One of those.',
    ])
      expect(kept(text)).toEqual([])
    expect(kept('Set it to 12, no, 14 bar.').map(one => one.quantity)).toEqual([{ nominal: 14, unit: 'bar' }])
  })

  test('[Q2] what is sure has no doubt', () => {
    expect(kept('Lid screws to 4 newton metres.').map(one => one.doubt)).toEqual([undefined])
  })
})

describe('limits without a number as freer talk puts them', () => {
  test.for([
    ['Wind it in until it just touches the drum.', 'until it just touches'],
    ['Pour till they bottom out.', 'till they bottom'],
    ['Sight glass between the two little marks.', 'between the two little marks'],
    ['Bring the oil up to the second line.', 'up to the second line'],
    ['Leave the hopper half full.', 'half full'],
    ['The gap is the same on both ends of the roll.', 'same on both ends'],
    ['Bring it down level with the others.', 'level with the others'],
    ['No wobble in the idler.', 'No wobble'],
    ['There is a slight drag on the strip.', 'a slight drag'],
    ['Run it in with just your fingers.', 'just your fingers'],
    ['Only by hand, and then a nudge of the key.', 'Only by hand'],
    ['Nuts on with fingers, leave the spanner be.', 'with fingers'],
    ['Push it in until the edge is flat with the face.', 'flat with the face'],
    ['Fill till it comes back at you.', 'till it comes back at you'],
    ['Keep the pointer out of the red.', 'out of the red'],
    ['Fill to the lower edge of the port.', 'to the lower edge'],
  ] as const)('[Q1] “%s”: “%s”', ([text, part]) => {
    const found = findLooseQualities(text)
    expect(found.map(one => one.text).join('|')).toContain(part)
    for (const { at, to, text: said } of found) expect(text.slice(at, to)).toBe(said)
    expect(kept(text).some(one => one.qualitative !== undefined)).toBe(true)
  })

  test('[Q1] plain talk holds none', () => {
    for (const text of ['Hello and welcome back to the loft.', 'Now lift the cover off.', 'She hums at night.'])
      expect(findLooseQualities(text)).toEqual([])
  })
})

describe('more ways to say a limit', () => {
  test.for([
    ['leave a gap of at least an inch', { low: 1, unit: '[in_i]' }],
    ['eight litres at the minimum', { low: 8, unit: 'L' }],
    ['shim from six thou up to nine thou', { low: 6, high: 9, unit: '[mil_i]' }],
    ['six thou up to nine thou', { low: 6, high: 9, unit: '[mil_i]' }],
    ['half an inch to three-quarters of give', { low: 0.5, high: 0.75, unit: '[in_i]' }],
    ['let it drain ten, fifteen minutes', { low: 10, high: 15, unit: 'min' }],
    ['check it every year and a half', { nominal: 1.5, unit: 'a' }],
    ['grease the pivots every spring', { nominal: 1, unit: 'a' }],
    ['wind the shaft four times round', { nominal: 4, unit: 'circ' }],
    ['a clearance of 12 thousandths', { nominal: 0.012, unit: '[in_i]' }],
    ['seven to nine hundredths of clearance', { low: 0.07, high: 0.09, unit: 'mm' }],
    ['gear oil, six hundred mil', { nominal: 600, unit: 'mL' }],
    ['the chuck nuts are drawn up to 30 newton metres', { nominal: 30, unit: 'N.m' }],
  ] as const)('[Q1] %s', ([text, quantity]) => {
    expect(readQuantities(text).map(one => one.quantity)).toEqual([quantity])
  })
})
