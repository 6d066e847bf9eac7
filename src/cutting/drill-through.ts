import { BREAKTHROUGH, pointLength } from '../handbook/drill-entry.ts'
import { LEAST_BORING_STOCK } from '../handbook/drilling-speeds.ts'
import { TURNING_STARTS } from '../handbook/turning-speeds.ts'
import { handOrGet } from '../shop/tools-to-get.ts'
import type { Millimetre } from '../units.ts'
import { type CuttingTask, START_AT } from './cutting-task.ts'
import { hasChangeableEdges } from './drill-cut.ts'
import { drilledStep } from './drilled-step.ts'
import { figure } from './figure.ts'
import type { Step } from './step.ts'
import { sayToGet } from './to-get.ts'

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
  const { shop } = task
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

  const step = drilledStep({
    task,
    drill,
    action: 'drill through',
    feature: 'bore',
    length,
    ends: 'through',
    remarks: [
      START_AT,
      'ease the feed by half at break-through; guard the exit side, a disc may fly out',
      ...(hasChangeableEdges(drill) ? ['drill with changeable edges: no pilot hole'] : []),
    ],
  })
  return { diameter: drill.diameter, step }
}
