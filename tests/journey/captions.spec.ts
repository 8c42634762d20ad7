import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { expect, type Page, test } from '@playwright/test'
import { readTranscript } from '@/lib/transcript/read'

/** @source web-platform-tests, WebVTT file parsing; the browser's own parser is asked afresh here */
const suite = `${process.env.TELLWRIGHT_SUITES ?? '../shared/suites'}/webvtt`

type Heard = { start: number; end: number; text: string }

/** The cues Chromium's own parser makes of a file, with the text it would show. */
const browserCues = (page: Page, content: Uint8Array): Promise<Heard[]> =>
  page.evaluate(
    async bytes => {
      const video = document.createElement('video')
      const track = document.createElement('track')
      track.kind = 'captions'
      track.default = true
      track.src = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: 'text/vtt' }))
      video.append(track)
      document.body.append(video)
      track.track.mode = 'hidden'
      await new Promise((resolve, reject) => {
        track.onload = resolve
        track.onerror = () => reject(new Error('the browser refused the file'))
      })
      const cues = [...(track.track.cues ?? [])] as VTTCue[]
      video.remove()
      return cues.map(cue => ({ start: cue.startTime, end: cue.endTime, text: cue.getCueAsHTML().textContent ?? '' }))
    },
    [...content],
  )

/** Undefined where the file is refused because none of its cues holds a word. */
const ourCues = (content: Uint8Array, name: string): Heard[] | undefined => {
  const read = readTranscript(content, name)
  if (!read.ok && read.problems[0]?.code === 'no-cues') return undefined
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value.transcript.cues.map(({ start, end, text }) => ({ start, end, text }))
}

/** The browser lists cues by start, the longer first; our reader keeps the order of the file. */
const inOrder = (cues: Heard[]) => [...cues].sort((a, b) => a.start - b.start || b.end - a.end)

const compare = async (page: Page, content: Uint8Array, name: string) => {
  await page.goto('about:blank')
  const theirs = inOrder(await browserCues(page, content))
  const own = ourCues(content, name)
  if (own === undefined) {
    expect(theirs.filter(({ text }) => text.trim() !== '')).toEqual([])
    return 0
  }
  const ours = inOrder(own)
  expect(ours.map(({ text }) => text)).toEqual(theirs.map(({ text }) => text))
  theirs.forEach(({ start, end }, i) => {
    expect(ours[i]?.start).toBeCloseTo(start, 6)
    expect(ours[i]?.end).toBeCloseTo(end, 6)
  })
  return ours.length
}

test('[T2] the demo has the same cues in the browser and in our reader', async ({ page }) => {
  expect(await compare(page, readFileSync('public/demo/demo.vtt'), 'demo.vtt')).toBeGreaterThan(30)
})

test('[T3] tags, voices, references and broken mark-up show the same text in the browser', async ({ page }) => {
  const texts = [
    '<v.loud Bea Voss>Set it to <b>0.5&nbsp;mm</b></v> &amp; no more',
    '<c.a.b>one <i>two</c> three',
    'a &lt; b, &#176;C, &half; turn, &copy 2, &nothing; &',
    'open < at the end',
    'gap <2 mm> and <00:00:01.500>a time <x>strange</x>',
    '<ruby>base<rt>over</rt></ruby> <lang de>Öl</lang>',
    'two\nlines <u>under\nlined</u>',
    '</b>closed before open <>',
  ]
  const cues = texts.map((text, i) => `00:${10 + i}.000 --> 00:${11 + i}.000\n${text}`).join('\n\n')
  expect(await compare(page, new TextEncoder().encode(`WEBVTT\n\n${cues}\n`), 'text.vtt')).toBe(texts.length)
})

test('[T2] every file of the suite has the same cues in the browser and in our reader', async ({ page }) => {
  test.skip(!existsSync(suite), `no suite at ${suite}: set TELLWRIGHT_SUITES to the folder that holds webvtt/`)
  const files = readdirSync(suite).filter(name => name.endsWith('.vtt'))
  expect(files.length).toBeGreaterThan(30)
  for (const name of files)
    await test.step(name, async () => void (await compare(page, readFileSync(`${suite}/${name}`), name)))
})
