/** Samples of the sound that each value between samples is made from. */
const TAPS = 12

/** Samples looked at together, to pass over what can't be a new peak. */
const LOT = 64

/** Shape of the window: pass band even to 0.1 dB below 0.4 of the rate. */
const BETA = 4

/** Modified Bessel function of the first kind, order 0. */
const bessel = (x: number): number => {
  let [sum, term] = [1, 1]
  for (let k = 1; term > 1e-12 * sum; k++) {
    term *= (x / (2 * k)) ** 2
    sum += term
  }
  return sum
}

/** Filters that give the value at each `1/factor` between the two middle ones of 12 samples: Kaiser-windowed sinc. */
const phases = (factor: number): readonly Float64Array[] =>
  Array.from({ length: factor - 1 }, (_, phase) => {
    const taps = Float64Array.from({ length: TAPS }, (_, k) => {
      const x = k - (TAPS / 2 - 1) - (phase + 1) / factor
      const window = bessel(BETA * Math.sqrt(Math.max(0, 1 - (x / (TAPS / 2)) ** 2))) / bessel(BETA)
      return (Math.sin(Math.PI * x) / (Math.PI * x)) * window
    })
    const sum = taps.reduce((all, tap) => all + tap, 0)
    return taps.map(tap => tap / sum)
  })

/**
 * True peak of one channel, in a stream: the greatest absolute value of the sound also between its samples, by
 * oversampling to at least 192 kHz.
 *
 * @param rate Hz
 * @returns `push` takes the next samples; `peak` is the greatest value so far, 1 being full scale
 * @source ITU-R BS.1770-4 annex 2 (from memory): four times at 48 kHz; the interpolating filter is our own, of the length
 *   given there
 */
export const truePeak = (rate: number) => {
  const filters = phases(Math.max(1, 2 ** Math.ceil(Math.log2(Math.min(4, 192_000 / rate)))))
  const overshoot = Math.max(1, ...filters.map(taps => taps.reduce((sum, tap) => sum + Math.abs(tap), 0)))
  let before = new Float32Array(TAPS - 1)
  let peak = 0
  return {
    push: (samples: Float32Array): void => {
      const all = new Float32Array(before.length + samples.length)
      all.set(before)
      all.set(samples, before.length)
      before = all.slice(all.length - before.length)
      for (let lot = 0; lot + TAPS <= all.length; lot += LOT) {
        const end = Math.min(all.length - TAPS + 1, lot + LOT)
        let loudest = 0
        for (let i = lot; i < end + TAPS - 1; i++) loudest = Math.max(loudest, Math.abs(all[i] ?? 0))
        const within = loudest * overshoot
        if (loudest > peak) peak = loudest
        if (within <= peak) continue
        for (let i = lot; i < end; i++)
          for (const taps of filters) {
            let value = 0
            for (let k = 0; k < TAPS; k++) value += (taps[k] ?? 0) * (all[i + k] ?? 0)
            if (value > peak) peak = value
            else if (-value > peak) peak = -value
          }
      }
    },
    get peak() {
      return peak
    },
  }
}
