import { writeFileSync } from 'node:fs'
import { spokenAgainst } from '@/lib/review/answering-words'
import {
  cautionFeatures,
  listFeatures,
  machineFeatures,
  placeFeatures,
  stepFeatures,
} from '@/lib/review/hazard-feature'
import type { HazardModel } from '@/lib/review/hazard-model'
import { LEXICON } from '@/lib/review/hazard-signs'
import { bringsPower, cutsPower } from '@/lib/review/power'
import { warningFeatures } from '@/lib/review/warning'
import { sigmoid } from '@/lib/trade/model'
import { f1At, fitLogistic } from '../fit-draft/logistic'
import { type LabelledSheet, readLoneLines, readSheets, readSpokenLines, readTalkLines } from './read'

const IDS = LEXICON.map(({ id }) => id)
const TALKS = 'scripts/fit-draft/talks'
const FOLDS = 5
const ROUNDS = 300
const PENALTY = 0.17
/** How much a line about another hazard counts as one that does not bring this one: it may bring several. */
const OTHER = 0.2

/** How strongly a kind of feature counts: what the lexicon's signs say most, what the lists hold least. */
const SCALES: Readonly<Record<string, number>> = {
  w2: 0.7,
  c2: 0.7,
  m: 0.6,
  l: 0.3,
  sign: 1.5,
  here: 1.5,
  known: 1.5,
  against: 1.5,
}

/** A step or caution; `of` says for one hazard whether it holds, undefined where nobody can say. */
type Row = {
  readonly sheet: number
  readonly features: readonly string[]
  readonly of: (id: string) => { readonly holds: boolean; readonly weight: number } | undefined
}

const stepRows = ({ machine, lists, lines }: LabelledSheet, sheet: number): readonly (Row | undefined)[] => {
  let isOff = false
  return lines.map(({ text, isCaution, sure, perhaps }): Row | undefined => {
    if (isCaution) return undefined
    const features = [
      ...stepFeatures(text),
      ...machineFeatures(machine),
      ...listFeatures(lists),
      ...placeFeatures(text, machine, isOff),
    ]
    isOff = cutsPower(text) || (isOff && !bringsPower(text))
    return {
      sheet,
      features,
      of: id => (perhaps.includes(id) ? undefined : { holds: sure.includes(id), weight: 1 }),
    }
  })
}

/** Half of the cautions have their hazard in a field of its own, by one of its names. */
const cautionRow = (text: string, ids: readonly string[], turn: number): readonly string[] => {
  const hazard = LEXICON.find(({ id }) => id === ids[0])
  const names = hazard === undefined ? [] : [hazard.id, ...hazard.alias]
  const field = turn % 2 === 0 ? undefined : names[turn % names.length]
  return cautionFeatures(text, field, spokenAgainst(text, field))
}

const cautionRows = ({ lines }: LabelledSheet, sheet: number): readonly (Row | undefined)[] =>
  lines.map(({ text, isCaution, sure }, i): Row | undefined =>
    isCaution
      ? { sheet, features: cautionRow(text, sure, sheet + i), of: id => ({ holds: sure.includes(id), weight: 1 }) }
      : undefined,
  )

/** @returns for each outcome the weights of features by name, fitted to some rows. */
const fitted = (rows: readonly Row[], outcomes: readonly string[] = IDS) => {
  const counts = new Map<string, number>()
  for (const { features } of rows) for (const name of features) counts.set(name, (counts.get(name) ?? 0) + 1)
  const names = [...counts].filter(([, count]) => count > 1).map(([name]) => name)
  const index = new Map(names.map((name, i) => [name, i]))
  const scales = names.map(name => SCALES[name.split(':')[0] ?? ''] ?? 1)
  const indices = rows.map(({ features }) => features.flatMap(name => index.get(name) ?? []))
  const weights = outcomes.map(id => {
    const examples = rows.flatMap((row, i) => {
      const label = row.of(id)
      return label === undefined ? [] : [{ features: indices[i] ?? [], isTrue: label.holds, weight: label.weight }]
    })
    return fitLogistic(examples, scales, PENALTY, ROUNDS)
  })
  return { names, index, weights }
}

type Judged = readonly (Float64Array | undefined)[]

const judge = ({ index, weights }: ReturnType<typeof fitted>, row: Row | undefined): Float64Array | undefined => {
  if (row === undefined) return undefined
  const own = row.features.flatMap(name => index.get(name) ?? [])
  return Float64Array.from(weights, one => sigmoid(own.reduce((sum, i) => sum + (one[i] ?? 0), 0)))
}

/** Prints how many cautions are missed when each is dropped in turn, and how many are asked for wrongly. */
const report = (sheets: readonly LabelledSheet[], steps: readonly Judged[], cautions: readonly Judged[]): void => {
  for (const [present, answered] of [0.5, 0.7, 0.9].flatMap(p => [0.1, 0.25].map(a => [p, a] as const))) {
    let [asked, count, found, all] = [0, 0, 0, 0]
    sheets.forEach(({ lines }, s) => {
      const there = IDS.filter((_, h) => steps[s]?.some(p => (p?.[h] ?? 0) >= present))
      const missing = (without: number) =>
        there.filter(id => !cautions[s]?.some((p, i) => i !== without && (p?.[IDS.indexOf(id)] ?? 0) >= answered))
      const before = missing(-1)
      asked += before.length
      count += lines.filter(({ isCaution }) => !isCaution).length
      lines.forEach(({ isCaution, sure }, i) => {
        const alone = sure.filter(
          id =>
            lines.some(line => !line.isCaution && line.sure.includes(id)) &&
            !lines.some((line, j) => j !== i && line.isCaution && line.sure.includes(id)),
        )
        if (!isCaution || alone.length === 0) return
        all++
        if (missing(i).some(id => alone.includes(id) && !before.includes(id))) found++
      })
    })
    console.log(
      `left out: there from ${present}, answered from ${answered}: ${found} of ${all} dropped cautions found, ${asked} asked for wrongly in ${count} steps`,
    )
  }
}

const spoken = (sheet: number, text: string, isWarning: boolean): Row => ({
  sheet,
  features: warningFeatures(text),
  of: () => ({ holds: isWarning, weight: 1 }),
})

/** Every sentence of the labelled talks (fit-draft/talks), each told whether a caution was taken from it. */
const warningRows = (): readonly Row[] =>
  readTalkLines(TALKS).map(({ talk, text, isWarning }) => spoken(talk, text, isWarning))

/** Steps and cautions as sheets word them; they count in no fold. */
const writtenRows = (sheets: readonly LabelledSheet[]): readonly Row[] => [
  ...sheets.flatMap(({ lines }) => lines.map(({ text, isCaution }) => spoken(-1, text, isCaution))),
  ...readSpokenLines('scripts/fit-hazards/spoken').map(({ text, isWarning }) => spoken(-1, text, isWarning)),
]

/** Prints how well warnings are told from other sentences of talks left out. */
const reportWarnings = (rows: readonly Row[], written: readonly Row[]): void => {
  const judged: { p: number; isTrue: boolean }[] = []
  for (let fold = 0; fold < FOLDS; fold++) {
    const model = fitted([...rows.filter(({ sheet }) => sheet % FOLDS !== fold), ...written], ['warning'])
    for (const row of rows)
      if (row.sheet % FOLDS === fold)
        judged.push({ p: judge(model, row)?.[0] ?? 0, isTrue: row.of('warning')?.holds === true })
  }
  for (const at of [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8]) {
    const { f1, precision, recall } = f1At(judged, at)
    console.log(
      `warnings left out, from ${at}: F1 ${f1.toFixed(2)}, precision ${precision.toFixed(2)}, recall ${recall.toFixed(2)}`,
    )
  }
}

/** Weights in tenths, those that say nothing left out. */
const pack = ({ names, weights }: ReturnType<typeof fitted>, outcomes: readonly string[]): HazardModel => ({
  hazards: outcomes,
  weights: names.flatMap((name, i) => {
    const pairs = weights.flatMap((one, h) => {
      const tenths = Math.round((one[i] ?? 0) * 10)
      return tenths > 1 || tenths < -1 ? [h, tenths] : []
    })
    return pairs.length === 0 ? [] : [[name.replaceAll(' ', '_'), ...pairs].join(' ')]
  }),
})

/** See scripts/fit-hazards.mjs. */
export const fitHazards = (args: readonly string[]): void => {
  const sheets = readSheets('scripts/fit-hazards/sheets')
  const lone = readLoneLines('scripts/fit-hazards/lines')
  const ofLone = (hazard: string, holds: boolean) => (id: string) =>
    id === hazard ? { holds, weight: 1 } : { holds: false, weight: OTHER }
  const loneSteps = lone
    .filter(({ sign }) => sign !== '!')
    .map(
      ({ hazard, sign, machine, text }): Row => ({
        sheet: -1,
        features: [...stepFeatures(text), ...machineFeatures(machine), ...placeFeatures(text, machine, false)],
        of: ofLone(hazard, sign === '+'),
      }),
    )
  const loneCautions = lone
    .filter(({ sign }) => sign === '!')
    .map(
      ({ hazard, text }, i): Row => ({ sheet: -1, features: cautionRow(text, [hazard], i), of: ofLone(hazard, true) }),
    )
  const [steps, cautions] = [sheets.map(stepRows), sheets.map(cautionRows)]
  const rowsOf = (list: readonly (readonly (Row | undefined)[])[]) => list.flat().filter(row => row !== undefined)
  const warnings = warningRows()
  const only = args.find(arg => arg.endsWith('-model'))
  if (!args.includes('--write')) {
    if (only !== 'hazard-model') reportWarnings(warnings, writtenRows(sheets))
    if (only === 'warning-model') return
    const [stepsJudged, cautionsJudged]: Judged[][] = [[], []]
    for (let fold = 0; fold < FOLDS; fold++) {
      const isIn = ({ sheet }: Row) => sheet % FOLDS !== fold
      const ofSteps = fitted([...rowsOf(steps).filter(isIn), ...loneSteps])
      const ofCautions = fitted([...rowsOf(cautions).filter(isIn), ...loneCautions])
      sheets.forEach((_, s) => {
        if (s % FOLDS !== fold) return
        if (stepsJudged) stepsJudged[s] = steps[s]?.map(row => judge(ofSteps, row)) ?? []
        if (cautionsJudged) cautionsJudged[s] = cautions[s]?.map(row => judge(ofCautions, row)) ?? []
      })
    }
    report(sheets, stepsJudged ?? [], cautionsJudged ?? [])
    return
  }
  for (const [name, rows, outcomes] of [
    ['hazard-model', [...rowsOf(steps), ...loneSteps], IDS],
    ['caution-model', [...rowsOf(cautions), ...loneCautions], IDS],
    ['warning-model', [...warnings, ...writtenRows(sheets)], ['warning']],
  ] as const) {
    if (only !== undefined && name !== only) continue
    const model = pack(fitted(rows, outcomes), outcomes)
    console.log(`${name}: ${model.weights.length} features`)
    writeFileSync(`lib/review/${name}.json`, `${JSON.stringify(model, null, 1)}\n`)
  }
}
