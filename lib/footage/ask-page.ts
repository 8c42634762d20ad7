import type { AskDecode, AskSound, Decoded } from './decode-messages'
import type { SoundPiece } from './peaks'
import type { DecodeWhole } from './sound'

type Waiting = { resolve: (decoded: Awaited<ReturnType<DecodeWhole>>) => void; reject: (why: Error) => void }

/** Seconds ffmpeg decodes at once. */
const PORTION = 60

/** The worker's side of decode-here.ts: the first two ask the page, `take` is given its answers. */
export const askPage = (scope: DedicatedWorkerGlobalScope) => {
  const waiting = new Map<number, Waiting>()
  let asked = 0
  const ask = (message: AskDecode | AskSound, transfer: Transferable[]) =>
    new Promise<Awaited<ReturnType<DecodeWhole>>>((resolve, reject) => {
      waiting.set(message.id, { resolve, reject })
      scope.postMessage(message, transfer)
    })
  const decodeWhole: DecodeWhole = (bytes, rate) => ask({ say: 'decode', id: asked++, bytes, rate }, [bytes.buffer])
  /** Sound the browser can't decode, through ffmpeg, from `from` to the end of the footage. */
  async function* soundByFfmpeg(seconds: number, from = 0): AsyncGenerator<SoundPiece> {
    for (let at = from; at < seconds; at += PORTION) {
      const piece = await ask({ say: 'sound', id: asked++, from: at, to: Math.min(seconds, at + PORTION) }, [])
      if (piece.channels[0]?.length) yield { ...piece, start: at }
    }
  }
  const take = (answer: Decoded): void => {
    const asker = waiting.get(answer.id)
    waiting.delete(answer.id)
    if (answer.say === 'decoded') asker?.resolve({ rate: answer.rate, channels: answer.channels })
    else asker?.reject(new Error(answer.why))
  }
  return { decodeWhole, soundByFfmpeg, take }
}
