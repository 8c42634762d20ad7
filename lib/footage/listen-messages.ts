import type { Span } from '@/lib/procedure/time'

/** Page to worker. */
export type ToListener =
  | { readonly say: 'listen'; readonly file: Blob; readonly seconds: number; readonly origin: string }
  | {
      readonly say: 'decoded'
      readonly id: number
      readonly rate: number
      readonly channels: readonly Float32Array<ArrayBuffer>[]
    }
  | { readonly say: 'undecodable'; readonly id: number; readonly why: string }

/** Worker to page. */
export type FromListener =
  | { readonly say: 'decode'; readonly id: number; readonly bytes: Uint8Array<ArrayBuffer>; readonly rate: number }
  /** Buckets from index `from`; `done` seconds are listened to. */
  | { readonly say: 'peaks'; readonly from: number; readonly peaks: Float32Array; readonly done: number }
  | { readonly say: 'heard'; readonly speech: readonly Span[] }
  | { readonly say: 'failed'; readonly why: string }
