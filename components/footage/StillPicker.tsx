'use client'

import { useEffect, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import type { OpenFootage } from '@/lib/footage/open'
import type { Still } from '@/lib/footage/still'
import { formatProblem, type Result } from '@/lib/procedure/problem'
import type { Span } from '@/lib/procedure/time'
import { formatMoment } from './clock'
import { StillBoard, type Stroke } from './StillBoard'
import styles from './still.module.css'
import { type Drawing, finishStill } from './still-drawing'
import { useObjectUrl } from './useObjectUrl'

/** A still as it was taken. */
export type TakenStill = {
  /** Moment in the footage, seconds. */
  readonly time: number
  /** Alternative text; never empty. */
  readonly alt: string
  /** JPEG, cropped and drawn on. */
  readonly picture: Blob
}

export type StillPickerProps = {
  readonly footage: OpenFootage
  /** The step's span: three frames of it are proposed. */
  readonly span: Span
  /** @returns the moment the player shows, seconds */
  readonly now: () => number
  readonly onTake: (still: TakenStill) => void
  /** Alternative text to begin with, such as the still's before. */
  readonly alt?: string
}

const STROKES: readonly { stroke: Stroke; label: string }[] = [
  { stroke: 'crop', label: 'Crop' },
  { stroke: 'arrow', label: 'Arrow' },
  { stroke: 'ring', label: 'Ring' },
]

const EMPTY: Drawing = { signs: [] }

const Proposal = ({ still, isChosen, onChoose }: { still: Still; isChosen: boolean; onChoose: () => void }) => {
  const url = useObjectUrl(still.picture)
  return (
    <button type="button" className={styles.proposal} aria-pressed={isChosen} onClick={onChoose}>
      <img src={url} alt="" />
      {formatMoment(still.time)}
    </button>
  )
}

/** Proposes stills for a step, takes any other frame, crops it, draws on it and asks for its alternative text. */
export const StillPicker = ({ footage, span, now, onTake, alt: given = '' }: StillPickerProps) => {
  const [proposed, setProposed] = useState<readonly Still[]>()
  const [said, setSaid] = useState<string>()
  const [chosen, choose] = useState<Still>()
  const [bitmap, setBitmap] = useState<ImageBitmap>()
  const [stroke, setStroke] = useState<Stroke>('arrow')
  const [drawing, setDrawing] = useState<Drawing>(EMPTY)
  const [alt, setAlt] = useState(given)
  const field = useRef<HTMLInputElement>(null)
  const { start, end } = span

  useEffect(() => {
    const abort = new AbortController()
    const look = async () => {
      const { proposeStills } = await import('@/lib/footage/still')
      const found = await proposeStills(footage, { start, end }, { signal: abort.signal })
      if (abort.signal.aborted) return
      setProposed(found.ok ? found.value : [])
      if (!found.ok) setSaid(found.problems.map(formatProblem).join(' '))
    }
    look().catch((error: unknown) => {
      if (abort.signal.aborted) return
      setProposed([])
      setSaid(error instanceof Error ? error.message : String(error))
    })
    return () => abort.abort()
  }, [footage, start, end])

  useEffect(() => {
    setDrawing(EMPTY)
    setBitmap(undefined)
    if (chosen === undefined) return
    let isOver = false
    createImageBitmap(chosen.picture).then(made => (isOver ? made.close() : setBitmap(made)))
    return () => {
      isOver = true
    }
  }, [chosen])

  const takeFrame = async () => {
    // Nothing to take until the frame is there.
    choose(undefined)
    const { stillAt } = await import('@/lib/footage/still')
    const still: Result<Still> = await stillAt(footage, now())
    if (still.ok) choose(still.value)
    setSaid(still.ok ? undefined : still.problems.map(formatProblem).join(' '))
  }
  const take = async () => {
    if (chosen === undefined || bitmap === undefined) return
    if (alt.trim() === '') {
      setSaid('Say in a few words what the still shows, for those who can’t see it.')
      field.current?.focus()
      return
    }
    onTake({ time: chosen.time, alt: alt.trim(), picture: await finishStill(bitmap, drawing) })
  }
  return (
    <section className={styles.picker} aria-label="Still">
      <div className={styles.proposals}>
        {proposed === undefined && <p role="status">Looking for sharp, steady frames …</p>}
        {proposed?.map(still => (
          <Proposal key={still.time} still={still} isChosen={still === chosen} onChoose={() => choose(still)} />
        ))}
        <Button onClick={() => void takeFrame().catch(error => setSaid(String(error)))}>The frame shown now</Button>
      </div>
      {bitmap !== undefined && (
        <>
          <fieldset className={styles.strokes}>
            <legend>Draw</legend>
            {STROKES.map(one => (
              <label key={one.stroke}>
                <input
                  type="radio"
                  name="stroke"
                  checked={stroke === one.stroke}
                  onChange={() => setStroke(one.stroke)}
                />
                {one.label}
              </label>
            ))}
            <Button look="quiet" disabled={drawing === EMPTY} onClick={() => setDrawing(EMPTY)}>
              Remove all
            </Button>
          </fieldset>
          <StillBoard picture={bitmap} stroke={stroke} drawing={drawing} onDraw={setDrawing} />
          <label className={styles.alt}>
            <span>What it shows</span>
            <input ref={field} value={alt} onChange={event => setAlt(event.target.value)} />
          </label>
          <Button look="main" onClick={() => void take().catch(error => setSaid(String(error)))}>
            Take this still
          </Button>
        </>
      )}
      {said !== undefined && <p role="alert">{said}</p>}
    </section>
  )
}
