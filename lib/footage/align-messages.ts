import type { Span } from '@/lib/procedure/time'
import type { Alignment } from './align'
import type { AskDecode, Decoded } from './decode-messages'

/** Page to worker. */
export type ToAligner =
  | {
      readonly say: 'align'
      readonly file: Blob
      readonly texts: readonly string[]
      readonly speech: readonly Span[]
      readonly origin: string
    }
  | Decoded

/** Worker to page. */
export type FromAligner =
  | AskDecode
  | { readonly say: 'done'; readonly share: number }
  | { readonly say: 'aligned'; readonly alignment: Alignment }
  | { readonly say: 'failed'; readonly why: string }
