import { BREAKTHROUGH } from '../handbook/drill-entry.ts'
import { THINNEST_MILLING_CHIP } from '../handbook/end-milling.ts'
import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { roughLevels } from '../ports/path/levels.ts'
import { type CuttingTask, START_AT_SMALL } from './cutting-task.ts'
import { strainOf } from './end-mill-setting.ts'
import { figure } from './figure.ts'
import type { Step } from './step.ts'
import { type MadeCut, madeCut, measuredCut, slotFeeds, type WindowJob } from './window-job.ts'

/**
 * Trepans a window in even levels that follow the curved wall, a slot all the way round, going straight down in the entry
 * hole between them; the last levels part the slug from the wall. A window too narrow for a slug is cleared.
 */
export function roughWindow(task: CuttingTask, job: WindowJob): readonly MadeCut[] {
  const { roughing: setting, window, named, port } = job
  const { mill, spindleSpeed } = setting
  const planned = roughLevels(window, {
    cutter: mill.diameter,
    wallStock: setting.wallStock,
    most: setting.mostDepth,
  })
  if (!planned) return []
  const { depth, ...levels } = planned
  const roughed = levels.levels - levels.throughLevels
  // Half the feed where it breaks through, but never so little that the edge rubs.
  const slow = Math.min(1, Math.max(BREAKTHROUGH.feedShare, THINNEST_MILLING_CHIP.feedPerTooth / setting.feedPerTooth))
  const deep = depth * levels.levels > MILLING_STARTS.chipPacking * mill.diameter
  const made = (kind: 'rough' | 'cut through', share: number, passes: number, remarks: readonly string[]): MadeCut => {
    const tableFeed = share * setting.tableFeed
    const ramp = job.ramps ? { down: { angle: MILLING_STARTS.ramp, share: setting.row.rampFeed } } : {}
    const shape = { kind, cutter: mill.diameter, ...levels, ...slotFeeds(tableFeed), ...ramp } as const
    const cut = measuredCut(job, shape, tableFeed)
    const force = depth * setting.unitForce * share ** (1 - task.material.force.mc)
    const step: Step = {
      tool: mill.name,
      action: `${kind} ${named}`,
      feature: port.name,
      cuttingSpeed: setting.cuttingSpeed,
      spindleSpeed,
      feed: share * setting.feedPerTooth,
      feedUnit: 'mm/tooth',
      tableFeed,
      depth,
      passes,
      time: cut.time + SHOP_TIMES.rapid,
      force,
      forceBand: { least: 0.5 * force, most: 1.5 * force },
      power: depth * setting.unitPower * share,
      ...strainOf(task, mill, force),
      ...(setting.limitedBy.length > 0 ? { limitedBy: setting.limitedBy.join('; ') } : {}),
      remarks,
    }
    return madeCut(step, shape, cut)
  }
  return [
    ...(roughed > 0
      ? [
          made('rough', 1, roughed, [
            START_AT_SMALL,
            `leave ${figure(levels.wallStock)} mm on the wall`,
            `run-out not over ${figure(setting.runout)} mm`,
            ...(job.ramps ? [`down at ${MILLING_STARTS.ramp}° along the slot, no entry hole`] : []),
            ...(deep ? ['deep slot: air or flood to clear the chips'] : []),
          ]),
        ]
      : []),
    made('cut through', slow, levels.throughLevels, [
      START_AT_SMALL,
      ...(levels.slug === 'kept' ? ['plug in the bore; then stop and take the slug out'] : ['nothing is left inside']),
    ]),
  ]
}
