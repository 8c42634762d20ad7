import type { AskDecode, AskSound, Decoded } from './decode-messages'
import { type FfmpegFootage, ffmpegOn } from './ffmpeg'
import { VOICE_RATE } from './voice-stream'

/** Answers a worker's questions in the page, which has what workers lack. Close it when the worker is gone. */
export type Decoding = { readonly answer: (question: AskDecode | AskSound) => void; readonly close: () => void }

/**
 * Decodes for a worker: small files by decodeAudioData, and what the browser can't decode by ffmpeg, which is loaded
 * when it is first asked for.
 *
 * @param file the footage
 */
export const decodingFor = (worker: Worker, file: Blob): Decoding => {
  let ffmpeg: Promise<FfmpegFootage> | undefined
  const decode = async (question: AskDecode | AskSound) => {
    if (question.say === 'sound') {
      ffmpeg ??= ffmpegOn(file)
      return { rate: VOICE_RATE, channels: [await (await ffmpeg).soundBetween(question.from, question.to)] }
    }
    const buffer = await new OfflineAudioContext(1, 1, question.rate).decodeAudioData(question.bytes.buffer)
    const channels = Array.from({ length: buffer.numberOfChannels }, (_, i) => buffer.getChannelData(i).slice())
    return { rate: buffer.sampleRate, channels }
  }
  return {
    answer: question => {
      const say = (message: Decoded, transfer: Transferable[] = []) => worker.postMessage(message, transfer)
      decode(question).then(
        ({ rate, channels }) =>
          say(
            { say: 'decoded', id: question.id, rate, channels },
            channels.map(samples => samples.buffer),
          ),
        (error: unknown) =>
          say({ say: 'undecodable', id: question.id, why: error instanceof Error ? error.message : String(error) }),
      )
    },
    close: () => void ffmpeg?.then(({ close }) => close()).catch(() => {}),
  }
}
