import { BREAKTHROUGH, ENTRY_POLICY, entryLength, slopeOfEntry } from '../handbook/drill-entry.ts'
import { drillChipThickness, drillPower, drillThrust, drillTorque } from '../handbook/drilling.ts'
import { HELIX_HOLE, helixFeed, helixPath } from '../handbook/helical-entry.ts'
import { FORCE_FACTORS, specificCuttingForce } from '../handbook/kienzle.ts'
import { MILLING_STARTS } from '../handbook/milling-speeds.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { feedRate } from '../handbook/turning.ts'
import type { Drill } from '../shop/tool.ts'
import type { Degree, Millimetre } from '../units.ts'
import { type CuttingTask, START_AT_SMALL } from './cutting-task.ts'
import { drillThrustBand } from './drill-thrust-band.ts'
import type { EndMillSetting } from './end-mill-setting.ts'
import { figure } from './figure.ts'
import { spindleFor } from './spindle.ts'
import type { Step } from './step.ts'

export type Entry = {
  readonly port: string
  readonly named: string
  readonly diameter: Millimetre
  /** Angle between the hole and the normal of the outside where it enters. */
  readonly slope: Degree
  /** Wall along the hole. */
  readonly wall: Millimetre
}

/** Angle at which the hole meets the outside: the tilt, and the distance of the hole from the axis plane. */
export const entrySlope = (
  { notebook, operation }: CuttingTask,
  named: string,
  tilt: Degree,
  offset: Millimetre,
  outside: Millimetre,
): Degree =>
  notebook.use(
    slopeOfEntry,
    { theta: Math.abs(tilt), q: Math.min(1, Math.abs(offset) / (outside / 2)) },
    { operation: operation.number, about: named },
  )

const policyFor = (slope: Degree): (typeof ENTRY_POLICY)[number] | undefined =>
  ENTRY_POLICY.find(({ upTo }) => slope <= upTo)

/** On a steep face the cutter winds a flat first, or the drill would run off. */
export function flatFor(task: CuttingTask, setting: EndMillSetting, entry: Entry): Step | undefined {
  if (policyFor(entry.slope)?.first !== 'mill a flat') return undefined
  const hole = Math.max(entry.diameter, HELIX_HOLE.least * setting.mill.diameter)
  const depth = hole * Math.tan((entry.slope * Math.PI) / 180) + FLAT_BEYOND
  return windDown(task, setting, entry, {
    action: `mill a flat for the entry hole, ${entry.named}`,
    hole,
    depth,
    why: `the face slopes ${figure(entry.slope)}°`,
  })
}

/** Without a drill the cutter winds itself down through the wall: far slower, but it starts anywhere. */
export const windThrough = (task: CuttingTask, setting: EndMillSetting, entry: Entry, depth: Millimetre): Step =>
  windDown(task, setting, entry, {
    action: `wind down through the wall, ${entry.named}`,
    hole: HELIX_HOLE.least * setting.mill.diameter,
    depth,
    why: 'no drill on hand for the entry hole',
  })

function windDown(
  { notebook, operation }: CuttingTask,
  { mill, row, ...setting }: EndMillSetting,
  entry: Entry,
  { action, hole, depth, why }: { action: string; hole: Millimetre; depth: Millimetre; why: string },
): Step {
  const about = { operation: operation.number, about: entry.named }
  const edgeFeed = row.rampFeed * setting.tableFeed
  const vf = notebook.use(helixFeed, { vf: edgeFeed, Dh: hole, D: mill.diameter }, about)
  const path = notebook.use(helixPath, { a: depth, epsilon: MILLING_STARTS.ramp }, about)
  return {
    tool: mill.name,
    action,
    feature: entry.port,
    cuttingSpeed: setting.cuttingSpeed,
    spindleSpeed: setting.spindleSpeed,
    feed: row.rampFeed * setting.feedPerTooth,
    feedUnit: 'mm/tooth',
    tableFeed: vf,
    depth,
    passes: 1,
    time: path / vf + SHOP_TIMES.rapid,
    remarks: [START_AT_SMALL, `helix to ${figure(hole)} mm at ${MILLING_STARTS.ramp}°: ${why}`],
  }
}

/** Depth of the flat beyond its low side. Common practice, no source. */
const FLAT_BEYOND: Millimetre = 0.1
const FACTOR = FORCE_FACTORS.boringDrillingMilling * FORCE_FACTORS.worn

/** The hole that the cutter goes down in, drilled from outside through one wall. */
export function drillEntry(task: CuttingTask, drill: Pick<Drill, 'name' | 'diameter' | 'point'>, entry: Entry): Step {
  const { machine, material, notebook, operation } = task
  const about = { operation: operation.number, about: entry.named }
  const D = drill.diameter
  const policy = policyFor(entry.slope)
  const flat = policy?.first === 'mill a flat'
  const { spindleSpeed: n, cuttingSpeed, limitedBy } = spindleFor(machine, material.drilling.speed, D, notebook, about)
  const feed = material.drilling.feed * D
  const vf = notebook.use(feedRate, { f: feed, n }, about)
  // The flat is square to the drill; the bore is not, and slopes about as much as the outside does.
  const slope = Math.min(entry.slope, STEEPEST_EXIT)
  const into = notebook.use(entryLength, { D, theta: flat ? 0 : slope, sigma: drill.point }, about)
  const out = notebook.use(entryLength, { D, theta: slope, sigma: drill.point }, about)
  const slowIn = flat ? 0 : BREAKTHROUGH.clearance + into
  const slowOut = out + BREAKTHROUGH.beyond
  const full = Math.max(0, BREAKTHROUGH.clearance + entry.wall + out + BREAKTHROUGH.beyond - slowIn - slowOut)
  const share = policy?.feedShare ?? BREAKTHROUGH.feedShare
  const time = full / vf + slowIn / (share * vf) + slowOut / (BREAKTHROUGH.feedShare * vf)

  const h = notebook.use(drillChipThickness, { f: feed, sigma: drill.point }, about)
  const { kc11, mc } = material.force
  const kc = notebook.use(specificCuttingForce, { kc11, mc, h, K: FACTOR }, about)
  const M = notebook.use(drillTorque, { kc, f: feed, D }, about)
  const thrust = notebook.use(drillThrust, { kc, f: feed, D, sigma: drill.point }, about)
  return {
    tool: drill.name,
    action: `drill the entry hole, ${entry.named}`,
    feature: entry.port,
    cuttingSpeed,
    spindleSpeed: n,
    feed,
    feedUnit: 'mm/rev',
    tableFeed: vf,
    depth: entry.wall,
    passes: 1,
    time: time + SHOP_TIMES.rapid,
    force: thrust,
    forceBand: drillThrustBand(material, D, feed, thrust),
    power: notebook.use(drillPower, { M, n }, about),
    ...(limitedBy ? { limitedBy } : {}),
    remarks: [
      START_AT_SMALL,
      'from outside through one wall only; half feed at break-through',
      ...(share < 1 && !flat ? [`face slopes ${figure(entry.slope)}°: half feed until the drill is in`] : []),
    ],
  }
}

/** Past this the corner of a 140° drill leaves before its point does: the exit is as long as there. */
const STEEPEST_EXIT: Degree = 60
