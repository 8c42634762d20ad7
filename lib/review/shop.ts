import type { Level } from '@/lib/procedure/kinds'
import type { FindingLevel } from './rule'

/** What a shop asks of its sheets besides the rules that hold everywhere. Read from a file by shop-rules.ts. */
export type ShopRules = {
  /** Level of a rule by its id; `off` silences it. */
  readonly levels: Readonly<Record<string, FindingLevel | 'off'>>
  /** Words that must stand somewhere on the sheet, case ignored; `where`: only if the sheet has this word. */
  readonly phrases: readonly {
    readonly phrase: string
    readonly where?: string | undefined
    readonly level: FindingLevel
    readonly why: string
  }[]
  /** Hazards of this shop: words that signal it, and the caution it wants. */
  readonly hazards: readonly {
    readonly id: string
    readonly words: readonly string[]
    readonly caution: string
    readonly level: Level
  }[]
  /** The name to use, and the names not to use for it. */
  readonly names: readonly { readonly use: string; readonly not: readonly string[] }[]
}

/** What holds where a shop has no rules of its own. */
export const NO_SHOP_RULES: ShopRules = { levels: {}, phrases: [], hazards: [], names: [] }
