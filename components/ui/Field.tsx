'use client'

import { useId, useState } from 'react'
import styles from './ui.module.css'
import { useTyped } from './useTyped'

type Props = {
  readonly label: string
  readonly value: string
  /** Called with changed words; a message back refuses them. */
  readonly onDone: (value: string) => string | undefined
  readonly rows?: number
  readonly figures?: boolean
  readonly list?: readonly string[]
  readonly autoFocus?: boolean
  readonly placeholder?: string
  /** What else the answer hangs on: refused words are tried again when it changes. */
  readonly retry?: unknown
}

/**
 * A labelled field that gives its words over while they are typed and when it is left; figures and choices from a list only
 * when it is left, for half a number is another number. What is refused stays, with the reason below.
 */
export const Field = ({ label, value, onDone, rows, figures = false, list, retry, ...rest }: Props) => {
  const { autoFocus = false, placeholder } = rest
  const isLive = !figures && list === undefined
  const { id, problem, field } = useTyped({ value, onDone, isLive, retry, hasLines: rows !== undefined })
  const shared = {
    ...field,
    dir: figures ? undefined : 'auto',
    placeholder,
    // Named by its label alone, not by the reason under it.
    'aria-labelledby': `${id}-label`,
    'aria-invalid': problem !== undefined,
    'aria-describedby': problem === undefined ? undefined : `${id}-problem`,
  }
  return (
    <label className={styles.field} data-figures={figures} htmlFor={id}>
      <span id={`${id}-label`}>{label}</span>
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

/** Options drawn with the field; of more than that, the one chosen alone until a hand comes to it. */
const AT_ONCE = 200

/** A labelled choice among words: a few, or the thousands of steps of a long talk. */
export const Choice = <T extends string>({ label, value, options, onChoose }: ChoiceProps<T>) => {
  const id = useId()
  const [isNear, setNear] = useState(false)
  const come = () => setNear(true)
  const drawn = isNear || options.length <= AT_ONCE ? options : options.filter(([key]) => key === '' || key === value)
  return (
    <label className={styles.field} htmlFor={id} onPointerEnter={come} onFocus={come}>
      <span>{label}</span>
      <select id={id} value={value} onChange={event => onChoose(event.target.value as T | '')}>
        {drawn.map(([key, word]) => (
          <option key={key} value={key}>
            {word}
          </option>
        ))}
      </select>
    </label>
  )
}
