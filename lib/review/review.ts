import type { Mark } from '@/lib/procedure/mark'
import type { Project, Waiver } from '@/lib/procedure/project'
import { cutMarks, joining } from './chunks'
import { onceFor } from './memo'
import { FINDING_LEVELS, type Finding, type FindingLevel, type FindingPlace, type Found, type Rule } from './rule'
import { RULES } from './rules/index'
import { NO_SHOP_RULES, type ShopRules } from './shop'
import { type Subject, toSubject } from './subject'
import { waiverKey } from './waiver'

const toFinding = (rule: Rule, found: Found, waivers: readonly Waiver[]): Finding => {
  const key = waiverKey(found.place)
  const waiver = waivers.find(({ rule: id, mark }) => id === rule.id && mark === key)
  return {
    rule: rule.id,
    level: found.level ?? rule.level,
    place: found.place,
    message: found.message,
    ...(found.remedy === undefined ? {} : { remedy: found.remedy }),
    ...(waiver === undefined ? {} : { waived: waiver.reason }),
  }
}

/** A level the shop sets replaces the rule's; one finding may still weigh less, as the rule says. */
const weighed = (rule: Rule, found: readonly Found[], { shop, project }: Subject): readonly Finding[] => {
  if (found.length === 0) return NONE
  const set = shop.levels[rule.id]
  if (set === 'off') return NONE
  return found.map(own => toFinding(rule, set === undefined ? own : { ...own, level: set }, project.waivers))
}

const NONE: readonly Finding[] = []
const MARK_RULES = RULES.filter(({ checkMark }) => checkMark !== undefined)
const WHOLE_RULES = RULES.filter(({ checkMark }) => checkMark === undefined)

/** What the rules that look at one mark find there; asked once a mark, so that an edit asks only for what it changed. */
const ofMark = onceFor((mark: Mark): readonly (readonly [Rule, readonly Found[]])[] =>
  MARK_RULES.flatMap(rule => {
    const found = rule.checkMark?.(mark) ?? []
    return found.length === 0 ? [] : [[rule, found] as const]
  }),
)
const foundInMarks = joining((marks: readonly Mark[]) => marks.flatMap(ofMark))

/** What a review may be told. */
export type ReviewOptions = { readonly rules?: ShopRules }

/** Seconds into the footage where a finding's place begins; lists after the marks, the whole last. */
const startOf = (place: FindingPlace, starts: ReadonlyMap<string, number>): number =>
  place.at === 'mark'
    ? (starts.get(place.mark) ?? 0)
    : place.at === 'talk'
      ? place.start
      : place.at === 'list'
        ? Number.MAX_VALUE
        : Number.POSITIVE_INFINITY

/** Whether a finding weighs at least as much as a level: `stop` is over `fix`, `fix` over `consider`. */
export const isAtLeast = (finding: Finding, level: FindingLevel): boolean =>
  FINDING_LEVELS.indexOf(finding.level) <= FINDING_LEVELS.indexOf(level)

/**
 * Reads the sheet as a careful foreman would. Findings are doubts, never an assurance: a procedure without any can still
 * be wrong or dangerous.
 *
 * @param project any valid project
 * @param options the shop's own rules
 * @returns findings in order of the footage, those of lists and the whole last; waived ones too, with `waived`. The
 *   same project gives the same findings. Never throws.
 */
export const reviewProject = (project: Project, { rules = NO_SHOP_RULES }: ReviewOptions = {}): readonly Finding[] => {
  const subject = toSubject(project, rules)
  const starts = new Map(project.marks.map(({ id, start }) => [id, start]))
  const findings = [
    ...WHOLE_RULES.flatMap(rule => weighed(rule, rule.check(subject), subject)),
    ...foundInMarks(cutMarks(subject.project.marks)).flatMap(([rule, found]) => weighed(rule, found, subject)),
  ]
  return findings
    .map((finding, i) => ({ finding, i, start: startOf(finding.place, starts) }))
    .sort((a, b) => (a.start === b.start ? a.i - b.i : a.start - b.start))
    .map(({ finding }) => finding)
}
