import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { type MeasuredPath, measuredPath } from '../ports/path/cut-path.ts'
import type { CutShape } from '../ports/path/tool-path.ts'
import type { OrderedWindow } from '../ports/window-order.ts'
import type { Drill } from '../shop/tool.ts'
import type { Degree, Millimetre, MillimetrePerMinute, Minute } from '../units.ts'
import type { EndMillSetting } from './end-mill-setting.ts'
import type { WindowCut } from './set-up.ts'
import type { Step } from './step.ts'

/** A window with the tools that cut it. */
export type WindowJob = OrderedWindow & {
  readonly named: string
  /** Of the cutter that reaches the corners. */
  readonly setting: EndMillSetting
  /** Of the cutter that mills the flat and roughs: the same, or a larger one. */
  readonly roughing: EndMillSetting
  /**
   * What a larger one leaves for the small one: a radius in the corners, and the wall or not; absent where the same cutter does
   * all.
   */
  readonly left?: { readonly rounded: Millimetre; readonly finishesWall: boolean }
  /** Of the entry hole; absent where the works has none, or the cutter ramps down. */
  readonly drill?: Drill
  /** Down on a ramp along the way itself, without a hole. */
  readonly ramps: boolean
  /** Angle between the entry hole and the normal of the outside where it enters. */
  readonly slope: Degree
}

/** A step of the operation, and the cut of a set-up that is the same. */
export type MadeCut = { readonly step: Step; readonly cut: WindowCut }

/** Shares of a feed straight down, and over what is cut already, where nothing is cut. */
export const slotFeeds = (feed: MillimetrePerMinute): Shares => sharesOf(MILLING_STARTS.plungeFeed, feed)
/** The same along a wall that is open below. */
export const wallFeeds = (feed: MillimetrePerMinute): Shares => sharesOf(MILLING_STARTS.wallPlungeFeed, feed)

type Shares = { readonly downShare: number; readonly clearShare: number }

const sharesOf = (downShare: number, feed: MillimetrePerMinute): Shares => ({
  downShare,
  clearShare: Math.max(1, MILLING_STARTS.clearFeed / feed),
})

/** Length and time of a cut, measured on the way that its program goes. */
export const measuredCut = ({ window }: WindowJob, shape: CutShape, feed: MillimetrePerMinute): MeasuredPath =>
  measuredPath(window, shape, feed)

export const madeCut = (step: Step, shape: CutShape, { length, time }: { length: number; time: number }): MadeCut => ({
  step,
  cut: { kind: shape.kind, feed: step.tableFeed, depth: step.depth, passes: step.passes, length, time, shape },
})

/** What every step along a wall has alike: its cutter, speeds, feed and levels. */
export const wallStep = (
  job: WindowJob,
  { mill, cuttingSpeed, spindleSpeed }: EndMillSetting,
  { feed, tableFeed }: Pick<Step, 'feed' | 'tableFeed'>,
  { levels, depth, time }: { readonly levels: number; readonly depth: Millimetre; readonly time: Minute },
): Omit<Step, 'action' | 'remarks'> => ({
  tool: mill.name,
  feature: job.port.name,
  cuttingSpeed,
  spindleSpeed,
  feed,
  feedUnit: 'mm/tooth',
  tableFeed,
  depth,
  passes: levels,
  time: time + SHOP_TIMES.rapid,
})
