// Loaded into the browser by mux.test.ts.
import { muxTexts } from '@/lib/footage/mux'
import { whyNotSaved } from '@/lib/footage/not-saved'
import { openFootage } from '@/lib/footage/open'

Object.assign(globalThis, { footage: { openFootage, muxTexts, whyNotSaved } })
