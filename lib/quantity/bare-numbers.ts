import type { Draft, Drafted } from './draft'
import type { Lexeme } from './lexemes'
import { isValuePlace } from './lists'
import { isMeasuring } from './measuring'
import { recallValue } from './recall'
import { voteSystem } from './system-vote'
import { TOOLS } from './thing-words'
import { dimensionOf, unitSymbol } from './units'

const set = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/))

/** Words that make a bare number near them a value. */
const CUES = set(
  'gravity ph voltage amperage humidity resistance tread idle idles rpm revs gap gapped clearance torque torqued limit spec specs specification lash pressure temp temperature preload runout endplay end-play backlash deflection slack tolerance setting voltage reading dial dialed dialled regulator thermostat thickness depth height pitch level lift idle advance timing free-play crush squish protrusion interference',
)
/** Verbs whose object a bare number is: `heat it to 220`, `set it at 40`. */
const VERBS = set(
  "draw draws pull pulls must lose loses want wants replace replaced set heat heated torque torqued tighten tightened dial dialed bump gap gapped adjust adjusted shim shimmed bring preheat warm charge inflate pump keep hold maintain crank ramp limit should shouldn't calls call says reads stay stays drop drops get gets come comes cool going go asks settle settles sit sits should be",
)
const LINK = set(
  "draw pull lose read of is to at it the be should a its it's them that for on up down around by = : says was about your this in between from and want wants you",
)
const HEAT = set(
  'heater heaters hotend warm-up cooled cooling heat heated hot cool temp temperature preheat nozzle oven bed degrees warm hotend bake melt',
)

type BareKind = 'temperature' | 'torque' | 'pressure' | 'rotation' | 'other'

/** Whether anything makes a number without unit a value. */
const isValue = ({ lexemes }: Drafted, draft: Draft): boolean => {
  if (draft.phrase.hasTolerance && draft.nominal !== undefined) return true
  const isOfCue = lexemes[draft.to]?.text === 'of' && CUES.has(lexemes[draft.to + 1]?.text ?? '')
  if (isOfCue) return true
  if (!isValuePlace(lexemes, draft.to) || isYear(draft)) return false
  if (isFineDecimal(draft.phrase.term.number, draft.phrase.isRange ? 2 : 3)) return true
  if (isPlaced(lexemes, draft)) return true
  return findCue(lexemes, draft) || draft.isCorrection === true
}

const isYear = ({ nominal, phrase }: Draft): boolean => {
  const numeral = phrase.term.number?.numeral
  if (nominal === undefined || nominal < 1900 || nominal > 2100) return false
  return numeral?.isPaired === true || numeral?.hasFigures === true
}

/** Three decimals or more, as gaps are said: `point oh one nine`. */
const isFineDecimal = (number: Extract<Lexeme, { is: 'number' }> | undefined, least: number): boolean => {
  if (number === undefined || number.numeral.denominator !== undefined) return false
  const digits = String(number.numeral.value).split('.')[1] ?? ''
  return digits.length >= least
}

/** `thirty-two front, thirty-five rear`: a number that stands for a place of a pair. */
const PAIRED = set('front rear intake exhaust inlet')
const isPlaced = (lexemes: readonly Lexeme[], draft: Draft): boolean => {
  const [label, after] = [lexemes[draft.to], lexemes[draft.to + 1]]
  const isLabel = label !== undefined && PAIRED.has(label.text)
  const isClosed = after === undefined || after.is === 'stop' || after.text === 'and'
  return isLabel && isClosed && (draft.phrase.term.value >= 5 || draft.phrase.term.number?.numeral.hasPoint === true)
}

/** Words that name a kind of quantity with one usual unit. */
const NAMED_UNITS: Readonly<Record<string, string>> = Object.setPrototypeOf(
  {
    voltage: 'V',
    amperage: 'A',
    resistance: 'Ohm',
    humidity: '%',
    ph: '[pH]',
  },
  null,
)

const REACH = 7

const findCue = (lexemes: readonly Lexeme[], draft: Draft): boolean => {
  let isLinked = true
  for (let i = draft.from - 1; i >= 0 && i >= draft.from - REACH; i--) {
    const lexeme = lexemes[i]
    if (lexeme === undefined || lexeme.is === 'stop' || lexeme.is === 'number') return false
    if (CUES.has(lexeme.text)) return true
    if (VERBS.has(lexeme.text) && isLinked)
      return draft.phrase.isRange || draft.bound !== undefined || hasAim(lexemes, i, draft)
    if (!LINK.has(lexeme.text) && lexeme.is !== 'role') isLinked = false
  }
  const next = lexemes[draft.to]
  return next !== undefined && CUES.has(next.text)
}

const AIMS = set('to at for around be')
const AIM_WORDS = new Set([...AIMS, 'up to'])

/** `set it to 40`, `says 26 for`: a verb that aims at the number. */
const hasAim = (lexemes: readonly Lexeme[], verb: number, draft: Draft): boolean =>
  lexemes.slice(verb, draft.from + 1).some(lexeme => AIM_WORDS.has(lexeme.text)) || lexemes[draft.to]?.text === 'for'

const kindOf = (words: readonly string[]): BareKind => {
  for (const word of words) {
    if (HEAT.has(word)) return 'temperature'
    if (/^(?:torque|tighten)/.test(word)) return 'torque'
    if (/^(?:pressure|inflate|regulator)/.test(word)) return 'pressure'
    if (/^(?:idle|idles|rpm|revs)$/.test(word)) return 'rotation'
  }
  return 'other'
}

const KINDS: Readonly<Record<BareKind, readonly string[]>> = {
  temperature: ['temperature'],
  torque: ['torque'],
  pressure: ['pressure'],
  rotation: ['rotation'],
  other: [
    'torque',
    'pressure',
    'length',
    'volume',
    'voltage',
    'current',
    'resistance',
    'rotation',
    'temperature',
    'force',
    'mass',
  ],
}

const question = (draft: Draft): void => {
  draft.notes.push({ kind: 'question', text: 'no unit was said: of what?' })
}

/**
 * Settles a number without unit: leaves it out where nothing makes it a value; takes the unit from what was said before
 * where that tells, and says so; asks otherwise.
 */
export const settleBare = (drafted: Drafted, draft: Draft, context: string): void => {
  if (!isValue(drafted, draft)) {
    draft.dropped = 'a number without a unit'
    return
  }
  const near = drafted.lexemes.slice(Math.max(0, draft.from - 10), draft.from).map(lexeme => lexeme.text)
  const named = near.findLast(word => NAMED_UNITS[word] !== undefined)
  const usual = named === undefined ? undefined : NAMED_UNITS[named]
  if (usual !== undefined) {
    draft.code = usual
    draft.notes.push({ kind: 'settled', text: `no unit was said: read as ${unitSymbol(usual)}, by “${named}”` })
    return
  }
  const said = kindOf(near.reverse())
  const kind =
    said === 'other' && context !== ''
      ? kindOf(
          context
            .toLowerCase()
            .slice(-300)
            .split(/[^a-z]+/)
            .reverse(),
        )
      : said
  if (said === 'rotation' && draft.phrase.term.value >= 100) {
    draft.code = '{rev}/min'
    draft.notes.push({ kind: 'settled', text: 'no unit was said: read as rpm, by what turns' })
    return
  }
  if (kind === 'temperature' && (said === 'temperature' || draft.phrase.term.value > 12)) {
    const system = voteSystem(drafted.text, context)
    if (system === undefined) {
      question(draft)
      return
    }
    draft.code = system === 'us' ? '[degF]' : 'Cel'
    draft.notes.push({
      kind: 'settled',
      text: `no unit was said: read as ${system === 'us' ? '°F' : '°C'}, by the ${system === 'us' ? 'US' : 'metric'} units around it`,
    })
    return
  }
  const recalled = recallValue(context, code => KINDS[said].includes(dimensionOf(code) ?? ''))
  const unit = recalled?.unit?.code
  if (unit === undefined || draft.phrase.term.number?.numeral.denominator !== undefined) {
    question(draft)
    return
  }
  draft.code = unit
  draft.notes.push({ kind: 'settled', text: `no unit was said: ${unitSymbol(unit)} taken from what was said before` })
}

/** What a bound is the subject of: `less than two tells me`. */
const TELLS = set('tells means shows proves says gives makes needs calls gets goes')

/** Nouns and verbs that make the bare number before them a count or a name. */
const isCounting = ({ lexemes }: Drafted, draft: Draft): boolean =>
  !isValuePlace(lexemes, draft.to) &&
  !(draft.bound !== undefined && TELLS.has(lexemes[draft.to]?.text ?? '')) &&
  !(lexemes[draft.to]?.text === 'of' && CUES.has(lexemes[draft.to + 1]?.text ?? ''))

/** Words after a range or a bound that leave it a value. */
const OF_VALUE = set('of upstairs downstairs outside inside below above underneath overnight')

/**
 * A number without unit for a caller that weighs doubts: its unit only where its own sentence names what is measured,
 * its doubt where nothing makes it a value. Counts, years and single small words are left out.
 */
export const keepBare = (drafted: Drafted, draft: Draft): void => {
  if (isValue(drafted, draft)) return
  const isOne = draft.nominal === 1 && draft.phrase.term.number?.numeral.hasFigures !== true
  const isBounded = draft.phrase.isRange || draft.bound !== undefined
  const isKept = isMeasuring(drafted, draft) || (isBounded && OF_VALUE.has(drafted.lexemes[draft.to]?.text ?? ''))
  if (isOne || (isCounting(drafted, draft) && !isKept) || isYear(draft)) draft.dropped = 'a number without a unit'
  else draft.doubt = 'a number without a unit'
}

/** The largest denominator said in a draft. */
const finestOf = ({ lexemes }: Drafted, draft: Draft): number =>
  Math.max(
    0,
    ...lexemes
      .slice(draft.from, draft.to)
      .map(lexeme => (lexeme.is === 'number' ? (lexeme.numeral.denominator ?? 0) : 0)),
  )

/** Whether something is turned near by, so that a sixteenth may be of a turn. */
const isTurned = ({ lexemes }: Drafted, draft: Draft): boolean =>
  lexemes
    .slice(Math.max(0, draft.from - 8), draft.to + 4)
    .some(({ text }) => /^(?:turns?|screw|back|slacken|tighten|clockwise)$/.test(text))

/** Whether thousandths or hundredths stand there as a word: `15 thousandths`, `six to ten thousandths`. */
const isNamed = ({ lexemes }: Drafted, draft: Draft): boolean =>
  lexemes.slice(draft.from, draft.to).some(({ text }) => /(?:thousand|hundred)ths?$/.test(text))

/** Fractions the trade says without their unit: thousandths are of an inch, hundredths of a millimetre. */
export const settleParts = (drafted: Drafted, draft: Draft): boolean => {
  const numeral = draft.phrase.term.number?.numeral
  const isSpoken = numeral?.denominator !== undefined && numeral.hasFigures !== true
  if (TOOLS.has(drafted.lexemes[draft.to]?.text ?? '')) return false
  const isRuler = [16, 32, 64].includes(finestOf(drafted, draft)) && !isTurned(drafted, draft)
  const isFineRuler =
    finestOf(drafted, draft) >= 32 && !['the', 'a', 'an'].includes(drafted.lexemes[draft.from - 1]?.text ?? '')
  if (isRuler && (isFineRuler || draft.phrase.isRange || draft.bound !== undefined || isValue(drafted, draft))) {
    draft.code = '[in_i]'
    draft.notes.push({ kind: 'settled', text: 'sixteenths, thirty-seconds and sixty-fourths read as of an inch' })
    return true
  }
  const finest = finestOf(drafted, draft)
  if (!(isSpoken || isNamed(drafted, draft)) || ![100, 1000, 10_000].includes(finest)) return false
  const isInch = finest !== 100
  draft.code = isInch ? '[in_i]' : 'mm'
  draft.notes.push({
    kind: 'settled',
    text: isInch ? '“thousandths” read as of an inch' : '“hundredths” read as of a millimetre',
  })
  return true
}
