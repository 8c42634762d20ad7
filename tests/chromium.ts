import { QUIET_CHROMIUM } from '@/lib/cli/quiet-chromium'

/** Where the tests' Chromium is. */
export const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium'

/**
 * Quiet, and without the two pages Chromium 156 draws for the suggestions under the address bar of each window, which nobody sees and
 * which cost more than ours.
 */
export const CHROMIUM_ARGS = [...QUIET_CHROMIUM, '--disable-features=WebUIOmniboxPopup,WebUIOmniboxAimPopup']
