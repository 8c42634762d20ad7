// Loaded into the browser by mux.test.ts.
import { muxTexts } from '@/lib/footage/mux'
import { whyNotSaved } from '@/lib/footage/not-saved'
import { openFootage } from '@/lib/footage/open'
import { writeBlob } from '@/lib/footage/write-blob'

Object.assign(globalThis, { footage: { openFootage, muxTexts, whyNotSaved, writeBlob } })
