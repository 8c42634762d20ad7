import type { Element, ElementContent, Root } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import type { Mark } from '@/lib/procedure/mark'
import type { Sheet } from '@/lib/procedure/sheet'
import { formatTime } from '@/lib/procedure/time'
import { footageAddress } from './address'
import { findingLines } from './findings'
import { list, lists, signOff, specTable, stepLink } from './handout-lists'
import { flag, looseElement, panel, stepElement } from './handout-parts'
import { handoutStyle } from './handout-style'
import { headLines, type Notice, toNotices } from './head'
import type { PublishOptions } from './publication'
import { SECTIONS } from './sections'
import { selected } from './selection'
import { toShown } from './shown'
import { type StepNumbers, stepNumbers } from './standing'
import { toLine, toParagraphs } from './text'
import { toSameCautions } from './things'
import { CLOSING_HEADING, CLOSING_NOTE } from './words'

const section = (title: string, ...children: ElementContent[]): Element[] =>
  children.length === 0 ? [] : [h('section', [h('h2', title), ...children])]

/** The steps these marks stand under, as links: `step 4`, `steps 2, 4`. */
const stepLinks = (marks: readonly Mark[], numbers: StepNumbers): ElementContent[] => {
  const steps = [...new Set(marks.flatMap(mark => numbers.get(mark.id) ?? []))].sort((a, b) => a - b)
  return steps.flatMap((number, i) => [
    ...(i === 0 ? [] : [h('span.uses', ', ')]),
    ...stepLink(number, i > 0 ? '' : steps.length === 1 ? 'step ' : 'steps '),
  ])
}

const noticeBox = ({ opening, text, items }: Notice): Element =>
  h(opening.startsWith('Not fit') ? 'div.said' : 'div.said.open', { role: 'note' }, [
    h('strong', opening),
    ` ${text}`,
    ...(items.length === 0
      ? []
      : [
          h(
            'ul',
            items.map(line => h('li', line)),
          ),
        ]),
  ])

const head = (sheet: Sheet, notices: readonly Notice[]): Element => {
  const { footage } = sheet
  const facts: (readonly [string, string])[] = [
    ...headLines(sheet),
    ...(footage === null ? [] : [['Footage', `${toLine(footage.name)}, ${formatTime(footage.seconds)}`] as const]),
  ]
  return h('header', [
    h('h1', { dir: 'auto' }, toLine(sheet.heading.title) || 'Untitled procedure'),
    ...(facts.length === 0
      ? []
      : [
          h(
            'dl.facts',
            facts.flatMap(([label, value]) => [h('dt', label), h('dd', { dir: 'auto' }, value)]),
          ),
        ]),
    ...notices.map(noticeBox),
  ])
}

const body = (whole: Sheet, options: PublishOptions): ElementContent[] => {
  const sheet = selected(whole, options)
  const numbers = stepNumbers(sheet)
  const setting = {
    address: footageAddress(sheet.footage?.name, options.footageAddress),
    units: options.units ?? 'as-said',
  }
  const text = (mark: Mark): ElementContent[] => [
    h('bdi', toShown(mark, setting.units).text),
    { type: 'text', value: ' ' },
    ...stepLink(numbers.get(mark.id), 'step '),
    ...flag(mark),
  ]
  const { findings, waived } = findingLines(sheet, options)
  const steps = sheet.steps.map(step => stepElement(step, setting, options.stills?.get(step.mark.id)))
  const scope = toParagraphs(sheet.heading.scope).map(lines =>
    h(
      'p',
      { dir: 'auto' },
      lines.flatMap((line, i): ElementContent[] =>
        i === 0 ? [{ type: 'text', value: line }] : [h('br'), { type: 'text', value: line }],
      ),
    ),
  )
  return [
    head(sheet, toNotices(whole, options)),
    ...section(SECTIONS.scope, ...scope),
    ...section(
      SECTIONS.safety,
      ...toSameCautions(sheet.safety).map(({ mark, all }) => panel(mark, setting, stepLinks(all, numbers))),
    ),
    ...lists(sheet, numbers, setting),
    ...(steps.length === 0 ? [] : section(SECTIONS.steps, h('ol', steps))),
    ...(sheet.loose.length === 0
      ? []
      : section(
          SECTIONS.loose,
          h(
            'ul',
            sheet.loose.map(mark => looseElement(mark, setting)),
          ),
        )),
    ...section(SECTIONS.specs, ...specTable(sheet.specs, numbers, setting)),
    ...section(SECTIONS.symptoms, ...list(sheet.symptoms.map(text))),
    ...section(
      SECTIONS.references,
      ...list(
        sheet.heading.references.map(({ title, part }) => [
          h('bdi', [toLine(title), toLine(part)].filter(Boolean).join(', ')),
        ]),
      ),
    ),
    ...section(SECTIONS.findings, ...list(findings.map(line => [{ type: 'text', value: line }]))),
    ...section(SECTIONS.waivers, ...list(waived.map(line => [{ type: 'text', value: line }]))),
    ...section(SECTIONS.signOff, signOff(sheet)),
    h('section.closing', [h('h2', CLOSING_HEADING), h('p', CLOSING_NOTE)]),
  ]
}

/**
 * A sheet as one self-contained HTML file that prints on A4 and Letter: pictures inside, no scripts, nothing fetched.
 * Page numbers, title and revision stand on every page (CSS Paged Media margin boxes).
 *
 * @returns HTML 5. Never throws.
 */
export const toHandout = (sheet: Sheet, options: PublishOptions = {}): string => {
  const title = toLine(sheet.heading.title) || 'Untitled procedure'
  const revision = toLine(sheet.heading.revision)
  const root: Root = {
    type: 'root',
    children: [
      { type: 'doctype' },
      h('html', { lang: 'en' }, [
        h('head', [
          h('meta', { charSet: 'utf-8' }),
          h('title', title),
          h('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
          h('style', handoutStyle(title, revision === '' ? '' : `Revision ${revision}`, options)),
        ]),
        h('body', [h('main', body(sheet, options))]),
      ]),
    ],
  }
  return `${toHtml(root, { upperDoctype: true })}\n`
}
