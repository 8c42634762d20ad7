import { existsSync } from 'node:fs'
import { type Browser, chromium } from '@playwright/test'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { toSheet } from '@/lib/procedure/sheet'
import { toVtt } from '@/lib/publish/caption-files'
import { toCaptions } from '@/lib/publish/captions'
import { toChaptersVtt } from '@/lib/publish/chapter-files'
import { toChapters } from '@/lib/publish/chapters'
import { toSpoken } from '@/lib/publish/spoken'
import { CHROMIUM_ARGS } from '../../chromium'
import { HOSTILE } from './arbitrary'
import { exampleProject } from './example'

const executablePath = [process.env.CHROMIUM ?? '', '/usr/bin/chromium'].find(existsSync)

const ms = (seconds: number) => Math.round(seconds * 1000) / 1000

describe.skipIf(executablePath === undefined)('the browser’s own parser of WebVTT (Chromium)', () => {
  let browser: Browser | undefined
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: executablePath ?? '', args: CHROMIUM_ARGS })
  }, 60_000)
  afterAll(() => browser?.close())

  /** Cues as a track of the browser holds them, tags taken out as it shows them. */
  const cuesOf = async (vtt: string) => {
    const page = await browser?.newPage()
    const cues = await page?.evaluate(async text => {
      const track = document.createElement('track')
      const video = document.createElement('video')
      const loaded = new Promise((resolve, reject) => {
        track.onload = resolve
        track.onerror = reject
      })
      track.src = URL.createObjectURL(new Blob([text], { type: 'text/vtt' }))
      track.default = true
      video.append(track)
      document.body.append(video)
      track.track.mode = 'hidden'
      await loaded
      return [...(track.track.cues ?? [])].map(cue => ({
        start: cue.startTime,
        end: cue.endTime,
        text: (cue as VTTCue).getCueAsHTML().textContent,
      }))
    }, vtt)
    await page?.close()
    return cues?.map(cue => ({ ...cue, start: ms(cue.start), end: ms(cue.end) }))
  }

  test('[P9] reads captions to the same cues, hostile words and speakers too', async () => {
    const { transcript } = exampleProject().recording
    const words = HOSTILE.filter(text => text.trim() !== '' && text.length < 200)
    const cues = words.map((text, i) => ({ start: 800 + i * 4, end: 803 + i * 4, text: `so ${text}`, speaker: text }))
    const captions = toCaptions(toSpoken({ name: '', form: 'webvtt', cues: [...(transcript?.cues ?? []), ...cues] }))
    expect(await cuesOf(toVtt(captions))).toEqual(
      captions.map(({ start, end, lines }) => ({ start: ms(start), end: ms(end), text: lines.join('\n') })),
    )
  }, 60_000)

  test('[P11] reads chapters to the same cues', async () => {
    const chapters = toChapters(toSheet(exampleProject()))
    expect(await cuesOf(toChaptersVtt(chapters))).toEqual(
      chapters.map(({ start, end, title }) => ({ start: ms(start), end: ms(end), text: title })),
    )
  }, 60_000)
})

test.skipIf(executablePath !== undefined)(
  '[P9] skipped: no Chromium (Debian: apt-get install chromium, or set CHROMIUM)',
  () => {},
)
