import type { Element, ElementContent } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import type { Sheet } from '@/lib/procedure/sheet'
import { formatTime } from '@/lib/procedure/time'
import { headLines, type Notice } from './head'
import type { PublishedFile } from './publication'
import { toLine } from './text'
import { CLOSING_HEADING, CLOSING_NOTE } from './words'

/** What each file of a packet is, by the end of its name; the first that fits. */
const KINDS: readonly (readonly [RegExp, string])[] = [
  [/\.handout\.html$/, 'Handout, for printing'],
  [/\.sheet\.md$/, 'Job sheet, Markdown'],
  [/\.notes\.md$/, 'Show notes, Markdown'],
  [/\.notes\.txt$/, 'Show notes, plain text'],
  [/\.captions\.vtt$/, 'Captions, WebVTT'],
  [/\.captions\.srt$/, 'Captions, SubRip'],
  [/\.chapters\.vtt$/, 'Chapters, WebVTT'],
  [/\.chapters\.json$/, 'Chapters, JSON'],
  [/\.chapters\.ffmeta$/, 'Chapters, ffmetadata'],
  [/\.howto\.html$/, 'HowTo for a web page, JSON-LD'],
  [/\.dita$/, 'DITA task'],
  [/(?:^|\/)clips\//, 'Clip'],
  [/(?:^|\/)stills\//, 'Still'],
  [/(?:^|\/)service\.md$/, 'Notes of the whole service, Markdown'],
  [/(?:^|\/)index\.html$/, 'Contents of this job'],
]

/** @returns what a file is: its kind, and for a clip or still the step it shows. */
const kindOf = (path: string, steps: readonly string[]): string => {
  const kind = KINDS.find(([form]) => form.test(path))?.[1] ?? 'File'
  const number = Number(/(?:^|\/)(?:clips|stills)\/(\d+)-/.exec(path)?.[1] ?? Number.NaN)
  const words = steps[number - 1]
  return words === undefined ? kind : `${kind} of step ${number}: ${words}`
}

const hrefOf = (path: string): string => path.split('/').map(encodeURIComponent).join('/')

const STYLE = `body{font:16px/1.5 "Atkinson Hyperlegible",Verdana,sans-serif;color:#16202b;background:#faf8f3;max-width:46em;margin:2em auto;padding:0 1em;overflow-wrap:anywhere}
h1{border-bottom:4px solid #17457a;padding-bottom:.3em}h2{color:#17457a;margin-top:1.6em}a{color:#17457a}li{margin:.3em 0}
.said{border:2px solid #16202b;padding:.6em 1em;margin:1em 0}.said ul{margin:.3em 0 0;padding-left:1.2em}table{border-collapse:collapse;width:100%}th,td{text-align:start;vertical-align:top;padding:.3em .6em;border:1px solid #b9b3a4}th{background:#f4f1e8;overflow-wrap:normal}`

/** One group of links, with what a reader must know before opening them. */
export type ContentsGroup = {
  readonly title: string
  readonly files: readonly PublishedFile[]
  /** Text of each step, in order: clips and stills are named by it. */
  readonly steps?: readonly string[]
}

/** @returns what stands at the head of a job: equipment, interval, revision, author, and where its footage is. */
export const jobFacts = (sheet: Sheet, address: string | undefined): readonly string[] => {
  const name = toLine(sheet.footage?.name ?? '')
  const footage =
    sheet.footage === null || name === ''
      ? []
      : [
          `Footage: ${name}, ${formatTime(sheet.footage.seconds)}.${address === undefined ? ' It is not in this packet: times lead into it where it lies beside the files.' : ''}`,
        ]
  return [...headLines(sheet).map(([label, value]) => `${label}: ${value}`), ...footage]
}

const list = (items: readonly (string | readonly ElementContent[])[]): Element =>
  h(
    'ul',
    items.map(each => h('li', typeof each === 'string' ? each : [...each])),
  )

/** @returns what must be said before anything else, as a box. */
export const noticeBlock = ({ opening, text, items }: Notice): Element =>
  h('div.said', { role: 'note' }, [h('strong', opening), ` ${text}`, ...(items.length === 0 ? [] : [list(items)])])

const fileList = ({ files, steps = [] }: ContentsGroup): Element =>
  list(
    files.map(({ path }) => [
      h('a', { href: hrefOf(path) }, kindOf(path, steps)),
      { type: 'text', value: ` – ${path.split('/').at(-1)}` },
    ]),
  )

/** @returns a list under a heading; nothing where there is nothing to list. */
export const headedList = (
  title: string,
  items: readonly (string | readonly ElementContent[])[],
): readonly Element[] => (items.length === 0 ? [] : [h('h2', title), list(items)])

/** @returns facts as a plain list. */
export const factList = (facts: readonly string[]): readonly Element[] => (facts.length === 0 ? [] : [list(facts)])

/**
 * The page of contents of a packet: what must be said first, then links to its files, relative to where the page lies, so they
 * work offline.
 *
 * @param before what stands under the title
 * @returns HTML 5 without scripts
 */
export const toContents = (
  title: string,
  before: readonly ElementContent[],
  groups: readonly ContentsGroup[],
): string => {
  const root = {
    type: 'root' as const,
    children: [
      { type: 'doctype' as const },
      h('html', { lang: 'en' }, [
        h('head', [
          h('meta', { charSet: 'utf-8' }),
          h('title', title),
          h('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
          h('style', STYLE),
        ]),
        h('body', [
          h('main', [
            h('h1', title),
            ...before,
            ...groups.flatMap(group => [h('h2', group.title), fileList(group)]),
            h('h2', CLOSING_HEADING),
            h('p', CLOSING_NOTE),
          ]),
        ]),
      ]),
    ],
  }
  return `${toHtml(root, { upperDoctype: true })}\n`
}
