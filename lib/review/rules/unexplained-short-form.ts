import { inSteps } from '../chunks'
import { quote } from '../late'
import { onceForText } from '../memo'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'

/** Short forms that every workshop reads, units and sizes left aside. General knowledge, no source. */
const KNOWN = new Set(
  'LED USB PVC ABS PTFE AC DC HVAC PPE OK ID OD RV TV PC UV LH RH TDC BDC RPM PSI ISO SAE API DOT NPT BSP AWG MIG TIG CNC PCB RCD GFCI EGR OBD ECU VIN SRS PTO HP CD DVD LCD PID CO LPG DIY WD AM PM NO YES OFF ON OIL II III IV VI VG EPA OSHA IP RTV TDS PH SRAM SDS MDF PLA PETG ATF UTP LAN WIFI GPS UK US EU CE UL BAR MAX MIN NM KPA HZ KW MM CM IBC CAT AAA AA NLGI EP CR JIS DIN ANSI HSS OEM UPS VAC VDC RMS NC COM GND QR SPD MCB MCCB HDMI SD SSD RAM CPU BIOS DI RO PEX UPVC EPDM NBR BLDC ESC VFD PLC HMI KOH DTI XL SUV ATV RPM PAG POE ABS ESP MAF MAP PCV TPS CV'.split(
    ' ',
  ),
)
/** Names of switch positions and of what a display shows: "set the selector to AUTO". */
const POSITION =
  /\b(?:to|at|in|on|shows?|reads?|says?|marked|position|labell?ed|button|key|switch|press|select|choose)\s+["“'‘]?[A-Z]{2,8}["”'’]?(?=[\s.,;:)]|$)|\b[A-Z]{2,8}(?= (?:position|button|key|mode|lamp|light|setting)\b)/g
const SHORT = /(?<![\p{L}\p{N}.-])[A-Z]{2,5}s?(?![\p{L}\p{N}-])/gu

const shortIn = onceForText((text: string): readonly string[] =>
  (text === text.toUpperCase() ? [] : (text.replaceAll(POSITION, ' ').match(SHORT) ?? [])).filter(
    short => !KNOWN.has(short.replace(/s$/, '')),
  ),
)

const shortsIn = inSteps(({ mark, checks }) =>
  [mark, ...checks].flatMap(own => shortIn(own.text).map(short => ({ own, bare: short.replace(/s$/, '') }))),
)

const check = ({ sheet, project }: Subject): readonly Found[] => {
  let joined: string | undefined
  const said = (words: string): boolean => {
    joined ??= [
      sheet.heading.title,
      sheet.heading.equipment,
      sheet.heading.scope,
      ...project.marks.map(({ text }) => text),
    ].join('\n')
    return joined.includes(words)
  }
  const seen = new Set<string>()
  return shortsIn(sheet).flatMap(({ own, bare }): Found[] => {
    if (seen.has(bare) || said(`(${bare})`) || said(`${bare} (`)) return []
    seen.add(bare)
    return [
      {
        place: atMark(own),
        message: `"${bare}" in ${quote(own)} is not explained. Write it out once: "full name (${bare})".`,
      },
    ]
  })
}

/** Letters only insiders read. */
export const unexplainedShortForm: Rule = {
  id: 'unexplained-short-form',
  level: 'consider',
  about: 'A short form is used and never written out.',
  why: 'The next person may come from another trade.',
  source: 'IEC/IEEE 82079-1:2019 on abbreviations (from memory)',
  trips: sample([['step', 'Reset the DPFE valve']]),
  passes: sample([['step', 'Reset the differential pressure feedback (DPFE) valve']]),
  check,
}
