import type { Mark } from '@/lib/procedure/mark'
import type { Heading } from '@/lib/procedure/project'
import type { ShownFields } from './shown'

/** Something in a sheet that was not understood. It is shown to the user, never dropped. */
export type Unread = {
  /** Line of the text, counted from 1. */
  readonly line: number
  /** As it stands in the text. */
  readonly text: string
  /** What was expected there. */
  readonly why: string
  /** Id of the mark it seems to speak of, if its note was readable. */
  readonly id?: string
}

/** A repetition (safety summary, lists, table of specs, head) that says something else than where the thing is defined. */
export type Echo = {
  readonly line: number
  /** Heading of the section it stands in. */
  readonly section: string
  /** Marks it speaks of; empty where it speaks of the heading. */
  readonly ids: readonly string[]
  readonly fields: ShownFields
  /** Where a value stood, figures are written that no value can be read of. */
  readonly isValueUnread?: true
  readonly heading: Partial<Pick<Heading, 'title' | 'equipment' | 'revision' | 'author'>>
}

/** A sheet read back from its Markdown. */
export type ReadBack = {
  readonly heading: Heading
  /** Line of each field of the front matter; undefined where there was none to read, so that the heading says nothing of it. */
  readonly front: ReadonlyMap<string, number> | undefined
  readonly footage: { readonly name: string; readonly seconds: number } | null
  /** In the order they stand. `said` is empty: a sheet does not hold the words spoken. */
  readonly marks: readonly Mark[]
  /** Line of each mark, by id. */
  readonly lines: ReadonlyMap<string, number>
  /** Ids of marks a hand added: made up here, times taken from their neighbours where none was written. */
  readonly fresh: readonly string[]
  /** Ids of marks whose line has no time: theirs is taken from their neighbours. */
  readonly untimed: readonly string[]
  readonly echoes: readonly Echo[]
  readonly unread: readonly Unread[]
  /** Whether the sheet was published without pencilled marks. */
  readonly isKeptOnly: boolean
}
