import type { Span } from '@/lib/procedure/time'
import type { Alignment, AlignOptions } from './align'
import type { AskDecode, AskSound, Decoded } from './decode-messages'
import type { Way } from './open'

/** Page to worker. */
export type ToAligner =
  | {
      readonly say: 'align'
      readonly file: Blob
      readonly seconds: number
      readonly way: Way
      readonly texts: readonly string[]
      readonly speech: readonly Span[]
      readonly hints: AlignOptions['hints']
      readonly origin: string
    }
  | Decoded

/** Worker to page. */
export type FromAligner =
  | AskDecode
  | AskSound
  | { readonly say: 'done'; readonly share: number }
  | { readonly say: 'aligned'; readonly alignment: Alignment }
  | { readonly say: 'failed'; readonly why: string }
