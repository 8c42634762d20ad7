import type { PhrasingContent } from 'mdast'
import type { Mark } from '@/lib/procedure/mark'
import { formatSpan, spanAddress } from './address'
import { type Standing, toNote } from './mark-note'
import { emphasis, link, strong, text } from './nodes'
import { formatNote } from './note'
import type { UnitChoice } from './publication'
import { type Shown, toShown } from './shown'

/** What every line about a mark needs to know. */
export type LineSetting = { readonly address: string; readonly units: UnitChoice }

/** The visible flag of a mark nobody has kept yet. */
export const PENCILLED = 'pencilled'

/** Puts single blanks between runs of inline content. */
const spaced = (runs: readonly (readonly PhrasingContent[])[]): PhrasingContent[] =>
  runs.filter(run => run.length > 0).flatMap((run, i) => (i === 0 ? run : [text(' '), ...run]))

/** Joins neighbouring texts, as a Markdown reader would give them. */
const merged = (nodes: readonly PhrasingContent[]): PhrasingContent[] => {
  const out: PhrasingContent[] = []
  for (const node of nodes) {
    const last = out.at(-1)
    if (node.type === 'text' && last?.type === 'text') out[out.length - 1] = text(last.value + node.value)
    else out.push(node)
  }
  return out
}

/** @returns the parts of a line, without its time: `**Spec:** drain plug torque **25 N·m**, cold *(manual)*`. */
export const toPartNodes = ({ label, text: words, value, tail, aside }: Shown): PhrasingContent[] =>
  merged(
    spaced([
      label === undefined ? [] : [strong(`${label}:`)],
      words === '' ? [] : [text(words)],
      value === undefined ? [] : [strong(value), ...(tail === undefined ? [] : [text(`, ${tail}`)])],
      aside === undefined ? [] : [emphasis(text(`(${aside})`))],
    ]),
  )

/** @returns the line that defines a mark: its parts, its time as a link that carries its note, its flag. */
export const toLineNodes = (mark: Mark, standing: Standing, { address, units }: LineSetting): PhrasingContent[] => {
  const shown = toShown(mark, units)
  const time = link(formatSpan(mark), spanAddress(address, mark), formatNote(toNote(mark, shown, standing)))
  const flag = mark.pencilled === undefined ? [] : [emphasis(text(PENCILLED))]
  return merged(spaced([toPartNodes(shown), [time], flag]))
}
