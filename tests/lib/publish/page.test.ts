import jsonld from 'jsonld'
import { describe, expect, test } from 'vitest'
import { toSheet } from '@/lib/procedure/sheet'
import { toNotices } from '@/lib/publish/head'
import { formatDuration, toHowTo, toPage } from '@/lib/publish/page'
import { exampleProject } from './example'

/** A stand-in for the context at schema.org, which tests do not fetch: every term is in its vocabulary. */
const documentLoader = async (url: string) => ({
  documentUrl: url,
  document: { '@context': { '@vocab': 'https://schema.org/' } },
})

const inScript = (html: string): object =>
  JSON.parse(/^<script type="application\/ld\+json">\n([\s\S]*)\n<\/script>\n$/.exec(html)?.[1] ?? '')

describe('the page', () => {
  test('[P12] expands as JSON-LD to a HowTo with steps, tools, supplies and clips (jsonld)', async () => {
    const [how] = (await jsonld.expand(inScript(toPage(toSheet(exampleProject()))), { documentLoader })) as Record<
      string,
      unknown[]
    >[]
    expect(how?.['@type']).toEqual(['https://schema.org/HowTo'])
    expect(how?.['https://schema.org/step']).toHaveLength(4)
    expect(how?.['https://schema.org/tool']).toHaveLength(2)
    expect(how?.['https://schema.org/supply']).toMatchObject([
      {
        'https://schema.org/name': [{ '@value': 'V-belt, 660 mm' }],
        'https://schema.org/estimatedCost': [{ '@value': '9.50 each' }],
      },
    ])
  })

  test('[P12] gives each step its clip offsets and its cautions before the direction', () => {
    const { step } = toHowTo(toSheet(exampleProject())) as unknown as { step: Record<string, unknown>[] }
    expect(step[0]).toMatchObject({
      position: 1,
      video: { startOffset: 7, endOffset: 18.5 },
      itemListElement: [
        { '@type': 'HowToTip', text: expect.stringMatching(/^WARNING \(entanglement\): /) },
        { '@type': 'HowToDirection' },
      ],
    })
  })

  test('[P12] can stand in any page: nothing in it ends the script or opens a tag', () => {
    const project = exampleProject()
    const html = toPage(toSheet({ ...project, procedure: { ...project.procedure, title: '</script><!-- \u2028' } }))
    expect(html.slice(0, -10).match(/<\/?script|<!--|\u2028/g)).toEqual(['<script'])
    expect(inScript(html)).toMatchObject({ name: '</script><!--' })
  })

  test('[P5] says that marks are unchecked, and flags each', () => {
    const html = toPage(toSheet(exampleProject()))
    expect(html).toContain('Unchecked: 1 mark of 16.')
    expect(html).toContain('Fit new belts and tension them [pencilled]')
    expect(toNotices(toSheet(exampleProject()), {})).toHaveLength(1)
  })

  /** @source ISO 8601 durations (from memory) */
  test.each([
    [0, 'PT0S'],
    [754.32, 'PT12M34.32S'],
    [3600, 'PT1H'],
    [5400.5, 'PT1H30M0.5S'],
  ])('[P12] writes %d s as %s', (seconds, text) => {
    expect(formatDuration(seconds)).toBe(text)
  })
})
