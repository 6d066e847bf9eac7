import { breakLeft, breakPlated, EDGE_BREAK } from '../handbook/edge-break.ts'
import { told, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import type { PlatingPlan } from '../plating/plating-plan.ts'
import type { EdgeBreak } from '../ports/edge-plan.ts'
import { skirtTiming } from '../ports/inlet-timing.ts'
import type { PlannedPort } from '../ports/port.ts'
import type { Crank } from '../ports/timing.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { MilledEdge } from './edge-chain.ts'

type Asked = {
  readonly part: Part
  readonly planned: PlannedPort
  readonly milled: MilledEdge
  readonly crank: Crank | undefined
  readonly notebook: Notebook
  /** The plating of the bore that the port opens into. */
  readonly plating: PlatingPlan | undefined
}

/**
 * A timing edge is broken no more than what finishing the bore takes away again and the finished break leaves: the corner
 * that the drawing places stays in reach, and the port opens little sooner than it says. A plated one is chamfered as much
 * as the plating wants.
 */
export function edgeBreakOf(asked: Asked): EdgeBreak {
  const { planned, plating } = asked
  const of = planned.bySkirt ? 'bottom' : 'top'
  const made = plating ? platedOver(asked, plating) : broken(asked, of)
  const { least, most } = made.left
  const sooner = soonerBy(asked, of, most)
  return { of, ...made, ...(sooner && { sooner: { least: sooner(least), most: sooner(most) } }) }
}

const PLANNED = worked('break planned for the bench')
const TAKEN = worked('taken off the bore, and slope of the wall')
const PLATED = worked('chamfer for plating, layer as plated and left')

const upToStep = (value: Millimetre): Millimetre => Math.ceil(value * 100 - 1e-6) / 100

function broken({ part, planned, milled: { slope, taken }, notebook }: Asked, of: EdgeBreak['of']) {
  const { least, most } = EDGE_BREAK.afterHoning
  const about = { about: planned.name }
  // The corner of a bottom edge moves away from the break where that of a top edge moves toward it.
  const k = of === 'top' ? slope : 0 - slope
  const eaten = Math.max(0, taken.nominal * (1 - k))
  const floor = part.hardening ? EDGE_BREAK.timing : { least, most }
  const broken = {
    least: Math.max(floor.least, upToStep(least + eaten)),
    most: Math.max(floor.most, upToStep(most + eaten)),
  }
  const [deepest, shallowest] = k <= 1 ? [taken.least, taken.most] : [taken.most, taken.least]
  return {
    broken,
    taken: { least: taken.least, most: taken.most },
    left: {
      // Where finishing takes more, the stone breaks the edge anew.
      least: Math.max(
        least,
        notebook.use(breakLeft, { ...told(PLANNED, { b: broken.least }), ...told(TAKEN, { s: shallowest, k }) }, about),
      ),
      most: Math.max(
        most,
        notebook.use(breakLeft, { ...told(PLANNED, { b: broken.most }), ...told(TAKEN, { s: deepest, k }) }, about),
      ),
    },
  }
}

function platedOver({ planned, notebook }: Asked, { chamfer, layer, left }: PlatingPlan) {
  const { least, most } = EDGE_BREAK.afterHoning
  const about = { about: planned.name }
  return {
    broken: { least: chamfer.least, most: chamfer.most },
    taken: { least: -left.most, most: -left.least },
    layer: { least: layer.least, most: layer.most },
    left: {
      least: Math.max(
        least,
        notebook.use(breakPlated, told(PLATED, { b: chamfer.least, p: layer.most, t: left.least }), about),
      ),
      most: Math.max(
        most,
        notebook.use(breakPlated, told(PLATED, { b: chamfer.most, p: layer.least, t: left.most }), about),
      ),
    },
  }
}

/**
 * Crank degrees that a break along the bore is worth, up to the most that is left of it; nothing where neither crown nor skirt
 * times the port, or where the crown at top dead centre does not cover so much.
 */
function soonerBy(
  { part, planned: { name, top, bottom, role, bySkirt }, crank }: Asked,
  of: EdgeBreak['of'],
  most: Millimetre,
): ((by: Millimetre) => number) | undefined {
  if (!crank) return undefined
  if (of === 'bottom') {
    const sharp = bySkirt?.opensBefore ?? 0
    return by => (skirtTiming({ engine: part.engine, name, floor: bottom + by, crank })?.opensBefore ?? sharp) - sharp
  }
  if (role === 'inlet' || !(top - most > (part.engine?.crownBelowTop ?? 0))) return undefined
  const about = { about: name }
  const sharp = crank.opensAt(top, about)
  return by => sharp - crank.opensAt(top - by, about)
}

/** Over all ports whose edges stay bare: the least and the most that a timing edge is broken before the bore is finished. */
export function timingBreak(ports: readonly PlannedPort[]): EdgeBreak['broken'] | undefined {
  const all = ports.flatMap(({ edge }) => (edge?.edgeBreak && !edge.edgeBreak.layer ? [edge.edgeBreak.broken] : []))
  if (all.length === 0) return undefined
  return { least: Math.min(...all.map(({ least }) => least)), most: Math.max(...all.map(({ most }) => most)) }
}
