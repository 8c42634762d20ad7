import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import { NUMBERS } from './bound-words'
import { figureAs } from './figure-as'
import { isAlike, lastSaid, sharesThing, sizeOf } from './said-before'
import type { Around, Said } from './settle'

/** What another source says of a value told before: the book, the label, somebody's word. */
const SOURCE =
  /\b(?:(?:tin|tube|tub|packet|bottle|jug|drum|procedure|rule|book|manual|sheet|chart|sticker|label|plate|nameplate|leaflet|decal|card|placard|drawing|paper|website|bulletin|plaque|tag|lid|sidewall|guide|handbook|instructions?|maker|makers|factory|dealer|ticket|board)(?: \w+){0,4}? (?:says?|said|gives?|reads?|wants?|calls? for|asks? for|has|goes|puts|reckons?|recommends?|states?|quotes?|lists?|allows?|lets?)|(?:sheet|book|card|drawing)'s got|(?:it|he|she|they) (?:says?|said|gives?|reckons?|recommends?|told me)|(?:on|in) (?:my|your|his|her) (?:sheet|card|chart|booklet|manual|leaflet|label|sticker|list|drawing)|according to|recommends?|printed|stamped|marked)\b/i
/** How close two sources stand. Common practice, no source. */
export const NEAR_SOURCE = 1.8
/** And where the other is named: `sixty, not fifty`. */
const NEAR_NAMED = 3
const REACH = 40

/** @returns the value told before of which a sentence gives another source's: the last that passes, of the same thing first */
export const toldByAnother = (around: Around, passes: (said: Said) => boolean): Said | undefined =>
  lastByAnother(around, said => passes(said) && sharesThing(said.things, around.things)) ??
  lastByAnother(around, passes)

const lastByAnother = ({ text, sentence, recent }: Around, passes: (said: Said) => boolean): Said | undefined =>
  SOURCE.test(text) ? lastSaid(recent, sentence - REACH, passes) : undefined

/** Figures as they are said: `five hundredths`, `a hundred and fifty`, `0.5`. */
const FIGURE =
  /(?:\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]{2,5}teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty|hundred|thousand|half|quarter|point|and|hundredths?|tenths?)\b[ -]?)+|\d+(?:\.\d+)?/gi
/** What sets one figure off against another. */
const AGAINST =
  /\b(?:not(?! (?:more|less|over|under|above|below|past|beyond|until|before|for|to|so|too)\b)|instead of|rather than|i (?:gave|told|said)(?: you)?|hold me to|used to say|always said)(?: \w+){0,2}? $/i

/** A sentence without any of these sets no figure aside. */
const MAY_SET_ASIDE = new RegExp(
  `\\b(?:not|instead of|rather than|i (?:gave|told|said)|hold me to|said)(?: \\w+){0,2}? (?:\\d|an?\\b|half|quarter|hundred|${NUMBERS})`,
  'i',
)

/** A figure without an "and" that belongs to the words around it; none of an "and" alone. */
const toFigure = (found: string): readonly string[] => {
  const figure = found
    .toLowerCase()
    .replace(/^and[ -]|[ -]and[ -]?$/g, '')
    .trim()
  return figure === '' || figure === 'and' ? [] : [figure]
}

/** Figures of a sentence that it sets others against: `sixty percent, not fifty`. */
const setAside = (text: string): readonly string[] =>
  [...text.matchAll(FIGURE)].flatMap(({ 0: figure, index }) =>
    AGAINST.test(text.slice(0, index)) ? toFigure(figure) : [],
  )

const saysFigure = ({ said }: Said, figures: readonly string[]): boolean => {
  const own = [...said.matchAll(FIGURE)].flatMap(([figure]) => toFigure(figure))
  return figures.some(figure => own.includes(figure))
}

const isOneSided = ({ low, high, nominal }: Quantity): boolean =>
  nominal === undefined && (low === undefined) !== (high === undefined)

/** The value told before that another source tells otherwise: the one set aside, else the last that is near. */
const firstValue = (quantity: Quantity, around: Around): Quantity | undefined => {
  if (!hasNumber(quantity)) return undefined
  const size = sizeOf(quantity)
  const figures = MAY_SET_ASIDE.test(around.text) ? setAside(around.text) : []
  const isOf = ({ quantity: said }: Said, most: number): boolean =>
    said.unit === quantity.unit && sizeOf(said) !== size && isAlike(size, sizeOf(said), most)
  const named =
    figures.length === 0
      ? undefined
      : lastSaid(
          around.recent,
          0,
          said => said.sentence < around.sentence && isOf(said, NEAR_NAMED) && saysFigure(said, figures),
        )
  return (named ?? lastByAnother(around, said => isOf(said, NEAR_SOURCE)))?.quantity
}

/** A value of another source, and whether it is one: nearly, but not quite, what was told before. */
export type Second = { readonly quantity: Quantity; readonly isSecond: boolean }

/**
 * `The card here says sixty, not fifty`: a figure alone that another source gives for a limit told before bounds as that did.
 */
export const asSecondValue = (quantity: Quantity, around: Around): Second => {
  const first = firstValue(quantity, around)
  if (first === undefined) return { quantity, isSecond: false }
  const isAlone = quantity.nominal !== undefined && quantity.low === undefined && quantity.high === undefined
  return {
    quantity: isAlone && isOneSided(first) ? figureAs(first.low === undefined ? 'high' : 'low', quantity) : quantity,
    isSecond: true,
  }
}
