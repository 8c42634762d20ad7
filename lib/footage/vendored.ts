/**
 * Where scripts/vendor.mjs puts what packages carry as files of their own (WebAssembly, models), so that it is served
 * from our origin and cached for good: the version is in the path. Versions are those installed; a test compares them.
 */
export const VENDORED = {
  '@ffmpeg/core': '0.12.10',
  '@ffmpeg/ffmpeg': '0.12.15',
  '@echogarden/fvad-wasm': '0.2.0',
  soundswallower: '0.6.3',
} as const

/** @returns the address of a vendored file from the site's root, such as `/vendor/soundswallower@0.6.3/model`. */
export const vendored = (name: keyof typeof VENDORED, path: string): string =>
  `/vendor/${name.replace('@', '').replace('/', '-')}@${VENDORED[name]}/${path}`
