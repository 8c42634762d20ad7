import { ALL_FORMATS, BlobSource, Input, type InputAudioTrack, type InputVideoTrack } from 'mediabunny'
import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import { codecName } from './codec'
import { readableEnd } from './extent'

/** The picture of the footage. */
export type Picture = {
  /** For people, such as `H.264`. */
  readonly codec: string
  /** As shown, after rotation, pixels. */
  readonly width: number
  readonly height: number
  /** Clockwise turn the player applies, degrees. */
  readonly rotation: 0 | 90 | 180 | 270
  /** Frames a second; for a variable rate the usual one. */
  readonly frameRate: number
  readonly isRateConstant: boolean
  /** Whether this browser decodes it. */
  readonly isDecodable: boolean
}

/** The sound of the footage. */
export type Sound = {
  /** For people, such as `AAC`. */
  readonly codec: string
  readonly channels: number
  /** Hz */
  readonly sampleRate: number
  readonly isDecodable: boolean
}

/** Which way the footage is decoded: by the browser, by ffmpeg.wasm (slower), or not at all here. */
export type Way = 'browser' | 'ffmpeg' | 'none'

/** Footage that was opened; nothing of it is in memory but its index. */
export type OpenFootage = {
  readonly name: string
  readonly file: Blob
  readonly bytes: number
  /** Duration, seconds: what can really be read. */
  readonly seconds: number
  readonly hasVideo: boolean
  readonly hasSound: boolean
  /** Container, such as `MP4`. */
  readonly container: string
  readonly picture: Picture | null
  readonly sound: Sound | null
  readonly ways: { readonly picture: Way; readonly sound: Way }
  /** What the user should know, though the footage can be worked with. */
  readonly notices: readonly Problem[]
  /** For lib/footage only: the demuxer's view; null where only ffmpeg reads the container. */
  readonly input: Input | null
  /** Frees the index and stops reading. */
  readonly close: () => void
}

/** Frames looked at to tell the frame rate. */
const RATE_SAMPLE = 256

const pictureOf = async (track: InputVideoTrack): Promise<Picture> => {
  const rate = await track.computeFrameRateMetrics({ targetPacketCount: RATE_SAMPLE })
  return {
    codec: codecName(await track.getCodec(), await track.getInternalCodecId()),
    width: await track.getDisplayWidth(),
    height: await track.getDisplayHeight(),
    rotation: await track.getRotation(),
    frameRate: Math.round(rate.bestGuessFrameRate * 1000) / 1000,
    isRateConstant: rate.frameRateIsConstant,
    isDecodable: await track.canDecode(),
  }
}

const soundOf = async (track: InputAudioTrack): Promise<Sound> => ({
  codec: codecName(await track.getCodec(), await track.getInternalCodecId()),
  channels: await track.getNumberOfChannels(),
  sampleRate: await track.getSampleRate(),
  isDecodable: await track.canDecode(),
})

const refuse = (name: string, code: string, message: string) => refusal({ code, message, place: { file: name } })

const notMedia = (name: string) =>
  refuse(
    name,
    'not-media',
    'this is not footage or sound Tellwright can read; expected MP4, MOV, WebM, MKV, WAV, MP3, M4A, Ogg or FLAC. Choose the recording itself, or save it as MP4 first.',
  )

const noIndex = (name: string) =>
  refuse(
    name,
    'no-index',
    'the file breaks off before its index, so nothing in it can be found: the copy or the recording was cut short. Copy it from the camera again.',
  )

const noticesOf = (
  name: string,
  picture: Picture | null,
  sound: Sound | null,
  seconds: number,
  announced: number,
): Problem[] => {
  const place = { file: name }
  const notices: Problem[] = []
  if (sound === null)
    notices.push({
      code: 'no-sound',
      message: 'there is no sound in this file; only the picture can be worked with',
      place,
    })
  if (picture === null)
    notices.push({
      code: 'no-picture',
      message: 'there is no picture in this file; only the sound can be worked with',
      place,
    })
  if (announced - seconds > 1)
    notices.push({
      code: 'cut-short',
      message: `the file announces ${announced.toFixed(1)} s, but only the first ${seconds.toFixed(1)} s can be read: the copy or the recording was cut short. Copy it from the camera again, or work with what is there`,
      place,
    })
  if (picture !== null && !picture.isDecodable)
    notices.push({
      code: 'picture-not-decodable',
      message: `this browser can't decode the picture's codec, ${picture.codec}; stills and cuts go through ffmpeg, which is slower. If the picture stays black, try another browser or save the footage as H.264`,
      place,
    })
  if (sound !== null && !sound.isDecodable)
    notices.push({
      code: 'sound-not-decodable',
      message: `this browser can't decode the sound's codec, ${sound.codec}; it is read through ffmpeg, which is slower. If nothing is heard, save the footage with AAC sound`,
      place,
    })
  return notices
}

/**
 * Opens footage without reading more than its index, whatever its size. Which decoder serves it depends on where this
 * runs: without WebCodecs (Node) only uncompressed sound is decodable here.
 *
 * @param file the user's own file; never changed
 * @param name as the user knows it
 * @returns what the file holds, with notices; or problem `empty-file`, `not-media`, `no-index` (broken off), `no-tracks`.
 *   Close it when done. Times in seconds, sizes in pixels after rotation.
 */
export const openFootage = async (file: Blob, name: string): Promise<Result<OpenFootage>> => {
  if (file.size === 0) return refuse(name, 'empty-file', 'the file is empty (0 bytes). Copy it from the camera again')
  const input = new Input({ source: new BlobSource(file), formats: ALL_FORMATS })
  try {
    if (!(await input.canRead())) {
      input.dispose()
      return notMedia(name)
    }
    const container = (await input.getFormat()).name.replace(/ File Format$/, '')
    const video = await input.getPrimaryVideoTrack()
    const audio = await input.getPrimaryAudioTrack()
    if (video === null && audio === null) {
      const isCut = (await input.getTracks()).length === 0
      input.dispose()
      return isCut
        ? noIndex(name)
        : refuse(name, 'no-tracks', 'there is neither picture nor sound in this file. Choose the recording itself')
    }
    const tracks = [video, audio].filter(track => track !== null)
    const announced = (await input.getDurationFromMetadata(tracks)) ?? (await input.computeDuration(tracks))
    const ends = await Promise.all(tracks.map(track => readableEnd(track, announced)))
    const seconds = Math.max(...ends)
    if (seconds <= 0) {
      input.dispose()
      return noIndex(name)
    }
    const picture = video === null ? null : await pictureOf(video)
    const sound = audio === null ? null : await soundOf(audio)
    const wayOf = (part: { isDecodable: boolean } | null): Way =>
      part === null ? 'none' : part.isDecodable ? 'browser' : 'ffmpeg'
    return success({
      name,
      file,
      bytes: file.size,
      seconds,
      hasVideo: picture !== null,
      hasSound: sound !== null,
      container,
      picture,
      sound,
      ways: { picture: wayOf(picture), sound: wayOf(sound) },
      notices: noticesOf(name, picture, sound, seconds, announced),
      input,
      close: () => input.dispose(),
    })
  } catch (error) {
    input.dispose()
    const found = error instanceof Error ? error.message : String(error)
    return refuse(
      name,
      'unreadable',
      `the file looks like footage but can't be read (${found}). Copy it from the camera again, or save it as MP4`,
    )
  }
}
