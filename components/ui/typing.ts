'use client'

import { createContext } from 'react'

/** Does what a field asks for; all work under one key is one change to take back. Without a key it joins the change
 * that was typed last, where nothing else came after it. */
export type During = <T>(key: string | undefined, work: () => T) => T

/** How fields reach what they are written into. By itself: nothing can be taken back. */
export const TypingContext = createContext<During>((_, work) => work())

/** Fields that hold words which are not taken over yet, each with what takes them over. */
const waiting = new Map<string, () => void>()
const listeners = new Set<() => void>()

const tell = () => {
  for (const listener of listeners) listener()
}

/** Words that stand in a field and nowhere else: told in the header, taken over before the page goes. */
export const untaken = {
  /** @returns how many fields hold such words. */
  count: (): number => waiting.size,
  subscribe: (listener: () => void): (() => void) => {
    listeners.add(listener)
    return () => void listeners.delete(listener)
  },
  add: (field: string, take: () => void): void => {
    const before = waiting.size
    waiting.set(field, take)
    if (waiting.size !== before) tell()
  },
  remove: (field: string): void => {
    if (waiting.delete(field)) tell()
  },
  /** Takes over what can be; what is refused stays in its field. */
  takeAll: (): void => {
    for (const take of [...waiting.values()]) take()
  },
}
