'use client'

import { useEffect, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import type { ProposedStill, Still } from '@/lib/footage/still'
import type { Mark } from '@/lib/procedure/mark'
import { formatProblem, type Problem } from '@/lib/procedure/problem'
import { formatTime } from '@/lib/procedure/time'
import type { SheetActions } from './actions'
import { StillEditor } from './StillEditor'
import styles from './sheet.module.css'
import stillStyles from './still.module.css'

type Props = { readonly mark: Mark; readonly actions: SheetActions }

const Picture = ({
  blob,
  alt,
  className,
}: {
  readonly blob: Blob
  readonly alt: string
  readonly className?: string | undefined
}) => {
  const [url, setUrl] = useState<string>()
  useEffect(() => {
    const made = URL.createObjectURL(blob)
    setUrl(made)
    return () => URL.revokeObjectURL(made)
  }, [blob])
  return url === undefined ? null : <img src={url} alt={alt} className={className} />
}

/** How sharp a frame is beside the sharpest of those proposed; the first is the best in all, not always the sharpest. */
const measureWords = ({ measure }: ProposedStill, sharpest: number): string =>
  `sharpness ${Math.round((100 * measure.sharpness) / sharpest)} %`

/** The picture of a step: proposed by measurement, or the frame shown now; then drawn on and described. */
export const StillFields = ({ mark, actions }: Props) => {
  const [proposed, setProposed] = useState<readonly ProposedStill[]>()
  const [taken, setTaken] = useState<Still>()
  const [kept, setKept] = useState<Blob>()
  const [state, setState] = useState<{ readonly isBusy?: boolean; readonly problem?: string }>({})
  const { still } = mark
  const hasStill = still !== undefined
  const asked = useRef<HTMLButtonElement>(undefined)
  const isBusy = state.isBusy === true
  // A button lets the focus go while it is disabled: it gets it back.
  useEffect(() => {
    if (!isBusy && document.activeElement === document.body) asked.current?.focus()
    if (!isBusy) asked.current = undefined
  }, [isBusy])
  useEffect(() => {
    let isOver = false
    if (!hasStill) setKept(undefined)
    else
      actions.stills.get(mark.id).then(found => {
        if (!isOver) setKept(found)
      })
    return () => {
      isOver = true
    }
  }, [hasStill, mark.id, actions])

  const attempt = async <T,>(
    work: () => Promise<{ ok: true; value: T } | { ok: false; problems: readonly Problem[] }>,
  ) => {
    setState({ isBusy: true })
    try {
      const result = await work()
      setState(result.ok ? {} : { problem: result.problems.map(formatProblem).join(' ') })
      return result.ok ? result.value : undefined
    } catch (error) {
      setState({ problem: error instanceof Error ? error.message : String(error) })
      return undefined
    }
  }
  const opened = actions.footage()
  // Sound alone has no frames.
  const footage = opened?.hasVideo === false ? undefined : opened
  if (footage === undefined && still === undefined) return null
  const propose = async () => {
    if (footage === undefined) return
    setProposed(await attempt(async () => (await import('@/lib/footage/still')).proposeStills(footage, mark)))
  }
  const takeShown = async () => {
    if (footage === undefined) return
    setTaken(await attempt(async () => (await import('@/lib/footage/still')).stillAt(footage, actions.now())))
  }
  const ask = (button: HTMLButtonElement, work: () => Promise<void>) => {
    asked.current = button
    void work()
  }
  const done = async (picture: Blob, alt: string) => {
    if (taken === undefined) return
    await actions.stills.put(mark.id, picture)
    actions.perform({
      do: 'change-mark',
      id: mark.id,
      to: { still: { time: taken.time, alt, file: `${mark.id}.jpg` } },
    })
    setKept(picture)
    setTaken(undefined)
    setProposed(undefined)
  }
  const sharpest = Math.max(1e-9, ...(proposed ?? []).map(one => one.measure.sharpness))
  return (
    <div>
      <div className={styles.fields}>
        <Button disabled={footage === undefined || isBusy} onClick={event => ask(event.currentTarget, propose)}>
          {isBusy ? 'Looking at the frames' : 'Propose stills for this step'}
        </Button>
        <Button disabled={footage === undefined || isBusy} onClick={event => ask(event.currentTarget, takeShown)}>
          Take the frame shown now
        </Button>
        {still !== undefined && (
          <Button onClick={() => actions.perform({ do: 'change-mark', id: mark.id, clear: ['still'] })}>
            Leave the still out
          </Button>
        )}
      </div>
      {state.problem !== undefined && <p role="alert">{state.problem}</p>}
      {proposed !== undefined && (
        <div className={stillStyles.proposals}>
          {proposed.map(one => (
            <button key={one.time} type="button" onClick={() => setTaken(one)}>
              <Picture blob={one.picture} alt={`Frame at ${formatTime(one.time)}`} />
              <span>
                {formatTime(one.time)}, {measureWords(one, sharpest)}
              </span>
            </button>
          ))}
          {proposed.length === 0 && <p>No frame of this span could be read.</p>}
        </div>
      )}
      {still !== undefined && (
        <figure>
          {kept === undefined ? (
            <p className={styles.said}>The picture itself is not in this browser; take it again from the footage.</p>
          ) : (
            <Picture blob={kept} alt={still.alt} className={stillStyles.kept} />
          )}
          <figcaption className={styles.said}>
            {formatTime(still.time)}: {still.alt}
          </figcaption>
        </figure>
      )}
      {taken !== undefined && (
        <StillEditor
          picture={taken.picture}
          alt={still?.alt ?? mark.text.replace(/\.$/, '')}
          onDone={(picture, alt) => void done(picture, alt)}
          onClose={() => setTaken(undefined)}
        />
      )}
    </div>
  )
}
