import { z } from 'zod'
import { issueWords } from '@/lib/procedure/issue'
import { levelSchema } from '@/lib/procedure/mark'
import { type Problem, type Result, refusal, success } from '@/lib/procedure/problem'
import type { ShopRules } from './shop'

const findingLevelSchema = z.enum(['stop', 'fix', 'consider', 'off'])

const phraseSchema = z.strictObject({
  /** Words that must stand somewhere on the sheet, case ignored. */
  phrase: z.string().min(1),
  /** Only asked for where the sheet has this word. */
  where: z.string().min(1).optional(),
  level: findingLevelSchema.exclude(['off']).default('fix'),
  why: z.string().default(''),
})

const hazardSchema = z.strictObject({
  id: z.string().regex(/^[a-z][a-z0-9-]*$/, 'use lower case letters, digits and hyphens'),
  /** Words in a step, tool or material that signal it. */
  words: z.array(z.string().min(1)).min(1),
  /** The caution the shop wants, as the sheet shall say it. */
  caution: z.string().min(1),
  level: levelSchema.default('warning'),
})

const nameSchema = z.strictObject({
  /** The name the shop uses. */
  use: z.string().min(1),
  /** Names not to use for it. */
  not: z.array(z.string().min(1)).min(1),
})

/** The shop's own rules, version 1: a JSON file beside the project. */
export const shopRulesSchema = z.strictObject({
  format: z.literal('tellwright-rules'),
  version: z.literal(1),
  /** Level of a rule by its id; `off` silences it. */
  levels: z.record(z.string(), findingLevelSchema).default({}),
  phrases: z.array(phraseSchema).default([]),
  hazards: z.array(hazardSchema).default([]),
  names: z.array(nameSchema).default([]),
})
const pathOf = (path: readonly PropertyKey[]): string =>
  path
    .map((part, i) => (typeof part === 'number' ? `[${part}]` : i === 0 ? String(part) : `.${String(part)}`))
    .join('') || '(top)'

/**
 * Reads the shop's own rules.
 *
 * @param text content of the rules file (JSON)
 * @param known ids of all rules, to catch misspelt ones
 * @param file its name, for messages
 * @returns the rules, defaults filled in; or problems with the path inside the file: `not-json`, `bad-shop-rule`,
 *   `no-such-rule`. Never throws.
 */
export const parseShopRules = (text: string, known: readonly string[], file?: string): Result<ShopRules> => {
  const place = file === undefined ? {} : { file }
  let raw: unknown
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    return refusal({
      code: 'not-json',
      message: `the rules file is not valid JSON (${why}). Mend it or leave it out.`,
      place,
    })
  }
  const parsed = shopRulesSchema.safeParse(raw)
  if (!parsed.success)
    return {
      ok: false,
      problems: parsed.error.issues.map(
        (issue): Problem => ({
          code: 'bad-shop-rule',
          message: `${issueWords(issue)}. Mend this field of the rules file; docs/rules/README.md shows every field.`,
          place: { ...place, path: pathOf(issue.path) },
        }),
      ),
    }
  const ids = new Set(known)
  const strange = Object.keys(parsed.data.levels).filter(id => !ids.has(id))
  if (strange.length > 0)
    return {
      ok: false,
      problems: strange.map(id => ({
        code: 'no-such-rule',
        message: `there is no rule "${id}". Rules: ${known.join(', ')}.`,
        place: { ...place, path: `levels.${id}` },
      })),
    }
  return success(parsed.data)
}
