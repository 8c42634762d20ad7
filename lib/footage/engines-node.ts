// Engines as Node loads them: from their packages. The command line and tests use these; pages use engines-web.ts.
import type { FvadModule } from './detector'
import { createRecogniser, type DecoderModule, type Recogniser } from './recogniser'

/** @returns the WebRTC speech detector's module. */
export const loadFvad = async (): Promise<FvadModule> => {
  // @ts-expect-error the package carries no types
  const { default: create } = (await import('@echogarden/fvad-wasm')) as { default: () => Promise<FvadModule> }
  return create()
}

/**
 * @param models folder `model/` of the package soundswallower, with its slash at the end
 * @returns the recogniser with its English model
 */
export const loadRecogniser = async (models: string): Promise<Recogniser> => {
  const { default: create } = await import('soundswallower')
  const quiet = { print: () => {}, printErr: () => {} }
  const load = create as unknown as (options: object) => Promise<DecoderModule>
  return createRecogniser(await load({ modelBase: models, ...quiet }))
}
