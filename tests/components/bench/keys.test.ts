import { expect, test } from 'vitest'
import { commandOf, KEY_GROUPS } from '@/components/bench/keys'
import { KIND_KEYS } from '@/components/ui/kinds'
import { KINDS } from '@/lib/procedure/kinds'

const press = (key: string, held: Partial<Record<'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey', boolean>> = {}) => ({
  key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...held,
})

test('every kind has a key of its own, and none of them is a key of something else', () => {
  expect(KIND_KEYS.map(row => row.kind).toSorted()).toEqual([...KINDS].toSorted())
  expect(new Set(KIND_KEYS.map(row => row.key)).size).toBe(KINDS.length)
  for (const { key, kind } of KIND_KEYS) expect(commandOf(press(key), true)).toEqual({ do: 'kind', kind })
})

test('keys by themselves can be switched off, keys with Ctrl, Alt or a name stay (WCAG 2.2, 2.1.4, from memory)', () => {
  for (const key of 'scqtmerywapkjlxionf ?'.split('')) expect(commandOf(press(key), false), key).toBeUndefined()
  expect(commandOf(press('z', { ctrlKey: true }), false)).toEqual({ do: 'undo' })
  expect(commandOf(press('Z', { ctrlKey: true, shiftKey: true }), false)).toEqual({ do: 'redo' })
  expect(commandOf(press('ArrowLeft', { altKey: true, shiftKey: true }), false)).toEqual({
    do: 'edge-by-word',
    side: 'end',
    by: -1,
  })
  expect(commandOf(press('Delete'), false)).toEqual({ do: 'drop' })
})

test('keys of the browser and of assistive technology are left alone', () => {
  for (const key of ['Tab', 'F5', 'c', 'v', 'f', 'p', 'r'])
    expect(commandOf(press(key, { ctrlKey: key.length === 1 }), true), key).toBeUndefined()
})

test('the list of keys names every kind', () => {
  const listed = KEY_GROUPS.flatMap(group => group.keys).map(([, about]) => about)
  for (const kind of KINDS) expect(listed.some(about => about.startsWith(`${kind}:`))).toBe(true)
})
