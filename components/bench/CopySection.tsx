'use client'

import { useEffect, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { muxTexts } from '@/lib/footage/mux'
import { whyNotSaved } from '@/lib/footage/not-saved'
import type { OpenFootage } from '@/lib/footage/open'
import { countOf } from '@/lib/procedure/count'
import { formatProblem } from '@/lib/procedure/problem'
import type { Project } from '@/lib/procedure/project'
import type { Sheet } from '@/lib/procedure/sheet'
import { toCaptions } from '@/lib/publish/captions'
import { toChapters } from '@/lib/publish/chapters'
import { toSpoken } from '@/lib/publish/spoken'
import styles from './bench.module.css'
import { saveBlob } from './saving'

type Props = { readonly opened: OpenFootage; readonly project: Project; readonly sheet: Sheet }

/** A copy of the footage with chapters and captions inside; picture and sound stay as they are. */
export const CopySection = ({ opened, project, sheet }: Props) => {
  const [share, setShare] = useState<number>()
  const [said, setSaid] = useState<string>()
  const control = useRef<AbortController>(undefined)
  useEffect(() => () => control.current?.abort(), [])
  const make = async () => {
    const abort = new AbortController()
    control.current = abort
    setSaid(undefined)
    const { transcript } = project.recording
    const captions = transcript === null ? [] : toCaptions(toSpoken(transcript))
    const texts = {
      chapters: toChapters(sheet).map(({ start, title }) => ({ start, title })),
      captions: captions.map(({ start, end, lines }) => ({ start, end, text: lines.join('\n') })),
    }
    const name = opened.name.replace(/(\.[^.]*)?$/, '-with-chapters$1')
    try {
      const muxed = await muxTexts(opened.file, opened.name, texts)
      if (!muxed.ok) return setSaid(muxed.problems.map(formatProblem).join(' '))
      const { bytes, blob } = muxed.value
      setShare(0)
      const isSaved = await saveBlob(name, blob(), opened.name, {
        signal: abort.signal,
        onProgress: done => setShare(done / bytes),
      })
      setSaid(
        isSaved
          ? `${name} was saved: ${countOf(texts.chapters.length, 'chapter')}, ${countOf(texts.captions.length, 'caption')}.`
          : undefined,
      )
    } catch (error) {
      setSaid(abort.signal.aborted ? 'Stopped.' : whyNotSaved(error, name))
    } finally {
      setShare(undefined)
    }
  }
  return (
    <section className={styles.times}>
      <h3>A copy with chapters and captions inside</h3>
      <p>
        For MP4, M4A, MOV, WebM and MKV. Nothing is encoded anew, and the original stays as it is. Browsers show no
        captions from inside a file: publish the caption file beside it as well.
      </p>
      {share === undefined ? (
        <Button onClick={() => void make()}>Save the copy</Button>
      ) : (
        <p className={styles.progress}>
          <progress value={share} max={1} aria-label="Copying" />
          {Math.round(share * 100)} %
          <Button onClick={() => control.current?.abort(new DOMException('stopped', 'AbortError'))}>Stop</Button>
        </p>
      )}
      {said !== undefined && <p role="status">{said}</p>}
    </section>
  )
}
