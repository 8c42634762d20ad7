// Engines as pages load them: from public/vendor (see scripts/vendor.mjs), past the bundler, because each finds its own
// WebAssembly beside its own address. Works in workers.
import type { FvadModule } from './detector'
import { createRecogniser, type DecoderModule, type Recogniser } from './recogniser'
import { vendored } from './vendored'

/** Keeps the bundlers from resolving an address that only exists when the page runs. */
const importFrom = (address: string): Promise<{ default: (options?: object) => Promise<unknown> }> =>
  import(/* webpackIgnore: true */ /* turbopackIgnore: true */ /* @vite-ignore */ address)

/**
 * @param origin of the page, such as `http://localhost:3000`
 * @returns the WebRTC speech detector's module
 */
export const loadFvad = async (origin: string): Promise<FvadModule> => {
  const { default: create } = await importFrom(origin + vendored('@echogarden/fvad-wasm', 'fvad.js'))
  return (await create()) as FvadModule
}

/**
 * @param origin of the page
 * @returns the recogniser with its English model (10 MB, fetched once and cached)
 */
export const loadRecogniser = async (origin: string): Promise<Recogniser> => {
  const { default: create } = await importFrom(origin + vendored('soundswallower', 'soundswallower.web.js'))
  const modelBase = origin + vendored('soundswallower', 'model/')
  return createRecogniser((await create({ modelBase, print: () => {}, printErr: () => {} })) as DecoderModule)
}
