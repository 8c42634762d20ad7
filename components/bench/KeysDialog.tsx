'use client'

import { Dialog } from '@/components/ui/Dialog'
import styles from './bench.module.css'
import { KEY_GROUPS } from './keys'

type Props = {
  readonly areSingleKeysOn: boolean
  readonly onSingleKeys: (on: boolean) => void
  readonly onClose: () => void
}

/** The keys in use, and a switch for those that are single letters. */
export const KeysDialog = ({ areSingleKeysOn, onSingleKeys, onClose }: Props) => (
  <Dialog title="Keys in use" onClose={onClose} wide>
    <label className={styles.tick}>
      <input type="checkbox" checked={areSingleKeysOn} onChange={event => onSingleKeys(event.target.checked)} />
      Letters by themselves work as keys (switch off when you dictate or a letter gets pressed by accident)
    </label>
    <div className={styles.keyGroups}>
      {KEY_GROUPS.map(({ title, keys }) => (
        <section key={title}>
          <h3>{title}</h3>
          <dl>
            {keys.map(([key, about]) => (
              <div key={key}>
                <dt>{key}</dt>
                <dd>{about}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </div>
  </Dialog>
)
