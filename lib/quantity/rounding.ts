/** Sums and products of decimal figures without the dust of binary ones. */
export const clean = (value: number): number => Number(value.toPrecision(12))

/** Significant digits a number is written with; the noughts that end a whole number count. */
export const digitsOf = (value: number): number => {
  const [figures = ''] = String(Math.abs(value)).split('e')
  return Math.max(1, figures.replace('.', '').replace(/^0+/, '').length)
}

const magnitude = (value: number): number => (value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)) + 1e-12))

/** The size of the last of `digits` significant digits of a value. */
export const stepFor = (value: number, digits: number): number => magnitude(value) - digits + 1

/** Rounds to a multiple of 10^`power`, towards `way`. */
export const roundTo = (value: number, power: number, way: 'nearest' | 'up' | 'down'): number => {
  const scaled = power < 0 ? value * 10 ** -power : value / 10 ** power
  // What is a multiple already, but for dust, stays.
  const near = Math.round(scaled)
  const whole =
    Math.abs(scaled - near) < 1e-10 * Math.max(1, Math.abs(scaled))
      ? near
      : way === 'nearest'
        ? near
        : way === 'up'
          ? Math.ceil(scaled)
          : Math.floor(scaled)
  const back = power < 0 ? whole / 10 ** -power : whole * 10 ** power
  return back === 0 ? 0 : clean(back)
}

/**
 * An untoleranced value after conversion, with the digits it carries: as many significant digits as the original where its
 * leading digits are not smaller, one more where they are.
 *
 * @source NIST SP 811 (2008) B.7.1 and B.7.2
 */
export const roundLike = (converted: number, original: number): number => {
  if (converted === 0) return 0
  const digits = digitsOf(original)
  const lead = (value: number): number => Math.abs(value) / 10 ** magnitude(value)
  return roundTo(converted, stepFor(converted, lead(converted) >= lead(original) ? digits : digits + 1), 'nearest')
}
