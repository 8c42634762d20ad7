import type { ComponentProps } from 'react'
import styles from './ui.module.css'

type Props = ComponentProps<'button'> & {
  /** `main`: the one thing to do here. `quiet`: text only. */
  readonly look?: 'main' | 'plain' | 'quiet'
}

/** A button that says what happens. */
export const Button = ({ look = 'plain', className, ...rest }: Props) => (
  <button type="button" className={[styles.button, styles[look], className].filter(Boolean).join(' ')} {...rest} />
)
