import { guessPronunciation } from './pronounce'

/** The part of soundswallower's decoder that is used. */
export type Decoder = {
  readonly initialize: () => Promise<unknown>
  readonly start: () => void
  readonly stop: () => void
  readonly process_audio: (samples: Float32Array, noSearch?: boolean, whole?: boolean) => number
  readonly get_alignment: () => { readonly w?: readonly { t: string; b: number; d: number; p: number }[] }
  readonly lookup_word: (word: string) => string | null
  readonly add_words: (...words: [string, string][]) => void
  readonly set_grammar: (grammar: string) => void
  readonly set_align_text: (text: string) => void
  readonly delete: () => void
}

export type DecoderModule = { readonly Decoder: new (options: object) => Decoder }

/** A sound of speech that was heard, with its time in seconds. */
export type HeardPhone = { readonly phone: string; readonly start: number; readonly end: number }

/** A word's time in seconds; `sure` 0 to 1 as the decoder sees it. */
export type TimedWord = { readonly start: number; readonly end: number; readonly sure: number }

/** Hears phones without knowing the text, and times words whose text is known. Samples are 16 kHz mono. */
export type Recogniser = {
  /** @returns phones of the CMU set, as in the dictionary */
  readonly pronounce: (word: string) => readonly string[]
  readonly hearPhones: (samples: Float32Array) => readonly HeardPhone[]
  /** @returns one time a word, from the first sample; undefined where text and sound don't fit at all */
  readonly timeWords: (samples: Float32Array, words: readonly string[]) => readonly TimedWord[] | undefined
  readonly free: () => void
}

export const PHONES =
  'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split(' ')

/** The default beams (1e-48) lose long texts; measured. */
const WIDE = { beam: 1e-100, wbeam: 1e-100, pbeam: 1e-100 }

/** Phones without their neighbours, every other frame scored: fast, and right often enough to find a sentence. */
const FAST = { beam: 1e-20, wbeam: 1e-15, pbeam: 1e-15, cionly: true, ds: 2, lw: 2 }

const LOOP = `#JSGF V1.0;\ngrammar phones;\npublic <any> = (${PHONES.map(phone => `/0.01/ _${phone.toLowerCase()}`).join(' | ')})+ ;\n`

/** Half the width of the noise added to the sound: the model can't bear the perfect silence of a digital mute. */
const DITHER = 0.005

/** The same noise every time, so that the same sound gives the same times. */
const withDither = (samples: Float32Array): Float32Array => {
  let state = 12345
  return samples.map(sample => {
    state = (Math.imul(state, 1664525) + 1013904223) | 0
    return sample + (state / 2 ** 31) * DITHER
  })
}

const decode = (decoder: Decoder, samples: Float32Array) => {
  decoder.start()
  decoder.process_audio(withDither(samples), false, true)
  decoder.stop()
  return decoder.get_alignment().w ?? []
}

const isWord = (text: string): boolean => !/^(?:<|\(NULL\)|\[|\+\+)/.test(text)

/** Loads both decoders (40 MB of memory together). @throws when the model can't be read */
export const createRecogniser = async ({ Decoder }: DecoderModule): Promise<Recogniser> => {
  const common = { loglevel: 'FATAL', samprate: 16_000 }
  const aligner = new Decoder({ ...common, ...WIDE })
  const listener = new Decoder({ ...common, ...FAST })
  await aligner.initialize()
  await listener.initialize()
  listener.add_words(...PHONES.map((phone): [string, string] => [`_${phone.toLowerCase()}`, phone]))
  listener.set_grammar(LOOP)
  const known = new Map<string, string>()
  const look = (word: string): string => {
    const found = known.get(word)
    if (found !== undefined) return found
    let phones = aligner.lookup_word(word)
    if (phones === null) {
      phones = guessPronunciation(word)
      aligner.add_words([word, phones])
    }
    known.set(word, phones)
    return phones
  }
  return {
    pronounce: word => look(word).split(' '),
    hearPhones: samples =>
      decode(listener, samples)
        .filter(({ t }) => t.startsWith('_'))
        .map(({ t, b, d }) => ({ phone: t.slice(1).toUpperCase(), start: b, end: b + d })),
    timeWords: (samples, words) => {
      for (const word of words) look(word)
      try {
        aligner.set_align_text(words.join(' '))
        const heard = decode(aligner, samples).filter(({ t }) => isWord(t))
        if (heard.length !== words.length) return undefined
        return heard.map(({ b, d, p }) => ({ start: b, end: b + d, sure: p }))
      } catch {
        return undefined
      }
    },
    free: () => {
      aligner.delete()
      listener.delete()
    },
  }
}
