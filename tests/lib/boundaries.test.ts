import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { expect, test } from 'vitest'

/** Who may import whom, as the map draws it (DEVELOPERS.md). A folder may always import itself. */
const MAY: Readonly<Record<string, readonly string[]>> = {
  'lib/quantity': [],
  'lib/trade': [],
  'lib/procedure': ['lib/quantity'],
  'lib/transcript': ['lib/procedure', 'lib/trade'],
  'lib/footage': ['lib/procedure'],
  'lib/store': ['lib/procedure'],
  'lib/draft': ['lib/procedure', 'lib/quantity', 'lib/transcript', 'lib/trade'],
  'lib/review': ['lib/procedure', 'lib/quantity', 'lib/transcript', 'lib/trade'],
  'lib/publish': ['lib/procedure', 'lib/quantity'],
  'lib/cli': [
    'lib/quantity',
    'lib/procedure',
    'lib/transcript',
    'lib/footage',
    'lib/store',
    'lib/draft',
    'lib/review',
    'lib/publish',
  ],
  components: [
    'lib/quantity',
    'lib/procedure',
    'lib/transcript',
    'lib/footage',
    'lib/store',
    'lib/draft',
    'lib/review',
    'lib/publish',
  ],
  app: [
    'components',
    'lib/quantity',
    'lib/procedure',
    'lib/transcript',
    'lib/footage',
    'lib/store',
    'lib/draft',
    'lib/review',
    'lib/publish',
  ],
}

const roomOf = (path: string): string => {
  const [top = '', second = ''] = path.split('/')
  return top === 'lib' ? `lib/${second}` : top
}

const sources = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => /\.tsx?$/.test(name))
    .map(name => join(folder, name))

const IMPORT = /(?:\bfrom\s+|\bimport\s*\(\s*|^import\s+|new URL\(\s*)['"]([^'"]+)['"]/gm

const importsOf = (file: string): string[] =>
  [...readFileSync(file, 'utf8').matchAll(IMPORT)].map(match => match[1] ?? '')

const targetOf = (file: string, specifier: string): string | undefined => {
  if (specifier.startsWith('@/')) return specifier.slice(2)
  if (specifier.startsWith('.')) return relative('.', resolve(dirname(file), specifier))
  return undefined
}

const files = ['lib', 'components', 'app'].flatMap(sources)

test('every folder of lib is on the map', () => {
  const rooms = readdirSync('lib').map(name => `lib/${name}`)
  expect(rooms.filter(room => MAY[room] === undefined)).toEqual([])
})

test('imports go only where the map lets them', () => {
  const strays = files.flatMap(file =>
    importsOf(file).flatMap(specifier => {
      const target = targetOf(file, specifier)
      const [from, to] = [roomOf(file), target === undefined ? undefined : roomOf(target)]
      const isFine = to === undefined || to === from || MAY[from]?.includes(to) || /\.(css|json)$/.test(specifier)
      return isFine ? [] : [`${file} imports ${specifier}`]
    }),
  )
  expect(strays).toEqual([])
})

test('the rooms of lib do not import each other in a circle', () => {
  const reaches = (from: string, to: string): boolean =>
    (MAY[from] ?? []).some(next => next === to || reaches(next, to))
  expect(Object.keys(MAY).filter(room => reaches(room, room))).toEqual([])
})

test('node modules are used only by the command line, React and Next only outside lib', () => {
  const strays = files.flatMap(file =>
    importsOf(file).flatMap(specifier => {
      const isNode = specifier.startsWith('node:') && !file.startsWith('lib/cli/')
      const isScreen = file.startsWith('lib/') && /^(react|next)(\/|-|$)/.test(specifier)
      return isNode || isScreen ? [`${file} imports ${specifier}`] : []
    }),
  )
  expect(strays).toEqual([])
})
