import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import { formatTime } from '@/lib/procedure/time'
import { EXAMPLE_RULES } from './example-rules'
import type { Rule } from './rule'
import { RULES } from './rules/index'
import { NO_SHOP_RULES } from './shop'
import { toSubject } from './subject'

/** A page of docs/rules. */
export type Page = { readonly name: string; readonly text: string }

const quantityOf = ({ low, high, nominal, unit = 'no unit' }: NonNullable<Mark['quantity']>): string => {
  const limits = low === undefined && high === undefined ? [] : [`${low ?? ''}..${high ?? ''}`]
  return [...(nominal === undefined ? [] : [String(nominal)]), ...limits, unit].join(' ')
}

const markLine = (mark: Mark): string => {
  const own = [
    mark.level,
    mark.quantity && quantityOf(mark.quantity),
    mark.equivalent && `also ${quantityOf(mark.equivalent)}`,
    mark.reference && `"${mark.reference}"`,
    mark.basis && `basis ${mark.basis}`,
    mark.capability && `measures ${quantityOf(mark.capability.range)}`,
  ].filter(part => part !== undefined && part !== '')
  return `${mark.kind.padEnd(9)}${mark.text === '' ? '(no words)' : mark.text}${own.length === 0 ? '' : `  (${own.join(', ')})`}`
}

const sampleText = ({ procedure, recording, marks }: Project): string => {
  const head = [
    ...(procedure.title === 'Sample job' ? [] : [`title    ${procedure.title}`]),
    ...(procedure.equipment === 'bench machine'
      ? []
      : [`for      ${procedure.equipment === '' ? '(not said)' : procedure.equipment}`]),
    ...(procedure.interval === undefined ? [] : [`again    ${JSON.stringify(procedure.interval)}`]),
    ...(recording.footage === null ? [] : [`footage  ${formatTime(recording.footage.seconds)}`]),
  ]
  const talk = (recording.transcript?.cues ?? []).map(({ start, text }) => `talk     ${formatTime(start)} ${text}`)
  return [...head, ...marks.map(markLine), ...talk].join('\n')
}

const rulePage = (rule: Rule): Page => {
  const shop = { ...NO_SHOP_RULES, ...rule.shop }
  const found = rule.check(toSubject(rule.trips, shop))
  const remedies = [...new Set(found.flatMap(({ remedy }) => (remedy === undefined ? [] : [remedy.label])))]
  const own =
    rule.shop === undefined
      ? []
      : ['Read with these rules of a shop:', '', '```json', JSON.stringify(rule.shop, null, 2), '```', '']
  const text = [
    `# ${rule.id}`,
    '',
    `Level: **${rule.level}**. ${rule.about}`,
    '',
    rule.why,
    '',
    `Source: ${rule.source}.`,
    '',
    '## Trips it',
    '',
    ...own,
    '```text',
    sampleText(rule.trips),
    '```',
    '',
    ...found.map(({ message }) => `> ${message}`).flatMap(line => [line, '']),
    ...(remedies.length === 0 ? [] : [`Remedy: ${remedies.join('; ')}.`, '']),
    '## Does not',
    '',
    '```text',
    sampleText(rule.passes),
    '```',
    '',
  ]
  return { name: `${rule.id}.md`, text: text.join('\n') }
}

const overview = (): Page => {
  const rows = RULES.map(({ id, level, about }) => `| [${id}](${id}.md) | ${level} | ${about} |`)
  const text = [
    '# Rules',
    '',
    'Written from the rules by `npm run rules`; don’t edit by hand. A *stop* finding blocks a release, *fix* should be mended, *consider* is a',
    'thought. Findings are doubts of a program: a sheet without any can still be wrong or dangerous. The maker’s manual, local codes and licensed',
    'practice come first.',
    '',
    '| rule | level | what it looks at |',
    '|---|---|---|',
    ...rows,
    '',
    '## The shop’s own rules',
    '',
    'A file `tellwright-rules.json` beside the project (or `--rules FILE`) is followed by `tellwright review` and `tellwright publish`:',
    '',
    '```json',
    JSON.stringify(EXAMPLE_RULES, null, 2),
    '```',
    '',
    '- `levels`: a rule’s level by its id, `stop`, `fix`, `consider`, or `off`.',
    '- `phrases`: words that must stand on the sheet, case ignored; with `where`, only on sheets that have that word.',
    '- `hazards`: words in a step, tool or material that signal a hazard of this shop, and the caution it wants (`level` is the signal word).',
    '- `names`: the name this shop uses, and the names not to use for it.',
    '',
  ]
  return { name: 'README.md', text: text.join('\n') }
}

/** @returns the pages of docs/rules: the overview and one a rule, each written from the rule and its samples. */
export const rulePages = (): readonly Page[] => [overview(), ...RULES.map(rulePage)]
