import { BREAKTHROUGH, pointLength } from '../handbook/drill-entry.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { turningTime } from '../handbook/turning.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import { told, worked } from '../known.ts'
import type { Drill } from '../shop/tool.ts'
import type { Millimetre } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'
import { drillSetting } from './drill-cut.ts'
import type { Step } from './step.ts'
import { ofTool, PRACTICE, SETTLED } from './where-from.ts'

/** Holes drilled with one drill from the solid: through, with the point clear of the far side, or blind to a depth. */
export function drilledStep({
  task,
  drill,
  action,
  feature,
  length,
  ends,
  holes = 1,
  depth = drill.diameter / 2,
  remarks,
}: {
  readonly task: CuttingTask
  readonly drill: Drill
  readonly action: string
  readonly feature: string
  /** Of the hole; of a blind one to the tip of the point. */
  readonly length: Millimetre
  readonly ends: 'through' | 'blind'
  readonly holes?: number
  /** Depth of cut as the sheet says it: half of the diameter, or of a hole in a wall how deep it goes. */
  readonly depth?: Millimetre
  readonly remarks: readonly string[]
}): Step {
  const { notebook, operation } = task
  const about = { operation: operation.number, about: feature }
  const { feed, spindleSpeed, ...setting } = drillSetting(task, drill, about)
  const point =
    ends === 'blind'
      ? 0
      : notebook.use(pointLength, told(ofTool(task, drill), { D: drill.diameter, sigma: drill.point }), about)
  const time = notebook.use(
    turningTime,
    {
      ...told(worked('length of the hole and of the point'), { L: length + point }),
      ...told(PRACTICE, { La: TURNING_STARTS.approach, Lo: ends === 'blind' ? 0 : BREAKTHROUGH.clearance }),
      ...told(SETTLED, { i: holes, f: feed, n: spindleSpeed }),
    },
    about,
  )
  return {
    tool: drill.name,
    action,
    feature,
    feed,
    feedUnit: 'mm/rev',
    spindleSpeed,
    ...setting,
    depth,
    passes: holes,
    time: time + holes * SHOP_TIMES.rapid,
    remarks,
  }
}
