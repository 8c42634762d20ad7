import * as words from '@/lib/trade/english'
import { type Emit, nameOfParts } from '@/lib/trade/model'
import type { Token } from '@/lib/trade/tagger'

/** Content words are seen as what they are, closed-class words as themselves. */
const shapeOf = (token: Token): string => {
  const { word, tag } = token
  if (tag === 'number') return '#'
  if (tag === 'unit') return 'UNIT'
  if (tag === 'money') return '$'
  if (tag === 'verb' || tag === 'third' || tag === 'past' || tag === 'ing') {
    if (COMMON.has(word)) return word
    return tag.toUpperCase()
  }
  if (tag === 'tool' || tag === 'material' || tag === 'part') return tag.toUpperCase()
  if (words.PEOPLE.has(word)) return 'PERSON'
  if (words.BODY.has(word)) return 'BODY'
  if (words.EVALUATIONS.has(word)) return 'EVAL'
  if (tag === 'noun' || tag === 'word') return 'N'
  if (tag === 'adjective') return COMMON.has(word) ? word : 'ADJ'
  if (tag === 'adverb') return 'ADV'
  return word
}

/** Verbs and adjectives so common in speech that they act like grammar. */
const COMMON = new Set(
  'check look feel listen watch make sure want need see find get give take put keep let leave go goes comes come turn use say says said told mean means know think tell run hold remember forget stop start work works new old same happens happen looking going doing coming getting using trying called supposed done gone read reads should used'.split(
    ' ',
  ),
)

/** Single words, pairs and triples of a sentence, content words seen as what they are. One may be told more than once. */
export const eachNgram = <Part>(tokens: readonly Token[], partOf: (text: string) => Part, emit: Emit<Part>): void => {
  const shape = [partOf('^')]
  for (const token of tokens) shape.push(partOf(shapeOf(token)))
  shape.push(partOf('$'))
  for (let i = 0; i < shape.length - 1; i++) {
    const one = shape[i]
    const two = shape[i + 1]
    const three = shape[i + 2]
    if (i > 0) emit('w', one)
    emit('w', one, two)
    if (three !== undefined) emit('w', one, two, three)
  }
  for (const token of tokens)
    if (token.tag !== 'number' && token.tag !== 'unit' && token.tag !== 'name')
      emit('word', partOf(token.base ?? token.word))
}

/** The same by name, each once. */
export const ngrams = (tokens: readonly Token[]): readonly string[] => {
  const found = new Set<string>()
  eachNgram(
    tokens,
    text => text,
    (...parts) => void found.add(nameOfParts(...parts)),
  )
  return [...found]
}
