import { drillChipThickness, drillPower, drillThrust, drillTorque } from '../handbook/drilling.ts'
import { FORCE_FACTORS, specificCuttingForce } from '../handbook/kienzle.ts'
import { feedRate } from '../handbook/turning.ts'
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
import type { About, Notebook } from '../working.ts'
import { type CuttingMaterial, specificForceOf } from './cutting-material.ts'
import type { CuttingTask } from './cutting-task.ts'
import { drillThrustBand } from './drill-thrust-band.ts'
import { type Spindle, spindleFor } from './spindle.ts'
import { ofTool, SETTLED } from './where-from.ts'

type Drill = { readonly diameter: Millimetre; readonly point: Degree }

const ON_HAND: Origin = worked('the drill on hand that was chosen')

type DrillSetting = Spindle & {
  readonly feed: MillimetrePerRevolution
  readonly tableFeed: MillimetrePerMinute
}

/** Speed and feed that a drill of the handbook's kind starts with in this material. */
export function drillSetting(
  task: Pick<CuttingTask, 'machine' | 'material' | 'notebook' | 'shop'>,
  drill: DrillOnHand,
  about: About,
): DrillSetting {
  const { machine, material, notebook } = task
  const spindle = spindleFor({
    machine,
    ...told(fromHandbook(material.drilling.source), { wanted: material.drilling.speed }),
    ...told(ofTool(task, drill), { diameter: drill.diameter }),
    notebook,
    about,
  })
  const feed = material.drilling.feed * drill.diameter
  const tableFeed = notebook.use(feedRate, told(SETTLED, { f: feed, n: spindle.spindleSpeed }), about)
  return { ...spindle, feed, tableFeed }
}

/** What a worn drill in the full pushes with, and takes of the motor. */
export function drillForces({
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
}): {
  readonly force: Newton
  readonly forceBand: { readonly least: Newton; readonly most: Newton }
  readonly power: Kilowatt
} {
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
