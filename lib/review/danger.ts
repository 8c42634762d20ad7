import type { Mark } from '@/lib/procedure/mark'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import type { Hazard } from '@/lib/trade/hazard'
import { MACHINE_HAZARDS, type MachineHazards } from '@/lib/trade/hazards-machine'
import { logit } from '@/lib/trade/model'
import { isAgainst } from './answering'
import { atSteps, inSteps } from './chunks'
import { sheetOdds, stepOdds } from './hazard-odds'
import { HAZARDS, rowsOn } from './hazard-signs'
import { listedThing } from './listed'
import { onceFor, onceForLast, onceForText } from './memo'
import { bringsPower } from './power'
import { stemIndex } from './stem-index'
import { signsIn, waits } from './step-signs'
import { stemOf } from './words'

/** A hazard and the steps that bring it, with every caution that speaks of it. */
export type Presence = {
  readonly hazard: Hazard
  /** The first step that signals it, or, where none does, that hints at it. */
  readonly step: SheetStep
  /** Whether that step signals it in so many words, so that a caution has to come by then. */
  readonly isPlain: boolean
  /** Whether only steps that make safe speak of it: power cut, locked, proved dead. */
  readonly isMet: boolean
  /** The last step that signals or hints at it: a caution after that one is late in any case. */
  readonly last: SheetStep
  /** Numbers of all such steps. */
  readonly steps: ReadonlySet<number>
  /** Cautions against it, with the number of the step they stand before (0: at the front). */
  readonly cautions: readonly { readonly mark: Mark; readonly number: number }[]
  /** Whether something worn, set up or listed answers it, and from which step on (0: listed). */
  readonly protectedFrom: number | undefined
}

const protectedBy = onceForText(
  (text: string): ReadonlySet<Hazard> => new Set(HAZARDS.filter(({ protection }) => protection?.test(text) === true)),
)

const equipmentOf = ({ heading }: Sheet): string => `${heading.title} ${heading.equipment}`

/** Machines that work in the open: nobody starts them in a closed room without a word of it. Common practice, no source. */
const OUTDOOR =
  /\b(?:tractor|loader|skid[- ]?steer|excavator|digger|backhoe|dozer|combine|harvester|baler|telehandler|outboard|snowmobile|dumper|grader|road roller|sawmill|stump grinder|log splitter|wood ?chipper|concrete pump|zero-turn|(?:riding|ride-on|garden) (?:mower|tractor)|cent(?:er|re) pivot|road sweeper|hedge cutter|irrigation|brush ?cutter|chain ?saw)\b/i

/** Which hazards such equipment can have at all, and which of them a mere hint can show there, by their index in HAZARDS. */
const hereOn = onceForText((machine: string) => ({
  isHere: HAZARDS.map(
    ({ id, equipment }) => equipment?.test(machine) !== false && !(id === 'carbon-monoxide' && OUTDOOR.test(machine)),
  ),
  isHinted: HAZARDS.map(({ hintsIn }) => hintsIn?.test(machine) !== false),
}))

/** What the fitted model says of a step: log odds from which on a hazard is there, and below which the lexicon's sign is not believed. */
const SURE = logit(0.9)
const DOUBTED = logit(0.01)

const INDEX = new Map(HAZARDS.map((hazard, i) => [hazard, i]))

type Seen = { plain?: SheetStep; hinted?: SheetStep; last: SheetStep; isMet: boolean; readonly steps: Set<number> }

/** What is asleep while the power is off: a guard may come off, a blade be handled by its hub. */
const BY_POWER = new Set(['rotating-parts', 'flying-particles', 'engine-saw', 'radiation'])
/** What waits behind a valve or in a can until it is let out. */
const STORED = new Set(['pressure', 'capacitor'])

/** A step that makes safe brings no danger of its own; with the power off, parts that turn by it only hint at theirs. */
const weightOf = ({ id }: Hazard, isCut: boolean, isOff: boolean): 'plain' | 'hinted' | undefined => {
  if (isCut) return id === 'electric-shock' ? 'hinted' : BY_POWER.has(id) ? undefined : 'plain'
  return isOff && BY_POWER.has(id) ? 'hinted' : 'plain'
}

/** The first step that names a listed thing: there its danger begins, not where the list stands. */
const firstUse = (text: string, sheet: Sheet): SheetStep | undefined => {
  const [number] = stemIndex(sheet.steps).get(stemOf(listedThing(text).head)) ?? []
  return number === undefined ? undefined : sheet.steps[number - 1]
}

const seenIn = (sheet: Sheet): ReadonlyMap<Hazard, Seen> => {
  const all = new Map<Hazard, Seen>()
  const machine = equipmentOf(sheet)
  const note = (hazard: Hazard, step: SheetStep, key: 'plain' | 'hinted', isMade = false) => {
    const seen = all.get(hazard) ?? { last: step, isMet: true, steps: new Set<number>() }
    seen.isMet &&= isMade
    seen.steps.add(step.number)
    all.set(hazard, seen)
    if (seen[key] === undefined || step.number < seen[key].number) seen[key] = step
    if (step.number > seen.last.number) seen.last = step
  }
  const here = rowsOn(machine)
  const known = hereOn(machine)
  const indexOf = (hazard: Hazard): number => INDEX.get(hazard) ?? -1
  const isHere = (hazard: Hazard): boolean => known.isHere[indexOf(hazard)] === true
  const isHintedHere = (hazard: Hazard): boolean => known.isHinted[indexOf(hazard)] === true
  const end = sheet.steps.at(-1)
  let isOff = false
  let isPulled = false
  const oddsWith = stepOdds(machine)
  const ahead = sheetOdds(machine, [...sheet.tools, ...sheet.materials].map(({ text }) => text).join('\n'))
  const signs = signsIn(sheet)
  const firstCut = signs.find(own => own.isCut)?.step.number ?? 0
  for (const {
    step,
    isCut,
    isIdle,
    isPowered,
    isWaiting,
    isRelieving,
    isOnlySwitched,
    isUnplugging,
    plain,
    hinted,
    listed,
    inContext,
  } of signs) {
    // Run as on any other day before it is shut down, or only switched on: nobody is near yet.
    const isUsual = isPowered && (step.number < firstCut || isOnlySwitched)
    const isLetOut = ({ id }: Hazard): boolean => isRelieving && STORED.has(id)
    const odds = isOff ? oddsWith.off(step.mark.text) : oddsWith.on(step.mark.text)
    const oddsOf = (i: number): number => (ahead[i] ?? 0) + (odds[i] ?? 0)
    const isDoubted = (hazard: Hazard): boolean => oddsOf(indexOf(hazard)) < DOUBTED
    for (let i = 0; i < ahead.length; i++) {
      const hazard = !isIdle && !isWaiting && oddsOf(i) >= SURE && known.isHere[i] === true ? HAZARDS[i] : undefined
      if (hazard !== undefined && hazard.id !== 'test-voltage') note(hazard, step, 'hinted', isCut)
    }
    isOff = (isCut || isOff) && !isPowered
    isPulled = isUnplugging || (isPulled && !isPowered)
    for (const hazard of plain) {
      if (isDoubted(hazard)) continue
      const weight = isHere(hazard) ? weightOf(hazard, isCut, isOff) : undefined
      if (weight !== undefined)
        note(
          hazard,
          step,
          isWaiting || (isUsual && BY_POWER.has(hazard.id)) || isLetOut(hazard) ? 'hinted' : weight,
          isCut || isLetOut(hazard),
        )
    }
    for (const hazard of hinted)
      if (
        !isDoubted(hazard) &&
        isHintedHere(hazard) &&
        !(hazard.id === 'electric-shock' && isUnplugging) &&
        !(isPulled && BY_POWER.has(hazard.id))
      )
        note(hazard, step, 'hinted', isCut || isLetOut(hazard) || (isPowered && hazard.id === 'electric-shock'))
    for (const { row, hazard, isHint } of inContext) {
      if (isDoubted(hazard)) continue
      if (!here.has(row) || !isHere(hazard) || (hazard.id === 'electric-shock' && isCut)) continue
      // A mere hint of what turns is nothing while the power is off.
      if (isHint && isOff && BY_POWER.has(hazard.id)) continue
      const weight = weightOf(hazard, isCut, isOff)
      const isMade = isCut || (hazard.id === 'electric-shock' && isPulled)
      if (weight !== undefined) note(hazard, step, isHint ? 'hinted' : weight, isMade)
    }
    for (const { text, plain, hinted } of listed) {
      const use = firstUse(text, sheet)
      const isPlainUse = use !== undefined && !waits(use.mark.text)
      for (const hazard of plain)
        if (isHere(hazard) && (use !== undefined || !isDoubted(hazard)))
          note(hazard, use ?? step, isPlainUse ? 'plain' : 'hinted')
      for (const hazard of hinted) if (isHintedHere(hazard)) note(hazard, use ?? step, 'hinted')
      // Listed and never named: when it is in use nobody knows, so no caution is late.
      if (use === undefined && end !== undefined)
        for (const hazard of plain) if (isHere(hazard) && !isDoubted(hazard)) note(hazard, end, 'hinted')
    }
  }
  return all
}

/** Hazards a machine is known for, where what is done fits. */
const rowsFor = onceForText((machine: string): readonly MachineHazards[] =>
  MACHINE_HAZARDS.filter(row => row.machine.test(machine) && row.not?.test(machine) !== true),
)
const sayingIn = inSteps(({ mark, checks, tools, materials }) =>
  [mark, ...checks, ...tools, ...materials].map(({ text }) => text),
)

/** A scope that leaves something to others, or leaves it shut. */
const LEFT_ALONE =
  /\b(?:left to|leave|not (?:touched|covered|opened|part)|stays? (?:closed|shut)|licen[cs]ed|go(?:es)? to)\b/i

/** @returns hazards the machine is known for and neither step nor caution speaks of. */
export const unspoken = (sheet: Sheet): readonly Hazard[] => {
  const left = sheet.heading.scope.split(/[.;]/).filter(part => LEFT_ALONE.test(part))
  const rows = rowsFor(equipmentOf(sheet)).filter(({ machine }) => !left.some(part => machine.test(part)))
  if (rows.length === 0) return []
  const seen = new Set(presences(sheet).map(({ hazard }) => hazard.id))
  const cautions = [
    ...sheet.loose.filter(({ kind }) => kind === 'caution'),
    ...cautionsIn(sheet).map(({ mark }) => mark),
  ]
  const known = rows
    .filter(({ and }) => and === undefined || sayingIn(sheet).some(text => and.test(text)))
    .flatMap(({ hazards }) => hazards)
  return HAZARDS.filter(
    hazard =>
      known.includes(hazard.id) && !seen.has(hazard.id) && !cautions.some(caution => isAgainst(caution, hazard)),
  )
}

/** @returns the cautions of a sheet's steps with the number of their step, in order. */
export const cautionsIn = atSteps(({ cautions }) => cautions.map(mark => ({ mark })))

/** Whether a step sets going what was still: a caution against moving parts is in time there. */
export const isPowering = ({ mark }: SheetStep): boolean => bringsPower(mark.text)

/** Every hazard that a caution speaks of. */
const answeredBy = onceFor((caution: Mark): readonly Hazard[] => HAZARDS.filter(hazard => isAgainst(caution, hazard)))

/** @returns hazards in the order of the steps that bring them, each once. */
export const presences = onceForLast((sheet: Sheet): readonly Presence[] => {
  const placed = [
    ...sheet.loose.filter(({ kind }) => kind === 'caution').map(mark => ({ mark, number: 0 })),
    ...cautionsIn(sheet),
  ]
  const answers = new Map<Hazard, { mark: Mark; number: number }[]>()
  for (const own of placed)
    for (const hazard of answeredBy(own.mark)) {
      const known = answers.get(hazard)
      if (known === undefined) answers.set(hazard, [own])
      else known.push(own)
    }
  const guards = protectedFrom(sheet)
  return [...seenIn(sheet)].map(([hazard, { plain, hinted, last, isMet, steps }]) => ({
    hazard,
    step: plain ?? hinted ?? last,
    isPlain: plain !== undefined,
    isMet,
    last,
    steps,
    cautions: answers.get(hazard) ?? [],
    protectedFrom: guards.get(hazard),
  }))
})

const protectingIn = atSteps(({ mark, checks }) =>
  [mark, ...checks].flatMap(({ text }) => [...protectedBy(text)]).map(hazard => ({ hazard })),
)

/** From which step on something worn, set up or listed answers a hazard; 0 where it is only listed. */
const protectedFrom = (sheet: Sheet): ReadonlyMap<Hazard, number> => {
  const from = new Map<Hazard, number>()
  for (const { hazard, number } of protectingIn(sheet)) if (!from.has(hazard)) from.set(hazard, number)
  for (const { text } of sheet.tools) for (const hazard of protectedBy(text)) if (!from.has(hazard)) from.set(hazard, 0)
  return from
}
