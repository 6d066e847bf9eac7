import { breakLeft, EDGE_BREAK } from '../handbook/edge-break.ts'
import type { EdgeBreak } from '../ports/edge-plan.ts'
import type { PlannedPort } from '../ports/port.ts'
import type { Crank } from '../ports/timing.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { MilledEdge } from './edge-chain.ts'

const upToStep = (value: Millimetre): Millimetre => Math.ceil(value * 100 - 1e-6) / 100

/**
 * A timing edge is broken no more than what finishing the bore takes away again and the finished break leaves: the corner
 * that the drawing places stays in reach, and the port opens little sooner than it says.
 */
export function edgeBreakOf({
  planned: { name, top, role },
  milled: { slope: k, taken },
  crank,
  notebook,
  hardened,
}: {
  readonly planned: PlannedPort
  readonly milled: MilledEdge
  readonly crank: Crank | undefined
  readonly notebook: Notebook
  readonly hardened: boolean
}): EdgeBreak {
  const { least, most } = EDGE_BREAK.afterHoning
  const about = { about: name }
  const eaten = Math.max(0, taken.nominal * (1 - k))
  const floor = hardened ? EDGE_BREAK.timing : { least, most }
  const broken = {
    least: Math.max(floor.least, upToStep(least + eaten)),
    most: Math.max(floor.most, upToStep(most + eaten)),
  }
  const [deepest, shallowest] = k <= 1 ? [taken.least, taken.most] : [taken.most, taken.least]
  const left = {
    // Where finishing takes more, the stone breaks the edge anew.
    least: Math.max(least, notebook.use(breakLeft, { b: broken.least, s: shallowest, k }, about)),
    most: Math.max(most, notebook.use(breakLeft, { b: broken.most, s: deepest, k }, about)),
  }
  if (!crank || role === 'inlet') return { broken, taken: { least: taken.least, most: taken.most }, left }
  const sharp = crank.opensAt(top, about)
  const sooner = (by: Millimetre) => sharp - crank.opensAt(top - by, about)
  return {
    broken,
    taken: { least: taken.least, most: taken.most },
    left,
    sooner: { least: sooner(left.least), most: sooner(left.most) },
  }
}

/** Over all ports: the least and the most that a timing edge is broken before the bore is finished. */
export function timingBreak(ports: readonly PlannedPort[]): EdgeBreak['broken'] | undefined {
  const all = ports.flatMap(({ edge }) => (edge?.edgeBreak ? [edge.edgeBreak.broken] : []))
  if (all.length === 0) return undefined
  return { least: Math.min(...all.map(({ least }) => least)), most: Math.max(...all.map(({ most }) => most)) }
}
