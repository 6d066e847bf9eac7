import { drillChipThickness, drillPower, drillThrust, drillTorque } from '../handbook/drilling.ts'
import { DRILL_FEED_LIMIT } from '../handbook/drilling-speeds.ts'
import { FORCE_FACTORS, specificCuttingForce } from '../handbook/kienzle.ts'
import { cuttingSpeed, feedRate } from '../handbook/turning.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import { fromHandbook, type Origin, told, worked } from '../known.ts'
import type { Drill as DrillOnHand } from '../shop/tool.ts'
import type {
  Degree,
  Kilowatt,
  Millimetre,
  MillimetrePerMinute,
  MillimetrePerRevolution,
  Newton,
  SpindleSpeed,
} from '../units.ts'
import { type About, type Notebook, SCRATCH } from '../working.ts'
import { type CuttingMaterial, specificForceOf } from './cutting-material.ts'
import type { CuttingTask } from './cutting-task.ts'
import { drillThrustBand } from './drill-thrust-band.ts'
import { type Spindle, spindleFor } from './spindle.ts'
import { ofTool, SETTLED } from './where-from.ts'

type Drill = { readonly diameter: Millimetre; readonly point: Degree }

const ON_HAND: Origin = worked('the drill on hand that was chosen')

type DrillSetting = Omit<Spindle, 'limitedBy'> &
  DrillForces & {
    readonly feed: MillimetrePerRevolution
    readonly tableFeed: MillimetrePerMinute
    readonly limitedBy?: string
  }

type Setting = Pick<CuttingTask, 'machine' | 'material' | 'notebook' | 'shop'>

/** Speed and feed that a drill starts with in this material, as far as its edges, the spindle and the motor bear. */
export function drillSetting(task: Setting, drill: DrillOnHand, about: About): DrillSetting {
  const { machine, material, notebook } = task
  const D = drill.diameter
  const spindle = spindleFor({
    machine,
    ...told(fromHandbook(material.drilling.source), { wanted: material.drilling.speed }),
    ...told(ofTool(task, drill), { diameter: D }),
    notebook,
    about,
  })
  const limitedBy = spindle.limitedBy ? [spindle.limitedBy] : []
  let feed = Math.min(
    material.drilling.feed * D,
    hasChangeableEdges(drill) ? DRILL_FEED_LIMIT.changeableEdges : DRILL_FEED_LIMIT.solid,
  )
  let n = spindle.spindleSpeed
  const powerAt = (f: MillimetrePerRevolution): Kilowatt =>
    drillForces({ notebook: SCRATCH, material, drill, feed: f, n }).power
  const available = machine.power === undefined ? Infinity : machine.power * TURNING_STARTS.driveEfficiency
  if (powerAt(feed) > available) {
    limitedBy.push(`motor power ${machine.power} kW`)
    const share = (available / powerAt(feed)) ** (1 / (1 - material.force.mc))
    feed = Math.max(feed * share, Math.min(feed, DRILL_FEED_LIMIT.least))
    if (powerAt(feed) > available * (1 + 1e-9)) n *= available / powerAt(feed)
  }
  return {
    ...drillForces({ notebook, material, drill, feed, n, about }),
    spindleSpeed: n,
    cuttingSpeed:
      n === spindle.spindleSpeed
        ? spindle.cuttingSpeed
        : notebook.use(cuttingSpeed, { ...told(SETTLED, { n }), ...told(ofTool(task, drill), { D }) }, about),
    feed,
    tableFeed: notebook.use(feedRate, told(SETTLED, { f: feed, n }), about),
    ...(limitedBy.length > 0 && { limitedBy: limitedBy.join('; ') }),
  }
}

export const hasChangeableEdges = ({ diameter }: Drill): boolean => diameter >= DRILL_FEED_LIMIT.changeableEdgesFrom

type DrillForces = {
  readonly force: Newton
  readonly forceBand: { readonly least: Newton; readonly most: Newton }
  readonly power: Kilowatt
}

/** What a worn drill in the full pushes with, and takes of the motor. */
function drillForces({
  notebook,
  material,
  drill: { diameter: D, point: sigma },
  feed: f,
  n,
  about = {},
}: {
  readonly notebook: Notebook
  readonly material: CuttingMaterial
  readonly drill: Drill
  readonly feed: MillimetrePerRevolution
  readonly n: SpindleSpeed
  readonly about?: About
}): DrillForces {
  const [fed, size, point] = [told(SETTLED, { f }), told(ON_HAND, { D }), told(ON_HAND, { sigma })]
  const h = notebook.use(drillChipThickness, { ...fed, ...point }, about)
  const K = FORCE_FACTORS.boringDrillingMilling * FORCE_FACTORS.worn
  const kc = notebook.use(specificCuttingForce, { ...specificForceOf(material, K), h }, about)
  const M = notebook.use(drillTorque, { kc, ...fed, ...size }, about)
  const force = notebook.use(drillThrust, { kc, ...fed, ...size, ...point }, about)
  return {
    force,
    forceBand: drillThrustBand(material, D, f, force),
    power: notebook.use(drillPower, { M, ...told(SETTLED, { n }) }, about),
  }
}
