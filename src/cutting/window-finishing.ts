import { BREAKAGE_MARGIN } from '../handbook/end-mill-strength.ts'
import {
  feedForChip,
  insideCornerFeed,
  LARGEST_CUTTER_IN_CORNER,
  MOST_FEED_FOR_THINNING,
  meanChip,
  millingFeed,
  millingPower,
  THINNEST_MILLING_CHIP,
} from '../handbook/end-milling.ts'
import { FORCE_FACTORS, specificCuttingForce } from '../handbook/kienzle.ts'
import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { type Millimetre, type MillimetrePerMinute, type Minute, micrometres } from '../units.ts'
import { type CuttingTask, START_AT_SMALL } from './cutting-task.ts'
import { bendFor, type EndMillSetting, marginReason, strainOf, strengthLimit } from './end-mill-setting.ts'
import { figure } from './figure.ts'
import type { Step } from './step.ts'
import { roundedUp } from './turned-pass.ts'

export type FinishedWindow = { readonly steps: readonly Step[]; readonly cutLength: Millimetre }

/** A finishing pass may bend the cutter by this share of the tolerance of a port's edge. Common practice, no source. */
const BEND_OF_TOLERANCE = 0.25
/** The feed never falls below this share in a corner: the control slows no further. */
const LEAST_CORNER_SHARE = 0.1

/** Takes the wall's stock level by level, at a feed that the cutter stands, then runs them once more without infeed. */
export function finishWindow(
  task: CuttingTask,
  setting: EndMillSetting,
  window: {
    readonly port: string
    readonly named: string
    readonly pathLength: Millimetre
    readonly depth: Millimetre
    readonly corner: Millimetre
  },
): FinishedWindow {
  const { notebook, operation, material, shop } = task
  const { mill, wallStock: ae, spindleSpeed: n } = setting
  const about = { operation: operation.number, about: window.named }
  const D = mill.diameter
  const r = ae / D
  const hmax = MILLING_STARTS.finishChip * setting.feedPerTooth
  const thinned = notebook.use(feedForChip, { hmax, r }, about)
  const usual = Math.min(thinned, MOST_FEED_FOR_THINNING * setting.feedPerTooth)

  const levels = roundedUp(window.depth / (MILLING_STARTS.finishDepth * D))
  const depth = window.depth / levels
  const mostBend = micrometres(BEND_OF_TOLERANCE * shop.habits.portEdgeTolerance)
  const unit = setting.finishForce(depth)
  const mc1 = 1 - material.force.mc
  // The force goes with a power of the feed, so the feed that the cutter just stands follows at once.
  const stiff = mostBend / bendFor(mill, 1)
  // Corners are no harder on it than straights, since the feed is slowed in them.
  const strong = strengthLimit(mill, BREAKAGE_MARGIN.least)
  const stood = (Math.min(stiff, strong) / unit) ** (1 / mc1)
  const fz = Math.min(usual, Math.max(stood, Math.min(usual, THINNEST_MILLING_CHIP.feedPerTooth)))
  const force = unit * fz ** mc1
  const strain = strainOf(task, mill, force)
  if (strain.deflection > mostBend * (1 + 1e-9)) {
    task.report({
      code: 'cutting/cutter-bends',
      severity: 'warning',
      message: `${mill.name} bends ${figure(strain.deflection)} µm finishing ${window.named}; ${figure(mostBend)} µm is a quarter of the edge's tolerance`,
      hint: 'take a shorter or thicker cutter, or leave less on the wall',
      path: '/ports',
    })
  }

  const vf = notebook.use(millingFeed, { fz, z: mill.teeth, n }, about)
  const hm = Math.max(notebook.use(meanChip, { fz, r }, about), THINNEST_MILLING_CHIP.chip)
  const kc = specificCuttingForce.value({ ...material.force, h: hm, K: FORCE_FACTORS.worn })
  const once = roundTime(task, window, D, vf)
  const nearCorner = D / 2 > LARGEST_CUTTER_IN_CORNER * window.corner + 1e-9
  const common = {
    tool: mill.name,
    feature: window.port,
    cuttingSpeed: setting.cuttingSpeed,
    spindleSpeed: n,
    feed: fz,
    feedUnit: 'mm/tooth',
    tableFeed: vf,
    depth,
    passes: levels,
    time: levels * once + SHOP_TIMES.rapid,
  } as const
  const finishing: Step = {
    ...common,
    action: `finish ${window.named}`,
    force,
    forceBand: { least: 0.5 * force, most: 1.5 * force },
    power: notebook.use(millingPower, { ap: depth, ae, vf, kc }, about),
    ...strain,
    ...(fz < usual
      ? {
          limitedBy:
            stiff < strong ? `bend of the cutter, ${figure(mostBend)} µm` : marginReason(BREAKAGE_MARGIN.least),
        }
      : {}),
    remarks: [
      START_AT_SMALL,
      `take ${figure(ae)} mm off the wall; climb milling`,
      ...(nearCorner ? ['cutter nearly fills the corners: slow down there'] : []),
    ],
  }
  const spring: Step = { ...common, action: `spring pass ${window.named}`, remarks: ['same path, no infeed'] }
  return { steps: [finishing, spring], cutLength: levels * window.pathLength }
}

/** Once round: full feed on the straights, and the wall's feed at the cutter's edge in the corners. */
function roundTime(
  { notebook, operation }: CuttingTask,
  { named, pathLength, corner }: { named: string; pathLength: Millimetre; corner: Millimetre },
  D: Millimetre,
  vf: MillimetrePerMinute,
): Minute {
  const arcs = Math.min(2 * Math.PI * Math.max(0, corner - D / 2), pathLength)
  const slow =
    arcs > 0
      ? notebook.use(insideCornerFeed, { vf, R: corner, rc: D / 2 }, { operation: operation.number, about: named })
      : vf
  return (pathLength - arcs) / vf + arcs / Math.max(slow, LEAST_CORNER_SHARE * vf)
}
