/** Where packets stand in a file, in order, and when they play. */
export type PacketPlaces = {
  readonly offsets: Float64Array
  readonly sizes: Uint32Array
  /** Seconds. */
  readonly times: Float64Array
}

/** An encoded packet. */
export type Packet = {
  /** When it plays, seconds. */
  readonly time: number
  readonly data: Uint8Array
}

/** Bytes asked for at once. */
const WINDOW = 4 * 2 ** 20

/** Bytes between two packets from which on reading anew is quicker than reading over them: it takes about 2 ms. */
const GAP = 2 ** 20

/** Seconds a read may take: a disk that sleeps needs 10 to wake up (common practice, no source). */
const PATIENCE = 60

/** Reads a file from its beginning: each time what there is, into the memory given, which is handed over and comes back. */
type ReadOn = (into: Uint8Array<ArrayBuffer>) => Promise<Uint8Array<ArrayBuffer>>

/** Fresh memory costs more than reading, so the same is filled again where the browser's streams can do that. */
const readerOf = (file: Blob): { readOn: ReadOn; cancel: () => void } => {
  try {
    const reader = file.stream().getReader({ mode: 'byob' })
    return {
      readOn: async into => ((await reader.read(into)).value ?? new Uint8Array()) as Uint8Array<ArrayBuffer>,
      cancel: () => void reader.cancel().catch(() => {}),
    }
  } catch {
    let at = 0
    const readOn: ReadOn = async into => {
      const bytes = new Uint8Array(await file.slice(at, at + into.length).arrayBuffer())
      at += bytes.length
      into.set(bytes)
      return into.subarray(0, bytes.length)
    }
    return { readOn, cancel: () => {} }
  }
}

/**
 * Waits for a read. The timer also keeps what waits from being collected as garbage together with its stream, as nothing
 * else need hold them: Chromium 150 then never answers.
 */
const inTime = async <T>(answer: Promise<T>): Promise<T> => {
  let timer: ReturnType<typeof setTimeout> | undefined
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(
      () => reject(new Error('the file can’t be read any more: its disk does not answer')),
      PATIENCE * 1000,
    )
  })
  try {
    return await Promise.race([answer, late])
  } finally {
    clearTimeout(timer)
  }
}

/** First index at or after `from` that is followed by a gap worth jumping over, and one more. */
const endOfRun = ({ offsets, sizes }: PacketPlaces, from: number): number => {
  let end = from + 1
  while (end < offsets.length && (offsets[end] ?? 0) - (offsets[end - 1] ?? 0) - (sizes[end - 1] ?? 0) < GAP) end++
  return end
}

/**
 * Reads packets one after the other, over what lies between them where that is quicker than jumping.
 *
 * @param from index of the first
 * @returns lots of packets, whose bytes are overwritten once the next lot is asked for; ends early where the file does
 * @throws Error where the file does not answer
 */
export async function* readPackets(file: Blob, places: PacketPlaces, from: number): AsyncGenerator<readonly Packet[]> {
  const { offsets, sizes, times } = places
  let memory = new ArrayBuffer(WINDOW)
  for (let next = from; next < offsets.length; ) {
    const end = endOfRun(places, next)
    const start = offsets[next] ?? 0
    const until = (offsets[end - 1] ?? 0) + (sizes[end - 1] ?? 0)
    const { readOn, cancel } = readerOf(file.slice(start, until))
    try {
      // What is in memory: `held` bytes of the file from `base` on.
      let [base, held] = [start, 0]
      while (next < end) {
        const wanted = (sizes[next] ?? 0) + Math.max(0, (offsets[next] ?? 0) - base)
        if (held > 0 && wanted > memory.byteLength) {
          const larger = new ArrayBuffer(2 * wanted)
          new Uint8Array(larger).set(new Uint8Array(memory, 0, held))
          memory = larger
        }
        const read = await inTime(readOn(new Uint8Array(memory, held)))
        if (read.length === 0) return
        memory = read.buffer
        held += read.length
        const lot: Packet[] = []
        for (; next < end && (offsets[next] ?? 0) + (sizes[next] ?? 0) <= base + held; next++)
          lot.push({
            time: times[next] ?? 0,
            data: new Uint8Array(memory, (offsets[next] ?? 0) - base, sizes[next] ?? 0),
          })
        if (lot.length > 0) yield lot
        const keep = next < end ? Math.min(held, Math.max(0, (offsets[next] ?? 0) - base)) : held
        new Uint8Array(memory).copyWithin(0, keep, held)
        base += keep
        held -= keep
      }
    } finally {
      cancel()
    }
  }
}
