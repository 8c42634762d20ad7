import { toDataAddress } from './base64'
import type { PublishOptions } from './publication'

/** @returns the text as a CSS string; everything but letters, figures and blanks of ASCII escaped. */
export const cssString = (text: string): string =>
  `"${[...text].map(c => (/[A-Za-z0-9 ]/.test(c) ? c : `\\${(c.codePointAt(0) ?? 0).toString(16)} `)).join('')}"`

const faces = (fonts: PublishOptions['fonts']): string =>
  [...(fonts ?? [])]
    .map(([face, bytes]) => {
      const family = face === 'figures-400' ? 'B612 Mono' : 'Atkinson Hyperlegible'
      const weight = face.endsWith('700') ? 700 : 400
      const source = toDataAddress('font/woff2', bytes)
      return `@font-face{font-family:"${family}";font-weight:${weight};src:url(${source}) format("woff2")}`
    })
    .join('\n')

const PAPERS = { a4: 'A4', letter: 'letter' } as const

/** The page: margins fit A4 and Letter; without a paper chosen, the printer's own is used. */
const page = (title: string, revision: string, paper: PublishOptions['paper']): string => `
@page {
  ${paper === undefined ? '' : `size: ${PAPERS[paper]};`}
  margin: 19mm 15mm 17mm;
  @top-left { content: ${cssString(title)}; font: 9pt "Atkinson Hyperlegible", Verdana, sans-serif; color: #16202b; vertical-align: bottom; padding-bottom: 3mm; width: 70% }
  @top-right { content: ${cssString(revision)}; font: 9pt "Atkinson Hyperlegible", Verdana, sans-serif; color: #16202b; vertical-align: bottom; padding-bottom: 3mm }
  @bottom-left { content: "Follow the maker's manual, local codes and licensed practice."; font: 8pt "Atkinson Hyperlegible", Verdana, sans-serif; color: #444; vertical-align: top; padding-top: 3mm; width: 70% }
  @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 9pt "Atkinson Hyperlegible", Verdana, sans-serif; color: #16202b; vertical-align: top; padding-top: 3mm }
}`

/** Signal colours. @source ANSI Z535.1 (from memory): safety red, orange, yellow, blue, as close as a screen gives them */
const SIGNALS = `
.danger .signal { background: #b3131b; color: #fff }
.warning .signal { background: #ff7f00; color: #000 }
.caution .signal { background: #ffd200; color: #000 }
.notice .signal { background: #0b5cab; color: #fff; font-style: italic }`

const BODY = `
* { box-sizing: border-box }
html { -webkit-print-color-adjust: exact; print-color-adjust: exact }
body { margin: 0 auto; padding: 6mm; max-width: 190mm; background: #fff; color: #16202b; font: 11pt/1.4 "Atkinson Hyperlegible", Verdana, sans-serif; overflow-wrap: anywhere }
h1 { font-size: 22pt; line-height: 1.15; margin: 0 0 3mm; border-bottom: 1.2mm solid #17457a; padding-bottom: 2mm }
h2 { font-size: 14pt; margin: 7mm 0 2.5mm; color: #17457a; break-after: avoid }
p { margin: 0 0 2mm }
a { color: inherit; text-decoration: none }
ul, ol { margin: 0; padding: 0; list-style: none }
.facts { display: grid; grid-template-columns: max-content 1fr; gap: 0.5mm 5mm; margin: 0 0 4mm }
.facts dt { font-weight: 700 }
.facts dd { margin: 0 }
.time, .value, .number { font-family: "B612 Mono", "DejaVu Sans Mono", Consolas, monospace }
.time { font-size: 8.5pt; color: #4a5560; white-space: nowrap }
.flag { border: 0.3mm dashed #16202b; border-radius: 1mm; padding: 0 1.2mm; font-style: italic; font-size: 8.5pt; white-space: nowrap }
.said { border: 0.7mm solid #16202b; padding: 2.5mm 3.5mm; margin: 0 0 3mm; break-inside: avoid }
.said.open { border-style: dashed }
.said ul { list-style: disc; padding-left: 5mm; margin-top: 1mm }
.panel { display: grid; grid-template-columns: 34mm 1fr; border: 0.5mm solid #16202b; margin: 0 0 2mm; break-inside: avoid }
.panel .signal { display: flex; align-items: center; justify-content: center; gap: 1.5mm; padding: 1.5mm; font-weight: 700; font-size: 11.5pt; letter-spacing: 0.02em; border-right: 0.5mm solid #16202b }
.panel svg { width: 5.2mm; height: 4.7mm; flex: none }
.panel .message { padding: 1.8mm 3mm }
.panel .message p { margin: 0 }
.hazard { font-weight: 700 }
.lists { display: grid; grid-template-columns: 1fr 1fr; gap: 0 8mm }
.lists li { display: grid; grid-template-columns: 5mm 1fr; gap: 1.5mm; margin-bottom: 1mm; break-inside: avoid }
.lists.one { grid-template-columns: 1fr }
.uses { color: #4a5560; font-size: 9pt }
.box { display: inline-block; width: 4mm; height: 4mm; border: 0.4mm solid #16202b; margin-top: 0.9mm; flex: none }
.step { break-inside: avoid; border-top: 0.3mm solid #b9b3a4; padding: 3mm 0 2.5mm }
.action { display: grid; grid-template-columns: 5mm 7mm 1fr auto; gap: 1.5mm; align-items: baseline }
.action .box { align-self: start; margin-top: 1.1mm }
.number { font-weight: 700; font-size: 12pt; text-align: right }
.action p { font-weight: 700; margin: 0 }
.under { margin: 1.5mm 0 0 16.5mm }
.still { display: block; max-width: 100%; max-height: 70mm; border: 0.3mm solid #b9b3a4; margin: 2mm 0 }
.detail { display: grid; grid-template-columns: 21mm 1fr auto; gap: 2mm; margin-top: 0.8mm; align-items: baseline }
.detail .kind { font-size: 9pt; letter-spacing: 0.03em; color: #17457a; font-weight: 700 }
.spec { background: #f4f1e8; border-left: 1mm solid #17457a; padding: 1mm 2mm; margin-left: -3mm; break-inside: avoid }
.value { display: inline-block; max-width: 100%; font-weight: 700; font-size: 0.95em }
.measured { display: grid; grid-template-columns: max-content 26mm auto; gap: 1.5mm; align-items: end; font-size: 9pt; color: #4a5560; white-space: nowrap }
.measured .blank { border-bottom: 0.3mm solid #16202b; height: 5mm }
table { border-collapse: collapse; width: 100%; font-size: 9.5pt }
th, td { text-align: start; vertical-align: top; padding: 1.2mm 2mm; border: 0.25mm solid #b9b3a4 }
th { background: #f4f1e8; overflow-wrap: normal }
thead { display: table-header-group }
tr { break-inside: avoid }
.sign-off td { height: 9mm }
.plain li { margin-bottom: 1mm; padding-left: 4mm; text-indent: -4mm }
.plain li::before { content: "–"; display: inline-block; width: 4mm; text-indent: 0 }
.closing { border-top: 0.7mm solid #17457a; margin-top: 6mm; padding-top: 2mm; break-inside: avoid }
.closing h2 { margin-top: 0 }
@media print { body { padding: 0; max-width: none } }
@media screen and (max-width: 640px) {
  .panel { grid-template-columns: 1fr }
  .panel .signal { justify-content: flex-start; border-right: 0; border-bottom: 0.5mm solid #16202b }
  .lists, .detail { grid-template-columns: 1fr }
  .under { margin-left: 0 }
  table { font-size: 8.5pt }
  th, td { padding: 1mm }
  td:nth-child(n + 4) { overflow-wrap: break-word }
}`

/** @returns the style sheet of a handout. */
export const handoutStyle = (title: string, revision: string, { fonts, paper }: PublishOptions): string =>
  [faces(fonts), page(title, revision, paper), BODY, SIGNALS].join('\n')
