import { type RefObject, useMemo, useRef } from 'react'
import type { FootageController } from '@/components/footage/types'
import type { SheetActions } from '@/components/sheet/actions'
import type { OpenFootage } from '@/lib/footage/open'
import { benchStore } from './laying'
import type { Playhead } from './playhead'

type Given = Pick<SheetActions, 'perform' | 'choose' | 'drop'> & {
  /** Id of the recording. */
  readonly id: string
  readonly playhead: Playhead
  readonly controller: RefObject<FootageController | null>
  readonly opened: OpenFootage | undefined
}

/** @returns what the sheet can ask of the bench, the same object all the time. */
export const useSheetActions = ({ id, perform, choose, drop, playhead, controller, opened }: Given): SheetActions => {
  const openedNow = useRef(opened)
  openedNow.current = opened
  return useMemo<SheetActions>(
    () => ({
      perform,
      choose,
      drop,
      playSpan: span => {
        if (controller.current === null) playhead.set(span.start)
        else controller.current.playSpan(span)
      },
      now: playhead.get,
      footage: () => openedNow.current,
      stills: {
        get: async mark => (await benchStore().stillsOf(id)).get(mark),
        put: (mark, picture) => benchStore().keepStill(id, mark, picture),
      },
    }),
    [perform, choose, drop, playhead, controller, id],
  )
}
