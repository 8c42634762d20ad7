import { writeFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { fitBoundaries } from './boundaries'
import { type Case, readCases } from './cases'
import { fitDeeds } from './deeds'
import { fitPauses } from './pauses'
import { fitSentences } from './sentences'
import { fitSpecs } from './specs'
import { readTalks } from './talks'
import { fitThings } from './things'

/** See scripts/fit-draft.mjs. */
export const fitDraft = (args: readonly string[]): void => {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: {
      write: { type: 'boolean' },
      test: { type: 'string', multiple: true },
      only: { type: 'string' },
      match: { type: 'string' },
    },
    allowPositionals: true,
  })
  const forms = ['vtt', 'raw.srt']
  const cases: readonly Case[] = positionals.flatMap(folder =>
    folder.endsWith('talks')
      ? readTalks(folder)
      : readCases(folder, forms, values.match === undefined ? undefined : new RegExp(values.match)),
  )
  const tests: readonly Case[] = (values.test ?? []).flatMap(folder => readCases(folder, forms))
  const models = {
    // First: limits and things of raw captions are fitted with the commas it puts.
    ...(values.only === undefined || values.only === 'pauses' ? { 'pause-model': fitPauses(cases) } : {}),
    ...(values.only === undefined || values.only === 'sentences'
      ? { 'sentence-model': fitSentences(cases, tests) }
      : {}),
    ...(values.only === undefined || values.only === 'things' ? { 'thing-model': fitThings(cases, tests) } : {}),
    ...(values.only === undefined || values.only === 'deeds' ? { 'deed-model': fitDeeds(cases, tests) } : {}),
    ...(values.only === undefined || values.only === 'specs' ? { 'spec-model': fitSpecs(cases, tests) } : {}),
  }
  if (values.only === undefined || values.only === 'boundaries') {
    const model = fitBoundaries(cases, tests)
    if (values.write) writeFileSync('lib/transcript/boundary-model.json', `${JSON.stringify(model, null, 1)}\n`)
  }
  if (values.write)
    for (const [name, model] of Object.entries(models))
      writeFileSync(`lib/draft/${name}.json`, `${JSON.stringify(model, null, 1)}\n`)
}
