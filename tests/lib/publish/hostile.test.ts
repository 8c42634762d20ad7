import { spawnSync } from 'node:child_process'
import { HtmlRenderer, Parser } from 'commonmark'
import type { Nodes as HastNodes } from 'hast'
import { fromHtml } from 'hast-util-from-html'
import type { Nodes } from 'mdast'
import { describe, expect, test } from 'vitest'
import { KINDS, LEVELS } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Project } from '@/lib/procedure/project'
import { isSafePath } from '@/lib/publish/manifest'
import { markdown } from '@/lib/publish/processor'
import type { PublishedFile, PublishOptions } from '@/lib/publish/publication'
import { PUBLICATIONS } from '@/lib/publish/publications'
import { SINGLES } from '@/lib/publish/singles'
import { HOSTILE } from './arbitrary'

/** One mark of each kind and caution level, with this text in every field of every mark and of the heading. */
const filledWith = (text: string): Project => {
  const fields = {
    hazard: text,
    reference: text,
    citation: text,
    price: text,
    pencilled: { confidence: 0.5, reason: text, question: text },
  }
  const quantity = { low: 1, high: 2, unit: text }
  const mark = (kind: Mark['kind'], i: number, more: Partial<Mark> = {}): Mark => {
    const step = kind === 'step' ? {} : { step: 'step-0' }
    return {
      id: `${kind}-${i}`,
      kind,
      start: i * 2 + 1,
      end: i * 2 + 3,
      text: `x ${text}`,
      said: text,
      ...step,
      ...fields,
      ...more,
    }
  }
  const still = { time: 1, alt: text, file: text }
  return {
    ...emptyProject(),
    procedure: {
      title: text,
      equipment: text,
      scope: `x ${text}`,
      interval: { hours: 5 },
      revision: text,
      author: text,
      references: [{ title: `x ${text}`, part: text }],
    },
    recording: {
      footage: { name: `x${text}`, bytes: 1, seconds: 100, fingerprint: 'ab' },
      transcript: {
        name: text,
        form: 'webvtt',
        cues: [
          { start: 1, end: 90, text: `x ${text}`, speaker: `x ${text}` },
          { start: 90, end: 95, text: 'y', corrected: `y ${text}` },
        ],
      },
    },
    marks: [
      ...KINDS.map((kind, i) => mark(kind, i, kind === 'spec' ? { quantity } : { still })),
      ...LEVELS.map((level, i) => mark('caution', i + 20, { level })),
    ],
    waivers: [{ rule: text, reason: text }],
  }
}

const optionsWith = (text: string): PublishOptions => ({
  findings: [
    { level: 'stop', message: `x ${text}`, where: text },
    { level: 'fix', message: `x ${text}`, waived: text },
  ],
  listFindings: true,
  stills: new Map([['step-0', new Uint8Array([0xff, 0xd8, 0xff, 0])]]),
})

type Tree = { type: string; tagName?: string; children?: readonly Tree[] }

/** Kinds of nodes without their text: texts that stand side by side count once, links that a GFM reader sees in plain text not at all. */
const skeleton = (node: Tree): string => {
  if (node.type === 'break' || node.tagName === 'br') return 'text'
  const children = (node.children ?? [])
    .map(skeleton)
    .filter((kind, i, all) => kind !== '' && !(kind === 'text' && all[i - 1] === 'text'))
  return `${node.tagName ?? node.type}${children.length === 0 ? '' : `(${children.join(' ')})`}`
}

/** A GFM reader links bare addresses by itself: those links carry no title and their text is their address. */
const unlinked = (node: Nodes): Nodes => {
  if (!('children' in node)) return node
  const children = node.children.flatMap((child): Nodes[] => {
    const isBare = child.type === 'link' && (child.title ?? '') === '' && /^(?:https?|mailto):/.test(child.url)
    return isBare ? [{ type: 'text', value: '' }] : [unlinked(child)]
  })
  return { ...node, children: children as never }
}

const markdownSkeleton = (text: string) => skeleton(unlinked(markdown.parse(text)) as Tree)
const htmlSkeleton = (text: string) => skeleton(fromHtml(text) as Tree)
const tags = (xml: string) => [...xml.matchAll(/<\/?[A-Za-z]+/g)].map(match => match[0]).join(' ')

const hasAny = (node: HastNodes, is: (node: HastNodes) => boolean): boolean =>
  is(node) || ('children' in node && node.children.some(child => hasAny(child, is)))

/** Anything a browser would run or fetch by itself, but the inert JSON of the page. */
const isActive = (node: HastNodes): boolean => {
  if (node.type !== 'element') return false
  const { tagName, properties } = node
  const isScript = tagName === 'script' && properties.type !== 'application/ld+json'
  const isFrame = ['iframe', 'object', 'embed', 'base', 'form', 'link'].includes(tagName)
  const isHandler = Object.keys(properties).some(name => /^on/i.test(name))
  const isFetching = tagName === 'img' && !/^(?:data:|stills\/)/.test(String(properties.src))
  const isRunning = /^\s*(?:javascript|vbscript|data):/i.test(String(properties.href ?? ''))
  return isScript || isFrame || isHandler || isFetching || isRunning
}

const written = new Map<string, Promise<ReadonlyMap<string, PublishedFile>>>()

const filesOf = (text: string): Promise<ReadonlyMap<string, PublishedFile>> => {
  const files = written.get(text) ?? writeAll(text)
  written.set(text, files)
  return files
}

const writeAll = async (text: string): Promise<ReadonlyMap<string, PublishedFile>> => {
  const files: PublishedFile[] = []
  for (const publication of SINGLES) files.push(...(await publication.files(filledWith(text), optionsWith(text))))
  return new Map(files.map(file => [/\.(?:[a-z]+\.)?[a-z]+$/.exec(file.path)?.[0] ?? file.path, file]))
}

const benign = await filesOf('plain words')
const hasXmllint = spawnSync('xmllint', ['--version']).status === 0

describe.each(HOSTILE.map((text, i) => [i, text.length > 60 ? `${text.slice(0, 20)}…` : text, text] as const))(
  'hostile text %i %j in every field',
  (_, __, text) => {
    test('[P4] leaves every publication’s structure as it is with plain words', async () => {
      const files = await filesOf(text)
      const content = (ending: string) => String(files.get(ending)?.content)
      const plain = (ending: string) => String(benign.get(ending)?.content)
      const isEmpty = text.trim() === ''
      for (const ending of isEmpty ? [] : ['.sheet.md', '.notes.md'])
        if (!/^[\u200F\0]?$/.test(text)) expect(markdownSkeleton(content(ending))).toBe(markdownSkeleton(plain(ending)))
      if (!isEmpty) expect(htmlSkeleton(content('.handout.html'))).toBe(htmlSkeleton(plain('.handout.html')))
      if (!isEmpty) expect(tags(content('.dita'))).toBe(tags(plain('.dita')))
      expect(htmlSkeleton(content('.howto.html'))).toBe(htmlSkeleton(plain('.howto.html')))
      expect(content('.chapters.vtt').match(/-->/g)).toHaveLength(plain('.chapters.vtt').match(/-->/g)?.length ?? 0)
      for (const ending of ['.captions.vtt', '.captions.srt']) {
        const lines = content(ending).split('\n')
        const times = lines.filter(line => line.includes('-->'))
        expect(times.every(line => /^\d\d:\d\d:\d\d[.,]\d{3} --> \d\d:\d\d:\d\d[.,]\d{3}$/.test(line))).toBe(true)
      }
    })

    test('[P4] runs nothing, fetches nothing and carries no control characters', async () => {
      for (const [ending, { content, path, type }] of await filesOf(text)) {
        expect(isSafePath(path)).toBe(true)
        if (typeof content !== 'string') continue
        const stray = [...content].find(char => /[\p{Cc}\p{Cs}\u202A-\u202E\u2066-\u2069]/u.test(char) && char !== '\n')
        expect([ending, stray]).toEqual([ending, undefined])
        const rendered =
          type === 'text/markdown'
            ? new HtmlRenderer().render(new Parser().parse(content))
            : type === 'text/html'
              ? content
              : ''
        expect(hasAny(fromHtml(rendered), isActive)).toBe(false)
      }
    })

    test.skipIf(!hasXmllint)('[P4] leaves the task well-formed (xmllint)', async () => {
      const input = String((await filesOf(text)).get('.dita')?.content)
      const { status, stderr } = spawnSync('xmllint', ['--noout', '--nonet', '-'], { input, encoding: 'utf8' })
      expect([status, stderr]).toEqual([0, ''])
    })
  },
)

test('[P4] every publication takes a project full of all of it at once', async () => {
  const project = filledWith(HOSTILE.join('\n'))
  for (const publication of PUBLICATIONS) {
    const files = await publication.files(project, optionsWith(HOSTILE.join(' ')))
    expect(files.length).toBeGreaterThan(0)
    expect(files.every(({ path }) => isSafePath(path) && path.length < 120)).toBe(true)
  }
})
