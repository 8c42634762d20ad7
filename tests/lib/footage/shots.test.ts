import { readFile, writeFile } from 'node:fs/promises'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { findChanges } from '@/lib/footage/shots'
import type { SmallFrame } from '@/lib/footage/small-picture'
import { footagePage } from './browser'
import { ffmpeg, sampleFolder } from './samples'

let folder: Awaited<ReturnType<typeof sampleFolder>>

const RATE = 30
const SMALL = { width: 64, height: 36 }
const CODEC = ['-c:v', 'libx264', '-preset', 'ultrafast', '-pix_fmt', 'yuv420p']

/** A picture made large once, then filmed: the camera's path over it, and what happens to the light. */
const STILLS = {
  hills: ['mandelbrot=size=1920x1080:start_scale=3:maxiter=500'],
  coast: ['mandelbrot=size=1920x1080:start_scale=0.05:start_x=-0.74:start_y=0.18:maxiter=500'],
  chart: ['testsrc2=size=1920x1080'],
  waves: ["nullsrc=size=1920x1080,geq=lum='128+60*sin(X/97)*cos(Y/71+X/301)+40*sin(X*Y/60000)':cb=128:cr=128"],
} as const

type Shot = {
  readonly still: keyof typeof STILLS
  readonly seconds: number
  readonly path: string
  readonly light?: string
}

const HAND = "960:540:x='480+30*sin(t*9)+20*sin(t*23)':y='270+25*sin(t*11)+18*cos(t*19)'"
const SHOTS: Readonly<Record<string, Shot>> = {
  pan: { still: 'hills', seconds: 3, path: "960:540:x='960*t/3':y='270+100*sin(t*2)'" },
  tilt: { still: 'coast', seconds: 3, path: "960:540:x='300':y='540*t/3'" },
  hand: { still: 'waves', seconds: 3, path: HAND },
  rush: { still: 'chart', seconds: 3, path: "960:540:x='if(lt(t,1.5),0,min(960,2400*(t-1.5)))':y=270" },
  fadeOut: { still: 'hills', seconds: 3, path: '960:540:x=100:y=200', light: 'fade=out:st=2.2:d=0.7' },
  fadeIn: { still: 'waves', seconds: 3, path: HAND, light: 'fade=in:st=0:d=0.7' },
  flashes: {
    still: 'waves',
    seconds: 3,
    path: HAND,
    light: "drawbox=c=white:t=fill:enable='between(t,0.7,0.85)+between(t,1.6,1.7)'",
  },
  dimmed: { still: 'waves', seconds: 3, path: HAND, light: "eq=brightness='0.25*sin(t*3)':eval=frame" },
  out: { still: 'coast', seconds: 2, path: '960:540:x=300:y=200', light: 'fade=out:st=1:d=0.6' },
  back: { still: 'coast', seconds: 2, path: '960:540:x=310:y=210', light: 'fade=in:st=0.3:d=0.6' },
}

/** Film of these shots one after the other. @returns where the view changes, seconds */
const film = async (name: string, ...names: (keyof typeof SHOTS)[]): Promise<number[]> => {
  await writeFile(folder.path(`${name}.txt`), names.map(shot => `file ${shot}.mp4\n`).join(''))
  await ffmpeg('-f', 'concat', '-i', folder.path(`${name}.txt`), '-c', 'copy', folder.path(`${name}.mp4`))
  const edges: number[] = []
  let at = 0
  for (const [i, shot] of names.entries()) {
    if (i > 0 && SHOTS[shot]?.still !== SHOTS[names[i - 1] ?? '']?.still) edges.push(at)
    at += SHOTS[shot]?.seconds ?? 0
  }
  return edges
}

const framesOf = async (name: string, perSecond = 5): Promise<SmallFrame[]> => {
  const raw = folder.path(`${name}-${perSecond}.raw`)
  const { width, height } = SMALL
  const filter = `fps=${perSecond},scale=${width}:${height}:flags=area,format=gray`
  await ffmpeg('-i', folder.path(`${name}.mp4`), '-vf', filter, '-f', 'rawvideo', raw)
  const bytes = await readFile(raw)
  const size = width * height
  return Array.from({ length: bytes.length / size }, (_, i) => ({
    time: i / perSecond,
    width,
    height,
    luma: bytes.subarray(i * size, (i + 1) * size),
  }))
}

beforeAll(async () => {
  folder = await sampleFolder()
  for (const [still, [source]] of Object.entries(STILLS))
    await ffmpeg('-f', 'lavfi', '-i', source, '-frames:v', '1', folder.path(`${still}.png`))
  for (const [name, { still, seconds, path, light }] of Object.entries(SHOTS)) {
    const input = ['-framerate', String(RATE), '-i', folder.path(`${still}.png`)]
    const filmed = [`loop=-1:1:0,trim=duration=${seconds},crop=${path}`, 'scale=640:360', 'noise=alls=12:allf=t']
    const filter = [...filmed, ...(light ? [light] : []), 'format=yuv420p']
    await ffmpeg(...input, '-vf', filter.join(','), ...CODEC, folder.path(`${name}.mp4`))
  }
}, 180_000)

afterAll(() => folder.remove())

/** Every edge found within 0.25 s, and nothing else. */
const expectEdges = (found: readonly { time: number }[], edges: readonly number[]) => {
  const times = found.map(({ time }) => time)
  expect(times.map(time => time.toFixed(1)).join(' '), `expected ${edges}`).toSatisfy(
    () => times.length === edges.length,
  )
  for (const [i, edge] of edges.entries()) expect(Math.abs((times[i] ?? 0) - edge)).toBeLessThanOrEqual(0.25)
}

test('[F42] finds cuts between pans, tilts and a hand-held camera, in noise', async () => {
  const edges = await film('moving', 'pan', 'tilt', 'hand', 'rush', 'pan', 'hand', 'tilt', 'rush')
  expect(edges).toHaveLength(7)
  expectEdges(await findChanges(await framesOf('moving')), edges)
  expectEdges(await findChanges(await framesOf('moving', 4)), edges)
})

test('[F42] a fade through black to another view is one change; to the same view it is none', async () => {
  const edges = await film('faded', 'fadeOut', 'fadeIn', 'out', 'back')
  expect(edges).toEqual([3, 6])
  expectEdges(await findChanges(await framesOf('faded')), edges)
})

test('[F43] flashes, changing light and a rushing camera are no changes', async () => {
  await film('still', 'hand', 'flashes', 'dimmed', 'hand')
  expect(await findChanges(await framesOf('still'))).toEqual([])
  expect(await findChanges(await framesOf('rush'))).toEqual([])
})

test('[F42] finds cuts between the test pictures of ffmpeg, plain colours and a zoom among them', async () => {
  const size = `size=640x360:rate=${RATE}`
  const sources = [
    [`testsrc2=${size}`, 3],
    [`mandelbrot=${size}`, 4],
    [`testsrc=${size}`, 3],
    [`smptebars=${size}`, 2.5],
    [`color=c=navy:${size}`, 2],
    [`color=c=orange:${size}`, 2],
    // Its colours and points are given: left to itself this source is another picture in every run, seed or not.
    [`gradients=${size}:c0=white:c1=black:x0=20:y0=20:x1=600:y1=330:nb_colors=2:seed=3`, 3],
    [`rgbtestsrc=${size}`, 2.3],
  ] as const
  const inputs = sources.flatMap(([source, seconds]) => ['-t', String(seconds), '-f', 'lavfi', '-i', source])
  const same = sources.map((_, i) => `[${i}]format=yuv420p,setsar=1[v${i}]`).join(';')
  const joined = `${same};${sources.map((_, i) => `[v${i}]`).join('')}concat=n=${sources.length},noise=alls=20:allf=t`
  await ffmpeg(...inputs, '-filter_complex', joined, ...CODEC, folder.path('plain.mp4'))
  let at = 0
  const edges = sources.slice(0, -1).map(([, seconds]) => {
    at += seconds
    return at
  })
  expectEdges(await findChanges(await framesOf('plain')), edges)
})

test('[F42] no frames, one frame, frames of one kind: no change', async () => {
  const grey = { ...SMALL, luma: new Uint8Array(64 * 36).fill(90) }
  expect(await findChanges([])).toEqual([])
  expect(await findChanges([{ time: 0, ...grey }])).toEqual([])
  expect(await findChanges(Array.from({ length: 50 }, (_, i) => ({ time: i / 5, ...grey })))).toEqual([])
})

test('[F44] looks through footage in the browser, tells how far it is, and can be stopped', async () => {
  const edges = await film('seen', 'pan', 'hand', 'flashes', 'tilt')
  const page = await footagePage('tests/lib/footage/shots-page.ts')
  try {
    const open = `const opened = await footage.openFootage(file, file.name)
      if (!opened.ok) return opened.problems;`
    const seen = await page.on<{ found: { time: number }[]; told: number[] }>(
      folder.path('seen.mp4'),
      `${open}
      const told = []
      const result = await footage.findPictureChanges(opened.value, { onProgress: done => told.push(done) })
      return result.ok ? { found: result.value, told } : result.problems`,
    )
    expectEdges(seen.found, edges)
    expect(seen.told).toHaveLength(60)
    expect(seen.told.at(-1)).toBeCloseTo(11.8, 3)
    // HEVC the browser can't decode: through ffmpeg, with the same result.
    const x265 = ['-c:v', 'libx265', '-x265-params', 'log-level=none', '-preset', 'ultrafast', '-tag:v', 'hvc1']
    await ffmpeg('-i', folder.path('seen.mp4'), ...x265, folder.path('hevc.mp4'))
    const other = await page.on<{ way: string; found: { time: number }[]; told: number }>(
      folder.path('hevc.mp4'),
      `${open}
      let told = 0
      const result = await footage.findPictureChanges(opened.value, { onProgress: done => { told = done } })
      return result.ok ? { way: opened.value.ways.picture, found: result.value, told } : result.problems`,
    )
    expect(other.way).toBe('ffmpeg')
    expectEdges(other.found, edges)
    expect(other.told).toBeCloseTo(11.8, 3)
    const stopped = await page.on<string>(
      folder.path('seen.mp4'),
      `${open}
      const control = new AbortController()
      const onProgress = done => done > 2 && control.abort(new DOMException('stopped', 'AbortError'))
      return footage.findPictureChanges(opened.value, { onProgress, signal: control.signal }).then(() => 'went through', error => error.name)`,
    )
    expect(stopped).toBe('AbortError')
    await ffmpeg('-f', 'lavfi', '-i', 'sine=duration=2', folder.path('sound.wav'))
    const refused = await page.on<string>(
      folder.path('sound.wav'),
      `${open} return (await footage.findPictureChanges(opened.value)).problems[0].code`,
    )
    expect(refused).toBe('no-picture')
  } finally {
    await page.close()
  }
}, 60_000)
