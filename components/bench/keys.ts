import { JUMP } from '@/components/footage/clock'
import { KIND_KEYS, kindOfKey } from '@/components/ui/kinds'
import type { Kind } from '@/lib/procedure/kinds'

/** Keys in use, as the list shows them. `?` opens it. */
export const KEY_GROUPS: readonly { readonly title: string; readonly keys: readonly (readonly [string, string])[] }[] =
  [
    {
      title: 'In the talk',
      keys: [
        ['← → ↑ ↓', 'move by word and by line'],
        ['Shift + arrows', 'hold on to words'],
        ['Shift + Space', 'hold on to the word under the caret'],
        ['double click', 'hold on to a word; drag for more'],
        ['Home, End', 'first and last word of the paragraph'],
        ['Enter', 'go there in the footage'],
        ['F2', 'correct the words of this cue'],
        ['Escape', 'let go'],
      ],
    },
    {
      title: 'Marking: with words held, a new mark; with a mark chosen, its kind',
      keys: KIND_KEYS.map(({ kind, key, about }) => [key.toUpperCase(), `${kind}: ${about}`] as const),
    },
    {
      title: 'The chosen mark',
      keys: [
        ['N, Shift + N', 'next and previous mark'],
        ['W', 'write: to its fields'],
        ['A', 'keep as it is (pencilled marks)'],
        ['Delete', 'drop it, or rub it out'],
        ['I, O', 'from the playhead, to the playhead'],
        ['Alt + ← →', 'its start by one word'],
        ['Alt + Shift + ← →', 'its end by one word'],
        ['Alt + ↑ ↓', 'step earlier, later in the procedure'],
        ['P', 'play its span'],
      ],
    },
    {
      title: 'Footage',
      keys: [
        ['K or Space', 'play, pause'],
        ['J', `back ${JUMP} seconds`],
        ['L', 'play, then faster with each press'],
      ],
    },
    {
      title: 'The sheet',
      keys: [
        ['F, Shift + F', 'next and previous finding'],
        ['X', 'do the remedy of the chosen finding'],
        ['V', 'let the chosen finding stand: write why'],
        ['Ctrl + Z', 'undo'],
        ['Ctrl + Shift + Z', 'redo'],
        ['Ctrl + S', 'save to a project file'],
        ['F6, Shift + F6', 'to the next, the previous surface: talk, footage, sheet'],
        ['?', 'this list'],
      ],
    },
  ]

/** What a key press asks of the bench. */
export type KeyCommand =
  | { readonly do: 'kind'; readonly kind: Kind }
  | { readonly do: 'next-mark' | 'next-finding' | 'next-surface'; readonly by: 1 | -1 }
  | { readonly do: 'edge-by-word'; readonly side: 'start' | 'end'; readonly by: 1 | -1 }
  | { readonly do: 'edge-at-playhead'; readonly side: 'start' | 'end' }
  | { readonly do: 'move-step'; readonly by: 1 | -1 }
  | {
      readonly do:
        | 'write'
        | 'keep'
        | 'drop'
        | 'play-span'
        | 'toggle'
        | 'back'
        | 'forward'
        | 'remedy'
        | 'let-stand'
        | 'undo'
        | 'redo'
        | 'save-file'
        | 'keys'
        | 'let-go'
    }

type Press = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>

const withControl = ({ key, shiftKey }: Press): KeyCommand | undefined => {
  switch (key.toLowerCase()) {
    case 'z':
      return { do: shiftKey ? 'redo' : 'undo' }
    case 'y':
      return { do: 'redo' }
    case 's':
      return { do: 'save-file' }
    default:
      return undefined
  }
}

const withAlt = ({ key, shiftKey }: Press): KeyCommand | undefined => {
  const side = shiftKey ? 'end' : 'start'
  switch (key) {
    case 'ArrowLeft':
      return { do: 'edge-by-word', side, by: -1 }
    case 'ArrowRight':
      return { do: 'edge-by-word', side, by: 1 }
    case 'ArrowUp':
      return { do: 'move-step', by: -1 }
    case 'ArrowDown':
      return { do: 'move-step', by: 1 }
    default:
      return undefined
  }
}

const SINGLE: Readonly<Record<string, KeyCommand>> = {
  w: { do: 'write' },
  a: { do: 'keep' },
  p: { do: 'play-span' },
  k: { do: 'toggle' },
  ' ': { do: 'toggle' },
  j: { do: 'back' },
  l: { do: 'forward' },
  x: { do: 'remedy' },
  v: { do: 'let-stand' },
  i: { do: 'edge-at-playhead', side: 'start' },
  o: { do: 'edge-at-playhead', side: 'end' },
}

/**
 * What a key press means on the bench.
 *
 * @param areSingleKeysOn letters by themselves can be switched off (WCAG 2.2, 2.1.4)
 */
export const commandOf = (press: Press, areSingleKeysOn: boolean): KeyCommand | undefined => {
  if (press.ctrlKey || press.metaKey) return press.altKey ? undefined : withControl(press)
  if (press.altKey) return withAlt(press)
  if (press.key === 'F6') return { do: 'next-surface', by: press.shiftKey ? -1 : 1 }
  if (press.key === 'Escape') return { do: 'let-go' }
  if (press.key === 'Delete' || press.key === 'Backspace') return { do: 'drop' }
  if (!areSingleKeysOn) return undefined
  if (press.key === '?') return { do: 'keys' }
  const key = press.key.toLowerCase()
  const by = press.shiftKey ? -1 : 1
  if (key === 'n') return { do: 'next-mark', by }
  if (key === 'f') return { do: 'next-finding', by }
  const kind = kindOfKey(key)
  return kind === undefined ? SINGLE[key] : { do: 'kind', kind }
}
