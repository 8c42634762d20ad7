import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'

const rooms = readdirSync('lib').filter(room => room !== 'cli')
const promisesIn = (text: string): string[] =>
  [...text.matchAll(/^\s*[-*] \[([A-Z]\d+)\]/gm)].map(match => match[1] ?? '')
const testText = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .filter(name => /\.(test|spec)\.tsx?$/.test(name))
  .map(name => readFileSync(join('tests', name), 'utf8'))
  .join('\n')

test('every room of lib says what it is for in at most 40 lines', () => {
  const faults = rooms.flatMap(room => {
    const page = join('lib', room, 'README.md')
    if (!existsSync(page)) return [`${page} is missing`]
    const lines = readFileSync(page, 'utf8').trimEnd().split('\n').length
    return lines > 40 ? [`${page} has ${lines} lines`] : []
  })
  expect(faults).toEqual([])
})

test('every promise is kept by a test whose name opens with it', () => {
  const untested = rooms.flatMap(room => {
    const page = join('lib', room, 'README.md')
    const promises = existsSync(page) ? promisesIn(readFileSync(page, 'utf8')) : []
    return promises
      .filter(promise => !new RegExp(`['"\`]\\[${promise}\\]`).test(testText))
      .map(promise => `${room} ${promise}`)
  })
  expect(untested).toEqual([])
})
