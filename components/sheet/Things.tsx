'use client'

import { formatTime } from '@/lib/procedure/time'
import { Item, type Showing } from './SheetSteps'
import styles from './sheet.module.css'
import type { Thing } from './thing'

/**
 * Tools or materials, each name once. Other marks of the same name are named by their times; one that is chosen, is
 * still pencilled or has a finding stands below the first, so that it can be read, kept and written.
 */
export const Things = ({ things, showing }: { readonly things: readonly Thing[]; readonly showing: Showing }) => (
  <>
    {things.map(({ mark, again }) => {
      const isShown = ({ id, pencilled }: typeof mark) =>
        id === showing.chosen || pencilled !== undefined || showing.findings.has(id)
      const folded = again.filter(other => !isShown(other))
      return (
        <div key={mark.id} className={styles.thing}>
          <Item mark={mark} showing={showing} />
          {folded.length > 0 && (
            <p className={styles.again}>
              said again at
              {folded.map(other => (
                <button
                  key={other.id}
                  type="button"
                  className={styles.time}
                  aria-label={`${other.kind}: ${other.text}, said again at ${formatTime(other.start)}`}
                  onClick={() => showing.actions.choose(other.id)}
                >
                  {formatTime(other.start)}
                </button>
              ))}
            </p>
          )}
          {again.filter(isShown).map(other => (
            <Item key={other.id} mark={other} showing={showing} />
          ))}
        </div>
      )
    })}
  </>
)
