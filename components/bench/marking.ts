import { toHandMark } from '@/lib/draft/hand-mark'
import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { toMilliseconds } from '@/lib/procedure/time'
import { spanOfWords, textOfWords, wordAt, wordsOfSpan } from '@/lib/transcript/talk'
import type { KeyCommand } from './keys'
import type { BenchNow } from './now'
import { sortedMarks } from './walk'

/** Makes a mark of the words held, or changes the kind of the chosen mark. */
export const markWords = (now: BenchNow, kind: Kind): void => {
  const { session, talk, words, chosen } = now
  const span = words && spanOfWords(talk, words)
  if (span !== undefined && span.end <= span.start) {
    now.tell('These words have no times yet: time the text first (Times, over the talk).')
  } else if (words !== undefined && span !== undefined) {
    const mark = toHandMark(kind, textOfWords(talk, words), span, crypto.randomUUID())
    session.perform({ do: 'add-marks', marks: [mark] })
    now.setWords(undefined)
    now.choose(mark.id)
    now.tell(`Marked as ${kind}. W writes its fields.`)
  } else if (chosen !== undefined) {
    session.perform({ do: 'change-mark', id: chosen, to: { kind } })
    now.tell(`Now a ${kind}.`)
  } else now.tell('Hold on to words in the talk first (Shift with the arrows, or drag), then press the key of a kind.')
}

const edgeByWord = (now: BenchNow, mark: Mark, side: 'start' | 'end', by: 1 | -1) => {
  const { talk, session } = now
  const covered = wordsOfSpan(talk, mark)
  // Over a pause, an edge goes to the word before it or after it.
  const before = wordAt(talk, (mark.start + mark.end) / 2) ?? -1
  const { from, to } = covered ?? (by > 0 ? { from: before, to: before + 1 } : { from: before + 1, to: before + 2 })
  const word = talk.words[side === 'start' ? from + by : to - 1 + by]
  if (word === undefined) return now.tell('The talk ends there.')
  const change = { [side]: toMilliseconds(side === 'start' ? word.start : word.end) }
  const { start, end } = { ...mark, ...change }
  if (start < end) session.perform({ do: 'change-mark', id: mark.id, to: change })
  else now.tell('A mark covers one word at least.')
}

const edgeAtPlayhead = (now: BenchNow, mark: Mark, side: 'start' | 'end'): void => {
  const seconds = toMilliseconds(now.playhead.get())
  if (side === 'start' ? seconds < mark.end : seconds > mark.start)
    now.session.perform({ do: 'change-mark', id: mark.id, to: { [side]: seconds } })
  else now.tell(side === 'start' ? 'The playhead is after the end of the mark.' : 'The playhead is before its start.')
}

const dropMark = (now: BenchNow, { id, pencilled }: Mark): void => {
  const marks = sortedMarks(now.project)
  const at = marks.findIndex(other => other.id === id)
  now.session.perform({ do: 'drop-marks', ids: [id] })
  now.choose((marks[at + 1] ?? marks[at - 1])?.id)
  now.tell(`${pencilled === undefined ? 'Rubbed out' : 'Dropped'}. Ctrl + Z brings it back.`)
}

/** Does what a key asks of one mark. */
export const onMark = (now: BenchNow, mark: Mark, command: KeyCommand) => {
  const { session, controller } = now
  switch (command.do) {
    case 'write': {
      now.show('sheet')
      const isField = `[data-item="${CSS.escape(mark.id)}"] :is(textarea, input)`
      const focus = (): boolean => {
        const field = document.querySelector<HTMLInputElement | HTMLTextAreaElement>(isField)
        field?.focus()
        // Writing goes on where the words end.
        field?.setSelectionRange(field.value.length, field.value.length)
        return field !== null && document.activeElement === field
      }
      // Where the surface has yet to come to the front it can't take the focus; what is typed at once belongs in the field.
      if (!focus()) requestAnimationFrame(focus)
      break
    }
    case 'keep':
      if (mark.pencilled === undefined) return now.tell('This mark is kept already.')
      session.perform({ do: 'keep-marks', ids: [mark.id] })
      now.tell('Kept.')
      break
    case 'drop':
      dropMark(now, mark)
      break
    case 'play-span':
      if (controller.current === null) now.tell('There is no footage to play.')
      else controller.current.playSpan(mark)
      break
    case 'edge-by-word':
      edgeByWord(now, mark, command.side, command.by)
      break
    case 'edge-at-playhead':
      edgeAtPlayhead(now, mark, command.side)
      break
    case 'move-step':
      if (mark.kind === 'step') session.perform({ do: 'move-step', id: mark.id, place: (mark.place ?? 1) + command.by })
      else now.tell('Only steps have a place in the procedure.')
      break
    default:
  }
}
