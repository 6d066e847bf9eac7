import { cutPath, measured } from '../ports/path/cut-path.ts'
import type { CutPath, CutShape } from '../ports/path/tool-path.ts'
import type { OrderedWindow } from '../ports/window-order.ts'
import type { Drill } from '../shop/tool.ts'
import type { Degree, Millimetre, MillimetrePerMinute } from '../units.ts'
import type { EndMillSetting } from './end-mill-setting.ts'
import type { WindowCut } from './set-up.ts'
import type { Step } from './step.ts'

/** A window with the tools that cut it. */
export type WindowJob = OrderedWindow & {
  readonly named: string
  readonly setting: EndMillSetting
  readonly drill?: Drill
  /** Angle between the entry hole and the normal of the outside where it enters. */
  readonly slope: Degree
}

/** A step of the operation, and the cut of a set-up that is the same. */
export type MadeCut = { readonly step: Step; readonly cut: WindowCut }

/** Length and time of a cut, measured on the way that its program goes. */
export function measuredCut(
  { window }: WindowJob,
  shape: CutShape,
  feed: MillimetrePerMinute,
): { readonly length: Millimetre; readonly time: number; readonly path: CutPath } {
  const path = cutPath(window, shape)
  return { path, ...measured(path, feed) }
}

export const madeCut = (step: Step, shape: CutShape, { length, time }: { length: number; time: number }): MadeCut => ({
  step,
  cut: { kind: shape.kind, feed: step.tableFeed, depth: step.depth, passes: step.passes, length, time, shape },
})
