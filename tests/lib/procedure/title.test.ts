import { describe, expect, test } from 'vitest'
import { titleOfFile } from '@/lib/procedure/title'

describe('a title by a file’s name', () => {
  test.for([
    ['talks/gate_motor-service.vtt', 'gate motor service'],
    ['C:\\jobs\\kettle.tellwright.json', 'kettle'],
    ['notes', 'notes'],
  ] as const)('%s', ([name, title]) => {
    expect(titleOfFile(name)).toBe(title)
  })
})
