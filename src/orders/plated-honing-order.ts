import type { PlatingPlan } from '../plating/plating-plan.ts'
import { type OrderedOperation, type OrderFigures, type OrderSource, sentence } from './outside-order.ts'
import { asked } from './plating-order.ts'

/** The plating, where it is what this operation cuts. */
export const platedIn = ({ plating }: OrderSource, { purpose, surfaces }: OrderedOperation): PlatingPlan | undefined =>
  purpose === 'hone-bore' && plating && surfaces.includes(plating.surface) ? plating : undefined

/** What the honer does at the ports, before plating and after. */
export function portEdges(
  { ports, plating }: OrderSource,
  { purpose }: OrderedOperation,
  plated: PlatingPlan | undefined,
  { length, unit }: OrderFigures,
): readonly string[] {
  if (plating && purpose === 'hone-for-plating') {
    return ['The edges are chamfered for plating: leave the chamfers as they are, no burr, no chip.']
  }
  if (plated && ports.length > 0) {
    return ['Lap the build-up off the port edges before honing. No dwell at the ports; no chip, no lifted layer.']
  }
  return ports.length > 0
    ? [
        `Do not dwell at the ports. Deburr every edge by hand afterwards and break it ${length(0.05, 2)} to ${length(0.1, 2)} ${unit}; no chip, no bruise.`,
      ]
    : ['No ports. Break the edges that the cut leaves sharp.']
}

/** What lies on the bore, and what of it must stay. */
export function platedArrival(plated: PlatingPlan, figures: OrderFigures): string {
  const { length, unit } = figures
  const { process, surface, layer } = plated
  return `${sentence(process)} on ${surface}, ${length(layer.least)} to ${length(layer.most)} ${unit} a side; ${asked(plated, figures)} must be left. The plater's thickness by piece comes with the parts.`
}
