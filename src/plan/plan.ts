import type { Batch, MaterialNeed } from '../batch/batch.ts'
import type { CalendarEntry, Delivery } from '../calendar/calendar.ts'
import type { Chucking } from '../chucking.ts'
import type { Cost } from '../cost/cost.ts'
import type { Clocking } from '../cutting/clocking.ts'
import type { MillingGrip } from '../cutting/milling-grip.ts'
import type { SetUp } from '../cutting/set-up.ts'
import type { OperationTime, Step } from '../cutting/step.ts'
import type { PlannedFeature } from '../features/feature-plan.ts'
import type { Fit } from '../features/plan-fit.ts'
import type { Finding } from '../finding.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import type { QuenchPlan } from '../hardening/quench-plan.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import type { PlacedChart, PlacedLadder, PlacedPlating, PlacedSize } from '../inspection/size-places.ts'
import type { KitItem } from '../kit/plan-kit.ts'
import type { OutsideOrder } from '../orders/order.ts'
import type { PartKind } from '../part/part.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import type { FixturePlan } from '../ports/fixture-plan.ts'
import type { GasExchange } from '../ports/gas-exchange.ts'
import type { PlannedPort } from '../ports/port.ts'
import type { Operation } from '../route/operation.ts'
import type { Shape } from '../shape.ts'
import type { Fixture, NcWords } from '../shop/shop.ts'
import type { Ladder, StockEntry } from '../stock/stock.ts'
import type { Working } from '../working.ts'

export type PlannedOperation = Operation & {
  /** With the places that every paper writes them with. */
  readonly sizes: readonly PlacedSize[]
  /** Where a grip is settled. */
  readonly chuckings?: readonly Chucking[]
  readonly steps: readonly Step[]
  readonly time: OperationTime
  readonly shape: Shape
  /** Outside operations: the firm that does it, which `workCentre` names, and its lead time, days. */
  readonly firms: readonly {
    readonly name: string
    readonly leadTime: number
  }[]
}

/** Everything the shop needs to know, as plain data. Every output is a view of it and computes nothing more. */
export type Plan = {
  readonly part: {
    readonly number: string
    readonly title: string
    readonly revision: string
    readonly kind: PartKind
  }
  /** Fixture and words of the control go along where ports are milled: drawings show the one, programs speak the others. */
  readonly shop: { readonly name: string; readonly fixture?: Fixture; readonly ncWords?: NcWords }
  readonly batch: Batch
  readonly operations: readonly PlannedOperation[]
  readonly stock: readonly StockEntry[]
  readonly ladders: readonly PlacedLadder[]
  /** Tolerance chart of the lengths. */
  readonly axial?: PlacedChart
  readonly case?: CasePlan
  /** Instead of a case, where the part is hardened through. */
  readonly quench?: QuenchPlan
  readonly plating?: PlacedPlating
  readonly ports: readonly PlannedPort[]
  /** Chamfers, undercuts, grooves, holes, cut-outs, each with the operation that makes it. */
  readonly features: readonly PlannedFeature[]
  /** Of a piston whose file names its liner. */
  readonly fit?: Fit
  /** The milling of the ports, in the order of cutting: one tilt and one tool each. */
  readonly setUps: readonly SetUp[]
  /** How the tilts are gone through, and what brings azimuth 0 back. */
  readonly clocking?: Clocking
  /** What the jaws must press with while ports are milled. */
  readonly millingGrip?: MillingGrip
  /** Setting, proving and order of the ports' windows. */
  readonly fixture?: FixturePlan
  /** Absent without an engine. */
  readonly gasExchange?: GasExchange
  readonly inspection: { readonly characteristics: readonly Characteristic[] }
  /** What every operation needs at hand, by operation: what the works has, and what is to get. */
  readonly kit: readonly KitItem[]
  /** What goes to a firm with the pieces, one a visit, in order. */
  readonly orders: readonly OutsideOrder[]
  readonly material: MaterialNeed
  /** Where the works gives all the prices that it takes. */
  readonly cost?: Cost
  /** What the works gives no price for, where it gives some. */
  readonly unpriced?: readonly string[]
  /** Where it is said on which day the batch is begun: of every operation the days, and when all of it is done. */
  readonly calendar?: readonly CalendarEntry[]
  readonly delivery?: Delivery
  readonly findings: readonly Finding[]
  readonly workings: readonly Working[]
  /** Hash of the data of part, shop, batch, date and program version: given, not computed here. */
  readonly fingerprint: string
  readonly date: string
  readonly program: string
  /** The packet of the same part and batch that this one was issued instead of. */
  readonly replaces?: { readonly fingerprint: string; readonly date: string }
}

/** What the stock is judged on: the Plan as far as no port, tool or gauge is needed. */
export type StockSide = Pick<Plan, 'part' | 'batch' | 'stock' | 'case' | 'quench' | 'findings'> & {
  readonly plating?: PlatingPlan
  readonly operations: readonly Operation[]
  readonly ladders: readonly Ladder[]
}
