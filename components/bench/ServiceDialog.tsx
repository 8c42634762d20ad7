'use client'

import { useState } from 'react'
import { Button } from '@/components/ui/Button'
import { Dialog } from '@/components/ui/Dialog'
import { Field } from '@/components/ui/Field'
import { countOf } from '@/lib/procedure/count'
import type { PublishOptions } from '@/lib/publish/publication'
import type { BenchEntry } from '@/lib/store/store'
import styles from './bench.module.css'
import { benchStore } from './laying'
import { marksWords } from './marks-words'
import { type Output, OutputTicks, PLAIN_OUTPUT, UnitsChoice } from './OutputChoices'
import { fileNameOf, saveFile } from './saving'
import { loadShopRules } from './shop-rules'

type Props = { readonly entries: readonly BenchEntry[]; readonly onClose: (savedAs?: string) => void }

const nameOf = ({ title }: BenchEntry): string => (title === '' ? 'Recording without a title' : title)

const swapped = (list: readonly BenchEntry[], i: number): readonly BenchEntry[] => {
  const next = [...list]
  const [one, two] = [next[i], next[i + 1]]
  if (one !== undefined && two !== undefined) next.splice(i, 2, two, one)
  return next
}

/** The packet of several jobs: each with its pictures and findings, in the order given. */
const packetOf = async (entries: readonly BenchEntry[], title: string, output: Output): Promise<Uint8Array> => {
  const [{ packetFiles }, { toZip }, { toPublishedFindings }, { toSheet }, { reviewProject }, { toSentences }] =
    await Promise.all([
      import('@/lib/publish/packet'),
      import('@/lib/publish/zip'),
      import('@/lib/publish/findings'),
      import('@/lib/procedure/sheet'),
      import('@/lib/review/review'),
      import('@/lib/transcript/sentence'),
    ])
  const rules = await loadShopRules()
  const jobs = []
  for (const { id, title: name } of entries) {
    const loaded = await benchStore().load(id)
    if (loaded === undefined || !loaded.ok)
      throw new Error(`“${name}” could not be read; open it on the bench to see why`)
    const project = loaded.value
    const { transcript } = project.recording
    const pictures = await Promise.all(
      [...(await benchStore().stillsOf(id))].map(
        async ([mark, blob]) => [mark, new Uint8Array(await blob.arrayBuffer())] as const,
      ),
    )
    const findings = toPublishedFindings(toSheet(project), reviewProject(project, rules === undefined ? {} : { rules }))
    const options: PublishOptions = {
      units: output.units,
      pencilled: output.isKeptOnly ? 'leave-out' : 'include',
      listFindings: output.isListing,
      findings,
      stills: new Map(pictures),
      ...(transcript === null ? {} : { sentences: toSentences(transcript) }),
    }
    jobs.push({ project, options })
  }
  return toZip(await packetFiles(jobs, title === '' ? undefined : title))
}

/** Several recordings published as one service: their order, one list of tools, one safety summary, when each is due. */
export const ServiceDialog = ({ entries, onClose }: Props) => {
  const [order, setOrder] = useState(entries)
  const [title, setTitle] = useState('')
  const [output, setOutput] = useState(PLAIN_OUTPUT)
  const change = (to: Partial<Output>) => setOutput(before => ({ ...before, ...to }))
  const [state, setState] = useState<{ readonly isBusy?: boolean; readonly problem?: string }>({})
  /** A job keeps the focus while it moves, also where it can't move further. */
  const move = (from: HTMLButtonElement, i: number) => {
    setOrder(swapped(order, i))
    const row = from.closest('li')
    requestAnimationFrame(() =>
      (from.disabled ? row?.querySelector<HTMLElement>('button:not(:disabled)') : from)?.focus(),
    )
  }
  const make = async () => {
    setState({ isBusy: true })
    try {
      const bytes = await packetOf(order, title, output)
      const name = `${fileNameOf(title === '' ? 'service' : title)}.zip`
      if (await saveFile(name, bytes as BlobPart, 'application/zip')) onClose(name)
      else setState({})
    } catch (error) {
      setState({ problem: error instanceof Error ? error.message : String(error) })
    }
  }
  return (
    <Dialog title="A service of several jobs" onClose={() => onClose()}>
      <p className={styles.serviceAbout}>
        One packet: each job in a folder of its own, with one list of tools and materials, one safety summary and when
        each is due.
      </p>
      <Field
        label="Title of the service"
        value={title}
        onDone={typed => {
          setTitle(typed.trim())
          return undefined
        }}
      />
      <ol className={styles.order}>
        {order.map((entry, i) => (
          <li key={entry.id}>
            <b>{i + 1}.</b>
            <span>
              <span dir="auto">{nameOf(entry)}</span>
              {(entry.marks === 0 || entry.pencilled > 0) && <small>{marksWords(entry)}</small>}
            </span>
            <Button
              disabled={i === 0}
              aria-label={`${nameOf(entry)}: earlier`}
              onClick={event => move(event.currentTarget, i - 1)}
            >
              Earlier
            </Button>
            <Button
              disabled={i === order.length - 1}
              aria-label={`${nameOf(entry)}: later`}
              onClick={event => move(event.currentTarget, i)}
            >
              Later
            </Button>
          </li>
        ))}
      </ol>
      <div className={`${styles.publishOptions} ${styles.serviceAbout}`}>
        <UnitsChoice output={output} onChange={change} />
        <OutputTicks output={output} onChange={change} />
      </div>
      {state.problem !== undefined && <p role="alert">{state.problem}</p>}
      <Button look="main" disabled={state.isBusy === true} onClick={() => void make()}>
        {state.isBusy === true ? 'Making the packet' : `Save one packet of ${countOf(order.length, 'job')}`}
      </Button>
    </Dialog>
  )
}
