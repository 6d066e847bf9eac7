import { BREAKTHROUGH, ENTRY_POLICY, entryLength, slopeOfEntry } from '../handbook/drill-entry.ts'
import { HELIX_HOLE, helixFeed, helixPath } from '../handbook/helical-entry.ts'
import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { told, worked } from '../known.ts'
import { ENTRY_CLEARANCE, ENTRY_WALL } from '../ports/entry-hole.ts'
import type { CutShape } from '../ports/path/tool-path.ts'
import type { Degree, Millimetre } from '../units.ts'
import { type CuttingTask, START_AT_SMALL } from './cutting-task.ts'
import { drillSetting } from './drill-cut.ts'
import { figure } from './figure.ts'
import type { Step } from './step.ts'
import { AS_CUT, ofTool, PRACTICE, SETTLED } from './where-from.ts'
import { type MadeCut, madeCut, measuredCut, type WindowJob } from './window-job.ts'

/** Angle at which the hole meets the outside: the tilt, and the distance of the hole from the axis plane. */
export const entrySlope = (
  { notebook, operation }: CuttingTask,
  named: string,
  { tilt, offset, outside }: { readonly tilt: Degree; readonly offset: Millimetre; readonly outside: Millimetre },
): Degree =>
  notebook.use(
    slopeOfEntry,
    told(worked('tilt of the set-up, and place of the entry hole on the outside'), {
      theta: Math.abs(tilt),
      q: Math.min(1, Math.abs(offset) / (outside / 2)),
    }),
    { operation: operation.number, about: named },
  )

const policyFor = (slope: Degree): (typeof ENTRY_POLICY)[number] | undefined =>
  ENTRY_POLICY.find(({ upTo }) => slope <= upTo)

/** On a steep face the cutter winds a flat first, or the drill would run off. */
export function flatFor(task: CuttingTask, job: WindowJob): MadeCut | undefined {
  if (policyFor(job.slope)?.first !== 'mill a flat') return undefined
  return windDown(task, job, {
    kind: 'flat',
    action: `mill a flat for the entry hole, ${job.named}`,
    hole: Math.max(job.window.entryHole.diameter, wound(job)),
    why: `the face slopes ${figure(job.slope)}°`,
  })
}

/** Without a drill the cutter winds itself down through the wall: far slower, but it starts anywhere. */
export const windThrough = (task: CuttingTask, job: WindowJob): MadeCut =>
  windDown(task, job, {
    kind: 'wind down',
    action: `wind down through the wall, ${job.named}`,
    hole: wound(job),
    why: 'no drill on hand for the entry hole',
  })

/** Diameter of a hole that the cutter winds, as far as the window has room for it. */
function wound({ roughing: { mill }, window: { entryHole } }: WindowJob): Millimetre {
  const room = 2 * (entryHole.room - ENTRY_WALL)
  return Math.max(mill.diameter + ENTRY_CLEARANCE, Math.min(HELIX_HOLE.least * mill.diameter, room))
}

function windDown(
  task: CuttingTask,
  job: WindowJob,
  { kind, action, hole, why }: { kind: 'flat' | 'wind down'; action: string; hole: Millimetre; why: string },
): MadeCut {
  const { notebook, operation } = task
  const { mill, row, ...setting } = job.roughing
  const about = { operation: operation.number, about: job.named }
  const edgeFeed = row.rampFeed * setting.tableFeed
  const vf = notebook.use(
    helixFeed,
    { ...told(SETTLED, { vf: edgeFeed, Dh: hole }), ...told(ofTool(task, mill), { D: mill.diameter }) },
    about,
  )
  const shape = { kind, cutter: mill.diameter, hole, ramp: MILLING_STARTS.ramp } as const
  const cut = measuredCut(job, shape, vf)
  const depth = cut.down
  notebook.use(helixPath, { ...told(AS_CUT, { a: depth }), ...told(PRACTICE, { epsilon: MILLING_STARTS.ramp }) }, about)
  const step: Step = {
    tool: mill.name,
    action,
    feature: job.port.name,
    cuttingSpeed: setting.cuttingSpeed,
    spindleSpeed: setting.spindleSpeed,
    feed: row.rampFeed * setting.feedPerTooth,
    feedUnit: 'mm/tooth',
    tableFeed: vf,
    depth,
    passes: 1,
    time: cut.time + SHOP_TIMES.rapid,
    remarks: [START_AT_SMALL, `helix to ${figure(hole)} mm at ${MILLING_STARTS.ramp}°: ${why}`],
  }
  return madeCut(step, shape, cut)
}

/** The hole that the cutter goes down in, drilled from outside through one wall. */
export function drillEntry(task: CuttingTask, job: WindowJob): MadeCut | undefined {
  const { notebook, operation } = task
  const { drill, named, slope: faceSlope } = job
  if (!drill) return undefined
  const about = { operation: operation.number, about: named }
  const D = drill.diameter
  const policy = policyFor(faceSlope)
  const flat = policy?.first === 'mill a flat'
  const setting = drillSetting(task, drill, about)
  // The flat is square to the drill; the bore is not, and slopes about as much as the outside does.
  const slope = Math.min(faceSlope, STEEPEST_EXIT)
  const share = flat ? 1 : (policy?.feedShare ?? BREAKTHROUGH.feedShare)
  const entry = {
    ...told(ofTool(task, drill), { D, sigma: drill.point }),
    ...told(worked('slope of the face'), { theta: slope }),
  }
  const into = share === 1 ? 0 : notebook.use(entryLength, entry, about)
  const out = notebook.use(entryLength, entry, about)
  const shape: CutShape = {
    kind: 'drill',
    cutter: D,
    slowIn: { length: into, share },
    slowOut: { length: out + BREAKTHROUGH.beyond, share: BREAKTHROUGH.feedShare },
  }
  const cut = measuredCut(job, shape, setting.tableFeed)
  const step: Step = {
    tool: drill.name,
    action: `drill the entry hole, ${named}`,
    feature: job.port.name,
    ...setting,
    feedUnit: 'mm/rev',
    depth: job.window.plunge.wall,
    passes: 1,
    time: cut.time + SHOP_TIMES.rapid,
    remarks: [
      START_AT_SMALL,
      'from outside through one wall only; half feed at break-through',
      ...(share < 1 ? [`face slopes ${figure(faceSlope)}°: half feed until the drill is in`] : []),
    ],
  }
  return madeCut(step, shape, cut)
}

/** Past this the corner of a 140° drill leaves before its point does: the exit is as long as there. */
const STEEPEST_EXIT: Degree = 60
