import type { CutShape, Slug } from '../ports/path/tool-path.ts'
import type { Degree, Millimetre, MillimetrePerMinute, Minute, SpindleSpeed } from '../units.ts'

/** What a set-up does, in its place among those of one tilt. */
export type SetUpWork =
  | 'mill flats'
  | 'drill entry holes'
  | 'rough windows'
  | 'finish windows'
  | 'mill windows'
  | 'finish corners'

/** One cut of a window: the step of the operation that the sheet prints and the program runs. */
export type WindowCut = {
  readonly kind: CutShape['kind']
  readonly feed: MillimetrePerMinute
  /** Greatest depth of a pass. */
  readonly depth: Millimetre
  readonly passes: number
  /** Length cut, and minutes at feed. */
  readonly length: Millimetre
  readonly time: Minute
  readonly shape: CutShape
}

export type SetUpWindow = {
  readonly port: string
  /** Azimuth of the port, and which of its windows, counted from 1. */
  readonly at: Degree
  readonly window: number
  readonly name: string
  readonly rotary: Degree
  readonly slug?: Slug
  /** Of the cutter's middle along the finished wall, in machine X and Y: what a machine without a control stops at. */
  readonly limits?: CentreLimits
  readonly cuts: readonly WindowCut[]
}

export type CentreLimits = {
  readonly x: readonly [Millimetre, Millimetre]
  readonly y: readonly [Millimetre, Millimetre]
}

/** One tilt, one tool: what is done in one go with both as they are. Sheet, program, times and proof read it. */
export type SetUp = {
  /** From 1, in the order of cutting. */
  readonly number: number
  readonly operation: number
  readonly work: SetUpWork
  readonly tilt: Degree
  /** By its name: two tools of one diameter are two tools. */
  readonly tool: string
  readonly diameter: Millimetre
  /** Absent where the works has not said: to be filled in. */
  readonly pocket?: number
  readonly stickOut?: Millimetre
  readonly spindleSpeed: SpindleSpeed
  /** In the order of cutting. */
  readonly windows: readonly SetUpWindow[]
  /** Their names in that order. */
  readonly order: readonly string[]
  /** Of the pieces inside the windows: kept whole where any is, and then taken out by hand. */
  readonly slug: Slug | 'none'
  /** Roughing levels of each window with those of the cut through; none where nothing is roughed. */
  readonly levels: readonly number[]
  /** Left on the walls by roughing, greatest; 0 where nothing is roughed. */
  readonly wallStock: Millimetre
  /** File name of its program, without a folder. */
  readonly program: string
}
