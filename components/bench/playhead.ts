/** The moment of the footage that is shown, told to whoever listens, outside React because it changes many times a second. */
export type Playhead = {
  readonly get: () => number
  readonly set: (seconds: number) => void
  readonly subscribe: (listener: (seconds: number) => void) => () => void
}

/** @returns a playhead at 0 s. */
export const createPlayhead = (): Playhead => {
  let now = 0
  const listeners = new Set<(seconds: number) => void>()
  return {
    get: () => now,
    set: seconds => {
      now = seconds
      for (const listener of listeners) listener(seconds)
    },
    subscribe: listener => {
      listeners.add(listener)
      return () => void listeners.delete(listener)
    },
  }
}
