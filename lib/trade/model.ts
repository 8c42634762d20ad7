/** A logistic model for several outcomes over named binary features. Made by `scripts/fit-draft.mjs`; see there how. */
export type Model = {
  /** Feature names, separated by blanks; blanks inside a name are written `_`. */
  readonly features: string
  /** An outcome's weights in hundredths, one a feature, separated by blanks. */
  readonly weights: Readonly<Record<string, string>>
  /** Bend of the probabilities: share of right ones among left-out cases, as slope and offset of the log odds. */
  readonly calibration: Readonly<Record<string, readonly [slope: number, offset: number]>>
  /** From which probability on an outcome is taken: best F1 over left-out cases. */
  readonly thresholds: Readonly<Record<string, number>>
}

/** A model unpacked for use. */
export type Scorer<Outcome extends string> = {
  /** Names of the features, by index. */
  readonly names: readonly string[]
  /** @returns index of a feature, undefined where the model does not know it */
  readonly indexOf: (feature: string) => number | undefined
  /** @returns indices of the features the model knows, in the order given */
  readonly indicesOf: (features: readonly string[]) => readonly number[]
  /** @returns what each feature adds to the log odds of an outcome, by index */
  readonly weights: (outcome: Outcome) => Float64Array
  /** Log odds of an outcome given indices of features that hold. */
  readonly logOdds: (outcome: Outcome, indices: readonly number[]) => number
  /** @returns probability as fitted, 0 to 1 */
  readonly probability: (outcome: Outcome, indices: readonly number[]) => number
  /** @returns probability bent to what held on left-out cases, 0 to 1 */
  readonly confidence: (outcome: Outcome, logOdds: number) => number
  readonly threshold: (outcome: Outcome) => number
}

/**
 * Tells of a feature by its parts: "w:put the" is (`w`, `put`, `the`). Parts are words or numbers that stand for them.
 * Saves joining names that the model mostly does not know.
 */
export type Emit<Part = string> = (prefix: string, a?: Part, b?: Part, c?: Part, d?: Part) => void

/** A model's features by their parts, each part a number, so that a word is looked up once however many features it is in. */
export type PartsIndex = {
  /** @returns the number that stands for a part, 0 where no feature has it */
  readonly partOf: (part: string) => number
  /** @returns index of a feature, -1 where the model does not know it */
  readonly at: (prefix: string, a?: number, b?: number, c?: number, d?: number) => number
}

/** Mixes one more number into a hash. Multipliers are odd and have about half their bits set; values from memory. */
const mixed = (hash: number, part: number, factor: number): number => {
  const product = Math.imul(hash ^ part, factor)
  return product ^ (product >>> 15)
}

const FIRST = 0x9e3779b1
const SECOND = 0x85ebca6b

/** Stands for a part that no feature has, and for no part at all. */
const [UNKNOWN, NONE] = [0, -1]

/**
 * Looks features up by their parts: one open table of hashes, so that asking for what the model does not know, as nearly
 * every question does, costs one read. A feature is told by 64 bits of hash.
 *
 * @param names of the features, by index; parts are told apart by a colon after the prefix and blanks between; an empty
 *   name is none
 */
export const toPartsIndex = (names: readonly string[]): PartsIndex => {
  const parts = new Map<string, number>()
  const prefixes = new Map<string, number>()
  const numberIn = (numbers: Map<string, number>, text: string): number => {
    const known = numbers.get(text) ?? numbers.size + 1
    numbers.set(text, known)
    return known
  }
  const mask = 2 ** Math.ceil(Math.log2(names.length * 3 + 2)) - 1
  const [hashes, checks] = [new Int32Array(mask + 1), new Int32Array(mask + 1)]
  const indices = new Int32Array(mask + 1).fill(-1)
  /** A byte a place, 0 where there is none: small enough to stay near the processor, and mostly all that is asked. */
  const tags = new Uint8Array(mask + 1)
  const tagOf = (hash: number): number => (hash >>> 24) | 1
  const hashOf = (prefix: number, a: number, b: number, c: number, d: number): number =>
    mixed(mixed(mixed(mixed(prefix, a, FIRST), b, FIRST), c, FIRST), d, FIRST)
  const checkOf = (prefix: number, a: number, b: number, c: number, d: number): number =>
    mixed(mixed(mixed(mixed(prefix, d, SECOND), c, SECOND), b, SECOND), a, SECOND)
  names.forEach((name, index) => {
    if (name === '') return
    const colon = name.indexOf(':')
    const prefix = numberIn(prefixes, colon < 0 ? name : name.slice(0, colon))
    const [a = NONE, b = NONE, c = NONE, d = NONE] = (colon < 0 ? [] : name.slice(colon + 1).split(' ')).map(part =>
      numberIn(parts, part),
    )
    const [hash, check] = [hashOf(prefix, a, b, c, d), checkOf(prefix, a, b, c, d)]
    let place = hash & mask
    while (tags[place] !== 0 && (hashes[place] !== hash || checks[place] !== check)) place = (place + 1) & mask
    hashes[place] = hash
    checks[place] = check
    indices[place] = index
    tags[place] = tagOf(hash)
  })
  return {
    partOf: part => parts.get(part) ?? UNKNOWN,
    at: (prefix, a = NONE, b = NONE, c = NONE, d = NONE) => {
      if (a === UNKNOWN || b === UNKNOWN || c === UNKNOWN || d === UNKNOWN) return -1
      const known = prefixes.get(prefix)
      if (known === undefined) return -1
      const hash = hashOf(known, a, b, c, d)
      const tag = tagOf(hash)
      for (let place = hash & mask; tags[place] !== 0; place = (place + 1) & mask)
        if (tags[place] === tag && hashes[place] === hash && checks[place] === checkOf(known, a, b, c, d))
          return indices[place] ?? -1
      return -1
    },
  }
}

/** @returns the name of a feature told by its parts. */
export const nameOfParts = (prefix: string, a?: string, b?: string, c?: string, d?: string): string => {
  const parts = [a, b, c, d].filter(part => part !== undefined)
  return parts.length === 0 ? prefix : `${prefix}:${parts.join(' ')}`
}

/** @returns the probability of log odds */
export const sigmoid = (z: number): number => 1 / (1 + Math.exp(-z))

/** @returns the log odds of a probability */
export const logit = (p: number): number => Math.log(p / (1 - p))

/** Reads whole numbers separated by blanks, one after the other: several times faster than splitting for 20,000 of them. */
const wholeNumbers = (text: string, count: number): Float64Array => {
  const numbers = new Float64Array(count)
  let [at, n, sign] = [0, 0, 1]
  for (let i = 0; i <= text.length; i++) {
    const code = i < text.length ? text.charCodeAt(i) : 32
    if (code === 45) sign = -1
    else if (code !== 32) n = n * 10 + code - 48
    else {
      numbers[at++] = sign * n
      n = 0
      sign = 1
    }
  }
  return numbers
}

/** Unpacks a model. */
export const toScorer = <Outcome extends string>(model: Model): Scorer<Outcome> => {
  const names = model.features.split(' ').map(name => name.replaceAll('_', ' '))
  const index = new Map(names.map((name, i) => [name, i]))
  const weights = new Map(
    Object.entries(model.weights).map(([outcome, row]) => [
      outcome,
      wholeNumbers(row, names.length).map(hundredths => hundredths / 100),
    ]),
  )
  const logOdds = (outcome: Outcome, indices: readonly number[]): number => {
    const row = weights.get(outcome)
    let sum = 0
    if (row !== undefined) for (const i of indices) sum += row[i] ?? 0
    return sum
  }
  return {
    names,
    indexOf: feature => index.get(feature),
    indicesOf: features => {
      const found: number[] = []
      for (const feature of features) {
        const i = index.get(feature)
        if (i !== undefined) found.push(i)
      }
      return found
    },
    weights: outcome => weights.get(outcome) ?? new Float64Array(names.length),
    logOdds,
    probability: (outcome, indices) => sigmoid(logOdds(outcome, indices)),
    confidence: (outcome, z) => {
      const [slope, offset] = model.calibration[outcome] ?? [1, 0]
      return sigmoid(slope * z + offset)
    },
    threshold: outcome => model.thresholds[outcome] ?? 0.5,
  }
}
