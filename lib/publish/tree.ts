import type { Root } from 'mdast'
import type { Sheet } from '@/lib/procedure/sheet'
import { footageAddress } from './address'
import { toFrontMatter } from './front-matter'
import { closingBlocks, findingsSections, headBlocks, referencesSection, scopeSection, toNotices } from './head'
import type { PublishOptions } from './publication'
import { listSection, looseSection, safetySection, specsSection, stepsSection, symptomsSection } from './sections'
import { selected } from './selection'
import { stepNumbers } from './standing'

/**
 * A sheet as a Markdown tree (mdast): front matter, head, scope, safety summary, tools, materials, specs, steps with
 * their cautions before them, symptoms, references, sign-off and closing note.
 *
 * @param pictures relative address of the picture of a step, by its mark's id
 */
export const toSheetTree = (
  sheet: Sheet,
  options: PublishOptions,
  pictures: ReadonlyMap<string, string> = new Map(),
): Root => {
  const shown = selected(sheet, options)
  const numbers = stepNumbers(shown)
  const address = footageAddress(shown.footage?.name, options.footageAddress)
  const setting = { address, units: options.units ?? 'as-said' }
  return {
    type: 'root',
    children: [
      { type: 'yaml', value: toFrontMatter(shown, options) },
      ...headBlocks(shown, toNotices(sheet, options), address),
      ...scopeSection(shown.heading.scope),
      ...safetySection(shown, numbers, setting),
      ...listSection('tool', shown, numbers, setting),
      ...listSection('material', shown, numbers, setting),
      ...specsSection(shown, numbers, setting),
      ...stepsSection(shown, setting, pictures),
      ...looseSection(shown, setting),
      ...symptomsSection(shown, numbers, setting),
      ...referencesSection(shown),
      ...findingsSections(shown, options),
      ...closingBlocks(shown),
    ],
  }
}
