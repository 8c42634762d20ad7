import type { AskDecode, Decoded } from './decode-messages'

/** Decodes for a worker, which has no decodeAudioData, and posts the samples back. Runs in the page. */
export const answerDecode = (worker: Worker, { id, bytes, rate }: AskDecode): void => {
  const say = (message: Decoded, transfer: Transferable[] = []) => worker.postMessage(message, transfer)
  new OfflineAudioContext(1, 1, rate).decodeAudioData(bytes.buffer).then(
    buffer => {
      const channels = Array.from({ length: buffer.numberOfChannels }, (_, i) => buffer.getChannelData(i).slice())
      say(
        { say: 'decoded', id, rate: buffer.sampleRate, channels },
        channels.map(samples => samples.buffer),
      )
    },
    (error: unknown) => say({ say: 'undecodable', id, why: String(error) }),
  )
}
