import type { Result } from '@/lib/procedure/problem'
import { EXAMPLE_RULES } from '@/lib/review/example-rules'
import type { ShopRules } from '@/lib/review/shop'
import { benchStore } from './laying'

/** Where this browser keeps the shop's own rules: the file's name and its text. */
const SLOT = 'shop-rules'

export type KeptRules = { readonly name: string; readonly text: string }

/** @returns the rules file this browser keeps, or undefined. */
export const keptRules = async (): Promise<KeptRules | undefined> =>
  (await benchStore().madeOf(SLOT)) as KeptRules | undefined

const parse = async ({ name, text }: KeptRules): Promise<Result<ShopRules>> => {
  const [{ parseShopRules }, { RULES }] = await Promise.all([
    import('@/lib/review/shop-rules'),
    import('@/lib/review/rules/index'),
  ])
  return parseShopRules(
    text,
    RULES.map(rule => rule.id),
    name,
  )
}

/** @returns the rules this browser keeps, read; problems where a newer Tellwright reads them no more; undefined where it keeps none */
export const readKeptRules = async (): Promise<Result<ShopRules> | undefined> => {
  const kept = await keptRules()
  return kept && parse(kept)
}

/** @returns the shop's own rules, or undefined where there are none that can be read. */
export const loadShopRules = async (): Promise<ShopRules | undefined> => {
  const read = await readKeptRules()
  return read?.ok === true ? read.value : undefined
}

const RULES_FILE = { text: "choose a shop's rules file (JSON)." }

/** Checks a rules file and keeps it; a faulty one is refused and the one before stays. */
export const keepShopRules = async (file: File): Promise<Result<ShopRules>> => {
  const { decodeText } = await import('@/lib/transcript/decode')
  const decoded = decodeText(new Uint8Array(await file.arrayBuffer()), file.name, RULES_FILE)
  if (!decoded.ok) return decoded
  const rules = { name: file.name, text: decoded.value.text }
  const parsed = await parse(rules)
  if (parsed.ok) await benchStore().keepMade(SLOT, rules)
  return parsed
}

/** @returns a rules file to begin with: every rule at its level, and one of each thing that may be asked for */
export const formatFirstRules = async (): Promise<string> => {
  const { RULES } = await import('@/lib/review/rules/index')
  const levels = Object.fromEntries(RULES.map(({ id, level }) => [id, level]))
  const rules = { ...EXAMPLE_RULES, levels }
  return `${JSON.stringify(rules, null, 2)}\n`
}

/** Takes the shop's rules away. */
export const dropShopRules = (): Promise<void> => benchStore().keepMade(SLOT, undefined)
