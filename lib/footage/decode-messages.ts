/** Worker to page: decode a whole small file. */
export type AskDecode = {
  readonly say: 'decode'
  readonly id: number
  readonly bytes: Uint8Array<ArrayBuffer>
  /** Hz wanted. */
  readonly rate: number
}

/** Page to worker: what became of it. */
export type Decoded =
  | {
      readonly say: 'decoded'
      readonly id: number
      readonly rate: number
      readonly channels: readonly Float32Array<ArrayBuffer>[]
    }
  | { readonly say: 'undecodable'; readonly id: number; readonly why: string }
