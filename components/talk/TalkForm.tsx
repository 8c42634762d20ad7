'use client'

import { type Cue, cueText } from '@/lib/procedure/recording'
import type { Talk } from '@/lib/transcript/talk'
import { elsewhere, replacedWords } from './correction'
import { CueCorrection, SpeakerName } from './TalkForms'

/** The form that is open in the talk: the words of a cue, or who speaks in a paragraph. */
export type OpenForm =
  | { readonly is: 'cue'; readonly cue: number; readonly paragraph: number }
  | { readonly is: 'speaker'; readonly paragraph: number }

type Props = {
  readonly form: OpenForm
  readonly talk: Talk
  readonly cues: readonly Cue[]
  readonly onCorrect: (cue: number, text: string, isEverywhere: boolean) => void
  readonly onNameSpeaker: (cues: readonly number[], speaker: string) => void
  readonly onClose: () => void
}

/** What can be corrected of the talk itself, in the paragraph it is about. */
export const TalkForm = ({ form, talk, cues, onCorrect, onNameSpeaker, onClose }: Props) => {
  if (form.is === 'cue') {
    const cue = cues[form.cue]
    if (cue === undefined) return null
    return (
      <CueCorrection
        cue={cue}
        elsewhereOf={text => {
          const replaced = replacedWords(cueText(cue), text)
          const lines = replaced === undefined ? 0 : elsewhere(cues, form.cue, replaced).length
          return replaced === undefined || lines === 0 ? undefined : { lines, replaced }
        }}
        onDone={choice => {
          if (choice !== undefined) onCorrect(form.cue, choice.text, choice.isEverywhere)
          onClose()
        }}
      />
    )
  }
  const paragraph = talk.paragraphs[form.paragraph]
  const same = cues.flatMap((cue, i) => (cue.speaker === paragraph?.speaker ? [i] : []))
  const here = new Set(talk.words.slice(paragraph?.first, paragraph?.last).map(word => word.cue))
  return (
    <SpeakerName
      speaker={paragraph?.speaker}
      everywhere={same.length}
      known={[...new Set(cues.flatMap(cue => (cue.speaker === undefined ? [] : [cue.speaker])))]}
      onDone={choice => {
        if (choice !== undefined) onNameSpeaker(choice.isEverywhere ? same : [...here], choice.name)
        onClose()
      }}
    />
  )
}
