import { insetPath } from '../handbook/end-milling.ts'
import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import type { Millimetre } from '../units.ts'
import { type CuttingTask, START_AT_SMALL } from './cutting-task.ts'
import { type EndMillSetting, strainOf } from './end-mill-setting.ts'
import { figure } from './figure.ts'
import type { Step } from './step.ts'
import { roundedUp } from './turned-pass.ts'

export type RoughedWindow = { readonly step: Step; readonly cutLength: Millimetre }

/** Trepans a window in even levels that follow the curved wall, a slot all the way round, going straight down in the entry hole between them. */
export function roughWindow(
  task: CuttingTask,
  setting: EndMillSetting,
  window: {
    readonly port: string
    readonly named: string
    readonly pathLength: Millimetre
    readonly depth: Millimetre
  },
): RoughedWindow {
  const { notebook, operation } = task
  const { mill, tableFeed, wallStock } = setting
  // A window hardly larger than its cutter has no path of its own.
  const stock = Math.min(wallStock, window.pathLength / (4 * Math.PI))
  const about = { operation: operation.number, about: window.named }
  const path = notebook.use(insetPath, { U: window.pathLength, s: stock }, about)
  const passes = roundedUp(window.depth / setting.mostDepth)
  const depth = window.depth / passes
  const force = depth * setting.unitForce
  const cutLength = passes * path
  const down = window.depth / (MILLING_STARTS.plungeFeed * tableFeed)
  return {
    cutLength,
    step: {
      tool: mill.name,
      action: `rough ${window.named}`,
      feature: window.port,
      cuttingSpeed: setting.cuttingSpeed,
      spindleSpeed: setting.spindleSpeed,
      feed: setting.feedPerTooth,
      feedUnit: 'mm/tooth',
      tableFeed,
      depth,
      passes,
      time: cutLength / tableFeed + down + SHOP_TIMES.rapid,
      force,
      forceBand: { least: 0.5 * force, most: 1.5 * force },
      power: depth * setting.unitPower,
      ...strainOf(task, mill, force),
      ...(setting.limitedBy.length > 0 ? { limitedBy: setting.limitedBy.join('; ') } : {}),
      remarks: [
        START_AT_SMALL,
        `leave ${figure(wallStock)} mm on the wall; plug the bore to catch the slug`,
        `run-out not over ${figure(setting.runout)} mm`,
        ...(window.depth > MILLING_STARTS.chipPacking * mill.diameter
          ? ['deep slot: air or flood to clear the chips']
          : []),
      ],
    },
  }
}
