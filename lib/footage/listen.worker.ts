import { ALL_FORMATS, BlobSource, Input } from 'mediabunny'
import { askPage } from './ask-page'
import { detectorOn } from './detector'
import { loadFvad } from './engines-web'
import type { FromListener, ToListener } from './listen-messages'
import { addPeaks, PEAKS_PER_SECOND, silentPeaks } from './peaks'
import { soundPieces } from './sound'
import { speechFinder } from './speech'
import { voiceStream } from './voice-stream'

const scope = self as unknown as DedicatedWorkerGlobalScope
const say = (message: FromListener) => scope.postMessage(message)

const { decodeWhole, soundByFfmpeg, take } = askPage(scope)

const listen = async ({ file, seconds, way, origin }: Extract<ToListener, { say: 'listen' }>): Promise<void> => {
  const finder = speechFinder(detectorOn(await loadFvad(origin), 1))
  const voice = voiceStream(finder.push)
  const input = new Input({ source: new BlobSource(file), formats: ALL_FORMATS })
  const track = await input.getPrimaryAudioTrack()
  if (track === null) return say({ say: 'failed', why: 'there is no sound in this file' })
  const peaks = silentPeaks(seconds)
  let sent = 0
  let done = 0
  const send = () => {
    const to = Math.min(peaks.length, Math.max(sent, Math.floor(done * PEAKS_PER_SECOND)))
    say({ say: 'peaks', from: sent, peaks: peaks.slice(sent, to), done: Math.min(done, seconds) })
    // The last bucket may be half full: it is sent again with the next lot.
    sent = Math.max(0, to - 1)
  }
  const pieces = way === 'ffmpeg' ? soundByFfmpeg(seconds) : soundPieces(track, { decodeWhole, isOnePass: true, file })
  for await (const piece of pieces) {
    addPeaks(peaks, piece)
    voice.push(piece)
    done = piece.start + (piece.channels[0]?.length ?? 0) / piece.rate
    if (done * PEAKS_PER_SECOND - sent > 10 * PEAKS_PER_SECOND) send()
  }
  if (done === 0) return say({ say: 'failed', why: 'none of the sound in this file can be decoded' })
  done = seconds
  send()
  voice.end()
  say({ say: 'heard', speech: finder.end() })
}

scope.onmessage = ({ data }: MessageEvent<ToListener>) => {
  if (data.say !== 'listen') return take(data)
  listen(data).catch((error: unknown) =>
    say({ say: 'failed', why: error instanceof Error ? error.message : String(error) }),
  )
}
