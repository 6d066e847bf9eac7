import { fixed } from '../figures.ts'
import { plungeTime } from '../handbook/grinding.ts'
import { PLUNGE_INFEED, WHEEL_SPEED } from '../handbook/grinding-data.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { spindleSpeed } from '../handbook/turning.ts'
import { told } from '../known.ts'
import { toolsOf } from '../shop/tool.ts'
import type { Millimetre } from '../units.ts'
import { type CuttingTask, START_AT } from './cutting-task.ts'
import { figure } from './figure.ts'
import { grindingSetting } from './ground-work.ts'
import type { Step } from './step.ts'
import { wheelSpin } from './traverse-grinding.ts'
import { faceCuts } from './turned-cuts.ts'
import { AS_CUT, PRACTICE, SETTLED } from './where-from.ts'

/** Of the face stock. Common practice, no source. */
const FINISH_STOCK: Millimetre = 0.01
const SPARK_OUT_TURNS = 20

/** Feeds a face wheel square onto the end. */
export function faceGrinding(task: CuttingTask): readonly Step[] {
  const { before, after, machine, notebook, operation, shop } = task
  return faceCuts(before, after).flatMap(face => {
    const about = { operation: operation.number, about: face.feature }
    const [wheel] = toolsOf(shop, 'face wheel')
    if (!wheel) {
      task.report({
        code: 'cutting/no-wheel',
        severity: 'error',
        message: `${face.feature} is ground but the works has no face wheel`,
        hint: 'list one with its diameter under `tools:` in the shop file',
        path: `/body/${face.feature}`,
      })
      return []
    }
    const setting = grindingSetting(task, 'outside')
    const spin = wheelSpin(task, wheel, WHEEL_SPEED.face)
    const infeed = PLUNGE_INFEED[setting.hard ? 'alloy or tool steel, hardened' : 'soft steel']
    const nw = notebook.use(
      spindleSpeed,
      { ...told(PRACTICE, { vc: setting.workSpeed }), ...told(AS_CUT, { D: face.outside }) },
      about,
    )
    const zf = Math.min(FINISH_STOCK, face.stock)
    const given = {
      ...told(AS_CUT, { zr: face.stock - zf, zf }),
      ...told(PRACTICE, { fr: infeed.rough, ff: infeed.finish, N: SPARK_OUT_TURNS }),
      ...told(SETTLED, { nw }),
    }
    return [
      {
        tool: wheel.name,
        action: `grind ${face.feature}`,
        feature: face.feature,
        cuttingSpeed: setting.workSpeed,
        spindleSpeed: nw,
        feed: infeed.rough,
        feedUnit: 'mm/rev',
        tableFeed: infeed.rough * nw,
        depth: face.stock,
        passes: 1,
        time: notebook.use(plungeTime, given, about) + SHOP_TIMES.rapid,
        wheel: { speed: spin.speed, spindleSpeed: spin.spindleSpeed },
        ...(spin.limitedBy ? { limitedBy: spin.limitedBy } : {}),
        remarks: [
          START_AT,
          ...takenOff(task, face.feature),
          `wheel ${wheel.grade}: ${figure(spin.speed)} m/s, ${Math.round(spin.spindleSpeed)} rpm on ${machine.name}; not over its mark`,
          `last ${figure(zf)} mm at ${figure(infeed.finish)} mm a turn, then ${SPARK_OUT_TURNS} turns to spark out`,
        ],
      },
    ]
  })
}

export const grindTop = (task: CuttingTask): { readonly steps: readonly Step[] } => ({ steps: faceGrinding(task) })

/** A face that is ground to the measured edge of a port: what comes off each piece. */
function takenOff({ ports }: CuttingTask, feature: string): readonly string[] {
  const takeOff = ports.find(({ edge }) => edge?.takeOff)?.edge?.takeOff
  if (!takeOff || feature !== 'top') return []
  const { port, target, least, most } = takeOff
  return [
    `each piece by itself: take off the depth of the ${port} top edge, measured from this face before it is ground, less ${fixed(target, 3)}`,
    `that is ${fixed(least, 3)} to ${fixed(most, 3)}; a piece outside that is set aside and asked about`,
  ]
}
