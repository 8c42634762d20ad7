import type { z } from 'zod'

/** What zod calls a type, as people call it. */
const TYPES: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'fields in braces',
  record: 'fields in braces',
  null: 'null',
  undefined: 'nothing',
  NaN: 'no number',
}

const typeWords = (name: string): string => TYPES[name] ?? name

/** What zod found of a wrong type: it says so only in its message. */
const foundIn = (message: string): string | undefined => /received (\w+)$/.exec(message)?.[1]

/** @returns what is wrong with a field, in plain words: what was expected and what was found. */
export const issueWords = (issue: z.core.$ZodIssue): string => {
  switch (issue.code) {
    case 'invalid_type': {
      const found = foundIn(issue.message)
      const expected = typeWords(issue.expected)
      if (found === 'undefined') return `this field is missing: expected ${expected}`
      return `expected ${expected}${found === undefined ? '' : `, found ${typeWords(found)}`}`
    }
    case 'invalid_value':
      return issue.values.length === 1
        ? `expected ${JSON.stringify(issue.values[0])}`
        : `expected one of ${issue.values.map(value => JSON.stringify(value)).join(', ')}`
    case 'too_small':
      return issue.origin === 'string'
        ? 'expected some text, found none'
        : `too small: expected ${issue.minimum} or more`
    case 'too_big':
      return `too big: expected ${issue.maximum} or less`
    case 'unrecognized_keys':
      return `no such field: ${issue.keys.join(', ')}`
    case 'invalid_union':
      return 'of no form that is known here'
    default:
      return issue.message
  }
}
