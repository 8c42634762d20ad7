// The components on a page of their own, as the bench composes them; driven by the tests through `globalThis.bench`.
import '@/app/globals.css'
import { useRef, useState } from 'react'
import { createRoot } from 'react-dom/client'
import { FootagePlayer } from '@/components/footage/FootagePlayer'
import { SoundStrip } from '@/components/footage/SoundStrip'
import type { FootageController, StripMark } from '@/components/footage/types'
import { type Listened, listen } from '@/lib/footage/listen'
import { type OpenFootage, openFootage } from '@/lib/footage/open'

type Shown = { file: File; opened: OpenFootage; listened: Listened | undefined; marks: readonly StripMark[] }

const log: unknown[] = []

const Bench = ({ file, opened, listened, marks }: Shown) => {
  const [media, setMedia] = useState<HTMLMediaElement | null>(null)
  const [own, setOwn] = useState(marks)
  const [chosen, choose] = useState<string | undefined>(marks[0]?.id)
  const controller = useRef<FootageController>(null)
  Object.assign(globalThis, { controller })
  return (
    <>
      <FootagePlayer
        file={file}
        name={file.name}
        hasPicture={opened.hasVideo}
        controller={controller}
        onReady={ready => setMedia(ready.media)}
        onProblem={problem => log.push(['problem', problem.code])}
      />
      <SoundStrip
        media={media}
        peaks={listened?.peaks ?? null}
        seconds={opened.seconds}
        speech={listened?.speech ?? []}
        shots={[2.5]}
        marks={own}
        {...(chosen === undefined ? {} : { chosen })}
        onChoose={id => {
          log.push(['choose', id])
          choose(id)
        }}
        onEdge={(id, side, seconds) => {
          log.push(['edge', id, side, seconds])
          setOwn(all => all.map(mark => (mark.id === id ? { ...mark, [side]: seconds } : mark)))
        }}
        onSeek={seconds => log.push(['seek', seconds])}
        snap={seconds => (Math.abs(seconds - 3) < 0.3 ? 3 : seconds)}
      />
    </>
  )
}

const show = async (file: File, marks: readonly StripMark[]): Promise<unknown> => {
  const result = await openFootage(file, file.name)
  if (!result.ok) return result.problems
  const opened = result.value
  const heard = opened.hasSound ? await listen(opened) : undefined
  const root = document.createElement('main')
  document.body.append(root)
  createRoot(root).render(
    <Bench file={file} opened={opened} listened={heard?.ok ? heard.value : undefined} marks={marks} />,
  )
  return opened.seconds
}
Object.assign(globalThis, { footage: {}, bench: { show, log } })
