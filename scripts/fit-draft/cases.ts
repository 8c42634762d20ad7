import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Sentence, Transcript } from '@/lib/procedure/recording'
import type { Quantity } from '@/lib/quantity/quantity'
import { readTranscript } from '@/lib/transcript/read'
import { toSentences } from '@/lib/transcript/sentence'

export type GoldMark = {
  readonly kind: string
  readonly start: number
  readonly end: number
  readonly text: string
  readonly level?: string
  readonly hazard?: string
}
export type GoldSpec = Quantity & {
  readonly name: string
  readonly start: number
  readonly end: number
  readonly tol?: number
  readonly ref?: string
}
export type Gold = {
  readonly sentences: readonly { readonly start: number; readonly end: number; readonly text: string }[]
  readonly marks: readonly GoldMark[]
  readonly specs: readonly GoldSpec[]
  readonly tools: readonly string[]
  readonly materials: readonly string[]
}
/** One walkthrough in one form. */
export type Case = {
  readonly name: string
  readonly form: string
  readonly gold: Gold
  readonly transcript: Transcript
  readonly sentences: readonly Sentence[]
  /** Written by us to fit by, rather than to measure by. */
  readonly isOwn: boolean
  /** How much it counts: cases of others' making tell more of what others will want than talks of our own. */
  readonly weight: number
}

export const OTHERS = 3

/** Reads every case of a folder in the forms asked for. */
export const readCases = (folder: string, forms: readonly string[], only?: RegExp): readonly Case[] =>
  readdirSync(folder)
    .filter(file => file.endsWith('.gold.json') && (only === undefined || only.test(file)))
    .sort()
    .flatMap(file => {
      const name = file.replace('.gold.json', '')
      const gold = JSON.parse(readFileSync(join(folder, file), 'utf8')) as Gold
      return forms.flatMap(form => {
        const path = join(folder, `${name}.${form}`)
        if (!existsSync(path)) return []
        const read = readTranscript(readFileSync(path), path)
        if (!read.ok) throw new Error(`${path}: ${read.problems[0]?.message}`)
        const { transcript } = read.value
        return [{ name, form, gold, transcript, sentences: toSentences(transcript), isOwn: false, weight: OTHERS }]
      })
    })
