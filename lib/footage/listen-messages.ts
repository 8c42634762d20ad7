import type { Span } from '@/lib/procedure/time'
import type { AskDecode, AskSound, Decoded } from './decode-messages'
import type { Way } from './open'

/** Page to worker. */
export type ToListener =
  | {
      readonly say: 'listen'
      readonly file: Blob
      readonly seconds: number
      readonly way: Way
      readonly origin: string
    }
  | Decoded

/** Worker to page. */
export type FromListener =
  | AskDecode
  | AskSound
  /** Buckets from index `from`; `done` seconds are listened to. */
  | { readonly say: 'peaks'; readonly from: number; readonly peaks: Float32Array; readonly done: number }
  | { readonly say: 'heard'; readonly speech: readonly Span[] }
  | { readonly say: 'failed'; readonly why: string }
