import { expect, test } from 'vitest'
import { fileNameOf } from '@/components/bench/saving'
import { toFileName } from '@/lib/publish/text'

test('a file saved from the bench is called as its publications are: accents folded, whole words, no name Windows reserves', () => {
  for (const title of ['Ünï “quote” <b> & #', 'con', '', '日本語 手順', 'a'.repeat(90), 'Turn the knives '.repeat(8)])
    expect(fileNameOf(title)).toBe(toFileName(title, 'procedure'))
  expect(fileNameOf('Ünï “quote” <b>')).toBe('uni-quote-b')
})
