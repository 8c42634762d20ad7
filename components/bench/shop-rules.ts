import type { Result } from '@/lib/procedure/problem'
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

/** @returns the shop's own rules, or undefined where there are none that can be read. */
export const loadShopRules = async (): Promise<ShopRules | undefined> => {
  const kept = await keptRules()
  if (kept === undefined) return undefined
  const parsed = await parse(kept)
  return parsed.ok ? parsed.value : undefined
}

/** Checks a rules file and keeps it; a faulty one is refused and the one before stays. */
export const keepShopRules = async (rules: KeptRules): Promise<Result<ShopRules>> => {
  const parsed = await parse(rules)
  if (parsed.ok) await benchStore().keepMade(SLOT, rules)
  return parsed
}

/** Takes the shop's rules away. */
export const dropShopRules = (): Promise<void> => benchStore().keepMade(SLOT, undefined)
