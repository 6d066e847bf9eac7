import { type Finding, hasErrors } from '../finding.ts'
import type { Part } from '../part/part.ts'
import { planRoute } from '../route/plan-route.ts'
import type { Shop } from '../shop/shop.ts'
import { type AsCut, judgeAsCut } from '../stock/as-cut.ts'
import { closerAs, stockAndShop } from '../stock/closer-turning.ts'

/** The sizes that part and shop plan, judged by facts that came to light since; nothing where there is no route. */
export function sizesAsCut({ part, shop, facts }: { readonly part: Part; readonly shop: Shop; readonly facts: Shop }): {
  readonly judged?: readonly AsCut[]
  readonly findings: readonly Finding[]
} {
  const { operations, findings } = planRoute(part, shop)
  if (hasErrors(findings)) return { findings }
  const { shop: turned } = stockAndShop(part, shop, operations, { chances: false })
  return { judged: judgeAsCut({ part, shop: turned, facts: closerAs(turned, facts), operations }), findings }
}
