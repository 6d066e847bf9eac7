import type { Chucking } from '../chucking.ts'
import type { PlannedFeature } from '../features/feature-plan.ts'
import type { Finding } from '../finding.ts'
import type { Part } from '../part/part.ts'
import type { Grip } from '../ports/grip.ts'
import type { PlannedPort } from '../ports/port.ts'
import type { Machine, Shop } from '../shop/shop.ts'
import type { Minute } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { Clocking } from './clocking.ts'
import type { CuttingMaterial } from './cutting-material.ts'
import type { MillingGrip } from './milling-grip.ts'
import type { OperationState } from './operation-state.ts'
import type { PlacedPort } from './place-round.ts'
import type { SetUp } from './set-up.ts'
import type { Step } from './step.ts'

/** One operation to be planned, with all that it needs and where it puts what it finds. */
export type CuttingTask = OperationState & {
  readonly part: Part
  readonly shop: Shop
  readonly ports: readonly PlannedPort[]
  /** Chamfers, undercuts, grooves, holes, cut-outs of the part. */
  readonly features?: readonly PlannedFeature[]
  /** What holds the part while its ports are milled; absent where nobody has planned them. */
  readonly grip?: Grip
  /** Bores that are honed as they are turned: their roughness is that of fine boring. */
  readonly fineBored?: ReadonlySet<string>
  /** Pieces started. */
  readonly start: number
  readonly machine: Machine
  readonly material: CuttingMaterial
  readonly notebook: Notebook
  /** `path` points into the part file. */
  readonly report: (finding: Omit<Finding, 'at'> & { readonly path?: string }) => void
}

/** The steps of an operation, and minutes that no step shows. */
export type PlannedCuts = {
  readonly steps: readonly Step[]
  /** On top of the steps, for each piece: indexing, loading again. */
  readonly each?: Minute
  /** On top of the machine's set-up. */
  readonly setup?: Minute
  /** All of the milling of ports. */
  readonly setUps?: readonly SetUp[]
  readonly clocking?: Clocking
  readonly grip?: MillingGrip
  /** In the order of work; the steps name theirs. */
  readonly chuckings?: readonly Chucking[]
  readonly places?: readonly PlacedPort[]
}

export type CutsPlanner = (task: CuttingTask) => PlannedCuts

/** First remark beside every starting value. */
export const START_AT = 'start at; ±30 %'
export const START_AT_SMALL = 'start at; ±50 %'
