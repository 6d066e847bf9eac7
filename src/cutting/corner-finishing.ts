import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { headSense } from '../machine-frame.ts'
import { cornerLines, mostLeft } from '../ports/path/corners.ts'
import { wallLevels } from '../ports/path/levels.ts'
import type { TimingSide } from '../ports/path/tool-path.ts'
import { cornerArc, wallFloors } from '../ports/path/wall-floor.ts'
import { type Millimetre, micrometres } from '../units.ts'
import { type CuttingTask, START_AT_SMALL } from './cutting-task.ts'
import { figure } from './figure.ts'
import { finishingDepth, sideCut, soonestClearing } from './side-cut.ts'
import type { Step } from './step.ts'
import { arcRemark, cornerFeed, mostBendOf, mostLevel, reportBend, reportLevels, twice } from './window-finishing.ts'
import { type MadeCut, madeCut, measuredCut, type WindowJob, wallFeeds, wallStep } from './window-job.ts'

/** What a larger cutter left in the corners of a wall that it finished: the same, and once more without infeed. */
export function finishCorners(task: CuttingTask, job: WindowJob): readonly MadeCut[] {
  const { setting, window, named } = job
  const left = leftIn(task, job)
  const D = setting.mill.diameter
  if (!left || cornerLines(window, D, left).length === 0) return []
  const ae = Math.min(setting.wallStock, mostLeft(window, left))
  const mostBend = mostBendOf(task, job)
  const most = finishingDepth(task, setting, { ae, most: mostLevel(setting), mostBend })
  const arc = cornerArc(window, D, left)
  const way = { cutter: D, arc, ...left }
  const floors = wallFloors(window, { kind: 'finish corners', levels: 1, ...wallFeeds(1), ...way })
  const planned = wallLevels(floors, most)
  if (!planned) return []
  const cut = sideCut(task, setting, { depth: planned.depth, ae, mostBend, about: named })
  reportBend(task, { mill: setting.mill, named, mostBend, cut })
  reportLevels(task, { setting, named: `the corners of ${named}`, ...planned })
  const corner = Math.max(D / 2, window.tightestCorner ?? window.largestCutter / 1.6)
  const shape = { levels: planned.levels, ...wallFeeds(cut.tableFeed), ...way }
  return twice(job, setting, cut, {
    ...planned,
    remarks: [
      START_AT_SMALL,
      `take ${figure(ae)} mm off the corners; climb milling`,
      ...cornerFeed(task, job, { vf: cut.tableFeed, mill: setting.mill, corner }),
      arcRemark(arc),
      'over the timing edge without leaving it',
    ],
    finish: { kind: 'finish corners', ...shape },
    spring: { kind: 'spring corners', ...shape },
    actions: [`finish the corners of ${named}`, `spring pass in the corners of ${named}`],
  })
}

type Left = { readonly after: Millimetre; readonly rounded: Millimetre; readonly timing: TimingSide }

const leftIn = (task: CuttingTask, job: WindowJob): Left | undefined =>
  job.left && { after: job.roughing.mill.diameter, rounded: job.left.rounded, timing: timingSide(task, job) }

/** The metal that a larger cutter left in the corners, in thin passes along the wall, down to what finishing takes. */
export function clearCorners(task: CuttingTask, job: WindowJob): readonly MadeCut[] {
  const { setting, window, named } = job
  const left = leftIn(task, job)
  if (!left) return []
  const D = setting.mill.diameter
  const thick = mostLeft(window, left) - setting.wallStock
  if (thick <= 0) return []
  const mostBend = micrometres(MILLING_STARTS.bendOfWallStock * setting.wallStock)
  const { ways, ae, depth: most } = soonestClearing(task, setting, { thick, most: mostLevel(setting), mostBend })
  const stocks = Array.from({ length: ways }, (_, i) => setting.wallStock + (thick * (ways - 1 - i)) / ways).filter(
    stock => cornerLines(window, D, { ...left, stock }).length > 0,
  )
  const way = { kind: 'clear corners', cutter: D, arc: 0, ...left, stocks } as const
  const planned = wallLevels(wallFloors(window, { ...way, levels: 1, ...wallFeeds(1) }), most)
  if (!planned) return []
  const { levels, depth } = planned
  const along = sideCut(task, setting, { depth, ae, mostBend, about: named })
  const shape = { ...way, levels, ...wallFeeds(along.tableFeed) }
  const cut = measuredCut(job, shape, along.tableFeed)
  const step: Step = {
    ...wallStep(job, setting, along, { levels, depth, time: cut.time }),
    action: `clear the corners of ${named}`,
    ...along.strain,
    remarks: [
      START_AT_SMALL,
      `up to ${figure(thick + setting.wallStock)} mm thick: ${stocks.length} ${stocks.length > 1 ? 'ways' : 'way'} along the wall at each level, ${figure(ae)} mm each; leave ${figure(setting.wallStock)} mm`,
    ],
  }
  return [madeCut(step, shape, cut)]
}

/** A piston's crown uncovers the top edge, its skirt the bottom edge of an inlet. */
const timingSide = ({ shop }: CuttingTask, { port }: WindowJob): TimingSide =>
  (port.role === 'inlet' ? -1 : 1) * headSense(shop.fixture) > 0 ? '+X' : '-X'
