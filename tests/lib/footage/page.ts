// Loaded into the browser by browser.ts: everything of lib/footage that the tests call there.
import { fingerprintOf } from '@/lib/footage/fingerprint'
import { listen } from '@/lib/footage/listen'
import { openFootage } from '@/lib/footage/open'
import * as peaks from '@/lib/footage/peaks'
import { soundPieces } from '@/lib/footage/sound'
import { soundPackets } from '@/lib/footage/sound-packets'

const footage = { fingerprintOf, openFootage, listen, soundPackets, soundPieces, ...peaks }
export type Footage = typeof footage
Object.assign(globalThis, { footage })
