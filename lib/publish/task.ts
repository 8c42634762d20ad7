import type { Element, ElementContent, Root } from 'xast'
import { toXml } from 'xast-util-to-xml'
import { x } from 'xastscript'
import type { Mark } from '@/lib/procedure/mark'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import { footageAddress, formatSpan, spanAddress } from './address'
import { findingLines } from './findings'
import { toNotices } from './head'
import type { LineSetting } from './line'
import type { PublishOptions } from './publication'
import { selected } from './selection'
import { toShown } from './shown'
import { toLine, toParagraphs } from './text'
import { type Thing, toThings } from './things'
import { CLOSING_NOTE, formatInterval, hazardWords } from './words'

const flag = (mark: Mark): string => (mark.pencilled === undefined ? '' : ' [pencilled]')

const timeLink = (mark: Mark, { address }: LineSetting): Element =>
  x('xref', { href: spanAddress(address, mark), format: 'video', scope: 'external' }, formatSpan(mark))

/** A caution: a hazard statement where the hazard is named, a note of its level where it is not. */
const hazard = (mark: Mark, setting: LineSetting): Element => {
  const type = mark.level ?? 'caution'
  const kind = hazardWords(mark)
  const text = `${toLine(mark.text)}${flag(mark)}`
  if (kind === '') return x('note', { type }, [`${text} `, timeLink(mark, setting)])
  return x('hazardstatement', { type }, [x('messagepanel', [x('typeofhazard', kind), x('howtoavoid', text)])])
}

const detail = (mark: Mark, setting: LineSetting): Element => {
  const { label = '', text, value, tail, aside } = toShown(mark, setting.units)
  const words = [value, tail].filter(Boolean).join(', ')
  const body = [text, words].filter(Boolean).join(': ')
  const line = `${label}: ${body}${aside === undefined ? '' : ` (${aside})`}${flag(mark)} `
  return x('li', [line, timeLink(mark, setting)])
}

const list = (marks: readonly Mark[], setting: LineSetting): Element[] =>
  marks.length === 0
    ? []
    : [
        x(
          'ul',
          marks.map(mark => detail(mark, setting)),
        ),
      ]

const toStep = (step: SheetStep, setting: LineSetting): Element => {
  const info = [...step.tools, ...step.materials, ...step.specs, ...step.reasons]
  const wrap = (name: string, marks: readonly Mark[]) => (marks.length === 0 ? [] : [x(name, list(marks, setting))])
  return x('step', { id: `step-${step.number}` }, [
    ...step.cautions.map(mark => hazard(mark, setting)),
    x('cmd', [`${toLine(step.mark.text)}${flag(step.mark)} `, timeLink(step.mark, setting)]),
    ...wrap('info', info),
    ...wrap('stepresult', step.checks),
    ...wrap('steptroubleshooting', step.symptoms),
  ])
}

const things = (title: string, all: readonly Thing[]): Element[] => {
  const item = ({ name, price, mark }: Thing) =>
    x('li', `${name}${price === undefined ? '' : ` (${price})`}${flag(mark)}`)
  return all.length === 0 ? [] : [x('p', title), x('ul', all.map(item))]
}

const section = (name: string, children: readonly ElementContent[]): Element[] =>
  children.length === 0 ? [] : [x(name, [...children])]

const body = (whole: Sheet, options: PublishOptions): Element => {
  const sheet = selected(whole, options)
  const setting = {
    address: footageAddress(sheet.footage?.name, options.footageAddress),
    units: options.units ?? 'as-said',
  }
  const notices = toNotices(whole, options).map(({ opening, text, items }) =>
    x('note', { type: 'important' }, [
      `${opening} ${text}`,
      ...(items.length === 0
        ? []
        : [
            x(
              'ul',
              items.map(i => x('li', i)),
            ),
          ]),
    ]),
  )
  const scope = toParagraphs(sheet.heading.scope).map(lines => x('p', lines.join(' ')))
  const looseCautions = sheet.loose.filter(mark => mark.kind === 'caution').map(mark => hazard(mark, setting))
  const loose = sheet.loose.filter(mark => !['caution', 'tool', 'material'].includes(mark.kind))
  const references = sheet.heading.references
    .map(({ title, part }) => [toLine(title), toLine(part)].filter(Boolean).join(', '))
    .filter(Boolean)
  const { findings, waived } = findingLines(sheet, options)
  return x('taskbody', [
    ...section('prereq', [
      ...looseCautions,
      ...things('Tools', toThings(sheet, 'tool')),
      ...things('Materials', toThings(sheet, 'material')),
    ]),
    ...section('context', [...notices, ...scope, ...list(loose, setting)]),
    ...section(
      'steps',
      sheet.steps.map(step => toStep(step, setting)),
    ),
    x('postreq', [
      ...(references.length === 0
        ? []
        : [
            x('p', 'References'),
            x(
              'ul',
              references.map(line => x('li', line)),
            ),
          ]),
      ...[...findings, ...waived].map(line => x('p', line)),
      x('note', { type: 'important' }, CLOSING_NOTE),
    ]),
  ])
}

/**
 * A sheet as a DITA 1.3 task: tools and materials as prerequisites, cautions as hazard statements before the command,
 * specs and reasons as information, checks as the step's result, symptoms as its troubleshooting.
 *
 * @source OASIS DITA 1.3, task topic (strict task body) and hazard statement domain
 * @returns XML 1.0 with its document type. Never throws.
 */
export const toTask = (sheet: Sheet, options: PublishOptions = {}): string => {
  const { title, equipment, interval, revision, author } = sheet.heading
  const due = formatInterval(interval)
  const about = [
    toLine(equipment),
    due === undefined ? '' : `Due ${due}.`,
    toLine(revision) === '' ? '' : `Revision ${toLine(revision)}.`,
  ]
  const short = about.filter(Boolean).join(' ')
  const root: Root = {
    type: 'root',
    children: [
      { type: 'instruction', name: 'xml', value: 'version="1.0" encoding="UTF-8"' },
      { type: 'text', value: '\n' },
      { type: 'doctype', name: 'task', public: '-//OASIS//DTD DITA 1.3 Task//EN', system: 'task.dtd' },
      { type: 'text', value: '\n' },
      x('task', { id: 'procedure', 'xml:lang': 'en' }, [
        x('title', toLine(title) || 'Untitled procedure'),
        ...(short === '' ? [] : [x('shortdesc', short)]),
        ...(toLine(author) === '' ? [] : [x('prolog', [x('author', toLine(author))])]),
        body(sheet, options),
      ]),
      { type: 'text', value: '\n' },
    ],
  }
  // The writer leaves `]]>` in text as it is, which XML 1.0 (2.4) forbids; there are no CDATA sections here.
  return toXml(root).replaceAll(']]>', ']]&gt;')
}
