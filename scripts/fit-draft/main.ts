import { writeFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { type Case, readCases } from './cases'
import { fitMentions } from './mentions'
import { fitSentences } from './sentences'

/** See scripts/fit-draft.mjs. */
export const fitDraft = (args: readonly string[]): void => {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: { write: { type: 'boolean' }, test: { type: 'string', multiple: true }, only: { type: 'string' } },
    allowPositionals: true,
  })
  const forms = ['vtt', 'raw.srt']
  const cases: readonly Case[] = positionals.flatMap(folder => readCases(folder, forms))
  const tests: readonly Case[] = (values.test ?? []).flatMap(folder => readCases(folder, forms))
  const models = {
    ...(values.only === undefined || values.only === 'sentences'
      ? { 'sentence-model': fitSentences(cases, tests) }
      : {}),
    ...(values.only === undefined || values.only === 'mentions' ? { 'mention-model': fitMentions(cases, tests) } : {}),
  }
  if (values.write)
    for (const [name, model] of Object.entries(models))
      writeFileSync(`lib/draft/${name}.json`, `${JSON.stringify(model, null, 1)}\n`)
}
