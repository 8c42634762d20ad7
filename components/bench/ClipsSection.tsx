'use client'

import { useEffect, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { cutClips, type WantedClip } from '@/lib/footage/clip-set'
import { whyNotSaved } from '@/lib/footage/not-saved'
import type { OpenFootage } from '@/lib/footage/open'
import { countOf } from '@/lib/procedure/count'
import type { Sheet } from '@/lib/procedure/sheet'
import { shorten } from '@/lib/procedure/shorten'
import styles from './bench.module.css'
import { ClipProgress } from './ClipProgress'
import { clipLines, wantedClip } from './clip-wishes'
import { fileNameOf, saveBlob, saveStream } from './saving'

type Props = { readonly opened: OpenFootage; readonly sheet: Sheet; readonly chosen: string | undefined }

type State = { readonly done?: number; readonly of?: number; readonly lines?: readonly string[] }

const wantedOf = (sheet: Sheet, only: string | undefined): readonly WantedClip[] =>
  sheet.steps
    .filter(({ mark }) => only === undefined || mark.id === only)
    .map(step => wantedClip(step, `${String(step.number).padStart(2, '0')}-${fileNameOf(shorten(step.mark.text, 48))}`))

/** Every step as a file of its own, one at a time or all in one ZIP that is written as it is made. */
export const ClipsSection = ({ opened, sheet, chosen }: Props) => {
  const [way, setWay] = useState<'copy' | 'exact'>('exact')
  const [isLevelled, setLevelled] = useState(false)
  const [state, setState] = useState<State>({})
  const control = useRef<AbortController>(undefined)
  useEffect(() => () => control.current?.abort(), [])
  const chosenStep = sheet.steps.find(({ mark }) => mark.id === chosen)
  const isRunning = state.done !== undefined

  const make = async (only: string | undefined) => {
    const wanted = wantedOf(sheet, only)
    const abort = new AbortController()
    control.current = abort
    const lines: string[] = []
    let count = 0
    setState({ done: 0, of: wanted.length })
    const clips = cutClips(opened, wanted, {
      way,
      isLevelled,
      signal: abort.signal,
      onProgress: done => setState({ done, of: wanted.length }),
    })
    try {
      if (only !== undefined) {
        for await (const clip of clips) {
          lines.push(...clipLines(clip))
          if (!clip.ok || !(await saveBlob(clip.name, clip.blob, opened.name, { signal: abort.signal }))) continue
          count++
          lines.push(`Saved as ${clip.name}.`)
        }
      } else {
        const { downloadZip } = await import('client-zip')
        const files = async function* () {
          for await (const clip of clips) {
            lines.push(...clipLines(clip))
            if (!clip.ok) continue
            count++
            yield { name: clip.name, input: clip.blob }
          }
        }
        await saveStream(
          `${fileNameOf(sheet.heading.title)}.clips.zip`,
          () => downloadZip(files()),
          'application/zip',
          abort.signal,
        )
      }
      setState({ lines: [`${count} of ${countOf(wanted.length, 'clip was', 'clips were')} made.`, ...lines] })
    } catch (error) {
      setState({
        lines: [abort.signal.aborted ? 'Stopped; nothing was left behind.' : whyNotSaved(error, 'The set of clips')],
      })
    }
  }

  return (
    <section className={styles.times}>
      <h3>Clips of the steps</h3>
      <div className={styles.publishOptions}>
        {opened.hasVideo && (
          <>
            <label className={styles.tick}>
              <input type="radio" name="way" checked={way === 'exact'} onChange={() => setWay('exact')} />
              exact: the picture is encoded anew and begins where the step does
            </label>
            <label className={styles.tick}>
              <input type="radio" name="way" checked={way === 'copy'} onChange={() => setWay('copy')} />
              copied as it is: quick, begins at the key frame before the step
            </label>
          </>
        )}
        {opened.hasSound && (
          <label className={styles.tick}>
            <input type="checkbox" checked={isLevelled} onChange={event => setLevelled(event.target.checked)} />
            all clips equally loud (ITU-R BS.1770); the sound is encoded anew
          </label>
        )}
      </div>
      {isRunning ? (
        <ClipProgress
          done={state.done ?? 0}
          of={state.of ?? 0}
          onStop={() => control.current?.abort(new DOMException('stopped', 'AbortError'))}
        />
      ) : (
        <div className={styles.dropRow}>
          <Button look="main" disabled={sheet.steps.length === 0} onClick={() => void make(undefined)}>
            Cut {countOf(sheet.steps.length, 'clip')} into one ZIP
          </Button>
          {chosenStep !== undefined && (
            <Button onClick={() => void make(chosenStep.mark.id)}>Cut a clip of step {chosenStep.number}</Button>
          )}
        </div>
      )}
      {state.lines?.map(line => (
        <p key={line} role="status">
          {line}
        </p>
      ))}
    </section>
  )
}
