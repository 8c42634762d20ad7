'use client'

import { type FormEvent, useEffect, useId, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { countOf } from '@/lib/procedure/count'
import type { Cue } from '@/lib/procedure/recording'
import { formatTime } from '@/lib/procedure/time'
import type { Replaced } from './correction'
import styles from './talk.module.css'

type CorrectionProps = {
  readonly cue: Cue
  /** How many other lines hold the words that this text would replace, and which words. */
  readonly elsewhereOf: (text: string) => { readonly lines: number; readonly replaced: Replaced } | undefined
  readonly onDone: (choice: { readonly text: string; readonly isEverywhere: boolean } | undefined) => void
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim()

/** Correcting the words of one cue in place; what the file had stays beside it. */
export const CueCorrection = ({ cue, elsewhereOf, onDone }: CorrectionProps) => {
  const [text, setText] = useState(cue.corrected ?? cue.text)
  const [isEverywhere, setEverywhere] = useState(false)
  const id = useId()
  const line = oneLine(text)
  const others = elsewhereOf(line)
  const hasOthers = others !== undefined
  const form = useRef<HTMLFormElement>(null)
  // Opened, or grown by what it offers, at the foot of the talk: its buttons come into view.
  // biome-ignore lint/correctness/useExhaustiveDependencies: what it offers is no input, but makes it taller
  useEffect(() => {
    // In newer browsers it returns a promise, which is no way to clean up.
    form.current?.scrollIntoView({ block: 'nearest' })
  }, [hasOthers])
  const submit = () =>
    onDone(
      line === oneLine(cue.corrected ?? cue.text) ? undefined : { text: line, isEverywhere: isEverywhere && hasOthers },
    )
  return (
    <form
      ref={form}
      className={styles.form}
      onSubmit={event => {
        event.preventDefault()
        submit()
      }}
      onKeyDown={event => {
        event.stopPropagation()
        if (event.key === 'Escape') onDone(undefined)
      }}
    >
      <label htmlFor={id}>
        {cue.end === 0 ? 'Words of this line' : `Words from ${formatTime(cue.start)} to ${formatTime(cue.end)}`}
      </label>
      <textarea
        id={id}
        value={text}
        // biome-ignore lint/a11y/noAutofocus: opened by the user to be typed into
        autoFocus
        rows={2}
        onChange={event => setText(event.target.value)}
        onKeyDown={event => {
          // A line of the talk holds no line break: Enter is done.
          if (event.key !== 'Enter' || event.nativeEvent.isComposing) return
          event.preventDefault()
          submit()
        }}
      />
      <p className={styles.original}>
        As the file had it: <q>{cue.text}</q>
      </p>
      {others !== undefined && (
        <label className={styles.tick}>
          <input type="checkbox" checked={isEverywhere} onChange={event => setEverywhere(event.target.checked)} />
          <span>
            “{others.replaced.from}” to “{others.replaced.to}” in {countOf(others.lines, 'other line')} too
          </span>
        </label>
      )}
      <div className={styles.formRow}>
        <Button look="main" type="submit">
          Correct these words
        </Button>
        {cue.corrected !== undefined && (
          <Button onClick={() => onDone({ text: cue.text, isEverywhere: false })}>Back to the file's words</Button>
        )}
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
