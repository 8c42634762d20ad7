#!/usr/bin/env node
/**
 * Makes public/demo/: the talk is spoken by espeak-ng, the pictures are drawn here, ffmpeg encodes them.
 *
 *   node scripts/make-demo.mjs            everything
 *   node scripts/make-demo.mjs --marks    captions and project only, for the film as it is
 *   node scripts/make-demo.mjs --stills FOLDER   three pictures of every scene, to look at; changes nothing
 */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { toCaptions } from './demo/captions.mjs'
import { frameAt, shoot, toShots } from './demo/film.mjs'
import { prepareFonts } from './demo/fonts.mjs'
import { loadOurs } from './demo/ours.mjs'
import { toProjectFile } from './demo/project.mjs'
import { speakTalk } from './demo/speech.mjs'
import { TAIL, TALK, VOICES } from './demo/talk.mjs'

const root = resolve(dirname(fileURLToPath(import.meta.url)), '..')
const out = join(root, 'public/demo')
const work = await mkdtemp(join(tmpdir(), 'tellwright-demo-'))

try {
  await prepareFonts(root, join(work, 'fonts'))
  const { default: sharp } = await import('sharp')
  const sound = join(work, 'talk.wav')
  const { lines, seconds } = await speakTalk(TALK, VOICES, TAIL, work, sound)
  const shots = toShots(lines, seconds)
  const [option, folder] = process.argv.slice(2)
  if (option === '--stills' && folder !== undefined) {
    await mkdir(folder, { recursive: true })
    for (const { scene, start, end } of shots)
      for (const share of [0.3, 0.6, 0.95]) {
        const svg = frameAt(shots, start + (end - start) * share)
        await sharp(Buffer.from(svg))
          .png()
          .toFile(join(folder, `${scene}-${share * 100}.png`))
      }
  } else {
    await mkdir(out, { recursive: true })
    const film = join(out, 'demo.mp4')
    const captions = toCaptions(lines)
    const rasterise = svg => sharp(Buffer.from(svg)).removeAlpha().raw().toBuffer()
    const onProgress = share => console.error(`drawing: ${Math.round(share * 100)} %`)
    if (option !== '--marks') await shoot({ shots, seconds, sound, file: film, rasterise, onProgress })
    const footage = { name: 'demo.mp4', content: await readFile(film), seconds: Math.round(seconds * 1000) / 1000 }
    const project = await toProjectFile(await loadOurs(root, work), footage, captions)
    await writeFile(join(out, 'demo.vtt'), captions)
    await writeFile(join(out, 'demo.tellwright.json'), project)
    console.error(`demo.mp4: ${seconds.toFixed(1)} s, ${(footage.content.length / 1e6).toFixed(2)} MB`)
  }
} finally {
  await rm(work, { recursive: true, force: true })
}
