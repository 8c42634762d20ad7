import type { Unit } from './unit-row'

import { MECHANICS } from './unit-rows-mechanics'
import { POWER } from './unit-rows-power'
import { PRESSURES } from './unit-rows-pressure'
import { SPACE } from './unit-rows-space'
import { VOLUMES } from './unit-rows-volume'

const list = (text: string, separator: string): readonly string[] =>
  text
    .split(separator)
    .map(part => part.trim())
    .filter(part => part !== '')

/**
 * Every unit that is read or shown without the full UCUM library.
 *
 * @source factors follow from the definitions of inch, pound, standard gravity, US and imperial gallon (NIST SP 811 B.8 and
 *   appendix B; values from memory) and of UCUM; tests hold each against @lhncbc/ucum-lhc.
 */
export const UNITS: readonly Unit[] = [...MECHANICS, ...PRESSURES, ...SPACE, ...VOLUMES, ...POWER].map(
  ([code, kind, factor, symbol, system, names, written, offset]) => ({
    code,
    kind,
    factor,
    symbol,
    system,
    names: list(names, ','),
    written: list(written, '|'),
    ...(offset === undefined ? {} : { offset }),
  }),
)
