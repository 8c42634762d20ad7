'use client'

import { memo, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import type { Heading } from '@/lib/procedure/project'
import type { SheetActions } from './actions'
import { HeadingFields } from './HeadingFields'
import styles from './sheet.module.css'

const intervalWords = ({ interval }: Heading): string => {
  const parts = [
    interval?.hours === undefined ? undefined : `every ${interval.hours} hours`,
    interval?.months === undefined ? undefined : `every ${interval.months} months`,
  ].filter(part => part !== undefined)
  return parts.length === 2 ? `${parts.join(' or ')}, whichever comes first` : parts.join('')
}

type Props = { readonly heading: Heading; readonly actions: SheetActions }

/** The head of the sheet: what the procedure is for, and its fields while they are written. */
export const SheetHead = memo(({ heading, actions }: Props) => {
  const [isOpen, setOpen] = useState(false)
  const opener = useRef<HTMLButtonElement>(null)
  // The fields go with the button that closed them.
  const close = () => {
    opener.current?.focus()
    setOpen(false)
  }
  const rows = [
    ['Equipment', heading.equipment],
    ['Due', intervalWords(heading)],
    ['Revision', heading.revision],
    ['Author', heading.author],
    ['Scope', heading.scope],
  ].filter(([, value]) => value !== '')
  return (
    <header className={styles.head}>
      <div className={styles.headRow}>
        <h2 dir="auto">{heading.title === '' ? 'Sheet without a title' : heading.title}</h2>
        <Button ref={opener} look="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {isOpen ? 'Close the head' : 'Write the head'}
        </Button>
      </div>
      {rows.length > 0 && (
        <dl className={styles.facts}>
          {rows.map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd dir="auto">{value}</dd>
            </div>
          ))}
        </dl>
      )}
      {isOpen && <HeadingFields heading={heading} actions={actions} onDone={close} />}
    </header>
  )
})
