import type { Kind, Level } from '@/lib/procedure/kinds'

/** Kinds in the order people meet them, each with the key that marks it and what it is for. */
export const KIND_KEYS: readonly { readonly kind: Kind; readonly key: string; readonly about: string }[] = [
  { kind: 'step', key: 's', about: 'one action' },
  { kind: 'caution', key: 'c', about: 'what can hurt or spoil, and how to avoid it' },
  { kind: 'spec', key: 'q', about: 'a quantity with its limits' },
  { kind: 'tool', key: 't', about: 'what the job is done with' },
  { kind: 'material', key: 'm', about: 'what is used up or fitted' },
  { kind: 'check', key: 'e', about: 'what to look at or measure, and what is right' },
  { kind: 'reason', key: 'r', about: 'why' },
  { kind: 'symptom', key: 'y', about: 'a sign and what it means' },
]

/** @returns the kind whose key this is. */
export const kindOfKey = (key: string): Kind | undefined => KIND_KEYS.find(row => row.key === key.toLowerCase())?.kind

/** Signal words from gravest to least, as the sheet prints them. @source ANSI Z535.6 (from memory) */
export const SIGNAL_LEVELS: readonly Level[] = ['danger', 'warning', 'caution', 'notice']
