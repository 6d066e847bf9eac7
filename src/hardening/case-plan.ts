import type { Figure } from '../known.ts'
import type { Spread } from '../limits.ts'
import type { Celsius, Hour, Millimetre, RockwellC, Vickers } from '../units.ts'
import type { Quench } from './choose-quench.ts'
import type { Growth } from './growth.ts'
import type { RecordUse } from './records.ts'

/** What the hardener is asked for and what it does to the sizes. Growth is per side, positive where metal grows. */
export type CasePlan = {
  readonly process: string
  /** As hardened, before any finishing. */
  readonly ordered: { readonly least: Millimetre; readonly most: Millimetre }
  readonly growth: Growth
  /** The need that the depth is ordered for, in words. */
  readonly decidedBy?: string
  /** What the works measured of this hardening before: what growth stands on, and what is passed over. */
  readonly records: readonly RecordUse[]
  /** At the worst place of what runs, after finishing. */
  readonly left: { readonly least: Millimetre; readonly most: Millimetre }
  readonly asked: Millimetre
  /** The deepest that may be ordered: what comes off is judged on no deeper case. */
  readonly limit: CaseLimit
  /** The figures it stands on, as they were used. */
  readonly basis?: readonly Figure[]
  readonly definition: string
  readonly time: {
    readonly least: Hour
    readonly nominal: Hour
    readonly most: Hour
  }
  /** Of the last stage, the hottest. */
  readonly temperature: Celsius
  /** In turn; of a cycle in one stage the one. */
  readonly stages: readonly { readonly temperature: Celsius; readonly hours: Hour }[]
  readonly compoundLayer: {
    readonly nominal: Millimetre
    readonly most: Millimetre
    /** Least asked of it, where a surface is used as it comes and runs on it. */
    readonly kept?: Millimetre
  }
  readonly surfaceHardness: Vickers
  readonly coreHardness: Vickers
  /** Hardness against depth from the surface as hardened: low, expected and high model. */
  readonly profile: readonly {
    readonly depth: Millimetre
    readonly low: Vickers
    readonly expected: Vickers
    readonly high: Vickers
  }[]
  readonly testLoad: string
  /** Which sides are treated: neither masked nor absent. */
  readonly treated?: { readonly outside: boolean; readonly bore: boolean }
  /** Where the depth ends: core + 50 HV, 550 HV, or 80 % of the least surface hardness. */
  readonly limitHardness: Vickers
  /** At the finished surface where least, middle and most come off. */
  readonly hardnessAfter: readonly HardnessAfter[]
  readonly order?: CaseOrder
  /** Of a carburised part. */
  readonly quenched?: CaseQuench
}

/** How a carburised part is made hard, beside its carbon. */
export type CaseQuench = {
  readonly quench: Quench
  readonly temper: { readonly least: Celsius; readonly most: Celsius }
  /** Left in the case by the quench, per cent of volume. */
  readonly austenite: { readonly least: number; readonly most: number }
}

export type CaseLimit = {
  /** Least figure of the deepest order. */
  readonly least: Millimetre
  /** Which limit is met first. */
  readonly by: 'process' | 'wall'
  /** With its numbers: `gas nitriding is ordered to 1 mm at most`. */
  readonly because: string
  readonly source: string
}

/** What the hardener must know besides the case itself. */
export type CaseOrder = {
  /** Nitriding, case or surface hardening depth: by its standard letters. */
  readonly term: 'NHD' | 'CHD' | 'SHD'
  /** Asked for after finishing. */
  readonly hardness?: Vickers
  /** Least as hardened, so that what is asked after finishing is left where most comes off. */
  readonly surfaceLeast?: Vickers
  /** Test load of the surface as hardened: `HV1`. */
  readonly surfaceLoad: string
  /** Of a case that is no nitride: its hardness in HRC, converted, and the least case that bears the cone. */
  readonly rockwell?: { readonly HRC: RockwellC; readonly from: Millimetre }
  /** Of the bar. */
  readonly barHardness?: Vickers
  readonly temper?: Celsius
  readonly stressRelief?: Celsius
  /** Under it nitriding would release what is left; over it the bar would soften. */
  readonly stressReliefWindow?: { readonly least: Celsius; readonly most: Celsius }
  readonly masked: readonly string[]
}

export type HardnessBand = { readonly low: Vickers; readonly expected: Vickers; readonly high: Vickers }

export type HardnessAfter = {
  readonly surface: string
  /** What all finishing operations together take off, per side at the worst place. */
  readonly off: Spread
  readonly least: HardnessBand
  readonly nominal: HardnessBand
  readonly most: HardnessBand
}
