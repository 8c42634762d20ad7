import { DEFERS, LICENSED, type LicensedWork } from '@/lib/trade/licensed'
import { actionsOf } from '../action'
import { atSteps, inSteps } from '../chunks'
import { quote } from '../late'
import { onceForText } from '../memo'
import { addCaution } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

/** Wordings beyond the lexicon's own. General knowledge, no source. */
const MORE: Readonly<Record<string, RegExp>> = {
  'mains-wiring':
    /\b(?:(?:re)?connect|(?:re)?wire|terminate|land|join|swap|move)\w*\b[^.;]*\b(?:phases?|motor terminal box|live (?:and|conductor|wire|terminal)|switchgear|transfer switch|fused spur|mains terminals?)\b/i,
  'lifting-gear':
    /\b(?:replace|shorten|weld|repair|re-?rate|join)\w*\b[^.;]*\b(?:slings?|shackles?|lift(?:ing)? chains?|mast chains?|fork arms?)\b/i,
}

const defers = onceForText((text: string): boolean => DEFERS.test(text))

const licensedIn = onceForText((text: string): readonly LicensedWork[] =>
  LICENSED.filter(
    ({ id, signals, not }) => (signals.test(text) || MORE[id]?.test(text) === true) && not?.test(text) !== true,
  ),
)

/** What anybody may do to a thing he must not work on. */
const LOOKS = new Set(
  'look check recheck inspect watch listen examine measure read note photograph record test verify confirm compare count wipe clean brush oil grease lubricate dust see find smell feel keep leave wait cover label mark write prove lift pull hang stand put place lay let make warn tell call log fill'.split(
    ' ',
  ),
)
const isHandling = (text: string): boolean => actionsOf(text).some(({ verb }) => !LOOKS.has(verb))

/** Work that a text tells of only on certain machines. */
const inContext = onceForText((text: string): readonly LicensedWork[] =>
  LICENSED.filter(
    ({ inContext: on, not }) =>
      on !== undefined &&
      (on.signals.test(text) || (on.things?.test(text) === true && isHandling(text))) &&
      not?.test(text) !== true,
  ),
)

const licensedSteps = atSteps(({ mark, tools }) =>
  [mark, ...tools].flatMap(({ text }) => [
    ...licensedIn(text).map(work => ({ mark, work, isSure: true })),
    ...inContext(text).map(work => ({ mark, work, isSure: false })),
  ]),
)
const deferringIn = inSteps(({ mark, cautions, checks, reasons }) =>
  [mark, ...cautions, ...checks, ...reasons].map(({ text }) => text).filter(defers),
)

/** Trades by the words that a deferring line names them with: leaving the chimney to a sweep says nothing of the wiring. */
const TRADES: readonly (readonly [kind: string, words: RegExp])[] = [
  ['mains-wiring', /\b(?:electric\w*|wir(?:e|es|ing)|mains|volt\w*|live)\b/i],
  ['photovoltaic', /\b(?:electric\w*|solar|photovoltaic|volt\w*)\b/i],
  ['oil-burner', /\b(?:oil|burner|heating|boiler)\b/i],
  ['gas', /\b(?:gas|propane|lpg|burner)\b/i],
  ['refrigerant', /\b(?:refriger\w*|circuit|charge)\b/i],
  ['airbag', /\b(?:air ?bags?|restraint|srs|pyrotechnic)\b/i],
  ['lifting-gear', /\b(?:lifting|hoists?|cranes?|chains?|load|brake|inspector)\b/i],
  ['pressure-vessel', /\b(?:pressure|vessel|boiler|steam|valve)\b/i],
  [
    '',
    /\b(?:sweep|chimney|door technician|springs?|plumb\w*|weld\w*|doctor|fall|roof|dealer|glazier|roofer|arborist)\b/i,
  ],
]
const tradesIn = onceForText(
  (text: string): ReadonlySet<string> => new Set(TRADES.flatMap(([kind, words]) => (words.test(text) ? [kind] : []))),
)
const isFor = (text: string, { id }: LicensedWork): boolean => {
  const named = tradesIn(text)
  return named.size === 0 || named.has(id)
}

const isOn = ({ inContext: on }: LicensedWork, machine: string): boolean =>
  on?.machine.test(machine) === true && on.notMachine?.test(machine) !== true

const check = ({ sheet }: Subject): readonly Found[] => {
  const { heading, loose } = sheet
  const all = licensedSteps(sheet)
  if (all.length === 0) return []
  const machine = `${heading.title} ${heading.equipment}`
  const lines = [...deferringIn(sheet), ...[heading.scope, ...loose.map(({ text }) => text)].filter(defers)]
  const seen = new Set<LicensedWork>()
  return all.flatMap(({ mark, number, work, isSure }): Found[] => {
    if (seen.has(work) || (!isSure && !isOn(work, machine))) return []
    seen.add(work)
    if (lines.some(text => isFor(text, work))) return []
    const message = `Step ${number}, ${quote(mark)}, is work for ${work.who}. Say so in a caution and send the reader to them and to local codes.`
    return [{ place: atMark(mark), message, remedy: addCaution(mark, work.id, 'danger', work.caution) }]
  })
}

/** Some work is not for everybody. */
export const licensedWork: Rule = {
  id: 'licensed-work',
  level: 'stop',
  about: 'Work that law or common sense leaves to the licensed, with no line that defers to them and to local codes.',
  why: 'A clear sheet makes hard work look easy; some of it kills people who were not trained for it, or others.',
  source: 'local codes and law, no single source; kinds of work in lib/trade/licensed.ts',
  trips: sample([['step', 'Charge the system with refrigerant']]),
  passes: sample([
    ['step', 'Charge the system with refrigerant'],
    ['caution', 'Refrigerant freezes skin; only certified people may charge it, by local law', { level: 'danger' }],
  ]),
  check,
}
