import type { Element, ElementContent } from 'hast'
import { h, s } from 'hastscript'
import type { Mark } from '@/lib/procedure/mark'
import type { SheetStep } from '@/lib/procedure/sheet'
import { formatSpan, spanAddress } from './address'
import { toDataAddress } from './base64'
import type { LineSetting } from './line'
import { mediaOf } from './pictures'
import { toShown } from './shown'
import { detailsOf } from './standing'
import { toLine } from './text'
import { hazardWords, SIGNAL_WORDS } from './words'

/** Safety alert symbol: an exclamation mark in a triangle. @source ANSI Z535.6 (from memory): with every signal word of injury */
const alertSymbol = (): Element =>
  s('svg', { viewBox: '0 0 52 47', ariaHidden: 'true' }, [
    s('path', { d: 'M26 2 50 45H2Z', fill: '#000', stroke: '#fff', 'stroke-width': 1.5, 'stroke-linejoin': 'round' }),
    s('path', { d: 'M23 16h6l-1.2 16h-3.6zM23.2 35h5.6v5.4h-5.6z', fill: '#fff' }),
  ])

export const timeLink = (mark: Mark, { address }: LineSetting): Element =>
  h('a.time', { href: spanAddress(address, mark) }, formatSpan(mark))

export const flag = (mark: Mark): readonly ElementContent[] =>
  mark.pencilled === undefined ? [] : [{ type: 'text', value: ' ' }, h('span.flag', 'pencilled')]

/** A caution as a panel: signal word with its symbol, hazard, message. */
export const panel = (mark: Mark, setting: LineSetting, where: ElementContent[]): Element => {
  const level = mark.level ?? 'caution'
  const hazard = hazardWords(mark)
  return h(`div.panel.${level}`, { role: 'note' }, [
    h('div.signal', [...(level === 'notice' ? [] : [alertSymbol()]), h('span', SIGNAL_WORDS[level])]),
    h('div.message', [
      h('p', [
        ...(hazard === '' ? [] : [h('span.hazard', `${hazard[0]?.toUpperCase()}${hazard.slice(1)}. `)]),
        h('bdi', toShown(mark, setting.units).text),
        ...flag(mark),
        ' ',
        ...where,
      ]),
    ]),
  ])
}

/** A value in figures, or a limit in words. */
export const valueSpan = (mark: Mark, value: string): Element =>
  h(mark.quantity === undefined ? 'strong' : 'span.value', value)

/** A spec with room for what was measured. */
const specRow = (mark: Mark, setting: LineSetting): Element => {
  const { label = '', text, value, tail, aside } = toShown(mark, setting.units)
  return h('li.detail.spec', [
    h('span.kind', label),
    h('span', [
      h('bdi', text),
      ...(value === undefined ? [] : [text === '' ? '' : ': ', valueSpan(mark, value)]),
      ...(tail === undefined ? [] : [`, ${tail}`]),
      ...(aside === undefined ? [] : [h('span.uses', ` (${aside})`)]),
      ...flag(mark),
      ' ',
      timeLink(mark, setting),
    ]),
    h('span.measured', [h('span', 'Measured'), h('span.blank'), h('span')]),
  ])
}

const detailRow = (mark: Mark, setting: LineSetting): Element => {
  if (mark.kind === 'spec') return specRow(mark, setting)
  const { label = '', text, aside } = toShown(mark, setting.units)
  return h('li.detail', [
    h('span.kind', label),
    h('span', [h('bdi', text), ...(aside === undefined ? [] : [h('span.uses', ` (${aside})`)]), ...flag(mark)]),
    timeLink(mark, setting),
  ])
}

const picture = (mark: Mark, still: Uint8Array | undefined): readonly Element[] => {
  const media = still === undefined ? undefined : mediaOf(still)
  if (still === undefined || media === undefined || !media.type.startsWith('image/')) return []
  return [h('img.still', { src: toDataAddress(media.type, still), alt: toLine(mark.still?.alt ?? '') })]
}

/** A step: its cautions first, then box, number and action, then picture and details. Never split over pages. */
export const stepElement = (step: SheetStep, setting: LineSetting, still: Uint8Array | undefined): Element => {
  const details = detailsOf(step)
  const under = [
    ...picture(step.mark, still),
    ...(details.length === 0
      ? []
      : [
          h(
            'ul',
            details.map(mark => detailRow(mark, setting)),
          ),
        ]),
  ]
  return h('li.step', { id: `step-${step.number}` }, [
    ...step.cautions.map(mark => panel(mark, setting, [timeLink(mark, setting)])),
    h('div.action', [
      h('span.box', { ariaHidden: 'true' }),
      h('span.number', String(step.number)),
      h('p', { dir: 'auto' }, [toShown(step.mark, setting.units).text, ...flag(step.mark)]),
      timeLink(step.mark, setting),
    ]),
    ...(under.length === 0 ? [] : [h('div.under', under)]),
  ])
}

/** A mark that belongs to no step. */
export const looseElement = (mark: Mark, setting: LineSetting): Element =>
  mark.kind === 'caution' ? h('li', [panel(mark, setting, [timeLink(mark, setting)])]) : detailRow(mark, setting)
