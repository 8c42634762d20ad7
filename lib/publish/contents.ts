import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import type { PublishedFile } from './publication'
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
  [/(?:^|\/)service\.md$/, 'Notes of the whole service'],
  [/(?:^|\/)index\.html$/, 'Contents of this job'],
]

const kindOf = (path: string): string => KINDS.find(([form]) => form.test(path))?.[1] ?? 'File'

const hrefOf = (path: string): string => path.split('/').map(encodeURIComponent).join('/')

const STYLE = `body{font:16px/1.5 "Atkinson Hyperlegible",Verdana,sans-serif;color:#16202b;background:#faf8f3;max-width:46em;margin:2em auto;padding:0 1em;overflow-wrap:anywhere}
h1{border-bottom:4px solid #17457a;padding-bottom:.3em}h2{color:#17457a;margin-top:1.6em}a{color:#17457a}li{margin:.3em 0}`

/** One group of links. */
export type ContentsGroup = { readonly title: string; readonly files: readonly PublishedFile[] }

/**
 * The page of contents of a packet: links to its files, relative to where the page lies, so they work offline.
 *
 * @returns HTML 5 without scripts
 */
export const toContents = (title: string, groups: readonly ContentsGroup[]): string => {
  const list = (files: readonly PublishedFile[]) =>
    h(
      'ul',
      files.map(({ path }) => h('li', [h('a', { href: hrefOf(path) }, kindOf(path)), ` – ${path.split('/').at(-1)}`])),
    )
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
            ...groups.flatMap(group => [h('h2', group.title), list(group.files)]),
            h('h2', CLOSING_HEADING),
            h('p', CLOSING_NOTE),
          ]),
        ]),
      ]),
    ],
  }
  return `${toHtml(root, { upperDoctype: true })}\n`
}
