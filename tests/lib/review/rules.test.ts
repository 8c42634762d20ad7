import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { RULES } from '@/lib/review/rules/index'
import { NO_SHOP_RULES } from '@/lib/review/shop'
import { toSubject } from '@/lib/review/subject'

describe('every rule', () => {
  const files = readdirSync('lib/review/rules')
    .filter(file => file !== 'index.ts')
    .map(file => file.replace('.ts', ''))

  test('[R1] stands in one file of its name, once in the list', () => {
    expect(RULES.map(({ id }) => id).sort()).toEqual([...files].sort())
  })

  test.each(RULES.map(rule => [rule.id, rule] as const))('[R1] %s says what, why and by which source', (_, rule) => {
    expect([rule.about, rule.why, rule.source].map(text => text.trim().length > 5)).toEqual([true, true, true])
    expect(rule.about).toMatch(/[.]$/)
  })

  test.each(RULES.map(rule => [rule.id, rule] as const))(
    '[R1] %s is tripped by its one sample, not by the other',
    (_, rule) => {
      const shop = { ...NO_SHOP_RULES, ...rule.shop }
      expect(rule.check(toSubject(rule.trips, shop)).length).toBeGreaterThan(0)
      expect(rule.check(toSubject(rule.passes, shop))).toEqual([])
    },
  )
})
