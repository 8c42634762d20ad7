import { contextHazards, hazardsIn, hintsIn, knownIn, rowsOn } from './hazard-signs'
import { onceForText } from './memo'
import { bringsPower, cutsPower } from './power'
import { contentStems } from './words'

/** Stems of a text and pairs of neighbours, each once. */
const grams = (prefix: string, text: string): readonly string[] => {
  const stems = contentStems(text)
  return [
    ...new Set([
      ...stems.map(stem => `${prefix}:${stem}`),
      ...stems.slice(1).map((stem, i) => `${prefix}2:${stems[i]} ${stem}`),
    ]),
  ]
}

/** @returns what the words of a step show, whatever the machine. */
export const stepFeatures = onceForText((text: string): readonly string[] => [
  'bias',
  ...grams('w', text),
  ...hazardsIn(text).map(({ id }) => `sign:${id}`),
  ...hintsIn(text).map(({ id }) => `hint:${id}`),
  ...(cutsPower(text) ? ['cuts'] : []),
  ...(bringsPower(text) ? ['powers'] : []),
])

/** @returns what title and equipment show. */
export const machineFeatures = onceForText((machine: string): readonly string[] =>
  [...new Set(contentStems(machine))].map(stem => `m:${stem}`),
)

/** @returns what the names of all tools and materials show, given one a line. */
export const listFeatures = onceForText((names: string): readonly string[] =>
  [...new Set(contentStems(names))].map(stem => `l:${stem}`),
)

/** @returns what a step shows only on that machine, and whether the power is off when it is done. */
export const placeFeatures = (text: string, machine: string, isOff: boolean): readonly string[] => {
  const here = rowsOn(machine)
  return [
    isOff ? 'off' : 'on',
    ...contextHazards(text)
      .filter(({ row }) => here.has(row))
      .map(({ hazard, isHint }) => `${isHint ? 'perhaps' : 'here'}:${hazard.id}`),
  ]
}

/**
 * @param field its `hazard` field in kebab case
 * @param spoken ids of the hazards it is against by its words and field
 * @returns what a caution shows
 */
export const cautionFeatures = (
  text: string,
  field: string | undefined,
  spoken: readonly string[],
): readonly string[] => [
  'bias',
  ...grams('c', text),
  ...(field === undefined ? [] : new Set([`f:${field}`, ...field.split('-').map(part => `f:${part}`)])),
  ...[...knownIn(text)].map(id => `known:${id}`),
  ...spoken.map(id => `against:${id}`),
]
