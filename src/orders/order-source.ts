import type { Batch } from '../batch/batch.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import type { QuenchPlan } from '../hardening/quench-plan.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import type { PlacedLadder, PlacedSize } from '../inspection/size-places.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import type { Operation } from '../route/operation.ts'
import type { Shape } from '../shape.ts'
import type { Firm } from '../shop/firm.ts'
import type { StockEntry } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { Party } from './order.ts'

export type OrderedOperation = Operation & {
  readonly sizes: readonly PlacedSize[]
  readonly shape: Shape
  /** Where it goes: one firm, or none in the house. */
  readonly firms: readonly Pick<Firm, 'name' | 'leadTime'>[]
}

/** What the orders are written from: what the rooms before have decided. */
export type OrderSource = {
  readonly part: { readonly number: string; readonly title: string; readonly revision: string }
  readonly batch: Pick<Batch, 'number' | 'start' | 'heat' | 'extras' | 'numbered'>
  /** Whoever orders; without a name where no works is told of. */
  readonly works: Party
  readonly firms: readonly Firm[]
  readonly grade: string
  readonly operations: readonly OrderedOperation[]
  readonly ladders: readonly PlacedLadder[]
  readonly stock: readonly StockEntry[]
  /** Largest less smallest diameter that a surface's stock is planned for, as it comes from hardening. */
  readonly ovality: (surface: string) => Millimetre | undefined
  readonly case?: CasePlan
  /** Instead of a case, where the part is hardened through. */
  readonly quench?: QuenchPlan
  readonly plating?: PlatingPlan
  readonly ported: boolean
  /** Timing edges of the ports, which are broken less than the others. */
  readonly timingBreak?: { readonly least: Millimetre; readonly most: Millimetre }
  readonly characteristics: readonly Characteristic[]
}

/** One visit while its order is written: the operations done in it, and where figures that are reckoned are kept. */
export type Visit = {
  readonly source: OrderSource
  readonly operations: readonly OrderedOperation[]
  readonly notebook: Notebook
}
