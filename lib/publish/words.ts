import { countOf } from '@/lib/procedure/count'
import type { Basis, Kind, Level } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Interval } from '@/lib/procedure/project'
import { toLine } from './text'

/** What a published line of each kind opens with. */
export const KIND_LABELS: Readonly<Record<Exclude<Kind, 'caution'>, string>> = {
  step: 'Step',
  spec: 'Spec',
  tool: 'Tool',
  material: 'Material',
  check: 'Check',
  reason: 'Reason',
  symptom: 'Symptom',
}

/** Signal words. @source ANSI Z535.6 (from memory): DANGER, WARNING, CAUTION, NOTICE */
export const SIGNAL_WORDS: Readonly<Record<Level, string>> = {
  danger: 'DANGER',
  warning: 'WARNING',
  caution: 'CAUTION',
  notice: 'NOTICE',
}

/** A hazard as a remedy names it: small words joined by hyphens. What a person wrote (`x-ray`, `Lithium-ion`) is none. */
const HAZARD_ID = /^[a-z]{2,}(?:-[a-z]{2,})+$/

/** @returns the hazard of a caution in words, as a line: `drive shaft` for `drive-shaft`; empty where it names none. */
export const hazardWords = ({ hazard = '' }: Pick<Mark, 'hazard'>): string => {
  const line = toLine(hazard)
  return HAZARD_ID.test(line) ? line.replaceAll('-', ' ') : line
}

/** Where a value comes from, in words. */
export const BASIS_WORDS: Readonly<Record<Basis, string>> = {
  spoken: 'spoken',
  plate: 'plate or label',
  manual: 'manual',
  'common-practice': 'common practice',
}

/** Heading and text of the closing note of every publication. */
export const CLOSING_HEADING = 'Before you rely on this'
export const CLOSING_NOTE =
  "This was written down from a recorded walkthrough. Follow the maker's service manual, local codes and licensed practice; where they differ from what stands here, they hold. Have every value checked by someone qualified before the job is done from it."

/** @returns when a job is due again, such as `every 200 h or 12 months, whichever comes first`; undefined without interval. */
export const formatInterval = (interval: Interval | undefined): string | undefined => {
  const hours = interval?.hours === undefined ? undefined : `${interval.hours} h`
  const months = interval?.months === undefined ? undefined : countOf(interval.months, 'month')
  if (hours !== undefined && months !== undefined) return `every ${hours} or ${months}, whichever comes first`
  const one = hours ?? months
  return one === undefined ? undefined : `every ${one}`
}
