import { addPhrase, emptyTrie, type Trie } from './trie'
import { UNITS } from './unit-table'

/** A word that names more than one unit; resolve.ts settles which. */
export type Ambiguous =
  | 'pound'
  | 'ounce'
  | 'fluid ounce'
  | 'mil'
  | 'degree'
  | 'cup'
  | 'pint'
  | 'quart'
  | 'gallon'
  | 'micron'
  | 'kilo'
  | 'rev'
  | 'inch of vacuum'

/** What a unit's name says. */
export type UnitWord = {
  /** UCUM code, where the name is certain. */
  readonly code?: string
  readonly ambiguous?: Ambiguous
  /** Whether the name is a singular, a plural, or both. */
  readonly count: 'one' | 'many' | 'any'
  /** Written as a symbol that needs a figure before it: one letter, or a sign. */
  readonly isSymbol?: boolean
  /** What the recogniser wrote, where it is a slip the trade knows. */
  readonly slip?: string
}

/** Names that are not certain. `singular/plural`. */
const AMBIGUOUS: readonly (readonly [Ambiguous, string])[] = [
  ['pound', 'pound/pounds, lb/lb, lb/lbs, pounder/pounders, #/#'],
  ['ounce', 'ounce/ounces, oz/oz'],
  ['fluid ounce', 'fluid ounce/fluid ounces, fl oz/fl oz, liquid ounce/liquid ounces'],
  ['mil', 'mil/mil, mil/mils, mill/mill, mill/mills'],
  ['degree', 'degree/degrees, deg/deg, °/°, deg/degs'],
  ['cup', 'cup/cups, cupful/cupfuls'],
  ['pint', 'pint/pints, pt/pts'],
  ['quart', 'quart/quarts, qt/qt, qt/qts'],
  ['gallon', 'gallon/gallons, gal/gal, gal/gals'],
  ['micron', 'micron/microns'],
  ['kilo', 'kilo/kilos'],
  ['rev', 'rev/revs'],
]

/** What recognisers write for units spoken in the trade. @source common practice, no source */
const SLIPS: readonly (readonly [code: string, heard: string])[] = [
  [
    'N.m',
    'new to meters, new to metres, new to meter, new ton meters, new ton metres, new tin meters, newt on meters, newt meters, neutron meters, neutron metres, newton leaders, newton liters, newton meets her, nude and meters, noon meters, nuten meters, newtons meters, newtons metres, newtons meter, newton mita, newton beaters, knew ton meters, noodle meters, new turn meters, mutant meters, newton matters, new to matters, new to maters, new tan meters, newton meeters, no ton meters',
  ],
  [
    '[ft_i].[lbf_av]',
    'foot bounds, foot pawns, put pounds, food pounds, foot founds, foot pound s, football pounds, foot towns, foots pounds, fort pounds, foot pans, fit pounds',
  ],
  [
    '[in_i].[lbf_av]',
    'inch bounds, inch founds, hinge pounds, itch pounds, ench pounds, inched pounds, inch towns, each pounds of torque',
  ],
  ['[psi]', 'p s i, ps i, p s eye, psy, p si, p s i s, psis, p. s. i.'],
  ['{rev}/min', 'r p m, rp m, r p ms, r p m s, our p m, are p m, our pm, are pm, rpm s, r. p. m.'],
  ['mL', 'c c, c cs, see sees, c c s, cc s, c. c.'],
  [
    'mm',
    'm m, milli meters, mili meters, milli metres, mill meters, milly meters, millie meters, mil meters, mill a meters, milla meters, m. m.',
  ],
  ['kPa', 'kilo pascals, k p a, kilo pascal, killer pascals'],
  ['uF', 'micro farads, micro farad, micro ferrets, micro ferrads, m f d, micro fairads'],
  ['[mil_i]', 'thow, thaw, thows, thous, tho'],
  ['Ohm', 'owms, oms'],
  ['kOhm', 'kill ohms, kilo homes, k ohms'],
  ['MOhm', 'make ohms, mega homes, mega ohms, meg ohms'],
  ['[qt_us]', 'quarts us, kwarts'],
]

const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/metre/g, 'meter'],
  [/litre/g, 'liter'],
]

const plural = (name: string): string => {
  if (name.endsWith('inch')) return `${name}es`
  if (name.endsWith('foot')) return `${name.slice(0, -4)}feet`
  return `${name}s`
}

const spellings = (name: string): readonly string[] => {
  const other = SPELLINGS.reduce((text, [from, to]) => text.replace(from, to), name)
  return other === name ? [name] : [name, other]
}

const addNames = (trie: Trie<UnitWord>, pair: string, meaning: Omit<UnitWord, 'count'>): void => {
  const [one = '', many = plural(one)] = pair.trim().split('/')
  if (one === '') return
  for (const name of spellings(one)) addPhrase(trie, name, { ...meaning, count: one === many ? 'any' : 'one' })
  if (one !== many) for (const name of spellings(many)) addPhrase(trie, name, { ...meaning, count: 'many' })
}

const build = (): Trie<UnitWord> => {
  const trie = emptyTrie<UnitWord>()
  for (const [ambiguous, names] of AMBIGUOUS) for (const pair of names.split(',')) addNames(trie, pair, { ambiguous })
  addNames(trie, 'inch of vacuum/inches of vacuum', { ambiguous: 'inch of vacuum' })
  for (const { code, names, written } of UNITS) {
    for (const pair of names) addNames(trie, pair, { code })
    for (const sign of written)
      addPhrase(
        trie,
        sign,
        {
          code,
          count: 'any',
          ...(/^(?:\p{L}|["″′'°].*|in|h|s|ma|ci|ft|yd|lt|hr|gr|gm|mo|mos)$/u.test(sign) ? { isSymbol: true } : {}),
        },
        true,
      )
  }
  for (const [code, heard] of SLIPS)
    for (const slip of heard.split(',')) addPhrase(trie, slip.trim(), { code, count: 'many', slip: slip.trim() })
  return trie
}

/** Spoken and written names of every unit of the table, and the slips recognisers make of them. */
export const UNIT_WORDS: Trie<UnitWord> = build()
