/** What keeps a headless Chromium quiet: no calls home, and no sandbox where it runs as root. */
export const QUIET_CHROMIUM: readonly string[] = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]
