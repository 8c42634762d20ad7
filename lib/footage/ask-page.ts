import type { AskDecode, Decoded } from './decode-messages'
import type { DecodeWhole } from './sound'

type Waiting = { resolve: (decoded: Awaited<ReturnType<DecodeWhole>>) => void; reject: (why: Error) => void }

/** The worker's side of decode-here.ts: `decodeWhole` asks the page, `take` is given its answers. */
export const askPage = (scope: DedicatedWorkerGlobalScope) => {
  const waiting = new Map<number, Waiting>()
  let asked = 0
  const decodeWhole: DecodeWhole = (bytes, rate) =>
    new Promise((resolve, reject) => {
      const message: AskDecode = { say: 'decode', id: asked++, bytes, rate }
      waiting.set(message.id, { resolve, reject })
      scope.postMessage(message, [bytes.buffer])
    })
  const take = (answer: Decoded): void => {
    const asker = waiting.get(answer.id)
    waiting.delete(answer.id)
    if (answer.say === 'decoded') asker?.resolve({ rate: answer.rate, channels: answer.channels })
    else asker?.reject(new Error(answer.why))
  }
  return { decodeWhole, take }
}
