// Loaded into the browser by shots.test.ts.
import { openFootage } from '@/lib/footage/open'
import { findPictureChanges } from '@/lib/footage/small-frames'

Object.assign(globalThis, { footage: { openFootage, findPictureChanges } })
