import type { Level } from '@/lib/procedure/kinds'
import styles from './ui.module.css'

/** A signal word on its safety colour. The word itself is always there. @source ANSI Z535.6 and Z535.1 (from memory) */
export const Signal = ({ level }: { readonly level: Level }) => (
  <span className={styles.signal} data-level={level}>
    {level}
  </span>
)
