import { fixed } from '../figures.ts'
import { type Finding, hasErrors } from '../finding.ts'
import type { FindingCode } from '../finding-code.ts'
import { FINE_TURNED } from '../handbook/fine-turning.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Operation } from '../route/operation.ts'
import { habitKey } from '../shop/habit-key.ts'
import { closerOf } from '../shop/origin.ts'
import type { Shop } from '../shop/shop.ts'
import { planStock, type StockOptions, type StockPlan } from './plan-stock.ts'

/** The stock, and the works as it turns this part: closer than it usually does where only that keeps the case within reach. */
export type StockAndShop = { readonly stock: StockPlan; readonly shop: Shop }

/** More comes off than a case can be ordered for. */
const TOO_MUCH_OFF: ReadonlySet<FindingCode> = new Set([
  'case/deeper-than-usual',
  'case/too-deep',
  'case/wall-eaten',
  'stock/impossible',
])

const { tolerance, roughness, outsideToBore } = FINE_TURNED
const CLOSER = [
  { key: 'finishTurningTolerance', value: tolerance, said: `to ${fixed(tolerance, 2)} mm` },
  { key: 'turnedRoughness', value: roughness, said: `to Rz ${fixed(roughness, 1)}` },
  { key: 'turnedOutsideToBore', value: outsideToBore, said: `true to the bore within ${fixed(outsideToBore, 3)} mm` },
] as const

/**
 * Turned as the works usually turns. Where the case would then be refused for what comes off it, the last soft cut is planned
 * closer, as a foreman would before he gave the part up. Decided by what the planner chooses, whatever stock the part file
 * fixes, so that its own figures written there change nothing; what the shop file says of its turning stands.
 */
export function stockAndShop(
  part: Part,
  shop: Shop,
  operations: readonly Operation[],
  options: StockOptions = {},
): StockAndShop {
  const stock = planStock(part, shop, operations, options)
  const usual = { stock, shop }
  const closer = stock.case && hasErrors(stock.findings) ? turnedCloser(shop) : undefined
  if (!closer) return usual
  const chosenIn = (works: Shop) => refusals(planStock({ ...part, stock: {} }, works, operations, { chances: false }))
  const [refused] = chosenIn(shop)
  if (!refused || chosenIn(closer.shop).length > 0) return usual
  const tried = planStock(part, closer.shop, operations, options)
  const note = partFinding({
    part,
    severity: 'note',
    code: 'stock/turned-closer',
    path: '/hardening/depth',
    message: `finish turned closer than usual, ${closer.said}; turned as usual, ${refused.message}`,
    hint: 'take the last soft cut with care, in one chucking or on a mandrel; or ask for less depth or hardness',
  })
  return { stock: { ...tried, findings: [...tried.findings, note] }, shop: closer.shop }
}

const refusals = ({ findings }: StockPlan): readonly Finding[] =>
  findings.filter(({ severity, code }) => severity === 'error' && TOO_MUCH_OFF.has(code))

/** New facts of a works, beside the closer turning that a part was planned with. */
export function closerAs(turned: Shop, facts: Shop): Shop {
  return closerBy(
    facts,
    CLOSER.filter(({ key }) => turned.set.has(closerOf(habitKey(key))) && !facts.set.has(`/habits/${habitKey(key)}`)),
  )
}

/** With the habits of a fine last cut, those apart that the shop file gives or that are as close already. */
function turnedCloser(shop: Shop): { readonly shop: Shop; readonly said: string } | undefined {
  const own = CLOSER.filter(({ key, value }) => value < shop.habits[key] && !shop.set.has(`/habits/${habitKey(key)}`))
  if (own.length === 0) return undefined
  return { shop: closerBy(shop, own), said: own.map(({ said }) => said).join(', ') }
}

const closerBy = (shop: Shop, by: readonly (typeof CLOSER)[number][]): Shop => ({
  ...shop,
  habits: { ...shop.habits, ...Object.fromEntries(by.map(({ key, value }) => [key, value])) },
  set: new Set([...shop.set, ...by.map(({ key }) => closerOf(habitKey(key)))]),
})
