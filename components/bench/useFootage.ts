import { useCallback, useEffect, useRef, useState } from 'react'
import { fingerprintOf } from '@/lib/footage/fingerprint'
import type { OpenFootage } from '@/lib/footage/open'
import { formatProblem, type Problem } from '@/lib/procedure/problem'
import type { Footage } from '@/lib/procedure/recording'
import type { GivenFile } from './given'
import { benchStore, filesAtHand, keepFootage } from './laying'

/** Whether the footage is at hand. `asks`: the browser may open it again after one click. */
export type FootageState =
  | { readonly is: 'none' | 'looking' | 'away' }
  | { readonly is: 'asks'; readonly handle: FileSystemFileHandle }
  | { readonly is: 'other'; readonly given: GivenFile; readonly why: string }
  | { readonly is: 'refused'; readonly problems: readonly Problem[] }
  | { readonly is: 'open'; readonly file: File; readonly opened: OpenFootage }

/** The demuxer is fetched with the first footage. */
const openFootage = async (file: File) => {
  const { openFootage: open } = await import('@/lib/footage/open')
  return open(file, file.name)
}

const fileAt = async (address: string, name: string): Promise<File | undefined> => {
  const answer = await fetch(address)
  if (!answer.ok) return undefined
  const blob = await answer.blob()
  return new File([blob], name, { type: blob.type })
}

/** The browser could not read the file: it tells of moved, changed, locked and gone files alike in its own short words. */
const unreadable = (file: File, error: unknown): Problem => ({
  code: 'footage-unreadable',
  message: `“${file.name}” could not be read (${error instanceof Error ? error.message : String(error)}). It may have been moved, renamed or changed since it was chosen, be held by another program, or lie on a drive that is gone. See that it is there, then choose it again; the marks are as they were.`,
})

/**
 * Finds the footage of a project again: from this visit, from a handle the browser kept, or from our own origin.
 *
 * @param footage what the project says of it, or null for a project without
 * @param onNew called when the user takes a file for a project that had none, or another file than it had
 */
export const useFootage = (id: string, footage: Footage | null, onNew: (footage: Footage) => void) => {
  const [state, setState] = useState<FootageState>({ is: footage === null ? 'none' : 'looking' })

  const open = useCallback(async (file: File): Promise<boolean> => {
    const opened = await openFootage(file)
    setState(opened.ok ? { is: 'open', file, opened: opened.value } : { is: 'refused', problems: opened.problems })
    return opened.ok
  }, [])

  const isKnown = footage !== null
  const known = useRef(footage)
  known.current = footage
  useEffect(() => {
    if (!isKnown) return
    let isOver = false
    const look = async () => {
      const atHand = filesAtHand.get(id)
      if (atHand !== undefined) return void (await open(atHand))
      const source = await benchStore().sourceOf(id)
      if (isOver) return
      if (source === undefined) return setState({ is: 'away' })
      if ('address' in source) {
        const file = await fileAt(source.address, known.current?.name ?? '')
        if (file === undefined) setState({ is: 'away' })
        else await open(file)
        return
      }
      const permission = await source.handle.queryPermission?.({ mode: 'read' })
      if (permission !== 'granted') return setState({ is: 'asks', handle: source.handle })
      const file = await source.handle.getFile()
      // A handle outlives an undone choice, and what stood in its file.
      const bytes = known.current?.bytes ?? 0
      if (bytes !== 0 && bytes !== file.size) return setState({ is: 'away' })
      await open(file)
    }
    look().catch(() => setState({ is: 'away' }))
    return () => {
      isOver = true
    }
  }, [id, isKnown, open])

  // Another file, or the bench left: the index of the one before is let go of.
  const opened = state.is === 'open' ? state.opened : undefined
  useEffect(() => () => opened?.close(), [opened])

  // Other footage was taken and that was undone, or done again: what is open is not what the project speaks of.
  const print = footage?.fingerprint
  const taken = useRef<string>(undefined)
  useEffect(() => {
    if (taken.current === undefined || taken.current === print) return
    taken.current = undefined
    if (print !== undefined) filesAtHand.delete(id)
    setState({ is: print === undefined ? 'none' : 'away' })
  }, [print, id])

  const taking = async (given: GivenFile, anyway: boolean): Promise<void> => {
    const fingerprint = await fingerprintOf(given.file)
    if (footage !== null && footage.fingerprint !== '' && footage.fingerprint !== fingerprint && !anyway) {
      const why = `“${given.file.name}” is not the file this project was made from (“${footage.name}”): its content differs, so the marks may not fit it.`
      return setState({ is: 'other', given, why })
    }
    const index = await openFootage(given.file)
    if (!index.ok) return setState({ is: 'refused', problems: index.problems })
    // Where the way to it can't be kept, it is asked for again next time; now it is open.
    await keepFootage(id, given).catch(() => undefined)
    taken.current = fingerprint
    setState({ is: 'open', file: given.file, opened: index.value })
    // The same file under another name: links are written with the name it has now.
    if (footage === null || footage.fingerprint !== fingerprint || footage.name !== given.file.name)
      onNew({ name: given.file.name, bytes: given.file.size, seconds: index.value.seconds, fingerprint })
  }
  const take = async (given: GivenFile, anyway = false): Promise<void> => {
    setState({ is: 'looking' })
    await taking(given, anyway).catch(error => setState({ is: 'refused', problems: [unreadable(given.file, error)] }))
  }

  const reopen = async (handle: FileSystemFileHandle): Promise<void> => {
    const permission = await handle.requestPermission?.({ mode: 'read' })
    if (permission === 'granted')
      await take({ file: await handle.getFile(), handle }).catch(() => setState({ is: 'away' }))
  }

  return { state, take, reopen, problemText: state.is === 'refused' ? state.problems.map(formatProblem).join(' ') : '' }
}
