import {
  CENTRELESS,
  centreHeight,
  centreHeightAngle,
  centrelessPasses,
  centrelessWorkSpeed,
  pinsPerMinute,
  throughFeed,
} from '../handbook/centreless-grinding.ts'
import { WHEEL_SPEED } from '../handbook/grinding-data.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { spindleSpeed } from '../handbook/turning.ts'
import { told, worked } from '../known.ts'
import { type ToolOf, toolsOf } from '../shop/tool.ts'
import type { Millimetre } from '../units.ts'
import { type CuttingTask, type PlannedCuts, START_AT } from './cutting-task.ts'
import { figure } from './figure.ts'
import { startingWheel } from './ground-work.ts'
import type { Step } from './step.ts'
import { wheelSpin } from './traverse-grinding.ts'
import { type BandCut, outsideCuts } from './turned-cuts.ts'
import { AS_CUT, ofTool, PRACTICE } from './where-from.ts'

/** Feeds a pin through between grinding and regulating wheel: passes on diameter, the last ones fine. */
export function grindThrough(task: CuttingTask): PlannedCuts {
  const [cut] = outsideCuts(task.before, task.after)
  const wheel = wheelOf(task, 'centreless wheel')
  const regulating = wheelOf(task, 'regulating wheel')
  if (!cut || !wheel || !regulating) return { steps: [] }
  const stock = cut.from - cut.to
  const fine = Math.min(stock, CENTRELESS.infeed.finish.usual)
  const setting = settingRemarks(task, cut, wheel, regulating)
  return {
    steps: [
      ...passes({ task, cut, stage: 'rough', z: stock - fine, wheel, regulating, remarks: setting }),
      ...passes({
        task,
        cut,
        stage: 'finish',
        z: fine,
        wheel,
        regulating,
        remarks: [
          `leaves Ra ${CENTRELESS.leaves.roughness.join(' to ')} and ${CENTRELESS.leaves.roundness.join(' to ')} µm out of round (${CENTRELESS.practice}); measure`,
          'dress both wheels before the batch, then when the size drifts: no source says how many pins a dressing serves',
          'look for odd lobes in a V-block or on a roundness instrument: a micrometer does not see them',
        ],
      }),
    ],
    setup: 2 * SHOP_TIMES.dressing,
  }
}

function passes({
  task,
  cut,
  stage,
  z,
  wheel,
  regulating,
  remarks,
}: {
  readonly task: CuttingTask
  readonly cut: BandCut
  readonly stage: 'rough' | 'finish'
  readonly z: Millimetre
  readonly wheel: ToolOf<'centreless wheel'>
  readonly regulating: ToolOf<'regulating wheel'>
  readonly remarks: readonly string[]
}): readonly Step[] {
  if (z <= 1e-9) return []
  const { notebook, operation } = task
  const about = { operation: operation.number, about: cut.feature }
  const turning = {
    ...told(ofTool(task, regulating), { dr: regulating.diameter }),
    ...told(PRACTICE, { nr: CENTRELESS.regulatingSpeed, a: CENTRELESS.tilt }),
  }
  const infeed = CENTRELESS.infeed[stage]
  const N = notebook.use(centrelessPasses, { ...told(AS_CUT, { z }), ...told(PRACTICE, { i: infeed.usual }) }, about)
  const vf = notebook.use(throughFeed, turning, about)
  const vw = notebook.use(centrelessWorkSpeed, turning, about)
  const nw = notebook.use(
    spindleSpeed,
    { ...told(worked('work speed, by the regulating wheel'), { vc: vw }), ...told(AS_CUT, { D: cut.from }) },
    about,
  )
  const q = notebook.use(pinsPerMinute, { vf, ...told(AS_CUT, { L: cut.length }) }, about)
  const spin = wheelSpin(task, wheel, WHEEL_SPEED.outside)
  return [
    {
      tool: wheel.name,
      action: `${stage} grind ${cut.feature}, through feed`,
      feature: cut.feature,
      cuttingSpeed: vw,
      spindleSpeed: nw,
      feed: z / 2 / N,
      feedUnit: 'mm/pass',
      tableFeed: vf,
      depth: z / 2 / N,
      passes: N,
      time: N / q,
      wheel: { speed: spin.speed, spindleSpeed: spin.spindleSpeed },
      ...(spin.limitedBy ? { limitedBy: spin.limitedBy } : {}),
      remarks: [
        START_AT,
        `wheel ${wheel.grade}: ${figure(spin.speed)} m/s, ${Math.round(spin.spindleSpeed)} rpm at ${figure(wheel.diameter)} mm; not over its mark`,
        `${figure(z / N)} mm on diameter a pass (${infeed.least} to ${infeed.most} mm, ${CENTRELESS.practice})`,
        ...remarks,
      ],
    },
  ]
}

/** How the wheels and the blade stand. Higher rounds faster until even lobes and chatter come: the work is never set over the rule's height. */
function settingRemarks(
  task: CuttingTask,
  cut: BandCut,
  wheel: ToolOf<'centreless wheel'>,
  regulating: ToolOf<'regulating wheel'>,
): readonly string[] {
  const { notebook, operation } = task
  const about = { operation: operation.number, about: cut.feature }
  const wheels = {
    ...told(ofTool(task, wheel), { ds: wheel.diameter }),
    ...told(ofTool(task, regulating), { dr: regulating.diameter }),
    ...told(AS_CUT, { dw: cut.from }),
  }
  const best = notebook.use(
    centreHeight,
    { ...told(PRACTICE, { gamma: CENTRELESS.centreHeightAngle }), ...wheels },
    about,
  )
  const h = Math.min(best, CENTRELESS.mostHeight)
  const angle = notebook.use(
    centreHeightAngle,
    { ...told(worked('height of the work, within the rule'), { h }), ...wheels },
    about,
  )
  return [
    `regulating wheel ${regulating.name}: ${CENTRELESS.regulatingSpeed} rpm, tilted ${CENTRELESS.tilt}° (${CENTRELESS.practice})`,
    `centre of the work ${figure(h)} mm above the wheels' centres, ${figure(angle, 2)}°; blade ${CENTRELESS.bladeAngle}° (${CENTRELESS.practice})`,
    'lower it for even lobes and chatter, raise it for three or five lobes (memory)',
    startingWheel(task, 'outside'),
  ]
}

function wheelOf<K extends 'centreless wheel' | 'regulating wheel'>(task: CuttingTask, kind: K): ToolOf<K> | undefined {
  const [found] = toolsOf(task.shop, kind)
  if (!found) {
    task.report({
      code: 'cutting/no-wheel',
      severity: 'error',
      message: `the works grinds without centres but has no ${kind}`,
      hint: 'list one with its diameter under `tools:` in the shop file',
    })
  }
  return found
}
