import { useEffect, useRef, useState } from 'react'
import type { OpenFootage } from '@/lib/footage/open'
import { countOf } from '@/lib/procedure/count'
import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import { clipLines, wantedClip } from './clip-wishes'

export type Clips = {
  /** Clips by the id of their step, once all that can be cut are cut. */
  readonly made: ReadonlyMap<string, Uint8Array> | undefined
  /** Clips done, with parts of one, of how many; undefined while none are being cut. */
  readonly running: { readonly done: number; readonly of: number } | undefined
  /** What the user should know of them. */
  readonly lines: readonly string[]
  readonly stop: () => void
}

type State = Partial<Pick<Clips, 'made' | 'running' | 'lines'>>

/** What a clip is cut from: another span is another clip. */
const keyOf = ({ mark }: SheetStep): string => `${mark.id} ${mark.start} ${mark.end}`

const cut = async (
  opened: OpenFootage,
  steps: readonly SheetStep[],
  known: Map<string, Uint8Array>,
  signal: AbortSignal,
  onProgress: (done: number) => void,
): Promise<readonly string[]> => {
  const { cutClips } = await import('@/lib/footage/clip-set')
  const wanted = steps.map(step => wantedClip(step, `step ${step.number}`))
  const lines: string[] = []
  let at = 0
  for await (const clip of cutClips(opened, wanted, { way: 'exact', isLevelled: false, signal, onProgress })) {
    const step = steps[at++]
    lines.push(...clipLines(clip))
    if (clip.ok && step !== undefined) known.set(keyOf(step), new Uint8Array(await clip.blob.arrayBuffer()))
  }
  return lines
}

/**
 * Cuts a clip of every step for a packet; what was cut once is not cut again.
 *
 * @param isWanted whether they are wanted; cutting begins when it turns true, and is stopped when it turns false
 * @param onStop the user stopped the cutting, or it failed
 */
export const useClips = (
  opened: OpenFootage | undefined,
  sheet: Sheet,
  isWanted: boolean,
  onStop: () => void,
): Clips => {
  const known = useRef(new Map<string, Uint8Array>())
  const control = useRef<AbortController>(undefined)
  const [state, setState] = useState<State>({})
  const isOn = isWanted && opened !== undefined
  // biome-ignore lint/correctness/useExhaustiveDependencies: cut anew only for other spans
  useEffect(() => {
    if (!isOn) return setState(before => (before.lines === undefined ? {} : { lines: before.lines }))
    const abort = new AbortController()
    control.current = abort
    const missing = sheet.steps.filter(step => !known.current.has(keyOf(step)))
    const show = (next: State) => {
      if (!abort.signal.aborted) setState(next)
    }
    show({ running: { done: 0, of: missing.length } })
    cut(opened, missing, known.current, abort.signal, done => show({ running: { done, of: missing.length } }))
      .then(lines => {
        const made = sheet.steps.flatMap(step => {
          const clip = known.current.get(keyOf(step))
          return clip === undefined ? [] : [[step.mark.id, clip] as const]
        })
        const count = `${made.length} of ${countOf(sheet.steps.length, 'clip is', 'clips are')} in the packet.`
        show({ made: new Map(made), lines: [count, ...lines] })
      })
      .catch((error: unknown) => {
        if (abort.signal.aborted) return
        setState({
          lines: [`The clips could not be cut: ${error instanceof Error ? error.message : String(error)}`],
        })
        onStop()
      })
    return () => abort.abort(new DOMException('stopped', 'AbortError'))
  }, [isOn, opened, sheet.steps.map(keyOf).join()])
  return {
    made: state.made,
    running: state.running,
    lines: state.lines ?? [],
    stop: () => {
      control.current?.abort(new DOMException('stopped', 'AbortError'))
      setState({ lines: ['Stopped; the packet is without clips.'] })
      onStop()
    },
  }
}
