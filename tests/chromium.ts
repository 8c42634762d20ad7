/** Where the tests' Chromium is. */
export const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium'

/**
 * What keeps a headless Chromium quiet: no calls home, no sandbox where tests run as root, and none of the two pages Chromium 156
 * draws for the suggestions under the address bar of each window, which nobody sees and which cost more than ours.
 */
export const CHROMIUM_ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-features=WebUIOmniboxPopup,WebUIOmniboxAimPopup',
]
