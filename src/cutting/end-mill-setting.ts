import {
  BREAKAGE_MARGIN,
  bendingStress,
  breakageMargin,
  ENDURANCE,
  endMillDeflection,
  fluteDiameter,
  neckedEndMillDeflection,
} from '../handbook/end-mill-strength.ts'
import {
  meanChip,
  millingFeed,
  millingPower,
  runoutChip,
  runoutForce,
  THINNEST_MILLING_CHIP,
} from '../handbook/end-milling.ts'
import { FORCE_FACTORS, specificCuttingForce } from '../handbook/kienzle.ts'
import { peakByDepth, peakMillingForce } from '../handbook/milling-force.ts'
import { MILLING_STARTS, type MillingRow, slotDepthOf } from '../handbook/milling-speeds.ts'
import { SPECIFIC_FORCE_SOURCE } from '../handbook/specific-force.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { EndMill } from '../shop/tool.ts'
import {
  type Kilowatt,
  type MetrePerMinute,
  type Micrometre,
  type Millimetre,
  type MillimetrePerMinute,
  micrometres,
  type Newton,
  type SpindleSpeed,
} from '../units.ts'
import { specificForceOf } from './cutting-material.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'
import { spindleFor } from './spindle.ts'
import { ofTool, PRACTICE, SETTLED } from './where-from.ts'

/** How a cutter runs in a full slot: everything that its windows share. */
export type EndMillSetting = {
  readonly mill: EndMill
  readonly row: MillingRow
  readonly cuttingSpeed: MetrePerMinute
  readonly spindleSpeed: SpindleSpeed
  readonly feedPerTooth: Millimetre
  readonly tableFeed: MillimetrePerMinute
  /** Left on the wall for finishing. */
  readonly wallStock: Millimetre
  /** Greatest axial depth in the slot. */
  readonly mostDepth: Millimetre
  /** Worn, for each mm of axial depth. */
  readonly unitForce: Newton
  readonly unitPower: Kilowatt
  /** Least margin against breaking, so that runout and a corner still leave enough. */
  readonly leastMargin: number
  readonly runout: Millimetre
  readonly limitedBy: readonly string[]
  /** Force of a finishing level of these depths at a feed of 1 mm a tooth: at another it goes with fz^(1 - mc). */
  readonly finishForce: (axialDepth: Millimetre, radialDepth: Millimetre) => Newton
}

const { wallStock, runout } = MILLING_STARTS

/** Speed, feed and depth in the slot: the table's, as far as spindle, strength and stiffness go. */
export function endMillSetting(task: CuttingTask, row: MillingRow, mill: EndMill): EndMillSetting {
  const { machine, material, notebook, operation } = task
  const about = { operation: operation.number, about: mill.name }
  const { diameter: D, teeth } = mill
  const cutter = ofTool(task, mill)
  const spindle = spindleFor({
    machine,
    ...told(fromHandbook(row.source), { wanted: row.speed.start }),
    ...told(cutter, { diameter: D }),
    notebook,
    about,
  })
  const fz = Math.max(row.feed * D, 0)
  warnAboutChip(task, mill, fz, spindle.cuttingSpeed)
  const limitedBy = spindle.limitedBy ? [spindle.limitedBy] : []

  const tableFeed = notebook.use(
    millingFeed,
    { ...told(SETTLED, { fz, n: spindle.spindleSpeed }), ...told(cutter, { z: teeth }) },
    about,
  )
  const hm = Math.max(notebook.use(meanChip, told(SETTLED, { fz, r: 1 }), about), THINNEST_MILLING_CHIP.chip)
  const { kc11, mc } = material.force
  const kc = notebook.use(
    specificCuttingForce,
    {
      ...specificForceOf(material, FORCE_FACTORS.worn),
      ...told(worked('mean chip, the thinnest that cuts at least'), { h: hm }),
    },
    about,
  )
  const unitPower = notebook.use(
    millingPower,
    { ...told(worked('for each mm of depth, in a full slot'), { ap: 1, ae: D }), vf: tableFeed, kc },
    about,
  )
  const cut = { kc11: kc11 * FORCE_FACTORS.worn, mc, teeth, diameter: D, radialShare: MILLING_STARTS.radialShare }
  const unitForce = peakMillingForce({ ...cut, feedPerTooth: fz, axialDepth: 1, radialDepth: D, helix: 0 })

  const t = Math.max(runout.share * fz, runout.least)
  const Delta =
    teeth < 2 ? 0 : notebook.use(runoutChip, { ...told(PRACTICE, { t }), ...told(cutter, { z: teeth }) }, about)
  const worst = notebook.use(
    runoutForce,
    {
      ...told(worked('thicker chip of the worst tooth'), { Delta }),
      ...told(SETTLED, { fz }),
      ...told(fromHandbook(SPECIFIC_FORCE_SOURCE), { mc }),
    },
    about,
  )
  const leastMargin = Math.max(
    BREAKAGE_MARGIN.least,
    BREAKAGE_MARGIN.leastWithRunoutAndCorner * BREAKAGE_MARGIN.corner * worst,
  )
  const wall = Math.max(wallStock.share * D, wallStock.least)
  const usual = slotDepthOf(row.slotDepth, D, mill.fluteLength) * D
  const strong = strengthLimit(mill, leastMargin) / unitForce
  const stiff = micrometres(MILLING_STARTS.bendOfWallStock * wall) / bendFor(mill, unitForce)
  const mostDepth = Math.min(usual, strong, stiff, edgesOf(mill))
  if (strong < Math.min(usual, stiff)) limitedBy.push(marginReason(leastMargin))
  else if (stiff < usual) limitedBy.push(`bend of the cutter, half of the ${figure(wall)} mm left on the wall`)
  return {
    mill,
    row,
    cuttingSpeed: spindle.cuttingSpeed,
    spindleSpeed: spindle.spindleSpeed,
    feedPerTooth: fz,
    tableFeed,
    wallStock: wall,
    mostDepth,
    unitForce,
    unitPower,
    leastMargin,
    runout: t,
    limitedBy,
    finishForce: byRadialDepth(radialDepth =>
      peakByDepth({ ...cut, feedPerTooth: 1, radialDepth, helix: MILLING_STARTS.helix }),
    ),
  }
}

/** The windows of a pair ask for the same depths twice, and one radial depth is tried with many axial ones. */
function byRadialDepth(
  forceFor: (radialDepth: Millimetre) => (axialDepth: Millimetre) => Newton,
): EndMillSetting['finishForce'] {
  const known = new Map<string, (axialDepth: Millimetre) => Newton>()
  return (axialDepth, radialDepth) => {
    const key = radialDepth.toPrecision(9)
    const force = known.get(key) ?? forceFor(radialDepth)
    known.set(key, force)
    return force(axialDepth)
  }
}

const E = MILLING_STARTS.elasticModulus
const rod = ({ diameter }: EndMill): Millimetre => fluteDiameter.value({ D: diameter })

export const marginReason = (least: number): string => `margin of ${figure(least)} against breaking`

/** Force at the tip that leaves the margin. */
export const strengthLimit = (mill: EndMill, margin: number): Newton =>
  ENDURANCE.static / margin / bendingStress.value({ F: 1, ...weakest(mill) })

/** Where it breaks: the flutes at the shank; of a cutter with a neck the flutes at the neck or the neck at the shank. */
function weakest(mill: EndMill): { readonly l1: Millimetre; readonly d1: Millimetre } {
  const { neck } = mill
  if (!neck) return { l1: mill.fluteLength, d1: rod(mill) }
  const atNeck = { l1: neck.edges, d1: rod(mill) }
  const atShank = { l1: mill.fluteLength, d1: neck.diameter }
  return bendingStress.value({ F: 1, ...atNeck }) > bendingStress.value({ F: 1, ...atShank }) ? atNeck : atShank
}

const asBeam = (mill: EndMill) => ({ E, d1: rod(mill), l1: mill.fluteLength, L: mill.reach, d2: mill.shank })

export const bendFor = (mill: EndMill, force: Newton): Micrometre =>
  mill.neck
    ? neckedEndMillDeflection.value({ F: force, ...asBeam(mill), l0: mill.neck.edges, dn: mill.neck.diameter })
    : endMillDeflection.value({ F: force, ...asBeam(mill) })

/** No level is deeper than the edges are long. */
export const edgesOf = ({ neck, fluteLength }: EndMill): Millimetre => neck?.edges ?? fluteLength

export type Strain = { readonly deflection: Micrometre; readonly breakageMargin: number }

/** Bend and margin of a cutter under a force at its tip, kept as workings. */
export function strainOf(task: CuttingTask, mill: EndMill, force: Newton): Strain {
  const { notebook, operation } = task
  const about = { operation: operation.number, about: mill.name }
  const { E, ...sizes } = asBeam(mill)
  const F = told(worked('force at the tip, greatest of a turn'), { F: force })
  const given = { ...F, ...told(PRACTICE, { E }), ...told(ofTool(task, mill), sizes) }
  const deflection = mill.neck
    ? notebook.use(
        neckedEndMillDeflection,
        { ...given, ...told(ofTool(task, mill), { l0: mill.neck.edges, dn: mill.neck.diameter }) },
        about,
      )
    : notebook.use(endMillDeflection, given, about)
  const sigma = notebook.use(bendingStress, { ...F, ...told(ofTool(task, mill), weakest(mill)) }, about)
  return { deflection, breakageMargin: notebook.use(breakageMargin, { sigma }, about) }
}

function warnAboutChip(task: CuttingTask, mill: EndMill, fz: Millimetre, vc: MetrePerMinute): void {
  if (fz < THINNEST_MILLING_CHIP.feedPerTooth - 1e-9) {
    task.report({
      code: 'cutting/chip-too-thin',
      severity: 'warning',
      message: `${mill.name}: a feed of ${figure(micrometres(fz))} µm a tooth rubs; under ${micrometres(THINNEST_MILLING_CHIP.feedPerTooth)} µm the edge is rounder than the chip is thick`,
      hint: 'draw a larger corner for a larger cutter',
      path: '/ports',
    })
  }
  if (vc < MILLING_STARTS.builtUpEdgeUnder) {
    task.report({
      code: 'cutting/slow-cutter',
      severity: 'warning',
      message: `${mill.name} runs at ${figure(vc)} m/min at the spindle's limit; under ${MILLING_STARTS.builtUpEdgeUnder} m/min coated carbide builds up an edge`,
      hint: 'use a speed-increasing spindle or a larger cutter; do not raise the feed',
      path: '/ports',
    })
  }
}
