import type { Shop } from './shop.ts'

/** How pieces come back from hardening, which a grinder may say in one word: `ovality=0.05` is what the pieces have. */
export type FactSaid = 'ovality' | 'bow'

export const factSaid = (path: string): FactSaid | undefined =>
  path === 'ovality' || path === 'bow' ? path : undefined

/** Said of these pieces, it goes before what any record has of others. */
export function saidOver(shop: Shop, facts: readonly FactSaid[]): Shop {
  if (facts.length === 0) return shop
  const said = new Set(facts)
  const measured = shop.measured.map(({ ovality, bow, ...row }) => ({
    ...row,
    ...(ovality !== undefined && !said.has('ovality') && { ovality }),
    ...(bow !== undefined && !said.has('bow') && { bow }),
  }))
  return { ...shop, measured }
}
