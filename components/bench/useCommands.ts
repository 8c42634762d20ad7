import { type RefObject, useCallback, useEffect, useRef } from 'react'
import type { FootageController } from '@/components/footage/types'
import { toHandMark } from '@/lib/draft/hand-mark'
import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import type { Finding } from '@/lib/review/rule'
import { spanOfWords, type Talk, textOfWords, type WordRange, wordsOfSpan } from '@/lib/transcript/talk'
import { commandOf, type KeyCommand } from './keys'
import type { Playhead } from './playhead'
import type { Session } from './session'

/** Everything a key may act on, as it stands now. */
export type BenchNow = {
  readonly session: Session
  readonly project: Project
  readonly talk: Talk
  readonly findings: readonly Finding[]
  readonly chosen: string | undefined
  readonly chosenFinding: Finding | undefined
  readonly words: WordRange | undefined
  readonly playhead: Playhead
  readonly controller: RefObject<FootageController | null>
  readonly choose: (id: string | undefined) => void
  readonly chooseFinding: (finding: Finding | undefined) => void
  readonly setWords: (words: WordRange | undefined) => void
  readonly tell: (notice: string) => void
  readonly saveFile: () => void
  readonly nextSurface: () => void
  readonly showKeys: () => void
}

const RATES = [1, 1.5, 2, 3]

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

const sortedMarks = (project: Project): readonly Mark[] =>
  [...project.marks].sort((a, b) => a.start - b.start || a.end - b.end)

const nextMark = (now: BenchNow, by: 1 | -1): void => {
  const marks = sortedMarks(now.project)
  const at = marks.findIndex(mark => mark.id === now.chosen)
  const from = at >= 0 ? at : by > 0 ? marks.findLastIndex(mark => mark.start < now.playhead.get()) : marks.length
  const next = marks[(from + by + marks.length) % Math.max(1, marks.length)]
  if (next === undefined) now.tell('There are no marks yet.')
  else now.choose(next.id)
}

const nextFinding = (now: BenchNow, by: 1 | -1): void => {
  const open = now.findings.filter(finding => finding.waived === undefined)
  const at = now.chosenFinding === undefined ? -1 : open.indexOf(now.chosenFinding)
  const next = open[(at < 0 ? (by > 0 ? 0 : open.length - 1) : at + by + open.length) % Math.max(1, open.length)]
  now.chooseFinding(next)
  if (next === undefined) now.tell('No findings are open.')
  else now.tell(`${next.level}: ${next.message}`)
}

const edgeByWord = (now: BenchNow, mark: Mark, side: 'start' | 'end', by: 1 | -1): void => {
  const range = wordsOfSpan(now.talk, mark)
  if (range === undefined) return
  const word = now.talk.words[side === 'start' ? range.from + by : range.to - 1 + by]
  if (word === undefined) return
  const to = side === 'start' ? { start: word.start } : { end: word.end }
  const { start, end } = { ...mark, ...to }
  if (start < end) now.session.perform({ do: 'change-mark', id: mark.id, to })
}

const onChosen = (now: BenchNow, mark: Mark, command: KeyCommand): void => {
  const { session, controller } = now
  switch (command.do) {
    case 'write':
      document.querySelector<HTMLElement>(`[data-item="${mark.id}"] textarea, [data-item="${mark.id}"] input`)?.focus()
      break
    case 'keep':
      session.perform({ do: 'keep-marks', ids: [mark.id] })
      now.tell('Kept.')
      break
    case 'drop': {
      const marks = sortedMarks(now.project)
      const at = marks.findIndex(other => other.id === mark.id)
      session.perform({ do: 'drop-marks', ids: [mark.id] })
      now.choose((marks[at + 1] ?? marks[at - 1])?.id)
      now.tell('Dropped. Ctrl + Z brings it back.')
      break
    }
    case 'play-span':
      controller.current?.playSpan(mark)
      break
    case 'edge-by-word':
      edgeByWord(now, mark, command.side, command.by)
      break
    case 'edge-at-playhead': {
      const seconds = now.playhead.get()
      const isRight = command.side === 'start' ? seconds < mark.end : seconds > mark.start
      if (isRight) session.perform({ do: 'change-mark', id: mark.id, to: { [command.side]: seconds } })
      else
        now.tell(
          command.side === 'start' ? 'The playhead is after the end of the mark.' : 'The playhead is before its start.',
        )
      break
    }
    case 'move-step':
      if (mark.kind === 'step') session.perform({ do: 'move-step', id: mark.id, place: (mark.place ?? 1) + command.by })
      break
    default:
  }
}

let rate = 0

const run = (now: BenchNow, command: KeyCommand): void => {
  const { session, controller } = now
  switch (command.do) {
    case 'kind':
      markWords(now, command.kind)
      break
    case 'next-mark':
      nextMark(now, command.by)
      break
    case 'next-finding':
      nextFinding(now, command.by)
      break
    case 'undo':
      session.undo()
      break
    case 'redo':
      session.redo()
      break
    case 'save-file':
      now.saveFile()
      break
    case 'keys':
      now.showKeys()
      break
    case 'next-surface':
      now.nextSurface()
      break
    case 'toggle':
      rate = 0
      controller.current?.rate(1)
      controller.current?.toggle()
      break
    case 'back':
      controller.current?.seek(Math.max(0, now.playhead.get() - 3))
      break
    case 'forward':
      controller.current?.rate(RATES[Math.min(rate, RATES.length - 1)] ?? 1)
      rate++
      controller.current?.play()
      break
    case 'remedy':
      if (now.chosenFinding?.remedy === undefined) now.tell('The chosen finding has no remedy to do by itself.')
      else session.perform(...now.chosenFinding.remedy.edits)
      break
    case 'let-go':
      now.setWords(undefined)
      now.choose(undefined)
      now.chooseFinding(undefined)
      break
    default: {
      const mark = now.project.marks.find(other => other.id === now.chosen)
      if (mark === undefined) now.tell('Choose a mark first: N goes to the next one.')
      else onChosen(now, mark, command)
    }
  }
}

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName)) &&
  !(target instanceof HTMLInputElement && ['range', 'checkbox', 'button'].includes(target.type))

/** Listens to the keys of the whole bench; fields and dialogs keep theirs. */
export const useCommands = (bench: BenchNow, areSingleKeysOn: boolean): ((command: KeyCommand) => void) => {
  const now = useRef(bench)
  now.current = bench
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || document.querySelector('dialog[open]') !== null) return
      const target = event.target instanceof HTMLElement ? event.target : null
      if (isTyping(target)) {
        if (event.key === 'Escape') document.querySelector<HTMLElement>('[aria-roledescription="talk"]')?.focus()
        return
      }
      // A button in focus keeps Space and Enter.
      if (event.key === ' ' && target?.closest('button, summary, a') !== null && target !== null) return
      const command = commandOf(event, areSingleKeysOn)
      if (command === undefined) return
      event.preventDefault()
      run(now.current, command)
    }
    window.addEventListener('keydown', onKey)
    return () => window.removeEventListener('keydown', onKey)
  }, [areSingleKeysOn])
  return useCallback((command: KeyCommand) => run(now.current, command), [])
}
