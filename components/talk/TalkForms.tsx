'use client'

import { type FormEvent, useId, useState } from 'react'
import { Button } from '@/components/ui/Button'
import type { Cue } from '@/lib/procedure/recording'
import { formatTime } from '@/lib/procedure/time'
import styles from './talk.module.css'

type CorrectionProps = {
  readonly cue: Cue
  readonly onDone: (text: string | undefined) => void
}

/** Correcting the words of one cue in place; what the file had stays beside it. */
export const CueCorrection = ({ cue, onDone }: CorrectionProps) => {
  const [text, setText] = useState(cue.corrected ?? cue.text)
  const id = useId()
  const submit = (event: FormEvent) => {
    event.preventDefault()
    onDone(text.replace(/\s+/g, ' ').trim())
  }
  return (
    <form
      className={styles.form}
      onSubmit={submit}
      onKeyDown={event => {
        event.stopPropagation()
        if (event.key === 'Escape') onDone(undefined)
      }}
    >
      <label htmlFor={id}>
        {cue.end === 0 ? 'Words of this line' : `Words from ${formatTime(cue.start)} to ${formatTime(cue.end)}`}
      </label>
      {/* biome-ignore lint/a11y/noAutofocus: opened by the user to be typed into */}
      <textarea id={id} value={text} autoFocus rows={2} onChange={event => setText(event.target.value)} />
      <p className={styles.original}>
        As the file had it: <q>{cue.text}</q>
      </p>
      <div className={styles.formRow}>
        <Button look="main" type="submit">
          Correct these words
        </Button>
        {cue.corrected !== undefined && <Button onClick={() => onDone(cue.text)}>Back to the file's words</Button>}
        <Button look="quiet" onClick={() => onDone(undefined)}>
          Leave as it was
        </Button>
      </div>
    </form>
  )
}

type SpeakerProps = {
  readonly speaker: string | undefined
  /** How many cues carry this name (or none) in the whole talk. */
  readonly everywhere: number
  readonly known: readonly string[]
  readonly onDone: (choice: { readonly name: string; readonly isEverywhere: boolean } | undefined) => void
}

/** Naming who speaks: this paragraph, or every line that carries the same name now. */
export const SpeakerName = ({ speaker, everywhere, known, onDone }: SpeakerProps) => {
  const [name, setName] = useState(speaker ?? '')
  const [isEverywhere, setEverywhere] = useState(speaker !== undefined)
  const id = useId()
  const submit = (event: FormEvent) => {
    event.preventDefault()
    onDone({ name: name.trim(), isEverywhere })
  }
  return (
    <form
      className={styles.form}
      onSubmit={submit}
      onKeyDown={event => {
        event.stopPropagation()
        if (event.key === 'Escape') onDone(undefined)
      }}
    >
      <label htmlFor={id}>Who speaks here</label>
      {/* biome-ignore lint/a11y/noAutofocus: opened by the user to be typed into */}
      <input id={id} value={name} autoFocus list={`${id}-known`} onChange={event => setName(event.target.value)} />
      <datalist id={`${id}-known`}>
        {known.map(other => (
          <option key={other} value={other} />
        ))}
      </datalist>
      <label className={styles.tick}>
        <input type="checkbox" checked={isEverywhere} onChange={event => setEverywhere(event.target.checked)} />
        {speaker === undefined ? 'every line without a name' : `everywhere “${speaker}” stands`} ({everywhere} lines)
      </label>
      <div className={styles.formRow}>
        <Button look="main" type="submit">
          Name the speaker
        </Button>
        <Button look="quiet" onClick={() => onDone(undefined)}>
          Leave as it was
        </Button>
      </div>
    </form>
  )
}
