/** What a quantity is about. Two units convert only within one kind: N·m of torque and joules share a UCUM dimension. */
export type QuantityKind =
  | 'torque'
  | 'pressure'
  | 'length'
  | 'distance'
  | 'angle'
  | 'rotation'
  | 'frequency'
  | 'temperature'
  | 'temperature difference'
  | 'volume'
  | 'mass'
  | 'force'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'power'
  | 'energy'
  | 'charge'
  | 'capacitance'
  | 'time'
  | 'ratio'
  | 'flow'
  | 'velocity'
  | 'area'
  | 'density'
  | 'stress'
  | 'spring rate'
  | 'acidity'
  | 'sound'

export type UnitSystem = 'metric' | 'us' | 'imperial' | 'any'

/** One unit of the table. */
export type Unit = {
  /** UCUM code, case sensitive. */
  readonly code: string
  readonly kind: QuantityKind
  /** How many base units of its kind one is (N·m, Pa, m, deg, rpm, Hz, kelvin, m³, kg, N, V, A, Ω, W, J, C, F, s, 1, m³/s). */
  readonly factor: number
  /** Base units at zero of this unit; only for temperatures. */
  readonly offset?: number
  /** For people. */
  readonly symbol: string
  readonly system: UnitSystem
  /** Spoken names: `singular` or `singular/plural`, lower case. */
  readonly names: readonly string[]
  /** Written forms, matched with their case. */
  readonly written: readonly string[]
}

type Row = readonly [
  code: string,
  kind: QuantityKind,
  factor: number,
  symbol: string,
  system: UnitSystem,
  names: string,
  written: string,
  offset?: number,
]

const INCH = 0.0254
const FOOT = 0.3048
const POUND = 0.45359237
const GRAVITY = 9.80665
const POUND_FORCE = POUND * GRAVITY
const GALLON = 231 * INCH ** 3
const IMPERIAL_GALLON = 4.54609e-3
/** UCUM defines m[Hg] as 133.3220 kPa and m[H2O] as 9.80665 kPa. */
const MERCURY = 133322
const WATER = 9806.65

/**
 * Every unit that is read or shown without the full UCUM library.
 *
 * @source factors follow from the definitions of inch, pound, standard gravity, US and imperial gallon (NIST SP 811 B.8 and
 *   appendix B; values from memory) and of UCUM; tests hold each against @lhncbc/ucum-lhc.
 */
const ROWS: readonly Row[] = [
  ['N.m', 'torque', 1, 'N·m', 'metric', 'newton metre, newtonmetre', 'N m|Nm|nm|NM|n m|N·m'],
  ['cN.m', 'torque', 0.01, 'cN·m', 'metric', 'centinewton metre', 'cN m|cNm|cnm'],
  ['kN.m', 'torque', 1000, 'kN·m', 'metric', 'kilonewton metre', 'kN m|kNm'],
  [
    '[ft_i].[lbf_av]',
    'torque',
    FOOT * POUND_FORCE,
    'lbf·ft',
    'us',
    'foot pound/foot pounds, foot pound/feet pounds, pound foot/pound feet, pound foot/pounds foot, foot pound of torque/foot pounds of torque, foot pound force',
    'ft lb|ft lbs|ft lbf|lb ft|lbs ft|lbf ft|ftlb|ftlbs|lbft|foot lb|foot lbs|ft pounds|ft pound|FT LB|FT LBS|Ft lb|Ft Lb|lb feet',
  ],
  [
    '[in_i].[lbf_av]',
    'torque',
    INCH * POUND_FORCE,
    'lbf·in',
    'us',
    'inch pound/inch pounds, pound inch/pound inches, inch pound of torque/inch pounds of torque',
    'in lb|in lbs|in lbf|lb in|lbs in|lbf in|inlb|inlbs|lbin|inch lb|inch lbs|IN LB|IN LBS|in pounds',
  ],
  [
    '[in_i].[oz_av].[g]',
    'torque',
    (INCH * POUND_FORCE) / 16,
    'ozf·in',
    'us',
    'inch ounce, ounce inch/ounce inches',
    'in oz|oz in|ozf in|in ozf',
  ],
  [
    'kgf.m',
    'torque',
    GRAVITY,
    'kgf·m',
    'metric',
    'kilogram metre, kilo metre of torque, kilogram force metre, kilopond metre, metre kilo',
    'kgf m|kg m|kgm|kgfm|m kg',
  ],
  ['kgf.cm', 'torque', GRAVITY / 100, 'kgf·cm', 'metric', 'kilogram centimetre', 'kgf cm|kg cm'],
  [
    '[psi]',
    'pressure',
    POUND_FORCE / INCH ** 2,
    'psi',
    'us',
    'psi/psi, pound per square inch/pounds per square inch, pound a square inch/pounds a square inch, pound per inch/pounds per inch, pound of pressure/pounds of pressure, pound of air/pounds of air, pound of boost/pounds of boost',
    'psi|PSI|Psi|psig|PSIG|lb/in²|lbs/in²|lb/in2',
  ],
  ['bar', 'pressure', 1e5, 'bar', 'metric', 'bar/bar, bar/bars', 'bar|Bar|BAR'],
  ['mbar', 'pressure', 100, 'mbar', 'metric', 'millibar', 'mbar'],
  ['Pa', 'pressure', 1, 'Pa', 'metric', 'pascal', 'Pa'],
  ['kPa', 'pressure', 1e3, 'kPa', 'metric', 'kilopascal, kpa/kpa', 'kPa|KPa|KPA|kpa'],
  ['MPa', 'pressure', 1e6, 'MPa', 'metric', 'megapascal, mpa/mpa', 'MPa|MPA'],
  ['GPa', 'pressure', 1e9, 'GPa', 'metric', 'gigapascal', 'GPa'],
  [
    'kgf/cm2',
    'pressure',
    GRAVITY * 1e4,
    'kgf/cm²',
    'metric',
    'kilo per square centimetre/kilos per square centimetre',
    'kgf/cm²|kg/cm²|kg/cm2|kgf/cm2',
  ],
  ['atm', 'pressure', 101325, 'atm', 'any', 'atmosphere', 'atm'],
  [
    "[in_i'Hg]",
    'pressure',
    MERCURY * INCH,
    'inHg',
    'us',
    'inch of mercury/inches of mercury, inch mercury/inches mercury, inch vacuum/inches vacuum, inch hg/inches hg, inch of hg/inches of hg',
    'inHg|in Hg|inhg|in hg|"Hg|" Hg|inHG',
  ],
  [
    'mm[Hg]',
    'pressure',
    MERCURY / 1000,
    'mmHg',
    'metric',
    'millimetre of mercury/millimetres of mercury',
    'mmHg|mm Hg|mmhg',
  ],
  [
    'um[Hg]',
    'pressure',
    MERCURY / 1e6,
    'µmHg',
    'any',
    'micron of vacuum/microns of vacuum, micron of mercury/microns of mercury',
    'µmHg',
  ],
  [
    "[in_i'H2O]",
    'pressure',
    WATER * INCH,
    'inH₂O',
    'us',
    'inch of water/inches of water, inch of water column/inches of water column, inch water column/inches water column, inch wc/inches wc, inch of water gauge/inches of water gauge',
    'inH2O|in H2O|in wc|in WC|"wc|" wc|"WC|" WC',
  ],
  [
    'm[H2O]',
    'pressure',
    WATER,
    'mH₂O',
    'metric',
    'metre of head/metres of head, metre of water/metres of water',
    'mH2O',
  ],
  ['um', 'length', 1e-6, 'µm', 'metric', 'micrometre', 'µm|um'],
  ['mm', 'length', 1e-3, 'mm', 'metric', 'millimetre, mm/mm, milimetre', 'mm|MM|Mm'],
  ['cm', 'length', 1e-2, 'cm', 'metric', 'centimetre, cm/cm, centi/centis', 'cm|CM'],
  ['m', 'length', 1, 'm', 'metric', 'metre', 'm'],
  ['[in_i]', 'length', INCH, 'in', 'us', 'inch', 'in|inch|"|″|IN'],
  [
    '[mil_i]',
    'length',
    INCH / 1000,
    'thou',
    'us',
    'thou/thou, thousandth of an inch/thousandths of an inch, thousandth of inch/thousandths of inch, thousandth inch/thousandths inch',
    'thou',
  ],
  ['[ft_i]', 'length', FOOT, 'ft', 'us', 'foot/feet', 'ft|′|FT'],
  ['[yd_i]', 'length', 3 * FOOT, 'yd', 'us', 'yard', 'yd|yds'],
  ['km', 'distance', 1000, 'km', 'metric', "kilometre, k's/k's, kay/kays, klick, click, km/km, kms/kms", 'km|kms|KM'],
  ['[mi_i]', 'distance', 5280 * FOOT, 'mi', 'us', 'mile', 'mi|miles'],
  [
    'deg',
    'angle',
    1,
    '°',
    'any',
    'degree of angle/degrees of angle, degree of rotation/degrees of rotation, degree of turn/degrees of turn, degree of crank/degrees of crank',
    '',
  ],
  ['rad', 'angle', 180 / Math.PI, 'rad', 'any', 'radian', 'rad'],
  [
    'circ',
    'angle',
    360,
    'turn',
    'any',
    'turn, revolution, full turn, complete turn, full rotation, full revolution',
    '',
  ],
  [
    '{rev}/min',
    'rotation',
    1,
    'rpm',
    'any',
    'rpm/rpm, rpm/rpms, revolution per minute/revolutions per minute, rev per minute/revs per minute, rev a minute/revs a minute, revolution a minute/revolutions a minute, turn per minute/turns per minute',
    'rpm|RPM|r/min|min⁻¹',
  ],
  [
    'Hz',
    'frequency',
    1,
    'Hz',
    'any',
    'hertz/hertz, cycle per second/cycles per second, cycle a second/cycles a second',
    'Hz|hz|HZ',
  ],
  ['kHz', 'frequency', 1e3, 'kHz', 'any', 'kilohertz/kilohertz', 'kHz|khz|KHz'],
  ['MHz', 'frequency', 1e6, 'MHz', 'any', 'megahertz/megahertz', 'MHz'],
  [
    'Cel',
    'temperature',
    1,
    '°C',
    'metric',
    'degree celsius/degrees celsius, deg celsius/deg celsius, deg centigrade/deg centigrade, degree celcius/degrees celcius, celcius/celcius, centigrate/centigrate, degree centigrade/degrees centigrade, celsius/celsius, centigrade/centigrade, degree c/degrees c, deg c/deg c, c degree/c degrees',
    '°C|° C|℃|deg C|C',
    273.15,
  ],
  [
    '[degF]',
    'temperature',
    5 / 9,
    '°F',
    'us',
    'degree fahrenheit/degrees fahrenheit, deg fahrenheit/deg fahrenheit, degree farenheit/degrees farenheit, farenheit/farenheit, fahrenheit/fahrenheit, degree f/degrees f, deg f/deg f, f degree/f degrees',
    '°F|° F|℉|deg F|F',
    (459.67 * 5) / 9,
  ],
  ['K', 'temperature difference', 1, 'K', 'metric', 'kelvin/kelvin, kelvin', ''],
  [
    'mL',
    'volume',
    1e-6,
    'mL',
    'metric',
    "millilitre, cc/cc, cc/ccs, cc/cc's, cubic centimetre, ml/ml, ml/mls, mililitre, mil of liquid/mils of liquid",
    'mL|ml|ML|cc|ccm|cm³|cm3|CC',
  ],
  ['cL', 'volume', 1e-5, 'cL', 'metric', 'centilitre', 'cL|cl'],
  ['dL', 'volume', 1e-4, 'dL', 'metric', 'decilitre', 'dL|dl'],
  ['L', 'volume', 1e-3, 'L', 'metric', 'litre', 'L|l|ltr|ltrs|lt'],
  ['m3', 'volume', 1, 'm³', 'metric', 'cubic metre', 'm³|m3'],
  ['[gal_us]', 'volume', GALLON, 'gal', 'us', 'us gallon', 'US gal'],
  ['[qt_us]', 'volume', GALLON / 4, 'qt', 'us', 'us quart', 'US qt'],
  ['[pt_us]', 'volume', GALLON / 8, 'pt', 'us', 'us pint', 'US pt'],
  ['[foz_us]', 'volume', GALLON / 128, 'fl oz', 'us', 'us fluid ounce', 'US fl oz'],
  ['[cup_us]', 'volume', GALLON / 16, 'cup', 'us', 'us cup', ''],
  ['[tbs_us]', 'volume', GALLON / 256, 'tbsp', 'us', 'tablespoon, tablespoonful', 'tbsp'],
  ['[tsp_us]', 'volume', GALLON / 768, 'tsp', 'us', 'teaspoon, teaspoonful', 'tsp'],
  [
    '[gal_br]',
    'volume',
    IMPERIAL_GALLON,
    'imp gal',
    'imperial',
    'imperial gallon, uk gallon, british gallon',
    'imp gal',
  ],
  ['[qt_br]', 'volume', IMPERIAL_GALLON / 4, 'imp qt', 'imperial', 'imperial quart, uk quart', 'imp qt'],
  ['[pt_br]', 'volume', IMPERIAL_GALLON / 8, 'imp pt', 'imperial', 'imperial pint, uk pint, british pint', 'imp pt'],
  [
    '[foz_br]',
    'volume',
    IMPERIAL_GALLON / 160,
    'imp fl oz',
    'imperial',
    'imperial fluid ounce, imperial ounce, uk fluid ounce',
    'imp fl oz',
  ],
  ['[cin_i]', 'volume', INCH ** 3, 'in³', 'us', 'cubic inch', 'cu in|in³|in3|ci'],
  ['[cft_i]', 'volume', FOOT ** 3, 'ft³', 'us', 'cubic foot/cubic feet', 'cu ft|ft³|ft3'],
  ['mg', 'mass', 1e-6, 'mg', 'metric', 'milligram', 'mg'],
  ['g', 'mass', 1e-3, 'g', 'metric', 'gram, gramme', 'g|gr|gm|gms'],
  ['kg', 'mass', 1, 'kg', 'metric', 'kilogram, kilogramme, kg/kg, kg/kgs', 'kg|kgs|KG|Kg'],
  ['t', 'mass', 1000, 't', 'metric', 'tonne', ''],
  ['[ston_av]', 'mass', 2000 * POUND, 'short ton', 'us', 'ton, short ton', ''],
  ['[oz_av]', 'mass', POUND / 16, 'oz', 'us', 'ounce by weight/ounces by weight, ounce of weight/ounces of weight', ''],
  [
    '[lb_av]',
    'mass',
    POUND,
    'lb',
    'us',
    'pound by weight/pounds by weight, pound of weight/pounds of weight, pound in weight/pounds in weight',
    'lbm',
  ],
  ['N', 'force', 1, 'N', 'metric', 'newton', 'N'],
  ['kN', 'force', 1e3, 'kN', 'metric', 'kilonewton', 'kN'],
  [
    '[lbf_av]',
    'force',
    POUND_FORCE,
    'lbf',
    'us',
    'pound force/pounds force, pound of force/pounds of force, pound of pull/pounds of pull, pound of tension/pounds of tension, pound of preload/pounds of preload, pound of load/pounds of load, pound of effort/pounds of effort, pound of drag/pounds of drag, pound of push/pounds of push',
    'lbf',
  ],
  [
    'kgf',
    'force',
    GRAVITY,
    'kgf',
    'metric',
    'kilogram force/kilograms force, kilo of force/kilos of force, kilopond, kilo of pull/kilos of pull, kilo of tension/kilos of tension',
    'kgf|kp',
  ],
  ['N/mm', 'spring rate', 1000, 'N/mm', 'metric', 'newton per millimetre/newtons per millimetre', 'N/mm'],
  ['mV', 'voltage', 1e-3, 'mV', 'any', 'millivolt', 'mV|mv'],
  ['V', 'voltage', 1, 'V', 'any', 'volt, volt dc/volts dc, volt ac/volts ac', 'V|v|Volts|VDC|VAC|Vdc|Vac|V DC|V AC'],
  ['kV', 'voltage', 1e3, 'kV', 'any', 'kilovolt', 'kV|kv'],
  ['uA', 'current', 1e-6, 'µA', 'any', 'microamp, microampere', 'µA|uA'],
  ['mA', 'current', 1e-3, 'mA', 'any', 'milliamp, milliampere', 'mA|ma'],
  ['A', 'current', 1, 'A', 'any', 'amp, ampere', 'A|amps|Amps'],
  ['A.h', 'charge', 3600, 'A·h', 'any', 'amp hour, ampere hour', 'Ah|A h|AH|ah'],
  ['mA.h', 'charge', 3.6, 'mA·h', 'any', 'milliamp hour', 'mAh'],
  ['mOhm', 'resistance', 1e-3, 'mΩ', 'any', 'milliohm', 'mΩ|mohm'],
  ['Ohm', 'resistance', 1, 'Ω', 'any', 'ohm', 'Ω|Ohm|Ohms'],
  ['kOhm', 'resistance', 1e3, 'kΩ', 'any', 'kilohm, kiloohm, k ohm, kilo ohm', 'kΩ|KΩ|kohm|kOhm'],
  ['MOhm', 'resistance', 1e6, 'MΩ', 'any', 'megohm, megaohm, meg ohm, mega ohm, meg/megs', 'MΩ|Mohm|MOhm'],
  ['mW', 'power', 1e-3, 'mW', 'any', 'milliwatt', 'mW'],
  ['W', 'power', 1, 'W', 'any', 'watt', 'W'],
  ['kW', 'power', 1e3, 'kW', 'any', 'kilowatt, kw/kw', 'kW|KW'],
  [
    '[HP]',
    'power',
    550 * FOOT * POUND_FORCE,
    'hp',
    'us',
    'horsepower/horsepower, hp/hp, horse power/horse power',
    'hp|HP|bhp',
  ],
  ['J', 'energy', 1, 'J', 'metric', 'joule', 'J'],
  ['kW.h', 'energy', 3.6e6, 'kW·h', 'any', 'kilowatt hour', 'kWh|kW h'],
  ['pF', 'capacitance', 1e-12, 'pF', 'any', 'picofarad', 'pF'],
  ['nF', 'capacitance', 1e-9, 'nF', 'any', 'nanofarad', 'nF'],
  [
    'uF',
    'capacitance',
    1e-6,
    'µF',
    'any',
    'microfarad, micro farad, mfd/mfd, mike/mikes, uf/uf',
    'µF|uF|MFD|mfd|mF|µf|uf',
  ],
  ['F', 'capacitance', 1, 'F', 'any', 'farad', ''],
  ['ms', 'time', 1e-3, 'ms', 'any', 'millisecond', 'ms'],
  ['s', 'time', 1, 's', 'any', 'second, sec', 's|sec|secs'],
  ['min', 'time', 60, 'min', 'any', 'minute', 'min|mins'],
  [
    'h',
    'time',
    3600,
    'h',
    'any',
    'hour, hour of use/hours of use, running hour, operating hour, engine hour',
    'h|hr|hrs|Hr|Hrs',
  ],
  ['d', 'time', 86400, 'd', 'any', 'day', ''],
  ['wk', 'time', 604800, 'wk', 'any', 'week', 'wk|wks'],
  ['mo', 'time', 2629800, 'mo', 'any', 'month', 'mo|mos'],
  ['a', 'time', 31557600, 'a', 'any', 'year', 'yr|yrs'],
  [
    '%',
    'ratio',
    0.01,
    '%',
    'any',
    'percent/percent, percent/percents, per cent/per cent, percentage/percentage',
    '%|pct',
  ],
  ['[ppm]', 'ratio', 1e-6, 'ppm', 'any', 'ppm/ppm, part per million/parts per million', 'ppm|PPM'],
  [
    'L/min',
    'flow',
    1e-3 / 60,
    'L/min',
    'metric',
    'litre per minute/litres per minute, litre a minute/litres a minute',
    'L/min|l/min|lpm|LPM',
  ],
  [
    'L/h',
    'flow',
    1e-3 / 3600,
    'L/h',
    'metric',
    'litre per hour/litres per hour, litre an hour/litres an hour',
    'L/h|l/h',
  ],
  [
    'm3/h',
    'flow',
    1 / 3600,
    'm³/h',
    'metric',
    'cubic metre per hour/cubic metres per hour, cubic metre an hour/cubic metres an hour',
    'm³/h|m3/h',
  ],
  [
    '[gal_us]/min',
    'flow',
    GALLON / 60,
    'gal/min',
    'us',
    'gallon per minute/gallons per minute, gallon a minute/gallons a minute, gpm/gpm',
    'gpm|GPM',
  ],
  [
    '[cft_i]/min',
    'flow',
    FOOT ** 3 / 60,
    'ft³/min',
    'us',
    'cubic foot per minute/cubic feet per minute, cubic foot a minute/cubic feet a minute, cfm/cfm',
    'cfm|CFM|ft³/min',
  ],
  [
    'km/h',
    'velocity',
    1 / 3.6,
    'km/h',
    'metric',
    "kilometre per hour/kilometres per hour, kilometre an hour/kilometres an hour, k's an hour/k's an hour, kph/kph",
    'km/h|kmh|kph|KPH',
  ],
  [
    '[mi_i]/h',
    'velocity',
    (5280 * FOOT) / 3600,
    'mph',
    'us',
    'mile per hour/miles per hour, mile an hour/miles an hour, mph/mph',
    'mph|MPH',
  ],
  ['m/s', 'velocity', 1, 'm/s', 'metric', 'metre per second/metres per second, metre a second/metres a second', 'm/s'],
  [
    'mm/s',
    'velocity',
    1e-3,
    'mm/s',
    'metric',
    'millimetre per second/millimetres per second, millimetre a second/millimetres a second',
    'mm/s',
  ],
  [
    '[ft_i]/min',
    'velocity',
    FOOT / 60,
    'ft/min',
    'us',
    'foot per minute/feet per minute, foot a minute/feet a minute, surface foot per minute/surface feet per minute',
    'fpm|sfm',
  ],
  ['cm2', 'area', 1e-4, 'cm²', 'metric', 'square centimetre', 'cm²|cm2'],
  ['m2', 'area', 1, 'm²', 'metric', 'square metre', 'm²|m2'],
  ['[sin_i]', 'area', INCH ** 2, 'in²', 'us', 'square inch', 'sq in|in²'],
  ['[sft_i]', 'area', FOOT ** 2, 'ft²', 'us', 'square foot/square feet', 'sq ft|ft²'],
  ['g/L', 'density', 1, 'g/L', 'metric', 'gram per litre/grams per litre, gram a litre/grams a litre', 'g/L|g/l'],
  ['g/mL', 'density', 1000, 'g/mL', 'metric', 'gram per millilitre/grams per millilitre', 'g/mL|g/ml|g/cc'],
  ['[pH]', 'acidity', 1, 'pH', 'any', '', ''],
  ['dB', 'sound', 1, 'dB', 'any', 'decibel', 'dB|db'],
]

const list = (text: string, separator: string): readonly string[] =>
  text
    .split(separator)
    .map(part => part.trim())
    .filter(part => part !== '')

/** @source see ROWS */
export const UNITS: readonly Unit[] = ROWS.map(([code, kind, factor, symbol, system, names, written, offset]) => ({
  code,
  kind,
  factor,
  symbol,
  system,
  names: list(names, ','),
  written: list(written, '|'),
  ...(offset === undefined ? {} : { offset }),
}))
