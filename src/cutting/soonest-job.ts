import { LARGEST_CUTTER_IN_CORNER } from '../handbook/end-milling.ts'
import { HELIX_HOLE } from '../handbook/helical-entry.ts'
import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { wallLoops } from '../ports/path/along-wall.ts'
import { roughLoops } from '../ports/path/floors.ts'
import { roughLevels } from '../ports/path/levels.ts'
import { rampLength } from '../ports/path/roughing.ts'
import type { EndMill } from '../shop/tool.ts'
import { type Millimetre, type Minute, millimetres } from '../units.ts'
import { openNotebook } from '../working.ts'
import { clearCorners, finishCorners } from './corner-finishing.ts'
import type { CuttingTask } from './cutting-task.ts'
import { bendFor, type EndMillSetting } from './end-mill-setting.ts'
import { drillEntry, flatFor, windThrough } from './entry-drilling.ts'
import { rougherFor } from './port-tools.ts'
import { finishWindow } from './window-finishing.ts'
import { type MadeCut, slotFeeds, type WindowJob } from './window-job.ts'
import { roughWindow } from './window-roughing.ts'

type Settled = Omit<WindowJob, 'roughing' | 'left' | 'ramps'>

/**
 * How a window is cut soonest: with one cutter, or with a larger one that roughs it and finishes its wall as far as it reaches,
 * or leaves all finishing to the small one; from an entry hole, or down a ramp where the hole asks for a flat or has no drill.
 * The larger leaves a radius in the corners in which it does not dwell. Every way is laid as it would be run, with the tools
 * brought in and the turns to the window.
 */
export function soonestJob(
  task: CuttingTask,
  settled: Settled,
  settingOf: (mill: EndMill) => EndMillSetting,
): WindowJob {
  const silent: CuttingTask = { ...task, notebook: openNotebook(), report: () => undefined }
  const rougher = rougherFor(task, settled.window)
  const alone: WindowJob = { ...settled, roughing: settled.setting, ramps: false }
  const both = rougher && withRougher(silent, alone, settingOf(rougher))
  // The small one alone is not even laid out where its slot cannot be as quick.
  if (both && aboutTime(alone) > both.time) return both.job
  const entered = soonestEntry(silent, alone)
  if (!both) return entered.job
  return both.time < entered.time + timeOf(finishWindow(silent, alone)) ? both.job : entered.job
}

type Timed = { readonly job: WindowJob; readonly time: Minute }

/** A window hardly larger than the cutter, or with a neck, has no single way round for it. */
function withRougher(task: CuttingTask, alone: WindowJob, larger: EndMillSetting): Timed | undefined {
  const { window, setting } = alone
  const D = larger.mill.diameter
  const rounded = D / 2 / LARGEST_CUTTER_IN_CORNER
  const fits = wallLoops(window, D, rounded).length === 1 && roughLoops(window, D, 0).length === 1
  if (!fits) return undefined
  const entered = soonestEntry(task, { ...alone, roughing: leaving(larger, setting.wallStock) })
  const leftTo = (finishesWall: boolean): WindowJob => ({ ...entered.job, left: { rounded, finishesWall } })
  const [job, other] = [leftTo(true), leftTo(false)]
  // The corners are cleared alike, whichever finishes the wall.
  const before = entered.time + timeOf(clearCorners(task, job)) + BRING_IN
  const larges = { job, time: before + timeOf([...finishWindow(task, job), ...finishCorners(task, job)]) }
  const smalls = { job: other, time: before + timeOf(finishWindow(task, other)) }
  return STIFFER * larges.time < smalls.time ? larges : smalls
}

/**
 * The wall off the stiffer cutter is truer, and the small one, which then cuts only corners, lasts: worth a twentieth of the
 * time. Common practice, no source.
 */
const STIFFER = 0.95
const BRING_IN: Minute = SHOP_TIMES.toolChange + SHOP_TIMES.index

/** Roughed from an entry hole or down a ramp. */
function soonestEntry(task: CuttingTask, job: WindowJob): Timed {
  const flat = job.drill && flatFor(task, job)
  const drilled = job.drill && drillEntry(task, job)
  const entry = [flat ?? [], drilled ?? [], job.drill ? [] : windThrough(task, job)].flat()
  const brought = (flat ? 1 : 0) + (drilled ? 1 : 0) + 1
  const hole = { job, time: timeOf([...entry, ...roughWindow(task, job)]) + brought * BRING_IN }
  const down = flat || !drilled ? ramped(job) : undefined
  if (!down) return hole
  const time = timeOf(roughWindow(task, down)) + BRING_IN
  return time < hole.time ? { job: down, time } : hole
}

/** Where the way round is at least that of a helix, and single. */
function ramped(job: WindowJob): WindowJob | undefined {
  const { window, roughing } = job
  const D = roughing.mill.diameter
  const levels = roughLevels(window, { cutter: D, wallStock: roughing.wallStock, most: roughing.mostDepth })
  if (!levels || roughLoops(window, D, levels.wallStock).length !== 1) return undefined
  const shortest = Math.PI * (HELIX_HOLE.least - 1) * D
  if (rampLength(window, { cutter: D, ...levels, ...slotFeeds(1) }) < shortest) return undefined
  const { drill: _, ...without } = job
  return { ...without, ramps: true }
}

/**
 * Left on the wall for whichever cutter finishes it: no more than the small one wants, unless it is too little for the larger
 * or that bends by more than half of it.
 */
function leaving(larger: EndMillSetting, wanted: Millimetre): EndMillSetting {
  const { mill, mostDepth, unitForce } = larger
  const bend = millimetres(bendFor(mill, mostDepth * unitForce))
  const { bendOfWallStock, leastWallStock } = MILLING_STARTS
  const wallStock = Math.max(wanted, bend / bendOfWallStock, leastWallStock * mill.diameter)
  return { ...larger, wallStock: Math.min(larger.wallStock, wallStock) }
}

const timeOf = (cuts: readonly MadeCut[]): Minute => cuts.reduce((sum, { step }) => sum + step.time, 0)

/** Round the slug once for each level, the least that roughing takes. */
const aboutTime = ({ window, setting: { mostDepth, tableFeed } }: WindowJob): Minute =>
  (window.pathLength * Math.ceil(window.plunge.wall / mostDepth)) / tableFeed
