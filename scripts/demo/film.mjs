import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { C, faded, HEIGHT, line, picture, rect, stroke, text, WIDTH } from './draw.mjs'
import { SCENES } from './scenes.mjs'

/** Pictures a second. */
export const FPS = 15
/** Time one scene takes to give way to the next, in seconds. */
const BLEND = 0.4
/** A scene begins this long before its first word, in seconds. */
const EARLY = 0.5

/** When each scene starts and ends, from the sentences spoken in it. */
export const toShots = (lines, seconds) => {
  const shots = []
  for (const { scene, start } of lines)
    if (shots.at(-1)?.scene !== scene) shots.push({ scene, start: shots.length === 0 ? 0 : start - EARLY })
  return shots.map((shot, i) => ({ ...shot, end: shots[i + 1]?.start ?? seconds }))
}

const header = title =>
  rect(0, 0, WIDTH, 62, { fill: C.paper }) +
  line(36, 62, WIDTH - 36, 62, stroke(C.rule, 2)) +
  text(36, 44, title, { size: 30, weight: 700 }) +
  text(WIDTH - 36, 43, 'invented machine, drawn', { size: 17, fill: C.brass, anchor: 'end' })

const drawShot = ({ scene, start, end }, t) => {
  const drawn = SCENES[scene].draw(Math.min(1, (t - start) / (end - start)), t)
  return Array.isArray(drawn) ? drawn.join('') : drawn
}

/** The picture at a moment, as SVG. */
export const frameAt = (shots, t) => {
  const i = shots.findLastIndex(shot => shot.start <= t)
  const shot = shots[i]
  const into = (t - shot.start) / BLEND
  const before = shots[i - 1]
  const head = header(SCENES[shot.scene].title)
  if (before === undefined || into >= 1) return picture(drawShot(shot, t), head)
  const fresh = faded(into, rect(0, 0, WIDTH, HEIGHT, { fill: C.paper }), drawShot(shot, t))
  return picture(drawShot(before, before.end), fresh, head)
}

/**
 * Draws every picture and encodes the film: H.264 and AAC in MP4, index in front.
 *
 * @param rasterise turns SVG into raw RGB
 */
export const shoot = async ({ shots, seconds, sound, file, rasterise, onProgress }) => {
  const hum = `aevalsrc='0.02*sin(2*PI*98*t)+0.012*sin(2*PI*196*t)':s=22050:d=${shots[2].start + 0.8}`
  const args = [
    ['-f', 'rawvideo', '-pix_fmt', 'rgb24', '-s', `${WIDTH}x${HEIGHT}`, '-r', String(FPS), '-i', '-'],
    ['-i', sound],
    ['-f', 'lavfi', '-i', `anoisesrc=c=brown:a=0.008:r=22050:d=${seconds}:seed=7`],
    ['-f', 'lavfi', '-i', hum],
    [
      '-filter_complex',
      '[3:a]afade=t=out:st=' +
        (shots[2].start + 0.2) +
        ':d=0.6[h];[1:a][2:a][h]amix=inputs=3:duration=first:normalize=0,aresample=44100[a]',
    ],
    [
      '-map',
      '0:v',
      '-map',
      '[a]',
      '-c:v',
      'libx264',
      '-preset',
      'slow',
      '-tune',
      'animation',
      '-crf',
      '25',
      '-g',
      String(FPS * 4),
    ],
    [
      '-pix_fmt',
      'yuv420p',
      '-c:a',
      'aac',
      '-b:a',
      '64k',
      '-ac',
      '1',
      '-movflags',
      '+faststart',
      '-fflags',
      '+bitexact',
    ],
    ['-flags:v', '+bitexact', '-flags:a', '+bitexact', '-map_metadata', '-1', '-t', seconds.toFixed(3), file],
  ].flat()
  const ffmpeg = spawn('ffmpeg', ['-y', '-v', 'error', ...args], { stdio: ['pipe', 'inherit', 'inherit'] })
  const closed = once(ffmpeg, 'close')
  const count = Math.ceil(seconds * FPS)
  for (let n = 0; n < count; n++) {
    const frame = await rasterise(frameAt(shots, n / FPS))
    if (!ffmpeg.stdin.write(frame)) await once(ffmpeg.stdin, 'drain')
    if (n % (FPS * 10) === 0) onProgress(n / count)
  }
  ffmpeg.stdin.end()
  const [code] = await closed
  if (code !== 0) throw new Error(`ffmpeg ended with ${code}`)
}
