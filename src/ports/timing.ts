import {
  bottomDeadCentre,
  closingAngle,
  coveredHalfTurn,
  coveredTurnShift,
  crankThrow,
  edgeDepth,
  linkageLocks,
  openingAngle,
  pistonTravel,
  topDeadCentre,
  travelPerDegree,
} from '../handbook/slider-crank.ts'
import { fromPart, told, worked } from '../known.ts'
import type { Engine } from '../part/part.ts'
import type { Degree, Millimetre } from '../units.ts'
import type { About, Notebook } from '../working.ts'

/** An engine's stroke as its crank makes it. Open only for an engine whose linkage does not lock. */
export type Crank = {
  readonly depthAt: (angle: Degree, about: About) => Millimetre
  /** Depth of the crown's edge below the top face, without a working: for curves and integrals. */
  readonly crownDepth: (angle: Degree) => Millimetre
  readonly opensAt: (depth: Millimetre, about: About) => Degree
  readonly closesAt: (depth: Millimetre, about: About) => Degree
  readonly perDegree: (angle: Degree, about: About) => number
  /** Crank degrees from top to bottom dead centre. */
  readonly downstroke: Degree
}

/** Whether the rod is long enough for the stroke and the offset. */
export function crankTurns({ stroke, rod, pinOffset }: Engine): boolean {
  if (!(rod > stroke / 2 + Math.abs(pinOffset))) return false
  return !linkageLocks(crankThrow.value({ S: stroke, L: rod, e: pinOffset }), rod, pinOffset)
}

const BELOW_CROWN = worked('depth of the edge, below the crown at top dead centre')
const OPENS = fromPart('/ports, opens')

export function crankOf(engine: Engine, notebook: Notebook): Crank {
  const { stroke: S, rod: L, pinOffset: e, crownBelowTop: h_0 } = engine
  const given = { ...told(fromPart('/engine/rod'), { L }), ...told(fromPart('/engine/pin-offset'), { e }) }
  const R = notebook.use(crankThrow, { ...told(fromPart('/engine/stroke'), { S }), ...given }, { about: 'engine' })
  const crank = { R, ...given }
  const theta_T = notebook.use(topDeadCentre, crank, { about: 'engine' })
  const theta_B = notebook.use(bottomDeadCentre, crank, { about: 'engine' })
  const covered = (depth: Millimetre, about: About): { a: Degree; g: Degree } => {
    const x = told(BELOW_CROWN, { x: depth - h_0 })
    return {
      a: notebook.use(coveredHalfTurn, { ...crank, ...x }, about),
      g: notebook.use(coveredTurnShift, { ...crank, ...x, theta_T }, about),
    }
  }
  return {
    downstroke: theta_B - theta_T,
    depthAt: (theta, about) => {
      const x = notebook.use(pistonTravel, { ...crank, ...told(OPENS, { theta }), theta_T }, about)
      return notebook.use(edgeDepth, { ...told(fromPart('/engine/crown-below-top'), { h_0 }), x }, about)
    },
    crownDepth: angle => {
      const t = ((angle + theta_T) * Math.PI) / 180
      return h_0 + Math.sqrt((L + R) ** 2 - e ** 2) - R * Math.cos(t) - Math.sqrt(L ** 2 - (R * Math.sin(t) - e) ** 2)
    },
    opensAt: (depth, about) => notebook.use(openingAngle, covered(depth, about), about),
    closesAt: (depth, about) => notebook.use(closingAngle, covered(depth, about), about),
    perDegree: (theta, about) =>
      notebook.use(travelPerDegree, { ...crank, ...told(worked('the port opens'), { theta }), theta_T }, about),
  }
}
