import { useCallback, useEffect, useRef } from 'react'
import { JUMP } from '@/components/footage/clock'
import { focusMark, showAdded } from '@/components/ui/focus'
import { commandOf, type KeyCommand } from './keys'
import { markWords, onMark } from './marking'
import type { BenchNow } from './now'
import { nextFinding, nextMark } from './walk'

const RATES = [1, 1.5, 2, 3]
let rate = 0

const doRemedy = ({ chosenFinding, session, tell }: BenchNow) => {
  if (chosenFinding === undefined) return tell('Choose a finding first: F goes to the next one.')
  if (chosenFinding.remedy === undefined) return tell('The chosen finding has no remedy to do by itself.')
  session.perform(...chosenFinding.remedy.edits)
  showAdded(chosenFinding.remedy.edits)
  tell(`Done: ${chosenFinding.remedy.label}. F goes to the next finding.`)
}

/** Opens the reason of the chosen finding, in the margin it stands in. */
const letStand = ({ chosenFinding, tell }: BenchNow) => {
  if (chosenFinding === undefined) return tell('Choose a finding first: F goes to the next one.')
  if (chosenFinding.waived !== undefined) return tell('That finding is let stand already.')
  document.querySelector<HTMLElement>('[data-chosen="true"] [data-let-stand]')?.click()
}

const onFootage = ({ controller, playhead, tell }: BenchNow, asked: 'toggle' | 'back' | 'forward') => {
  const footage = controller.current
  if (footage === null) return tell('There is no footage to play.')
  if (asked === 'back') return footage.seek(Math.max(0, playhead.get() - JUMP))
  if (asked === 'toggle') {
    rate = 0
    footage.rate(1)
    return footage.toggle()
  }
  footage.rate(RATES[Math.min(rate, RATES.length - 1)] ?? 1)
  rate++
  footage.play()
}

const run = (now: BenchNow, command: KeyCommand, id = now.chosen) => {
  const { history } = now.session.get()
  switch (command.do) {
    case 'kind':
      return markWords(now, command.kind)
    case 'next-mark':
      return nextMark(now, command.by)
    case 'next-finding':
      return nextFinding(now, command.by)
    // What is undone or redone says itself what it was: useNotice.ts.
    case 'undo':
      return history.past.length === 0 ? now.tell('Nothing is left to undo.') : now.session.undo()
    case 'redo':
      return history.future.length === 0 ? now.tell('Nothing is left to redo.') : now.session.redo()
    case 'save-file':
      return now.saveFile()
    case 'keys':
      return now.showKeys()
    case 'next-surface':
      return now.nextSurface(command.by)
    case 'toggle':
    case 'back':
    case 'forward':
      return onFootage(now, command.do)
    case 'remedy':
      return doRemedy(now)
    case 'let-stand':
      return letStand(now)
    case 'let-go':
      // The fields go: focus stays on the line of their mark.
      if (document.activeElement?.closest('[data-editor]')) focusMark(document.activeElement)
      now.setWords(undefined)
      now.choose(undefined)
      return now.chooseFinding(undefined)
    default: {
      const mark = now.project.marks.find(other => other.id === id)
      if (mark === undefined) now.tell('Choose a mark first: N goes to the next one.')
      else onMark(now, mark, command)
    }
  }
}

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName)) &&
  !(target instanceof HTMLInputElement && ['range', 'checkbox', 'button'].includes(target.type))

/** Out of a field: to the talk where it is on screen, else to the line of the mark the field belongs to. */
const leaveField = (field: HTMLElement | null) => {
  const talk = document.querySelector<HTMLElement>('[aria-roledescription="talk"]')
  if (talk?.checkVisibility({ visibilityProperty: true }) === true) return talk.focus()
  const line = field?.closest('[data-item]')?.querySelector<HTMLElement>('button')
  if (line) line.focus()
  else field?.blur()
}

/**
 * Listens to the keys of the whole bench; fields and dialogs keep theirs.
 *
 * @returns does a command, on the chosen mark unless another is named
 */
export const useCommands = (
  bench: BenchNow,
  areSingleKeysOn: boolean,
): ((command: KeyCommand, mark?: string) => void) => {
  const now = useRef(bench)
  now.current = bench
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || document.querySelector('dialog[open]') !== null) return
      const target = event.target instanceof HTMLElement ? event.target : null
      if (isTyping(target)) {
        if (event.key === 'Escape') leaveField(target)
        if (commandOf(event, false)?.do !== 'save-file') return
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
  return useCallback((command: KeyCommand, mark?: string) => run(now.current, command, mark), [])
}
