'use client'

import { type KeyboardEvent, useEffect, useId, useState } from 'react'
import styles from './ui.module.css'

type Props = {
  readonly label: string
  readonly value: string
  /** Called when the field is left or Enter is pressed with a changed value; a message back refuses it. */
  readonly onDone: (value: string) => string | undefined
  readonly rows?: number
  readonly figures?: boolean
  readonly list?: readonly string[]
  readonly autoFocus?: boolean
  readonly placeholder?: string
}

/** A labelled field that gives its value when left. What was typed stays when it is refused, with the reason below. */
export const Field = ({ label, value, onDone, rows, figures = false, list, autoFocus = false, placeholder }: Props) => {
  const [typed, setTyped] = useState(value)
  const [problem, setProblem] = useState<string>()
  const id = useId()
  useEffect(() => {
    setTyped(value)
    setProblem(undefined)
  }, [value])
  const finish = () => {
    if (typed !== value) setProblem(onDone(typed))
  }
  const shared = {
    id,
    value: typed,
    placeholder,
    'aria-invalid': problem !== undefined,
    'aria-describedby': problem === undefined ? undefined : `${id}-problem`,
    onBlur: finish,
    onChange: (event: { target: { value: string } }) => setTyped(event.target.value),
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key === 'Enter' && (rows === undefined || event.ctrlKey || event.metaKey)) finish()
      if (event.key === 'Escape' && typed !== value) {
        event.stopPropagation()
        setTyped(value)
      }
    },
  }
  return (
    <label className={styles.field} data-figures={figures} htmlFor={id}>
      <span>{label}</span>
      {rows === undefined ? (
        // biome-ignore lint/a11y/noAutofocus: opened by the user's own key to be typed into
        <input {...shared} autoFocus={autoFocus} list={list === undefined ? undefined : `${id}-list`} />
      ) : (
        // biome-ignore lint/a11y/noAutofocus: opened by the user's own key to be typed into
        <textarea {...shared} rows={rows} autoFocus={autoFocus} />
      )}
      {list !== undefined && (
        <datalist id={`${id}-list`}>
          {list.map(item => (
            <option key={item} value={item} />
          ))}
        </datalist>
      )}
      {problem !== undefined && (
        <small id={`${id}-problem`} role="alert">
          {problem}
        </small>
      )}
    </label>
  )
}

type ChoiceProps<T extends string> = {
  readonly label: string
  readonly value: T | ''
  readonly options: readonly (readonly [T | '', string])[]
  readonly onChoose: (value: T | '') => void
}

/** A labelled choice among a few words. */
export const Choice = <T extends string>({ label, value, options, onChoose }: ChoiceProps<T>) => {
  const id = useId()
  return (
    <label className={styles.field} htmlFor={id}>
      <span>{label}</span>
      <select id={id} value={value} onChange={event => onChoose(event.target.value as T | '')}>
        {options.map(([key, word]) => (
          <option key={key} value={key}>
            {word}
          </option>
        ))}
      </select>
    </label>
  )
}
