/** What tells speech frame by frame: the WebRTC detector, compiled to WebAssembly. */
export type Detector = {
  /** @param frame 160 samples at 16 kHz (10 ms), 16 bit. @returns whether it sounds like speech */
  readonly hears: (frame: Int16Array) => boolean
  /** Frees its memory. */
  readonly free: () => void
}

/** The part of @echogarden/fvad-wasm's module that is used. */
export type FvadModule = {
  readonly HEAP16: Int16Array
  readonly _fvad_new: () => number
  readonly _fvad_free: (detector: number) => void
  readonly _fvad_set_mode: (detector: number, mode: number) => number
  readonly _fvad_set_sample_rate: (detector: number, rate: number) => number
  readonly _fvad_process: (detector: number, frame: number, length: number) => number
  readonly _malloc: (bytes: number) => number
  readonly _free: (address: number) => void
}

/** Samples a frame: 10 ms at 16 kHz. */
export const FRAME = 160

/**
 * A detector on a loaded module.
 *
 * @param mode 0 hears speech readily, 3 only when sure
 */
export const detectorOn = (module: FvadModule, mode: 0 | 1 | 2 | 3): Detector => {
  const detector = module._fvad_new()
  module._fvad_set_mode(detector, mode)
  module._fvad_set_sample_rate(detector, 16_000)
  const address = module._malloc(FRAME * 2)
  return {
    hears: frame => {
      module.HEAP16.set(frame, address >> 1)
      return module._fvad_process(detector, address, FRAME) === 1
    },
    free: () => {
      module._fvad_free(detector)
      module._free(address)
    },
  }
}
