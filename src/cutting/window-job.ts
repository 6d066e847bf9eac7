import { type MeasuredPath, measuredPath } from '../ports/path/cut-path.ts'
import type { CutShape } from '../ports/path/tool-path.ts'
import type { OrderedWindow } from '../ports/window-order.ts'
import type { Drill } from '../shop/tool.ts'
import type { Degree, Millimetre, MillimetrePerMinute } from '../units.ts'
import type { EndMillSetting } from './end-mill-setting.ts'
import type { WindowCut } from './set-up.ts'
import type { Step } from './step.ts'

/** A window with the tools that cut it. */
export type WindowJob = OrderedWindow & {
  readonly named: string
  /** Of the cutter that finishes it. */
  readonly setting: EndMillSetting
  /** Of the cutter that mills the flat and roughs: the same, or a larger one. */
  readonly roughing: EndMillSetting
  /** Left for finishing where most is left: in the corners, if a larger cutter has roughed. */
  readonly left: Millimetre
  readonly drill?: Drill
  /** Angle between the entry hole and the normal of the outside where it enters. */
  readonly slope: Degree
}

/** A step of the operation, and the cut of a set-up that is the same. */
export type MadeCut = { readonly step: Step; readonly cut: WindowCut }

/** Length and time of a cut, measured on the way that its program goes. */
export const measuredCut = ({ window }: WindowJob, shape: CutShape, feed: MillimetrePerMinute): MeasuredPath =>
  measuredPath(window, shape, feed)

export const madeCut = (step: Step, shape: CutShape, { length, time }: { length: number; time: number }): MadeCut => ({
  step,
  cut: { kind: shape.kind, feed: step.tableFeed, depth: step.depth, passes: step.passes, length, time, shape },
})
