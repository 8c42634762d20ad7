'use client'

import dynamic from 'next/dynamic'
import Link from 'next/link'
import { useState } from 'react'
import { Button } from '@/components/ui/Button'
import { formatTime } from '@/lib/procedure/time'
import type { BenchEntry } from '@/lib/store/store'
import styles from './bench.module.css'
import { benchStore } from './laying'
import { marksWords } from './marks-words'

const ServiceDialog = dynamic(() => import('./ServiceDialog').then(module => module.ServiceDialog))

const day = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' })

const nameOf = ({ title }: BenchEntry): string => (title === '' ? 'Recording without a title' : title)

type Props = { readonly entries: readonly BenchEntry[]; readonly onChanged: () => void }

/** The recordings in work, newest change first. */
export const BenchRows = ({ entries, onChanged }: Props) => {
  const [leaving, setLeaving] = useState<string>()
  const [together, setTogether] = useState<ReadonlySet<string>>(new Set())
  const [isService, setService] = useState(false)
  const [saved, setSaved] = useState<string>()
  if (entries.length === 0) return <p className={styles.quiet}>Nothing lies on the bench yet.</p>
  const toggle = (id: string) => {
    const next = new Set(together)
    if (!next.delete(id)) next.add(id)
    setTogether(next)
  }
  // In the order in which they were ticked.
  const several = [...together].flatMap(id => entries.find(entry => entry.id === id) ?? [])
  const closeService = (savedAs?: string) => {
    setService(false)
    setSaved(savedAs)
  }
  return (
    <>
      <ul className={styles.rows}>
        {entries.map(entry => (
          <li key={entry.id} className={styles.row}>
            <input
              type="checkbox"
              checked={together.has(entry.id)}
              onChange={() => toggle(entry.id)}
              aria-label={`Take ${nameOf(entry)} into a service`}
            />
            <div className={styles.rowWhat}>
              <Link
                href={`/bench?recording=${encodeURIComponent(entry.id)}`}
                prefetch={false}
                className={styles.rowName}
                dir="auto"
              >
                {nameOf(entry)}
              </Link>
              {entry.equipment !== '' && <span dir="auto">{entry.equipment}</span>}
            </div>
            <span className={styles.rowLength}>{formatTime(entry.seconds)}</span>
            <div className={styles.rowFacts}>
              <span>{marksWords(entry)}</span>
              <span className={styles.quiet}>changed {day.format(entry.changed)}</span>
            </div>
            {leaving === entry.id ? (
              <span className={styles.rowSure}>
                <Button onClick={() => void benchStore().remove(entry.id).then(onChanged)}>
                  Yes, take it off for good
                </Button>
                {/* The button pressed is gone: focus stays here, on the answer that loses nothing. */}
                <Button look="quiet" autoFocus onClick={() => setLeaving(undefined)}>
                  Leave it
                </Button>
              </span>
            ) : (
              <span className={styles.rowSure}>
                <Button
                  look="quiet"
                  onClick={() => setLeaving(entry.id)}
                  aria-label={`Take off the bench: ${nameOf(entry)}`}
                >
                  Take off the bench
                </Button>
              </span>
            )}
          </li>
        ))}
      </ul>
      {entries.length > 1 && (
        <div className={styles.dropRow}>
          <Button disabled={several.length < 2} onClick={() => setService(true)}>
            {several.length < 2 ? 'Tick two or more for one packet' : `One packet of these ${several.length} jobs`}
          </Button>
          <span role="status">{saved === undefined ? '' : `Saved as ${saved}.`}</span>
        </div>
      )}
      {isService && <ServiceDialog entries={several} onClose={closeService} />}
    </>
  )
}
