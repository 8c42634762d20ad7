import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkProposal } from '@/lib/draft/reword-check'
import { parseAnswer, parseModelSetup, toRequest } from '@/lib/draft/reword-model'

const why = (now: string, proposed: string, kind: 'step' | 'caution' = 'step') => {
  const checked = checkProposal(kind, now, proposed)
  return checked.ok ? checked.value : checked.problems[0]?.message
}

describe('[D30] words a model proposes pass the same checks as the draft', () => {
  test('[D30] other words for the same thing are taken, on one line', () => {
    expect(why('Pull off the cover and put it aside.', ' Remove the cover\nand set it aside. ')).toBe(
      'Remove the cover and set it aside.',
    )
  })

  test('[D30] a number or limit that changes, comes or goes is refused, in figures and in words', () => {
    const message = 'the proposal changes a number or a limit'
    expect(why('Torque the bolts to 20 N·m.', 'Torque the bolts to 25 N·m.')).toBe(message)
    expect(why('Torque the bolts to 20 N·m.', 'Torque the bolts.')).toBe(message)
    expect(why('Torque the bolts.', 'Torque the bolts to 20 N·m.')).toBe(message)
    expect(why('Turn it at most half a turn.', 'Turn it at least half a turn.')).toBe(message)
    expect(why('Fill in two litres of oil.', 'Fill in three litres of oil.')).toBe(message)
  })

  test('[D30] a negation that turns around is refused', () => {
    const message = 'the proposal gains or loses a negation'
    expect(why('Do not force the pin.', 'Force the pin.', 'caution')).toBe(message)
    expect(why('Tighten the pin.', 'Never tighten the pin.', 'caution')).toBe(message)
  })

  test('[D30] steps open with a verb and have at most 20 words; no mark-up', () => {
    expect(why('Lift the lid.', 'The lid is lifted.')).toContain('which is no verb')
    expect(why('Lift the lid.', `Lift ${'the lid '.repeat(12)}`)).toContain('at most 20')
    expect(why('Lift the lid.', '<b>Lift</b> the lid.')).toBe('the proposal is no plain line of text')
  })

  test('[D30] no proposal of any kind makes it throw', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (now, proposed) => {
        expect(typeof checkProposal('step', now, proposed).ok).toBe('boolean')
      }),
    )
  })
})

describe('[D31] a model is off unless set up, and stays on this machine unless told otherwise', () => {
  const address = (text: string | undefined, elsewhere = false) => {
    const setup = parseModelSetup(text, undefined, elsewhere)
    return setup.ok ? (setup.value?.address ?? null) : 'refused'
  }

  test('[D31] addresses', () => {
    expect(
      [undefined, '', 'http://127.0.0.1:8080/v1/chat/completions', 'http://[::1]:1/x', 'http://localhost/x'].map(text =>
        address(text),
      ),
    ).toEqual([null, null, 'http://127.0.0.1:8080/v1/chat/completions', 'http://[::1]:1/x', 'http://localhost/x'])
    expect(
      ['soon', 'ftp://127.0.0.1/x', 'http://model.invalid/x', 'http://127.0.0.1.invalid/x'].map(text => address(text)),
    ).toEqual(Array(4).fill('refused'))
    expect(address('http://model.invalid/x', true)).toBe('http://model.invalid/x')
  })

  test('[D31] the request holds the line alone, the answer is read or refused', () => {
    const body = JSON.parse(toRequest({ address: '', name: 'm' }, 'step', 'Lift the lid.'))
    expect(body.messages[1]).toEqual({ role: 'user', content: 'Kind: step\nLine: Lift the lid.' })
    expect(parseAnswer('{"choices":[{"message":{"content":"Raise the lid."}}]}')).toEqual({
      ok: true,
      value: 'Raise the lid.',
    })
    expect(['', '{}', '{"choices":[]}'].map(text => parseAnswer(text).ok)).toEqual([false, false, false])
  })
})
