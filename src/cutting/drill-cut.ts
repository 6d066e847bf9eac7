import { drillChipThickness, drillPower, drillThrust, drillTorque } from '../handbook/drilling.ts'
import { FORCE_FACTORS, specificCuttingForce } from '../handbook/kienzle.ts'
import type { Degree, Kilowatt, Millimetre, MillimetrePerRevolution, Newton, SpindleSpeed } from '../units.ts'
import type { About, Notebook } from '../working.ts'
import type { CuttingMaterial } from './cutting-material.ts'
import { drillThrustBand } from './drill-thrust-band.ts'

type Drill = { readonly diameter: Millimetre; readonly point: Degree }

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
  const h = notebook.use(drillChipThickness, { f, sigma }, about)
  const { kc11, mc } = material.force
  const K = FORCE_FACTORS.boringDrillingMilling * FORCE_FACTORS.worn
  const kc = notebook.use(specificCuttingForce, { kc11, mc, h, K }, about)
  const M = notebook.use(drillTorque, { kc, f, D }, about)
  const force = notebook.use(drillThrust, { kc, f, D, sigma }, about)
  return {
    force,
    forceBand: drillThrustBand(material, D, f, force),
    power: notebook.use(drillPower, { M, n }, about),
  }
}
