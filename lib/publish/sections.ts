import type { BlockContent, ListItem, PhrasingContent } from 'mdast'
import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { type Sheet, type SheetStep, stepOf } from '@/lib/procedure/sheet'
import { spanAddress } from './address'
import { type LineSetting, PENCILLED, toLineNodes, toPartNodes } from './line'
import type { Standing } from './mark-note'
import { type Block, bullets, emphasis, heading, item, link, numbered, paragraph, quote, table, text } from './nodes'
import { formatNote } from './note'
import { toShown } from './shown'
import { detailsOf, type StepNumbers, sameName } from './standing'
import { toLine } from './text'
import { toSameCautions } from './things'

/** Headings of the sections of a sheet, in order. The reader knows them by these words. */
export const SECTIONS = {
  scope: 'Scope',
  safety: 'Safety summary',
  tools: 'Tools',
  materials: 'Materials',
  specs: 'Specs',
  steps: 'Steps',
  loose: 'Not tied to a step',
  symptoms: 'Symptoms',
  references: 'References',
  findings: 'Findings',
  waivers: 'Findings let stand',
  signOff: 'Revision and sign-off',
} as const

const titled = (title: string, blocks: readonly Block[]): readonly Block[] =>
  blocks.length === 0 ? [] : [heading(2, title), ...blocks]

const listed = (items: ListItem[]): readonly Block[] => (items.length === 0 ? [] : [bullets(items)])

/** A link to where a mark is said, named by its step. Its note is the id alone: the mark is defined at its step. */
const whereLink = (mark: Mark, numbers: StepNumbers, { address }: LineSetting, word = ''): PhrasingContent => {
  const number = numbers.get(mark.id)
  const label = number === undefined ? 'footage' : `${word}${number}`
  return link(label, spanAddress(address, mark), formatNote({ id: mark.id, items: new Map() }))
}

const echoItem = (mark: Mark, links: PhrasingContent[], setting: LineSetting, labelled: boolean): ListItem => {
  const { label, ...shown } = toShown(mark, setting.units)
  const parts = toPartNodes(labelled && label !== undefined ? { label, ...shown } : shown)
  const nodes = parts.length === 0 ? [] : [...parts, text(' ')]
  return item(
    paragraph(...nodes, emphasis(text('('), ...links, text(mark.pencilled === undefined ? ')' : `, ${PENCILLED})`))),
  )
}

/** Links to every use, the word `step` before the first: `step 4`, `steps 2, 4`. */
const whereLinks = (uses: readonly Mark[], numbers: StepNumbers, setting: LineSetting): PhrasingContent[] => {
  const isOne = uses.length === 1
  return uses.flatMap((use, i) => {
    const where = whereLink(use, numbers, setting, isOne ? 'step ' : '')
    return i === 0 ? [...(isOne || !numbers.has(use.id) ? [] : [text('steps ')]), where] : [text(', '), where]
  })
}

export const safetySection = (sheet: Sheet, numbers: StepNumbers, setting: LineSetting): readonly Block[] =>
  titled(
    SECTIONS.safety,
    listed(
      toSameCautions(sheet.safety).map(({ mark, all }) =>
        echoItem(mark, whereLinks(all, numbers, setting), setting, true),
      ),
    ),
  )

/** Tools or materials, each name once, with the steps that need it. */
export const listSection = (
  kind: Kind & ('tool' | 'material'),
  sheet: Sheet,
  numbers: StepNumbers,
  setting: LineSetting,
): readonly Block[] => {
  const names = kind === 'tool' ? sheet.tools : sheet.materials
  const all = [...sheet.steps.flatMap(step => (kind === 'tool' ? step.tools : step.materials)), ...sheet.loose].filter(
    mark => mark.kind === kind,
  )
  const items = names.map(name => {
    const uses = all.filter(mark => sameName(mark, name))
    const links = whereLinks(uses, numbers, setting)
    return echoItem(name, links, setting, false)
  })
  return titled(kind === 'tool' ? SECTIONS.tools : SECTIONS.materials, listed(items))
}

const flag = (mark: Mark): PhrasingContent[] =>
  mark.pencilled === undefined ? [] : [text(' '), emphasis(text(PENCILLED))]

/** Head of the table of specs; the reader knows its columns by these words. */
export const SPEC_COLUMNS = ['Spec', 'Value', 'Condition', 'Basis', 'Step'] as const

export const specsSection = (sheet: Sheet, numbers: StepNumbers, setting: LineSetting): readonly Block[] => {
  const rows = sheet.specs.map(mark => {
    const shown = toShown(mark, setting.units)
    const cells = [shown.text, shown.value ?? '', shown.tail ?? '', shown.aside ?? '']
    return [...cells.map(cell => (cell === '' ? [] : [text(cell)])), [whereLink(mark, numbers, setting), ...flag(mark)]]
  })
  return titled(SECTIONS.specs, rows.length === 0 ? [] : [table([SPEC_COLUMNS.map(word => [text(word)]), ...rows])])
}

/** How a mark stands under its step; `inTime` are all steps in order of time. */
const standingUnder = ({ step: _, ...mark }: Mark, under: Mark, inTime: readonly Mark[]): Standing => ({
  under: under.id,
  isByTime: stepOf(mark, inTime)?.id === under.id,
})

/** What every step needs to know: the line's setting, the other steps in order of time, the pictures. */
type StepSetting = {
  readonly line: LineSetting
  readonly inTime: readonly Mark[]
  readonly pictures: ReadonlyMap<string, string>
}

const stepItem = (step: SheetStep, { line, inTime, pictures }: StepSetting): ListItem => {
  const details = detailsOf(step).map(mark =>
    item(paragraph(...toLineNodes(mark, standingUnder(mark, step.mark, inTime), line))),
  )
  const url = pictures.get(step.mark.id)
  const alt = toLine(step.mark.still?.alt ?? '')
  const children: BlockContent[] = [
    paragraph(...toLineNodes(step.mark, { number: step.number }, line)),
    ...(url === undefined ? [] : [paragraph({ type: 'image', url, alt })]),
    ...(details.length === 0 ? [] : [bullets(details)]),
  ]
  return { type: 'listItem', spread: url !== undefined, children }
}

/** Numbered steps; a caution stands between the step before and the step it protects, so the numbering goes on after it. */
export const stepsSection = (
  sheet: Sheet,
  line: LineSetting,
  pictures: ReadonlyMap<string, string>,
): readonly Block[] => {
  const blocks: Block[] = []
  const inTime = sheet.steps.map(step => step.mark).sort((a, b) => a.start - b.start || a.end - b.end)
  let open: { start: number; items: ListItem[] } | undefined
  const close = () => {
    if (open !== undefined) blocks.push(numbered(open.start, open.items))
    open = undefined
  }
  for (const step of sheet.steps) {
    if (step.cautions.length > 0) close()
    for (const mark of step.cautions)
      blocks.push(quote(paragraph(...toLineNodes(mark, standingUnder(mark, step.mark, inTime), line))))
    open ??= { start: step.number, items: [] }
    open.items.push(stepItem(step, { line, inTime, pictures }))
  }
  close()
  return titled(SECTIONS.steps, blocks)
}

export const looseSection = (sheet: Sheet, setting: LineSetting): readonly Block[] =>
  titled(SECTIONS.loose, listed(sheet.loose.map(mark => item(paragraph(...toLineNodes(mark, 'loose', setting))))))

export const symptomsSection = (sheet: Sheet, numbers: StepNumbers, setting: LineSetting): readonly Block[] =>
  titled(
    SECTIONS.symptoms,
    listed(sheet.symptoms.map(mark => echoItem(mark, [whereLink(mark, numbers, setting, 'step ')], setting, false))),
  )
