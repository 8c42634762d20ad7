import { ALL_FORMATS, BlobSource, Input } from 'mediabunny'
import { align } from './align'
import type { FromAligner, ToAligner } from './align-messages'
import { askPage } from './ask-page'
import { loadRecogniser } from './engines-web'
import { hearFrom } from './hear'
import { soundPieces } from './sound'

const scope = self as unknown as DedicatedWorkerGlobalScope
const say = (message: FromAligner) => scope.postMessage(message)
const { decodeWhole, soundByFfmpeg, take } = askPage(scope)

const run = async ({
  file,
  seconds,
  way,
  texts,
  speech,
  hints,
  origin,
}: Extract<ToAligner, { say: 'align' }>): Promise<void> => {
  const input = new Input({ source: new BlobSource(file), formats: ALL_FORMATS })
  const track = await input.getPrimaryAudioTrack()
  if (track === null) return say({ say: 'failed', why: 'there is no sound in this file' })
  const recogniser = await loadRecogniser(origin)
  const pieces = (from: number) =>
    way === 'ffmpeg' ? soundByFfmpeg(seconds, from) : soundPieces(track, { decodeWhole, from })
  const alignment = await align(texts, speech, hearFrom(pieces), recogniser, {
    hints,
    onProgress: share => say({ say: 'done', share }),
  })
  say({ say: 'aligned', alignment })
}

scope.onmessage = ({ data }: MessageEvent<ToAligner>) => {
  if (data.say !== 'align') return take(data)
  run(data).catch((error: unknown) =>
    say({ say: 'failed', why: error instanceof Error ? error.message : String(error) }),
  )
}
