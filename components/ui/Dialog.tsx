'use client'

import { type ReactNode, useEffect, useId, useRef } from 'react'
import { Button } from './Button'
import styles from './ui.module.css'

type Props = {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
  readonly wide?: boolean
}

/** A dialog: the browser's own, so that focus stays inside, Escape closes and the page behind is inert. */
export const Dialog = ({ title, onClose, children, wide = false }: Props) => {
  const dialog = useRef<HTMLDialogElement>(null)
  const heading = useId()
  useEffect(() => {
    const element = dialog.current
    const before = document.activeElement
    element?.showModal()
    return () => {
      element?.close()
      if (before instanceof HTMLElement) before.focus()
    }
  }, [])
  return (
    <dialog
      ref={dialog}
      aria-labelledby={heading}
      className={`${styles.dialog} ${wide ? styles.wide : ''}`}
      onCancel={event => {
        event.preventDefault()
        onClose()
      }}
    >
      <header className={styles.dialogHead}>
        <h2 id={heading}>{title}</h2>
        <Button look="quiet" onClick={onClose}>
          Close
        </Button>
      </header>
      {children}
    </dialog>
  )
}
