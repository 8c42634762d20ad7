'use client'

import { useRouter } from 'next/navigation'
import { useCallback, useEffect, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { FileInput } from '@/components/ui/FileInput'
import { formatProblems } from '@/lib/procedure/problem'
import type { BenchEntry } from '@/lib/store/store'
import { BenchRows } from './BenchRows'
import styles from './bench.module.css'
import { openDemo } from './demo'
import { chooseFiles, type GivenFile } from './given'
import { benchStore, layOnBench } from './laying'
import { ShopRulesPlace } from './ShopRulesPlace'
import { useDropped } from './useDropped'

/** The bench: what is being worked on, and the place to lay something new. */
export const BenchList = () => {
  const router = useRouter()
  const input = useRef<HTMLInputElement>(null)
  const [entries, setEntries] = useState<readonly BenchEntry[]>()
  const [problem, setProblem] = useState<string>()
  const [isBusy, setBusy] = useState(false)

  const fail = useCallback((error: unknown) => setProblem(error instanceof Error ? error.message : String(error)), [])
  const refresh = useCallback(() => benchStore().list().then(setEntries).catch(fail), [fail])
  useEffect(() => void refresh(), [refresh])

  const goTo = (id: string) => router.push(`/bench?recording=${encodeURIComponent(id)}`)
  const lay = async (files: readonly GivenFile[]) => {
    if (files.length === 0) return
    setBusy(true)
    setProblem(undefined)
    try {
      const laid = await layOnBench(files)
      if (laid.ok) goTo(laid.value.id)
      else setProblem(formatProblems(laid.problems))
    } catch (error) {
      fail(error)
    } finally {
      setBusy(false)
    }
  }
  useDropped(files => void lay(files))
  const demo = async () => {
    setBusy(true)
    setProblem(undefined)
    try {
      goTo(await openDemo())
    } catch (error) {
      fail(error)
      setBusy(false)
    }
  }

  return (
    <main className={styles.list}>
      <header className={styles.listHead}>
        <h1>Tellwright</h1>
        <p>
          From a recorded walkthrough to a procedure someone else can follow: mark what was said, check every limit,
          print the sheet. All of it on this machine; nothing is uploaded.
        </p>
      </header>
      <section className={styles.drop} aria-label="A new recording">
        <h2>Lay a recording on the bench</h2>
        <p>Drop footage and its transcript here together, or one of them, or a project file.</p>
        <div className={styles.dropRow}>
          <Button look="main" disabled={isBusy} onClick={() => void chooseFiles(input.current).then(lay)}>
            Choose files
          </Button>
          <Button disabled={isBusy} onClick={() => void demo()}>
            Open the demo
          </Button>
          <FileInput
            ref={input}
            label="Footage, transcript or project file"
            isMultiple
            onFiles={files => void lay(files.map(file => ({ file })))}
          />
          {isBusy && <span role="status">Reading</span>}
        </div>
        {problem !== undefined && (
          <p role="alert" className={styles.listProblem}>
            {problem}
          </p>
        )}
      </section>
      <section aria-label="On the bench">
        <h2>On the bench</h2>
        {entries === undefined ? <p>Looking</p> : <BenchRows entries={entries} onChanged={refresh} />}
      </section>
      <ShopRulesPlace />
      <footer className={styles.listFoot}>
        <p>
          Tellwright helps to write a procedure down; it does not make one safe. The maker's service manual, local codes
          and licensed practice come first.
        </p>
      </footer>
    </main>
  )
}
