import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseTalk } from '../fit-draft/talk-file'

/** A step or a caution of a sheet with the hazards it brings (surely, perhaps) or warns of. */
export type SheetLine = {
  readonly text: string
  readonly isCaution: boolean
  readonly sure: readonly string[]
  readonly perhaps: readonly string[]
}
export type LabelledSheet = { readonly machine: string; readonly lists: string; readonly lines: readonly SheetLine[] }

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder)
    .filter(file => file.endsWith('.txt'))
    .sort()
    .map(file => readFileSync(join(folder, file), 'utf8'))

const listOf = (text: string): readonly string[] =>
  text
    .split(',')
    .map(part => part.trim())
    .filter(part => part !== '')

/** A step and its hazards, parted by the last bar. */
const toLine = (row: string): SheetLine => {
  const bar = row.lastIndexOf('|')
  const ids = listOf(row.slice(bar + 1))
  return {
    text: row.slice(0, bar).replace(/^!/, '').trim(),
    isCaution: row.startsWith('!'),
    sure: ids.filter(id => !id.startsWith('?')),
    perhaps: ids.filter(id => id.startsWith('?')).map(id => id.slice(1)),
  }
}

const LIST = /^(?:tools|materials):/

/** Reads labelled sheets; see the README beside them. */
export const readSheets = (folder: string): readonly LabelledSheet[] =>
  filesIn(folder).flatMap(text =>
    text
      .split(/\n\s*\n/)
      .map(block => block.trim().split('\n'))
      .filter(([head = '']) => head.startsWith('#'))
      .map(([head = '', ...rows]) => ({
        machine: head.slice(1).replace('|', ' ').trim(),
        lists: rows
          .filter(row => LIST.test(row))
          .flatMap(row => listOf(row.replace(LIST, '')))
          .join('\n'),
        lines: rows.filter(row => !LIST.test(row)).map(toLine),
      })),
  )

/** A line of its own: a step on a machine that brings a hazard or does not, or a caution against it. */
export type LoneLine = {
  readonly hazard: string
  readonly sign: '+' | '-' | '!'
  readonly machine: string
  readonly text: string
}

/** Reads lines under the hazard they are about; see the README beside them. */
export const readLoneLines = (folder: string): readonly LoneLine[] =>
  filesIn(folder).flatMap(text => {
    let hazard = ''
    return text.split('\n').flatMap((row): readonly LoneLine[] => {
      const head = /^\[([a-z-]+)\]/.exec(row)
      if (head?.[1] !== undefined) hazard = head[1]
      const sign = row[0]
      const [machine = '', step] = row.slice(1).split('|')
      if (sign === '!') return [{ hazard, sign, machine: '', text: row.slice(1).trim() }]
      if ((sign !== '+' && sign !== '-') || step === undefined) return []
      return [{ hazard, sign, machine: machine.trim(), text: step.trim() }]
    })
  })

/** Every sentence of the labelled talks, and whether a caution was taken from it; `talk` counts the talks. */
export const readTalkLines = (
  folder: string,
): readonly { readonly talk: number; readonly text: string; readonly isWarning: boolean }[] =>
  readdirSync(folder)
    .filter(file => file.endsWith('.talk'))
    .sort()
    .flatMap((file, talk) => {
      const times = (texts: readonly string[]) => texts.map((_, i) => ({ start: i, end: i + 1 }))
      const { sentences, marks } = parseTalk(readFileSync(join(folder, file), 'utf8'), times)
      const warned = new Set(marks.filter(({ kind }) => kind === 'caution').map(({ start }) => start))
      return sentences.map(({ text, start }) => ({ talk, text, isWarning: warned.has(start) }))
    })

/** Sentences of talk of their own: `! sentence` warns, `- sentence` does not. */
export const readSpokenLines = (folder: string): readonly { readonly text: string; readonly isWarning: boolean }[] =>
  filesIn(folder)
    .flatMap(text => text.split('\n'))
    .filter(row => row.startsWith('! ') || row.startsWith('- '))
    .map(row => ({ text: row.slice(2).trim(), isWarning: row.startsWith('!') }))
