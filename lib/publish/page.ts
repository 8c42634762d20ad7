import type { Clip, HowTo, HowToStep, WithContext } from 'schema-dts'
import type { Mark } from '@/lib/procedure/mark'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import { footageAddress, spanAddress } from './address'
import { toNotices } from './head'
import type { LineSetting } from './line'
import type { PublishOptions } from './publication'
import { selected } from './selection'
import { type Shown, toShown } from './shown'
import { detailsOf } from './standing'
import { toLine } from './text'
import { toThings } from './things'
import { CLOSING_NOTE, formatInterval } from './words'

/** @returns seconds as an ISO 8601 duration: `PT12M34.5S`. */
export const formatDuration = (seconds: number): string => {
  const all = Math.round(seconds * 1000)
  const [h, m, s] = [Math.floor(all / 3_600_000), Math.floor(all / 60_000) % 60, (all % 60_000) / 1000]
  return `PT${h > 0 ? `${h}H` : ''}${m > 0 ? `${m}M` : ''}${s > 0 || all < 60_000 ? `${s}S` : ''}`
}

const offset = (seconds: number): number => Math.round(seconds * 1000) / 1000

const plain = ({ label, text, value, tail, aside }: Shown): string => {
  const words = [value, tail].filter(Boolean).join(', ')
  const body = [text, words].filter(Boolean).join(': ')
  return `${label === undefined ? '' : `${label}: `}${body}${aside === undefined ? '' : ` (${aside})`}`
}

const flag = (mark: Mark): string => (mark.pencilled === undefined ? '' : ' [pencilled]')

const line = (mark: Mark, { units }: LineSetting): string => `${plain(toShown(mark, units))}${flag(mark)}`

const clipOf = (mark: Mark, setting: LineSetting): Clip => ({
  '@type': 'Clip',
  name: toLine(mark.text),
  startOffset: offset(mark.start),
  endOffset: offset(mark.end),
  url: spanAddress(setting.address, mark),
})

const toStep = (step: SheetStep, setting: LineSetting): HowToStep => {
  const cautions = step.cautions.map(mark => ({ '@type': 'HowToTip' as const, text: line(mark, setting) }))
  const tips = detailsOf(step).map(mark => ({ '@type': 'HowToTip' as const, text: line(mark, setting) }))
  return {
    '@type': 'HowToStep',
    position: step.number,
    name: toLine(step.mark.text),
    url: spanAddress(setting.address, step.mark),
    itemListElement: [...cautions, { '@type': 'HowToDirection', text: line(step.mark, setting) }, ...tips],
    video: clipOf(step.mark, setting),
  }
}

/**
 * A sheet as a schema.org HowTo. Cautions come before the direction they protect.
 *
 * @source schema.org HowTo, HowToStep, HowToDirection, HowToTip, HowToTool, HowToSupply, Clip
 */
export const toHowTo = (whole: Sheet, options: PublishOptions = {}): WithContext<HowTo> => {
  const sheet = selected(whole, options)
  const { title, equipment, scope, revision, author } = sheet.heading
  const setting = {
    address: footageAddress(sheet.footage?.name, options.footageAddress),
    units: options.units ?? 'as-said',
  }
  const due = formatInterval(sheet.heading.interval)
  const description = [
    ...toNotices(whole, options).map(({ opening, text }) => `${opening} ${text}`),
    toLine(scope),
    due === undefined ? '' : `Due ${due}.`,
    CLOSING_NOTE,
  ]
  const { footage } = sheet
  const loose = sheet.loose.filter(mark => mark.kind !== 'tool' && mark.kind !== 'material')
  return {
    '@context': 'https://schema.org',
    '@type': 'HowTo',
    name: toLine(title) || 'Untitled procedure',
    description: description.filter(Boolean).join(' '),
    ...(toLine(equipment) === '' ? {} : { about: { '@type': 'Thing', name: toLine(equipment) } }),
    ...(toLine(revision) === '' ? {} : { version: toLine(revision) }),
    ...(toLine(author) === '' ? {} : { author: { '@type': 'Person', name: toLine(author) } }),
    tool: toThings(sheet, 'tool').map(({ name, mark }) => ({
      '@type': 'HowToTool' as const,
      name: `${name}${flag(mark)}`,
    })),
    supply: toThings(sheet, 'material').map(({ name, price, mark }) => ({
      '@type': 'HowToSupply' as const,
      name: `${name}${flag(mark)}`,
      ...(price === undefined ? {} : { estimatedCost: price }),
    })),
    step: [
      ...loose.map(
        (mark): HowToStep => ({ '@type': 'HowToStep', text: line(mark, setting), video: clipOf(mark, setting) }),
      ),
      ...sheet.steps.map(step => toStep(step, setting)),
    ],
    ...(footage === null
      ? {}
      : {
          video: {
            '@type': 'VideoObject',
            name: toLine(footage.name),
            duration: formatDuration(footage.seconds),
            contentUrl: setting.address,
          },
        }),
  }
}

/** Characters that could end the script element or break a line of script, as JSON escapes them. */
const inScript = (json: string): string =>
  json.replace(/[<>&\u2028\u2029]/g, char => `\\u${char.charCodeAt(0).toString(16).padStart(4, '0')}`)

/** @returns a script element with the HowTo as JSON-LD, to be put into any page as it stands. */
export const toPage = (sheet: Sheet, options: PublishOptions = {}): string =>
  `<script type="application/ld+json">\n${inScript(JSON.stringify(toHowTo(sheet, options), null, 2))}\n</script>\n`
