import type { Gold, GoldMark, GoldSpec } from './cases'

/** A sentence as said, with the labels behind it in double braces: `text {{step: …}} {{spec: name | low=1 unit=mm}}`. */
type Line = { readonly text: string; readonly labels: readonly string[] }

const toLine = (line: string): Line => {
  const said = line.replace(/^[A-Z][A-Za-z]*: /, '')
  const at = said.indexOf('{{')
  if (at < 0) return { text: said.trim(), labels: [] }
  // A unit may hold single braces: `{turn}`.
  const labels = [...said.slice(at).matchAll(/\{\{((?:[^{}]|\{[^{}]*\})*)\}\}/g)].map(match => (match[1] ?? '').trim())
  return { text: said.slice(0, at).trim(), labels }
}

const toSpec = (name: string, groups: readonly string[], start: number, end: number): GoldSpec => {
  const fields: Record<string, number | string> = {}
  for (const group of groups) {
    if (group.startsWith('ref=')) fields.ref = group.slice(4)
    else
      for (const part of group.split(/\s+/)) {
        const [key = '', value = ''] = part.split('=')
        if (['low', 'high', 'nominal', 'tol'].includes(key)) fields[key] = Number(value)
        else if (key === 'unit') fields.unit = value
      }
  }
  return { name, start, end, ...fields }
}

/** Reads a labelled talk; times are given to its sentences by `timesOf`. */
export const parseTalk = (
  text: string,
  timesOf: (texts: readonly string[]) => readonly { start: number; end: number }[],
): Gold => {
  const lines = text
    .split('\n')
    .filter(line => line.trim() !== '' && !line.startsWith('#'))
    .map(toLine)
  const times = timesOf(lines.map(line => line.text))
  const marks: (GoldMark & { end: number })[] = []
  const specs: GoldSpec[] = []
  const [tools, materials]: [string[], string[]] = [[], []]
  lines.forEach(({ labels }, i) => {
    const { start, end } = times[i] ?? { start: 0, end: 0 }
    for (const label of labels) {
      if (label === 'step+') {
        const step = marks.findLastIndex(mark => mark.kind === 'step')
        const last = marks[step]
        if (last !== undefined) marks[step] = { ...last, end }
        continue
      }
      const [kind = '', ...rest] = label.split(':')
      const [name = '', ...groups] = rest
        .join(':')
        .split('|')
        .map(group => group.trim())
      if (kind === 'tool') tools.push(name)
      else if (kind === 'material') materials.push(name)
      else if (kind === 'spec') specs.push(toSpec(name, groups, start, end))
      if (kind !== 'retract' && kind !== 'conflict') marks.push({ kind, start, end, text: name })
    }
  })
  return {
    sentences: lines.map(({ text: said }, i) => ({ text: said, ...(times[i] ?? { start: 0, end: 0 }) })),
    marks,
    specs,
    tools,
    materials,
  }
}
