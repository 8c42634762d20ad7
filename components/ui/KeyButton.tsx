'use client'

import type { ComponentProps } from 'react'
import { Button } from './Button'
import styles from './ui.module.css'

type Props = ComponentProps<typeof Button> & {
  /** The key that does the same, as the list of keys writes it; empty for none. */
  readonly keys: string
}

/** A button that shows the key which does the same. */
export const KeyButton = ({ keys, children, ...rest }: Props) => (
  <Button {...rest}>
    {children}
    {keys !== '' && <span className={styles.key} data-keys={keys} />}
  </Button>
)
