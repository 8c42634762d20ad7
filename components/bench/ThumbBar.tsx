'use client'

import styles from './bench.module.css'

export type Surface = 'talk' | 'footage' | 'sheet'

const WORDS: readonly (readonly [Surface, string])[] = [
  ['talk', 'Talk'],
  ['footage', 'Footage'],
  ['sheet', 'Sheet'],
]

type Props = { readonly surface: Surface; readonly onSurface: (surface: Surface) => void }

/** On narrow screens: which of the three surfaces is shown. */
export const ThumbBar = ({ surface, onSurface }: Props) => (
  <nav className={styles.thumbBar} aria-label="Surfaces">
    {WORDS.map(([name, word]) => (
      <button key={name} type="button" aria-pressed={surface === name} onClick={() => onSurface(name)}>
        {word}
      </button>
    ))}
  </nav>
)
