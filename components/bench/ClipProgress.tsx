'use client'

import { Button } from '@/components/ui/Button'
import { countOf } from '@/lib/procedure/count'
import styles from './bench.module.css'

type Props = {
  /** Clips done, with parts of one. */
  readonly done: number
  readonly of: number
  readonly onStop: () => void
}

/** How far the cutting of clips is, and what stops it. */
export const ClipProgress = ({ done, of, onStop }: Props) => (
  <p className={styles.progress}>
    <progress value={done} max={of} aria-label="Cutting clips" />
    {Math.floor(done)} of {countOf(of, 'clip')}
    <Button onClick={onStop}>Stop</Button>
  </p>
)
