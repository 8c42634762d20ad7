'use client'

import { useRef } from 'react'
import { Button } from '@/components/ui/Button'
import { FileInput } from '@/components/ui/FileInput'
import type { Footage } from '@/lib/procedure/recording'
import styles from './bench.module.css'
import { chooseFiles } from './given'
import type { useFootage } from './useFootage'

type Props = { readonly footage: Footage | null; readonly found: ReturnType<typeof useFootage> }

/** Where the footage goes, while it is not open: asked for the first time, or again. */
export const FootagePlace = ({ footage, found }: Props) => {
  const input = useRef<HTMLInputElement>(null)
  const { state, take, reopen, problemText } = found
  if (state.is === 'looking') return <p className={styles.place}>Looking for the footage</p>
  return (
    <section className={styles.place} aria-label="Place for the footage">
      {state.is === 'asks' && (
        <>
          <p>
            The footage is <b>{footage?.name}</b>. The browser asks once more before it reads the file.
          </p>
          <Button look="main" onClick={() => void reopen(state.handle)}>
            Open {footage?.name}
          </Button>
        </>
      )}
      {state.is === 'away' && (
        <p>
          The footage is <b>{footage?.name}</b>. This browser can't reopen it by itself: drop it here, or choose it
          again. Everything else is here.
        </p>
      )}
      {state.is === 'none' && <p>No footage yet. Drop it here or choose it; it stays on this machine.</p>}
      {state.is === 'refused' && <p role="alert">{problemText}</p>}
      {state.is === 'other' && (
        <>
          <p role="alert">{state.why}</p>
          <Button onClick={() => void take(state.given, true)}>Take it all the same</Button>
        </>
      )}
      <Button
        look={state.is === 'asks' ? 'plain' : 'main'}
        onClick={() => void chooseFiles(input.current).then(([first]) => first && take(first))}
      >
        Choose the footage
      </Button>
      <FileInput ref={input} label="Footage file" onFiles={([file]) => file && void take({ file })} />
    </section>
  )
}
