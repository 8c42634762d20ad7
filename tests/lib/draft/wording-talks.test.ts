import { beforeAll, describe, expect, it } from 'vitest'
import { readSentence } from '@/lib/draft/feature'
import { wordStep } from '@/lib/draft/wording'
import { verbOf } from '@/lib/trade/morphology'
import { readTalks } from '@/scripts/fit-draft/talks'

type Row = { readonly said: string; readonly text: string; readonly isAsked: boolean }

/** Every sentence of our talks that a step is labelled on, as it is worded. */
const wordAll = (form: string): readonly Row[] =>
  readTalks('scripts/fit-draft/talks')
    .filter(talk => talk.form === form)
    .flatMap(({ sentences, gold }) => {
      const steps = gold.marks.filter(({ kind }) => kind === 'step')
      return sentences.flatMap((sentence, i) => {
        if (!steps.some(({ start, end }) => start < sentence.end - 0.3 && end > sentence.start + 0.3)) return []
        const before = sentences[i - 1]
        const after = sentences[i + 1]
        const worded = wordStep(
          readSentence(sentence.text),
          before && readSentence(before.text),
          after && readSentence(after.text),
        )
        return [{ said: sentence.text, text: worded.text, isAsked: worded.question !== undefined }]
      })
    })

const failing = (rows: readonly Row[], isWrong: (row: Row) => boolean): readonly string[] =>
  rows.filter(isWrong).map(({ said, text }) => `${text} <= ${said}`)

const wordsOf = (text: string): readonly string[] => text.replace(/\.$/, '').split(' ')
const count = (text: string, what: RegExp): number => text.match(what)?.length ?? 0

describe.each(['vtt', 'raw.srt'])('[D1] steps of all our talks, as %s', form => {
  let rows: readonly Row[] = []
  beforeAll(() => {
    rows = wordAll(form)
  }, 120_000)

  it('are many', () => {
    expect(rows.length).toBeGreaterThan(3000)
  })
  it('begin with a base-form verb: one of the trade, or a word the talk used', () => {
    const wrong = failing(rows, ({ said, text }) => {
      const [first = ''] = wordsOf(text.toLowerCase())
      const verb = verbOf(first)
      return verb === undefined ? !said.toLowerCase().includes(first.slice(0, 4)) : verb.form !== 'base'
    })
    expect(wrong).toEqual([])
  })
  it('have at most 20 words and one full stop, at the end', () => {
    expect(failing(rows, ({ text }) => wordsOf(text).length > 20 || !/^[A-Z\d].*[^.]\.$/.test(text))).toEqual([])
  })
  it('have no capital inside but where the talk has one inside', () => {
    const wrong = failing(rows, ({ said, text }) =>
      wordsOf(text)
        .slice(1)
        .map(word => word.replace(/^[“(]|[,;.]+$/g, ''))
        // A sentence may open with an acronym, a size or a name that always has its capital.
        .some(
          word =>
            /^[A-Z]/.test(word) &&
            !/^(?:.+[A-Z\d]|[B-Z](?:-.*)?|Phillips|Allen|Torx)/.test(word) &&
            !said.slice(1).includes(word),
        ),
    )
    expect(wrong).toEqual([])
  })
  it('hold no torn noun phrase', () => {
    const torn = /\b(?:the|a|an|your|its) (?:the|a|an|its|your|with|of|from|where|when|and|is|are)\b/i
    expect(failing(rows, ({ text, said }) => torn.test(text) && !torn.test(said))).toEqual([])
  })
  it('end on no preposition, article or conjunction that the talk did not end on', () => {
    const open = /\b(the|a|an|of|with|into|and|or|but|if|until|because|when|towards?)\.$/i
    expect(failing(rows, ({ text, said }) => open.test(text) && !said.includes(open.exec(text)?.[1] ?? ''))).toEqual([])
    expect(failing(rows, ({ text }) => /\b(?:the|a|an|and|or|but|if|until|because)\.$/i.test(text))).toEqual([])
  })
  it('hold no number that was not said', () => {
    const numbers = /\d[\d.,/]*\d|\d/g
    const wrong = failing(rows, ({ text, said }) => (text.match(numbers) ?? []).some(number => !said.includes(number)))
    // A name taken from the sentence before may hold a number.
    expect(wrong.length).toBeLessThan(5)
  })
  it('never gain a "not"', () => {
    const not = /\b(?:not|never|no|nothing|without|don['’]t|\w+n['’]t|cannot|nor|neither|hardly|none)\b/gi
    expect(failing(rows, ({ text, said }) => count(text, not) > count(said, not))).toEqual([])
  })
  it('never lose the "not" of an order', () => {
    const forbids = /^(?:and |so |but )?(?:don't|never|do not) (?!you|forget|worry|mind)\w+ (?:the|it|a|your|them)\b/i
    expect(failing(rows, row => forbids.test(row.said) && !/\b(?:not|never|don't)\b/i.test(row.text))).toEqual([])
  })
  it('ask where they say "do this"', () => {
    expect(failing(rows, ({ text, isAsked }) => /^Do this:/.test(text) && !isAsked)).toEqual([])
  })
})
