import type { Limits, Roughness } from '../limits.ts'
import type { Celsius, Hour, Millimetre, Vickers } from '../units.ts'

/** A size as it must measure when an operation is done. */
export type OperationSize = Limits & {
  /** `bore`, a band's name, `top`, `bottom`, `length`, a port's name. */
  readonly feature: string
  /** What of the feature is measured. */
  readonly measure: 'diameter' | 'length' | 'depth' | 'width' | 'height'
  /** For a port: which edge, as printed. */
  readonly edge?: 'top' | 'bottom'
  readonly roughness?: Roughness
  /** The finished drawing size, printed small beside it. */
  readonly drawn?: string
}

export type Verdict = 'ok' | 'thin' | 'deep' | 'impossible'

/**
 * One finishing operation on one surface after hardening. For a face `perSide` is what comes off it, and `onDiameter` is
 * twice that, so that the two stand in the same ratio everywhere.
 */
export type StockEntry = {
  readonly surface: string
  readonly kind: 'outside' | 'bore' | 'face'
  readonly operation: number
  readonly onDiameter: {
    readonly least: Millimetre
    readonly nominal: Millimetre
    readonly most: Millimetre
  }
  /** At the worst place: less, and plus, eccentricity and form error. */
  readonly perSide: {
    readonly least: Millimetre
    readonly most: Millimetre
    readonly needed: Millimetre
  }
  readonly margin: {
    readonly cleanUp: Millimetre
    readonly case?: Millimetre
    /** Honing of a plated bore: the least plating left beyond the least asked. */
    readonly plating?: Millimetre
  }
  readonly hardnessAtFinish?: Vickers
  readonly verdict: Verdict
  /** What the per-side figures are made of. */
  readonly eccentricity: Millimetre
  readonly form: Millimetre
  /** Of the stock on diameter: half widths about the middle, and what 99.73 % of simulated pieces have. */
  readonly spread?: {
    readonly worstCase: Millimetre
    readonly rootSumSquare: Millimetre
    readonly simulated: { readonly least: Millimetre; readonly most: Millimetre }
  }
  /** The figures it stands on. */
  readonly basis?: readonly Basis[]
  /** What knowing the growth from a measured first article would save: stock on diameter, and case. */
  readonly firstArticle?: { readonly stock: Millimetre; readonly case: Millimetre }
  /** For one piece, and for one or more in the batch. */
  readonly chance?: { readonly piece: StockChance; readonly batch?: StockChance }
}

/** A figure and where it comes from: built in, set in the shop file, from the handbook, or measured by the works. */
export type Basis = {
  readonly figure: string
  readonly value: number
  readonly unit: 'mm' | 'µm'
  readonly from: 'default' | 'shop' | 'handbook' | 'measured'
  readonly source: string
}

export type StockChance = { readonly notCleanedUp: number; readonly tooLittleCase?: number }

export type Spread = {
  readonly least: Millimetre
  readonly nominal: Millimetre
  readonly most: Millimetre
}

/** What the hardener is asked for and what it does to the sizes. Growth is per side, positive where metal grows. */
export type CasePlan = {
  readonly process: string
  /** As hardened, before any finishing. */
  readonly ordered: { readonly least: Millimetre; readonly most: Millimetre }
  readonly growth: { readonly outside: Spread; readonly bore: Spread }
  /** At the worst place, after finishing. */
  readonly left: { readonly least: Millimetre; readonly most: Millimetre }
  readonly asked: Millimetre
  readonly definition: string
  readonly time: {
    readonly least: Hour
    readonly nominal: Hour
    readonly most: Hour
  }
  readonly temperature: Celsius
  readonly compoundLayer: {
    readonly nominal: Millimetre
    readonly most: Millimetre
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
  readonly limitHardness?: Vickers
  /** At the finished surface where least, middle and most come off. */
  readonly hardnessAfter?: readonly HardnessAfter[]
  readonly order?: CaseOrder
}

/** What the hardener must know besides the case itself. */
export type CaseOrder = {
  /** Nitriding, case or surface hardening depth: by its standard letters. */
  readonly term: 'NHD' | 'CHD' | 'SHD'
  /** Asked for after finishing. */
  readonly hardness?: Vickers
  /** Test load of the surface as hardened: `HV1`. */
  readonly surfaceLoad: string
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
  readonly least: HardnessBand
  readonly nominal: HardnessBand
  readonly most: HardnessBand
}

/** The size ladder of one surface: its limits after every operation that changes it. */
export type Ladder = {
  readonly surface: string
  readonly kind: 'outside' | 'bore' | 'face'
  readonly states: readonly (Limits & {
    readonly operation: number
    readonly name: string
  })[]
}

/** The part as it leaves an operation, at the middle of its sizes: what drawings show. Depths from the finished top face. */
export type Shape = {
  /** Where the top face stands: negative when it still has stock. */
  readonly top: Millimetre
  readonly bottom: Millimetre
  readonly outside: readonly {
    readonly name: string
    readonly from: Millimetre
    readonly to: Millimetre
    readonly diameter: Millimetre
  }[]
  readonly bore: readonly {
    readonly name: string
    readonly from: Millimetre
    readonly to: Millimetre
    readonly diameter: Millimetre
  }[]
  readonly ported: boolean
}

/** The part as the ports are milled into it. */
export type AsMilled = {
  /** Bore diameter at the middle of its tolerance at that operation. */
  readonly boreDiameter: Millimetre
  /** Outside diameter of the band each port breaks through is found from `shape`. */
  readonly shape: Shape
  /** How far the top face then stands above the finished one. */
  readonly topStock: Millimetre
}

/** A plated bore: built up over its drawn size and honed back to it. Layers are per side. */
export type PlatingPlan = {
  readonly process: string
  readonly surface: string
  /** Of what is plated, as the part file has them: they decide on relief and bake. */
  readonly base: { readonly hardness?: Vickers; readonly temper?: Celsius }
  /** As left after honing: what is asked, what the sizes aim at, and what is left at the worst places. */
  readonly asked: { readonly least: Millimetre; readonly most?: Millimetre }
  readonly aim: Millimetre
  readonly left: Spread
  /** As plated, at the worst places, edges apart. */
  readonly layer: Spread
  /** What the plating takes off a side: negative, since metal goes on. */
  readonly stock: Spread
  readonly honeStock: Millimetre
  readonly before: Limits
  readonly plated: Limits
  readonly finished: Limits
  /** Broken on port edges and bore ends before plating. */
  readonly chamfer: { readonly least: Millimetre; readonly most: Millimetre }
  readonly masked: readonly string[]
  readonly relieved: boolean
  /** Nought hours where none is needed. */
  readonly bake: {
    readonly hours: Hour
    readonly least: Celsius
    readonly most: Celsius
    readonly startWithin: Hour
  }
  readonly hardness: {
    readonly asked?: Vickers
    readonly usual: { readonly least: Vickers; readonly most: Vickers }
    readonly testLoad: string
  }
  /** In the bath, where the rate is known. */
  readonly time?: { readonly least: Hour; readonly most: Hour }
  readonly honedWith: string
  readonly ringPartner: string
}
