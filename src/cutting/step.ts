import type {
  Kilowatt,
  MetrePerMinute,
  MetrePerSecond,
  Micrometre,
  Millimetre,
  MillimetrePerMinute,
  Minute,
  Newton,
  SpindleSpeed,
} from '../units.ts'

/** One cut of an operation. Starting values: spread ±30 to 50 %. */
export type Step = {
  readonly tool: string
  /** What the step does, in the imperative: `rough seat`. */
  readonly action: string
  readonly feature?: string
  /** Of the operation: the clamping that it is done in, where there are several. */
  readonly chucking?: number
  /** Milling of ports: the set-up that it belongs to, and the window by name. */
  readonly setUp?: number
  readonly window?: string
  readonly cuttingSpeed: MetrePerMinute
  readonly spindleSpeed: SpindleSpeed
  /** mm a revolution, or mm a tooth for a milling cutter: `feedUnit` says which. */
  readonly feed: number
  readonly feedUnit: 'mm/rev' | 'mm/tooth' | 'mm/pass' | 'µm/stroke'
  readonly tableFeed: MillimetrePerMinute
  /** Depth of cut, radial for turning and grinding, axial for milling. */
  readonly depth: Millimetre
  readonly passes: number
  /** All passes of the step on one piece. */
  readonly time: Minute
  readonly force?: Newton
  /** From sharp tools by one table to worn ones, or older ones, by another. */
  readonly forceBand?: { readonly least: Newton; readonly most: Newton }
  readonly power?: Kilowatt
  readonly deflection?: Micrometre
  /** Grinding: the wheel, while speeds and feed above are the work's. m/s. */
  readonly wheel?: { readonly speed: MetrePerSecond; readonly spindleSpeed: SpindleSpeed }
  /** Milling: 1200 N/mm² over the bending stress where the flutes run out. */
  readonly breakageMargin?: number
  /** Milling of ports: cutters of the kind that the batch wears out, beside the first cut of each. */
  readonly wornOut?: number
  /** The share of one that a piece wears out. */
  readonly wear?: number
  /** What kept the step from the handbook's value: `spindle speed limit 12000 rpm`. */
  readonly limitedBy?: string
  /** Plain remarks printed beside the step: wheel, stone, coolant. */
  readonly remarks: readonly string[]
}

export type OperationTime = {
  readonly setup: Minute
  readonly each: Minute
  readonly batch: Minute
}

/** A step without speeds or a cut: by hand, or on the machine beside the work. */
export const timeOnly = (tool: string, action: string, time: Minute, remarks: readonly string[] = []): Step => ({
  tool,
  action,
  cuttingSpeed: 0,
  spindleSpeed: 0,
  feed: 0,
  feedUnit: 'mm/pass',
  tableFeed: 0,
  depth: 0,
  passes: 1,
  time,
  remarks,
})
