/** Worker to page: decode a whole small file. */
export type AskDecode = {
  readonly say: 'decode'
  readonly id: number
  readonly bytes: Uint8Array<ArrayBuffer>
  /** Hz wanted. */
  readonly rate: number
}

/** Worker to page: the sound between two moments, through ffmpeg; 16 kHz mono. */
export type AskSound = { readonly say: 'sound'; readonly id: number; readonly from: number; readonly to: number }

/** Page to worker: what became of it. */
export type Decoded =
  | {
      readonly say: 'decoded'
      readonly id: number
      readonly rate: number
      readonly channels: readonly Float32Array<ArrayBuffer>[]
    }
  | { readonly say: 'undecodable'; readonly id: number; readonly why: string }
