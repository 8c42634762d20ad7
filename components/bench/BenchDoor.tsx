'use client'

import Link from 'next/link'
import { useEffect, useState } from 'react'
import { formatProblem } from '@/lib/procedure/problem'
import { Bench } from './Bench'
import styles from './bench.module.css'
import { benchStore, noticesAtHand } from './laying'
import { openSession, type Session } from './session'
import { readyTalkWorker } from './useTalk'

type Door =
  | { readonly is: 'opening' }
  | { readonly is: 'open'; readonly session: Session; readonly isOpenElsewhere: boolean }
  | { readonly is: 'shut'; readonly why: string }

/** Holds a lock while this tab has the recording open. @returns whether it got it, and how to give it back */
const takeLock = (id: string): Promise<{ readonly isOurs: boolean; readonly giveBack: () => void }> =>
  new Promise(resolve => {
    if (navigator.locks === undefined) return resolve({ isOurs: true, giveBack: () => undefined })
    void navigator.locks.request(`tellwright:${id}`, { ifAvailable: true }, lock => {
      if (lock === null) {
        resolve({ isOurs: false, giveBack: () => undefined })
        return undefined
      }
      return new Promise<void>(release => resolve({ isOurs: true, giveBack: () => release() }))
    })
  })

/** Opens the recording with this id from the browser's store. */
export const BenchDoor = ({ id }: { readonly id: string }) => {
  const [door, setDoor] = useState<Door>({ is: 'opening' })
  useEffect(() => {
    let isOver = false
    let giveBack: (() => void) | undefined
    readyTalkWorker()
    const open = async () => {
      const lock = await takeLock(id)
      giveBack = lock.giveBack
      if (isOver) return lock.giveBack()
      const loaded = await benchStore().load(id)
      if (isOver) return
      if (loaded === undefined)
        return setDoor({ is: 'shut', why: 'There is no recording under this address in this browser.' })
      if (!loaded.ok) return setDoor({ is: 'shut', why: loaded.problems.map(formatProblem).join(' ') })
      const session = openSession(id, loaded.value, lock.isOurs ? benchStore() : undefined)
      setDoor({ is: 'open', session, isOpenElsewhere: !lock.isOurs })
    }
    open().catch((error: unknown) =>
      setDoor({ is: 'shut', why: error instanceof Error ? error.message : String(error) }),
    )
    return () => {
      isOver = true
      giveBack?.()
    }
  }, [id])

  if (door.is === 'open')
    return (
      <Bench
        id={id}
        session={door.session}
        isOpenElsewhere={door.isOpenElsewhere}
        notices={noticesAtHand.get(id) ?? []}
      />
    )
  return (
    <main className={styles.door}>
      {door.is === 'opening' ? (
        <p role="status">Opening the recording</p>
      ) : (
        <>
          <h1>This recording can't be opened</h1>
          <p role="alert">{door.why}</p>
          <p>
            <Link href="/">To the bench</Link>
          </p>
        </>
      )}
    </main>
  )
}
