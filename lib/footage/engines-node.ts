// Engines as Node loads them: from their packages. The command line and tests use these; pages use engines-web.ts.
import type { FvadModule } from './detector'

/** @returns the WebRTC speech detector's module. */
export const loadFvad = async (): Promise<FvadModule> => {
  // @ts-expect-error the package carries no types
  const { default: create } = (await import('@echogarden/fvad-wasm')) as { default: () => Promise<FvadModule> }
  return create()
}
