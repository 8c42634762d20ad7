import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Sentence } from '@/lib/procedure/recording'
import { sayingThat } from '@/lib/procedure/shorten'
import { sharedTime } from '@/lib/procedure/time'
import { logit } from '@/lib/trade/model'
import { DISPOSAL } from '@/lib/trade/waste'
import { harmsPeople } from '../caution-parts'
import { leftOut } from '../coverage'
import { tellsDisposal } from '../disposing'
import { isChat } from '../instructing'
import { ownStems } from '../lateness'
import type { Found, Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { warningOdds } from '../warning'
import { stemSet } from '../words'

/** Log odds from which on a sentence may be a warning, and from which on it is one. */
const PERHAPS = logit(0.65)
const SURELY = logit(0.9)
/** A caution that stands for a sentence says at least this share of what the sentence is about. */
const SHARED = 0.5
const SHARED_NEAR = 0.15
/** A caution that was taken from no warning of its own is about what is said near it, seconds. */
const NEAR = 20

/** Where waste goes is for a step, unless it can hurt someone. */
const isWarning = ({ text }: Sentence): boolean =>
  warningOdds(text) >= PERHAPS && !isChat(text) && ((!DISPOSAL.test(text) && !tellsDisposal(text)) || harmsPeople(text))

/** Cautions and whether each was taken from a sentence that warns. */
type Source = { readonly caution: Mark; readonly isRooted: boolean }

const sourcesOf = (cautions: readonly Mark[], warnings: readonly Sentence[]): readonly Source[] =>
  cautions.map(caution => ({ caution, isRooted: warnings.some(warning => sharedTime(caution, warning) > 0) }))

/** Written where it stands, not taken from what is said there: it holds a warning only by its words. */
const isWritten = ({ said }: Mark): boolean => said.trim() === ''

/** Whether a caution says elsewhere, in its own words, what the sentence warns of. */
const saysSo = ({ caution, isRooted }: Source, { start, end, text }: Sentence): boolean => {
  const own = ownStems(text)
  const said = stemSet(`${caution.text} ${caution.said}`)
  const shared = own.filter(stem => said.has(stem)).length
  return (
    (own.length > 0 && shared >= SHARED * own.length) ||
    ((!isRooted || (isWritten(caution) && caution.start < end && caution.end > start)) &&
      shared >= SHARED_NEAR * own.length &&
      shared > 0 &&
      caution.start < end + NEAR &&
      caution.end > start - NEAR)
  )
}

/** Marks of what is done and why: a sentence that they are of tells that, and a caution written over it is enough. */
const TOLD: ReadonlySet<Kind> = new Set<Kind>(['step', 'check', 'reason'])

const check = ({ project, sentences }: Subject): readonly Found[] => {
  if (sentences.length === 0 || project.marks.length === 0) return []
  const cautions = project.marks.filter(({ kind }) => kind === 'caution')
  const warnings = sentences.filter(isWarning)
  const sources = sourcesOf(cautions, warnings)
  const written = cautions.filter(isWritten)
  const told = project.marks.filter(({ kind }) => TOLD.has(kind))
  const leftByWritten = new Set(leftOut(warnings, written))
  const leftByTold = new Set(leftOut(warnings, told))
  return leftOut(
    warnings,
    cautions.filter(caution => !isWritten(caution)),
  )
    .filter(sentence => leftByWritten.has(sentence) || leftByTold.has(sentence))
    .filter(sentence => !sources.some(source => saysSo(source, sentence)))
    .map(({ start, end, text }) => ({
      place: { at: 'talk', start, end },
      ...(warningOdds(text) < SURELY ? { level: 'consider' } : {}),
      message: `The talk warns of harm and no caution holds it: ${sayingThat(text)} Mark it as a caution, or leave it out on purpose.`,
    }))
}

/** Warned of and not marked. */
export const warningNotMarked: Rule = {
  id: 'warning-not-marked',
  level: 'fix',
  about: 'A warning in the talk is covered by no caution.',
  why: 'The experienced hand thought the danger worth saying; who only has the sheet never hears it.',
  source: 'IEC/IEEE 82079-1:2019 on warnings (from memory); common practice, no source',
  trips: sample([['step', 'Pull the belt off the pulley']], {
    talk: ['Pull the belt off the pulley.', 'Mind your fingers, a turning pulley can catch them and break your hand.'],
  }),
  passes: sample(
    [
      ['step', 'Pull the belt off the pulley'],
      ['caution', 'A turning pulley takes fingers off; isolate the motor first', { level: 'warning' }],
    ],
    {
      talk: [
        'Pull the belt off the pulley.',
        'Mind your fingers, a turning pulley can catch them and break your hand.',
      ],
    },
  ),
  check,
}
