import { BREAKTHROUGH, pointLength } from '../handbook/drill-entry.ts'
import { DRILL_FEED_LIMIT, LEAST_BORING_STOCK } from '../handbook/drilling-speeds.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { cuttingSpeed, feedRate, turningTime } from '../handbook/turning.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import { fromHandbook, told, worked } from '../known.ts'
import { handOrGet } from '../shop/tools-to-get.ts'
import type { Kilowatt, Millimetre, MillimetrePerRevolution } from '../units.ts'
import { SCRATCH } from '../working.ts'
import { type CuttingTask, START_AT } from './cutting-task.ts'
import { drillForces } from './drill-cut.ts'
import { figure } from './figure.ts'
import { spindleFor } from './spindle.ts'
import type { Step } from './step.ts'
import { sayToGet } from './to-get.ts'
import { ofTool, PRACTICE, SETTLED } from './where-from.ts'

export type DrilledHole = { readonly diameter: Millimetre; readonly step: Step }

/** The largest drill on hand that goes right through and leaves the bore something to clean up. */
export const drillForBoring = (task: CuttingTask, bore: Millimetre, length: Millimetre): DrilledHole | undefined =>
  drillThrough(task, { least: 0, most: bore - LEAST_BORING_STOCK }, length, `, to be bored to ${figure(bore, 4)} mm`)

/** The largest drill on hand between two diameters that goes right through. */
export function drillThrough(
  task: CuttingTask,
  { least, most }: { readonly least: Millimetre; readonly most: Millimetre },
  length: Millimetre,
  purpose = '',
): DrilledHole | undefined {
  const { shop, machine, material, notebook, operation } = task
  const about = { operation: operation.number, about: 'bore' }
  const through = ({ diameter, point }: { diameter: Millimetre; point: number }): Millimetre =>
    length + pointLength.value({ D: diameter, sigma: point }) + TURNING_STARTS.overtravel + BREAKTHROUGH.clearance
  const drill = handOrGet(
    shop,
    'drill',
    drills =>
      drills
        .filter(
          tool =>
            tool.diameter >= least - 1e-9 && tool.diameter <= most + 1e-9 && tool.fluteLength >= through(tool) - 1e-9,
        )
        .toSorted((a, b) => b.diameter - a.diameter || a.fluteLength - b.fluteLength)[0],
  )
  if (!drill) {
    task.report({
      code: 'cutting/no-drill',
      severity: 'error',
      message: `no drill that is sold goes ${figure(length)} mm deep at ${least > 0 ? `${figure(least, 4)} to ${figure(most, 4)} mm` : `${figure(most)} mm or less`}${purpose}`,
      hint: 'have it drilled deep by agreement, or take tube',
      path: '/body/bore',
    })
    return undefined
  }

  sayToGet(task, drill, `${figure(length)} mm deep${purpose}`)

  const D = drill.diameter
  const changeable = D >= DRILL_FEED_LIMIT.changeableEdgesFrom
  let feed = Math.min(
    material.drilling.feed * D,
    changeable ? DRILL_FEED_LIMIT.changeableEdges : DRILL_FEED_LIMIT.solid,
  )
  const spindle = spindleFor({
    machine,
    ...told(fromHandbook(material.drilling.source), { wanted: material.drilling.speed }),
    ...told(ofTool(task, drill), { diameter: D }),
    notebook,
    about,
  })
  let { spindleSpeed: n } = spindle
  const limitedBy = spindle.limitedBy ? [spindle.limitedBy] : []
  const powerAt = (f: MillimetrePerRevolution): Kilowatt =>
    drillForces({ notebook: SCRATCH, material, drill, feed: f, n }).power
  const available = machine.power === undefined ? Infinity : machine.power * TURNING_STARTS.driveEfficiency
  if (powerAt(feed) > available) {
    limitedBy.push(`motor power ${machine.power} kW`)
    const share = (available / powerAt(feed)) ** (1 / (1 - material.force.mc))
    feed = Math.max(feed * share, Math.min(feed, DRILL_FEED_LIMIT.least))
    if (powerAt(feed) > available * (1 + 1e-9)) n *= available / powerAt(feed)
  }

  const { force, forceBand, power } = drillForces({ notebook, material, drill, feed, n, about })
  const point = notebook.use(pointLength, told(ofTool(task, drill), { D, sigma: drill.point }), about)
  const time = notebook.use(
    turningTime,
    {
      ...told(worked('length of the part and of the point'), { L: length + point }),
      ...told(PRACTICE, { La: TURNING_STARTS.approach, Lo: BREAKTHROUGH.clearance }),
      ...told(SETTLED, { i: 1, f: feed, n }),
    },
    about,
  )
  const step: Step = {
    tool: drill.name,
    action: 'drill through',
    feature: 'bore',
    cuttingSpeed: notebook.use(cuttingSpeed, { ...told(SETTLED, { n }), ...told(ofTool(task, drill), { D }) }, about),
    spindleSpeed: n,
    feed,
    feedUnit: 'mm/rev',
    tableFeed: notebook.use(feedRate, told(SETTLED, { f: feed, n }), about),
    depth: D / 2,
    passes: 1,
    time: time + SHOP_TIMES.rapid,
    force,
    forceBand,
    power,
    ...(limitedBy.length > 0 ? { limitedBy: limitedBy.join('; ') } : {}),
    remarks: [
      START_AT,
      'ease the feed by half at break-through; guard the exit side, a disc may fly out',
      ...(changeable ? ['drill with changeable edges: no pilot hole'] : []),
    ],
  }
  return { diameter: D, step }
}
