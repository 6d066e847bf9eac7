import { fixed } from '../figures.ts'
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
import { told, worked } from '../known.ts'
import { finishLevels } from '../ports/path/levels.ts'
import type { CutShape } from '../ports/path/tool-path.ts'
import { micrometres, millimetres } from '../units.ts'
import { type CuttingTask, START_AT_SMALL } from './cutting-task.ts'
import { bendFor, edgesOf, marginReason, strainOf, strengthLimit } from './end-mill-setting.ts'
import { figure } from './figure.ts'
import type { Step } from './step.ts'
import { ofTool, SETTLED } from './where-from.ts'
import { type MadeCut, madeCut, measuredCut, type WindowJob } from './window-job.ts'

/** A finishing pass may bend the cutter by this share of the tolerance of a port's edge. Common practice, no source. */
const BEND_OF_TOLERANCE = 0.25
/** Takes the wall's stock level by level, at a feed that the cutter stands, then runs them once more without infeed. */
export function finishWindow(task: CuttingTask, job: WindowJob): readonly MadeCut[] {
  const { notebook, operation, material, shop } = task
  const { setting, window, named, left: ae } = job
  const { mill, spindleSpeed: n } = setting
  const about = { operation: operation.number, about: named }
  const D = mill.diameter
  const r = ae / D
  const hmax = MILLING_STARTS.finishChip * setting.feedPerTooth
  const thinned = notebook.use(feedForChip, told(SETTLED, { hmax, r }), about)
  const usual = Math.min(thinned, MOST_FEED_FOR_THINNING * setting.feedPerTooth)

  const planned = finishLevels(window, { cutter: D, most: Math.min(MILLING_STARTS.finishDepth * D, edgesOf(mill)) })
  if (!planned) return []
  const { levels, depth } = planned
  const mostBend = micrometres(BEND_OF_TOLERANCE * (job.port.edge?.milledTo || shop.habits.portEdgeTolerance))
  const unit = setting.finishForce(depth, ae)
  const mc1 = 1 - material.force.mc
  // The force goes with a power of the feed, so the feed that the cutter just stands follows at once.
  const stiff = mostBend / bendFor(mill, 1)
  // Corners are no harder on it than straights, since the feed is slowed in them.
  const strong = strengthLimit(mill, BREAKAGE_MARGIN.least)
  const stood = (Math.min(stiff, strong) / unit) ** (1 / mc1)
  const fz = Math.min(usual, Math.max(stood, Math.min(usual, THINNEST_MILLING_CHIP.feedPerTooth)))
  const force = unit * fz ** mc1
  const strain = strainOf(task, mill, force)
  // The spring pass takes what the bend has left, and bends by as much less: that is what stays on the wall.
  const again = setting.finishForce(depth, Math.min(ae, millimetres(strain.deflection))) * fz ** mc1
  const stays = again * bendFor(mill, 1)
  if (stays > mostBend * (1 + 1e-9)) {
    task.report({
      code: 'cutting/cutter-bends',
      severity: 'warning',
      message: `${mill.name} bends ${figure(strain.deflection)} µm finishing ${named} and ${figure(stays)} µm in the spring pass; ${figure(mostBend)} µm is a quarter of the edge's tolerance`,
      hint: 'take a shorter or thicker cutter, or leave less on the wall',
      path: '/ports',
    })
  }

  const vf = notebook.use(
    millingFeed,
    { ...told(SETTLED, { fz, n }), ...told(ofTool(task, mill), { z: mill.teeth }) },
    about,
  )
  const hm = Math.max(notebook.use(meanChip, told(SETTLED, { fz, r }), about), THINNEST_MILLING_CHIP.chip)
  const kc = specificCuttingForce.value({ ...material.force, h: hm, K: FORCE_FACTORS.worn })
  const corner = Math.max(D / 2, window.tightestCorner ?? window.largestCutter / 1.6)
  const nearCorner = D / 2 > LARGEST_CUTTER_IN_CORNER * corner + 1e-9
  const inCorner = notebook.use(
    insideCornerFeed,
    { vf, ...told(worked('tightest corner of the window'), { R: corner }), ...told(ofTool(task, mill), { rc: D / 2 }) },
    about,
  )
  const shapeOf = (kind: 'finish' | 'spring'): CutShape => ({
    kind,
    cutter: D,
    levels,
    downShare: MILLING_STARTS.plungeFeed,
  })
  const cut = measuredCut(job, shapeOf('finish'), vf)
  const common = {
    tool: mill.name,
    feature: job.port.name,
    cuttingSpeed: setting.cuttingSpeed,
    spindleSpeed: n,
    feed: fz,
    feedUnit: 'mm/tooth',
    tableFeed: vf,
    depth,
    passes: levels,
    time: cut.time + SHOP_TIMES.rapid,
  } as const
  const finishing: Step = {
    ...common,
    action: `finish ${named}`,
    force,
    forceBand: { least: 0.5 * force, most: 1.5 * force },
    power: notebook.use(
      millingPower,
      { ...told(SETTLED, { ap: depth, ae }), vf, ...told(worked('specific force at the mean chip'), { kc }) },
      about,
    ),
    ...strain,
    ...(fz < usual
      ? {
          limitedBy:
            stiff < strong ? `bend of the cutter, ${figure(mostBend)} µm` : marginReason(BREAKAGE_MARGIN.least),
        }
      : {}),
    remarks: [
      START_AT_SMALL,
      `take ${figure(ae)} mm off the wall${ae > job.roughing.wallStock + 1e-9 ? ' where most is left, in the corners' : ''}; climb milling`,
      `${fixed(inCorner, 0)} mm/min in the tightest corners`,
      ...(nearCorner ? ['cutter nearly fills the corners'] : []),
    ],
  }
  const spring: Step = { ...common, action: `spring pass ${named}`, remarks: ['same path, no infeed'] }
  return [madeCut(finishing, shapeOf('finish'), cut), madeCut(spring, shapeOf('spring'), cut)]
}
