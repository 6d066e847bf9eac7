import { BREAKAGE_MARGIN } from '../handbook/end-mill-strength.ts'
import {
  feedForChip,
  MOST_FEED_FOR_THINNING,
  meanChip,
  millingFeed,
  millingPower,
  THINNEST_MILLING_CHIP,
} from '../handbook/end-milling.ts'
import { FORCE_FACTORS, specificCuttingForce } from '../handbook/kienzle.ts'
import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { told, worked } from '../known.ts'
import { type Micrometre, type Millimetre, type MillimetrePerMinute, millimetres, type Newton } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'
import { bendFor, type EndMillSetting, marginReason, strainOf, strengthLimit } from './end-mill-setting.ts'
import { figure } from './figure.ts'
import type { Step } from './step.ts'
import { ofTool, SETTLED } from './where-from.ts'

/** A cut along the wall, at the feed that the cutter stands. */
export type SideCut = {
  readonly feed: Millimetre
  readonly tableFeed: MillimetrePerMinute
  /** Left on the wall after a spring pass. */
  readonly stays: Micrometre
  /** Step fields that only a cut which meets metal has. */
  readonly strain: Pick<Step, 'force' | 'forceBand' | 'power' | 'limitedBy'> &
    Required<Pick<Step, 'deflection' | 'breakageMargin'>>
}

/** How metal in a corner is taken off: so many ways along the wall, each so thick, in levels of a depth. */
export type Clearing = { readonly ways: number; readonly ae: Millimetre; readonly depth: Millimetre }

/** Ways to try: thinner ones only go round more often. */
const MOST_WAYS = 6
/** Levels to try, as parts of the deepest. */
const PARTS = [1, 2, 3, 4, 6, 8]
/** Not near half the cutter, where its teeth hit the metal flat. Source: ISCAR solid-carbide end-mill user guide 2022: avoid 50 %. */
const MOST_RADIAL = 0.4

/** The soonest that the cutter stands: thick ways and deep levels are slow, thin ones are many. */
export function soonestClearing(
  task: CuttingTask,
  setting: EndMillSetting,
  { thick, most, mostBend }: { readonly thick: Millimetre; readonly most: Millimetre; readonly mostBend: Micrometre },
): Clearing {
  const D = setting.mill.diameter
  const least = Math.max(1, Math.ceil(thick / (MOST_RADIAL * D)))
  const usualIn = (ways: number): Millimetre =>
    usualFeed(setting, feedForChip.value({ hmax: hmaxOf(setting), r: thick / ways / D }))
  const tried = (ways: number, part: number, usual: Millimetre): Clearing & { readonly time: number } => {
    const [ae, depth] = [thick / ways, most / part]
    const stood = stoodFeed(task, setting, { unit: setting.finishForce(depth, ae), mostBend })
    const rubs = stood < Math.min(usual, THINNEST_MILLING_CHIP.feedPerTooth)
    return { ways, ae, depth, time: rubs ? Number.POSITIVE_INFINITY : (ways * part) / Math.min(usual, stood) }
  }
  let best = tried(least, 1, usualIn(least))
  for (let ways = least; ways <= MOST_WAYS; ways++) {
    const usual = usualIn(ways)
    for (const part of PARTS) {
      // No sooner even at the usual feed, and more levels are later still.
      if ((ways * part) / usual >= best.time) break
      const next = tried(ways, part, usual)
      if (next.time < best.time) best = next
    }
  }
  return best
}

/**
 * Depth of a level that takes a stock off the wall: the deepest, unless the cutter then bends so far at any feed that does not
 * rub; then as many more levels as bring it within its bend, in the spring pass at least.
 */
export function finishingDepth(
  task: CuttingTask,
  setting: EndMillSetting,
  { ae, most, mostBend }: { readonly ae: Millimetre; readonly most: Millimetre; readonly mostBend: Micrometre },
): Millimetre {
  const usual = usualFeed(setting, feedForChip.value({ hmax: hmaxOf(setting), r: ae / setting.mill.diameter }))
  const least = Math.min(usual, THINNEST_MILLING_CHIP.feedPerTooth)
  const stoodAt = (part: number): Millimetre =>
    stoodFeed(task, setting, { unit: setting.finishForce(most / part, ae), mostBend })
  const bends = (part: number): Micrometre => staysAfter(task, setting, { depth: most / part, ae, fz: least })
  const stands = PARTS.find(part => stoodAt(part) >= least) ?? PARTS.find(part => bends(part) <= mostBend)
  return most / (stands ?? 1)
}

/** A spring pass takes what the bend has left, and bends by as much less: that is what stays on the wall. */
function staysAfter(
  { material }: CuttingTask,
  { mill, finishForce }: EndMillSetting,
  { depth, ae, fz }: { readonly depth: Millimetre; readonly ae: Millimetre; readonly fz: Millimetre },
): Micrometre {
  const bend = (radial: Millimetre): Micrometre =>
    bendFor(mill, finishForce(depth, radial) * fz ** (1 - material.force.mc))
  return bend(Math.min(ae, millimetres(bend(ae))))
}

const hmaxOf = ({ feedPerTooth }: EndMillSetting): Millimetre => MILLING_STARTS.finishChip * feedPerTooth

const usualFeed = ({ feedPerTooth }: EndMillSetting, thinned: Millimetre): Millimetre =>
  Math.min(thinned, MOST_FEED_FOR_THINNING * feedPerTooth)

/** The force goes with a power of the feed, so the feed that the cutter just stands follows at once. `unit`: at 1 mm a tooth. */
const stoodFeed = (
  { material }: CuttingTask,
  setting: EndMillSetting,
  { unit, mostBend }: { readonly unit: Newton; readonly mostBend: Micrometre },
): Millimetre => (limitOf(setting, mostBend) / unit) ** (1 / (1 - material.force.mc))

/** Force at the tip that neither bends the cutter too far nor leaves it too small a margin. */
const limitOf = ({ mill }: EndMillSetting, mostBend: Micrometre): Newton =>
  Math.min(mostBend / bendFor(mill, 1), strengthLimit(mill, BREAKAGE_MARGIN.least))

export function sideCut(
  task: CuttingTask,
  setting: EndMillSetting,
  {
    depth,
    ae,
    mostBend,
    about: named,
  }: {
    readonly depth: Millimetre
    readonly ae: Millimetre
    readonly mostBend: Micrometre
    readonly about: string
  },
): SideCut {
  const { notebook, operation, material } = task
  const { mill, spindleSpeed: n } = setting
  const about = { operation: operation.number, about: named }
  const r = ae / mill.diameter
  const usual = usualFeed(setting, notebook.use(feedForChip, told(SETTLED, { hmax: hmaxOf(setting), r }), about))
  const unit = setting.finishForce(depth, ae)
  const mc1 = 1 - material.force.mc
  // Corners are no harder on it than straights, since the feed is slowed in them.
  const stood = stoodFeed(task, setting, { unit, mostBend })
  const fz = Math.min(usual, Math.max(stood, Math.min(usual, THINNEST_MILLING_CHIP.feedPerTooth)))
  const force = unit * fz ** mc1
  const vf = notebook.use(
    millingFeed,
    { ...told(SETTLED, { fz, n }), ...told(ofTool(task, mill), { z: mill.teeth }) },
    about,
  )
  const hm = Math.max(notebook.use(meanChip, told(SETTLED, { fz, r }), about), THINNEST_MILLING_CHIP.chip)
  const kc = specificCuttingForce.value({ ...material.force, h: hm, K: FORCE_FACTORS.worn })
  const strained = strainOf(task, mill, force)
  return {
    feed: fz,
    tableFeed: vf,
    stays: staysAfter(task, setting, { depth, ae, fz }),
    strain: {
      force,
      forceBand: { least: 0.5 * force, most: 1.5 * force },
      power: notebook.use(
        millingPower,
        { ...told(SETTLED, { ap: depth, ae }), vf, ...told(worked('specific force at the mean chip'), { kc }) },
        about,
      ),
      ...strained,
      ...(fz < usual
        ? {
            limitedBy:
              mostBend / bendFor(mill, 1) < strengthLimit(mill, BREAKAGE_MARGIN.least)
                ? `bend of the cutter, ${figure(mostBend)} µm`
                : marginReason(BREAKAGE_MARGIN.least),
          }
        : {}),
    },
  }
}
