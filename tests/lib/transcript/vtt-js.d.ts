declare module 'vtt.js' {
  type Made = { startTime: number; endTime: number; text: string }
  type Window = { VTTCue: new (startTime: number, endTime: number, text: string) => Made }
  class Parser {
    constructor(window: Window, decoder: object)
    oncue: (cue: Made) => void
    parse(text: string): void
    flush(): void
  }
  export const WebVTT: { readonly Parser: typeof Parser; readonly StringDecoder: () => object }
}
