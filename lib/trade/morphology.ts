import { ACTIONS, type ActionClass, IRREGULAR } from './actions'

/** Form of a verb as it was said. */
export type VerbForm = 'base' | 'third' | 'past' | 'participle' | 'ing'

/** A verb of the trade as it was said. */
export type VerbReading = { readonly base: string; readonly form: VerbForm }

const VOWEL = /[aeiou]/

/** Doubles the last consonant of short verbs: stop, stopping. */
const doubles = (base: string): boolean =>
  /^[^aeiou]*[aeiou][bdgklmnprtz]$/.test(base) ||
  /(?:trim|fit|mit|fer|gin|quip|pel|lug|set|cut|put|tap|run|snap|strip|flip|clip|slip|wrap|nip|tip|pop|drop|chop|prop)$/.test(
    base,
  )

const withIng = (base: string): string => {
  if (/ie$/.test(base)) return `${base.slice(0, -2)}ying`
  if (/[^aeiouy]e$|[aiou]se$|ue$|[aeiou]ge$|ve$|ke$|[aeiou][cdlmnprtz]e$/.test(base) && !/ee$|oe$|ye$/.test(base))
    return `${base.slice(0, -1)}ing`
  return doubles(base) ? `${base}${base.at(-1)}ing` : `${base}ing`
}

const withEd = (base: string): string => {
  if (base.endsWith('e')) return `${base}d`
  if (/[^aeiou]y$/.test(base)) return `${base.slice(0, -1)}ied`
  return doubles(base) ? `${base}${base.at(-1)}ed` : `${base}ed`
}

const withS = (base: string): string => {
  if (/(?:s|x|z|ch|sh|o)$/.test(base)) return `${base}es`
  return /[^aeiou]y$/.test(base) ? `${base.slice(0, -1)}ies` : `${base}s`
}

const IRREGULAR_BY_BASE = new Map(IRREGULAR.map(([base, past, participle]) => [base, { past, participle }]))

const READINGS = new Map<string, VerbReading>()
const CLASSES = new Map<string, Set<ActionClass>>()
const note = (word: string, base: string, form: VerbForm) => {
  if (!READINGS.has(word)) READINGS.set(word, { base, form })
}
for (const [name, verbs] of Object.entries(ACTIONS) as [ActionClass, readonly string[]][])
  for (const verb of verbs) {
    const classes = CLASSES.get(verb) ?? new Set()
    CLASSES.set(verb, classes.add(name))
    note(verb, verb, 'base')
  }
for (const base of [...CLASSES.keys(), ...IRREGULAR_BY_BASE.keys()]) {
  const irregular = IRREGULAR_BY_BASE.get(base)
  note(base, base, 'base')
  note(withIng(base), base, 'ing')
  note(withS(base), base, 'third')
  note(irregular?.past ?? withEd(base), base, 'past')
  note(irregular?.participle ?? withEd(base), base, 'participle')
}

/** @returns the trade verb a word is a form of; of several readings the base form. Lower case expected. */
export const verbOf = (word: string): VerbReading | undefined => READINGS.get(word)

/** @returns the groups of a base form; empty for a verb outside the lexicon. */
export const classesOf = (base: string): ReadonlySet<ActionClass> => CLASSES.get(base) ?? new Set()

/** @returns a likely base form of an unknown -ing or -ed word: "degaussing" gives "degauss", "filing" gives "file". */
export const guessBase = (word: string): string => {
  const stem = word.replace(/(?:ing|ed)$/, '')
  if (stem === word || stem.length < 3) return word
  if (/([bdgklmnprt])\1$/.test(stem) && !/(?:ll|ss|zz)$/.test(stem)) return stem.slice(0, -1)
  return /[^aeiou][aeiou][^aeiouwxy]$/.test(stem) && VOWEL.test(stem) ? `${stem}e` : stem
}

/** @returns the word without a plural s: "washers" gives "washer". Words that only look plural stay. */
export const singular = (word: string): string => {
  if (word.length < 4 || !word.endsWith('s') || /(?:ss|us|is|ous)$/.test(word)) return word
  if (
    /(?:pliers|scissors|glasses|goggles|shears|snips|tweezers|grips|forceps|calipers|overalls|muffs|gloves)$/.test(word)
  )
    return word
  if (/(?:ches|shes|sses|xes)$/.test(word)) return word.slice(0, -2)
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`
  return word.slice(0, -1)
}
