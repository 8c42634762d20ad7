import { differenceOf } from '@/lib/procedure/difference'
import type { History } from '@/lib/procedure/history'

/** What the bench says of a change, and the mark to show with it. */
export type Told = { readonly text: string; readonly mark?: string }

const sentence = (words: string): string => (words === '' ? '' : `${words[0]?.toUpperCase()}${words.slice(1)}.`)

/**
 * What a change of the history did, in words; what was said of the state before holds no longer.
 *
 * @returns undefined where the project is the same; no words while a field is written, which the field itself shows. Undoing and
 *   redoing name the mark they are about.
 */
export const toldOf = (from: History, now: History): Told | undefined => {
  if (from.present === now.present) return undefined
  const isUndo = now.future[0] === from.present && now.present === from.past.at(-1)
  const isRedo = from.future[0] === now.present && now.past.at(-1) === from.present
  const { words, mark } = isUndo ? differenceOf(now.present, from.present) : differenceOf(from.present, now.present)
  const about = mark === undefined ? {} : { mark }
  if (isUndo) return { text: `Undone: ${words || 'the last change'}. Ctrl + Shift + Z does it again.`, ...about }
  if (isRedo) return { text: `Done again: ${words || 'the next change'}.`, ...about }
  return { text: now.typing === undefined ? sentence(words) : '' }
}
