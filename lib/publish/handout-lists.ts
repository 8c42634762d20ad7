import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Mark } from '@/lib/procedure/mark'
import type { Sheet } from '@/lib/procedure/sheet'
import { flag, valueSpan } from './handout-parts'
import { SIGN_OFF_COLUMNS, SIGN_OFF_ROWS } from './head'
import type { LineSetting } from './line'
import { SECTIONS, SPEC_COLUMNS } from './sections'
import { marksOf } from './selection'
import { toShown } from './shown'
import { type StepNumbers, sameName } from './standing'
import { toLine } from './text'
import { stepsPhrase } from './things'

export const stepLink = (number: number | undefined, word: string): ElementContent[] =>
  number === undefined ? [] : [h('a.uses', { href: `#step-${number}` }, `${word}${number}`)]

/** Tools or materials with boxes to tick while laying them out. */
const things = (sheet: Sheet, kind: 'tool' | 'material', numbers: StepNumbers, setting: LineSetting): Element[] => {
  const names = kind === 'tool' ? sheet.tools : sheet.materials
  const all = marksOf(sheet).filter(mark => mark.kind === kind)
  return names.map(name => {
    const { text, aside } = toShown(name, setting.units)
    const uses = stepsPhrase(all.filter(mark => sameName(mark, name)).flatMap(mark => numbers.get(mark.id) ?? []))
    const where = uses === '' ? '' : ` ${uses}`
    return h('li', [
      h('span.box', { ariaHidden: 'true' }),
      h('span', [
        h('bdi', text),
        ...(aside === undefined ? [] : [` (${aside})`]),
        ...flag(name),
        h('span.uses', where),
      ]),
    ])
  })
}

export const lists = (sheet: Sheet, numbers: StepNumbers, setting: LineSetting): Element[] => {
  const groups = (['tool', 'material'] as const).flatMap(kind => {
    const items = things(sheet, kind, numbers, setting)
    return items.length === 0
      ? []
      : [h('div', [h('h2', kind === 'tool' ? SECTIONS.tools : SECTIONS.materials), h('ul', items)])]
  })
  return groups.length === 0 ? [] : [h(groups.length === 1 ? 'section.lists.one' : 'section.lists', groups)]
}

export const specTable = (specs: readonly Mark[], numbers: StepNumbers, setting: LineSetting): ElementContent[] => {
  const row = (mark: Mark) => {
    const { text, value = '', tail = '', aside = '' } = toShown(mark, setting.units)
    return h('tr', [
      h('td', [h('bdi', text), ...flag(mark)]),
      h('td', [valueSpan(mark, value)]),
      h('td', { dir: 'auto' }, tail),
      h('td', aside),
      h('td', stepLink(numbers.get(mark.id), '')),
    ])
  }
  if (specs.length === 0) return []
  return [
    h('table', [
      h('thead', [
        h(
          'tr',
          SPEC_COLUMNS.map(word => h('th', { scope: 'col' }, word)),
        ),
      ]),
      h('tbody', specs.map(row)),
    ]),
  ]
}

export const list = (items: readonly ElementContent[][]): ElementContent[] =>
  items.length === 0
    ? []
    : [
        h(
          'ul.plain',
          items.map(item => h('li', item)),
        ),
      ]

export const signOff = (sheet: Sheet): Element =>
  h('table.sign-off', [
    h('thead', [
      h(
        'tr',
        SIGN_OFF_COLUMNS.map(word => h('th', { scope: 'col' }, word)),
      ),
    ]),
    h(
      'tbody',
      SIGN_OFF_ROWS.map((row, i) =>
        h('tr', [
          h('th', { scope: 'row' }, row),
          h('td', i === 0 ? toLine(sheet.heading.author) : ''),
          h('td'),
          h('td'),
        ]),
      ),
    ),
  ])
